import { vi } from 'vitest';

const forbid = (what: string) => (): never => {
  throw new Error(`${what} is not an input of a job`);
};
const clock = forbid('the clock');
const dice = forbid('chance');

/** A date can be made of an instant that is given, and of nothing else. */
const datesOfGiven = new Proxy(Date, {
  construct: (target, given) => (given.length === 0 ? clock() : Reflect.construct(target, given)),
  apply: clock, // Date() as a function tells the time whatever it is given
  get: (target, name) => (name === 'now' ? clock : Reflect.get(target, name)),
});

/** Formats show an instant that is given; without one they show now. */
function formatsOfGiven(): void {
  const { prototype } = Intl.DateTimeFormat;
  const parts = prototype.formatToParts;
  vi.spyOn(prototype, 'formatToParts').mockImplementation(function (this: Intl.DateTimeFormat, instant) {
    return instant === undefined ? clock() : parts.call(this, instant);
  });
}

/** Runs something while every clock and every source of chance throws. */
export function withoutClockAndDice<T>(run: () => T): T {
  vi.stubGlobal('Date', datesOfGiven);
  vi.stubGlobal('performance', { now: clock, timeOrigin: Number.NaN });
  vi.stubGlobal('crypto', { getRandomValues: dice, randomUUID: dice });
  vi.spyOn(Math, 'random').mockImplementation(dice);
  formatsOfGiven();
  try {
    return run();
  } finally {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
  }
}
