import { expect, test } from 'vitest';
import { makeStepNames } from './stepNames.ts';

/** Names at seconds after nine o'clock. */
function namesAt() {
  let second = 0;
  const name = makeStepNames(() => new Date(Date.UTC(2026, 4, 12, 9, 0, second)));
  return (at: number, same: string | undefined) => {
    second = at;
    return name(same);
  };
}

test('a figure stepped on and on is one step; taken anew two seconds later it is another', () => {
  const name = namesAt();
  const first = name(0, 'Home run a');
  expect(name(1, 'Home run a')).toBe(first);
  expect(name(2, 'Home run a')).toBe(first);
  expect(name(4, 'Home run a')).not.toBe(first);
});

test('the same field of another thing is another step, however soon', () => {
  const name = namesAt();
  const first = name(0, 'Home run a');
  const second = name(1, 'Home run b');
  expect(second).not.toBe(first);
  expect(name(2, 'Home run a')).not.toBe(first);
});

test('what says nothing of itself stands alone', () => {
  const name = namesAt();
  expect(name(0, undefined)).not.toBe(name(0, undefined));
});
