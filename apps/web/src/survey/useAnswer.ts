import { type Asked, type AskedStanding, type Provenance, standingOf } from '@eaveline/job';
import { useEffect, useRef, useState } from 'react';
import { useWho, whoIsHere } from '../job/whoIsHere.ts';
import { useFactDesk } from './factDesk.ts';
import { useBag, withWhat } from './surveyor.ts';

const NOBODY = 'Nobody is named. A fact stands with who found it: say above who is here.';

/** One question on the desk: how it stands, and the ways to answer it. Each answer names who, when and with what. */
export interface OnQuestion {
  readonly value: unknown;
  readonly seen: Provenance | undefined;
  readonly standing: AskedStanding['kind'];
  readonly refusal: string | undefined;
  /** Takes a value, `undefined` to take it back. True where it was taken. */
  readonly answer: (value: unknown) => boolean;
  /** The value the region brought is what stands there: seen by whoever is here. */
  readonly confirm: () => void;
  /** Closes it without a value. */
  readonly notMeasured: (why: string) => void;
  /** Amends how it was seen, the value staying as it is. */
  readonly amend: (more: Partial<Provenance>) => void;
  readonly say: (refusal: string | undefined) => void;
}

export function useAnswer(asked: Asked): OnQuestion {
  const desk = useFactDesk();
  const bag = useBag();
  const [refusal, say] = useState<string>();
  const { path } = asked;
  const named = useWho().trim() !== '';
  /** What was answered while nobody was named: taken once somebody is. */
  const waiting = useRef<() => void>(undefined);
  const value = desk.valueAt(path);
  const seen = desk.seenAt(path);
  const inJob = standingOf(desk.job, asked).kind;
  // a draft is not in the job: there a value is an answer, and the region brings none
  const standing = inJob === 'open' && value !== undefined ? 'answered' : inJob;

  /** Who, when and with what of an answer given now; what was said of it before stays. */
  function seenNow(): Provenance {
    const instrument = withWhat(asked.with, bag);
    const { notMeasured: _gone, ...before } = seen ?? {};
    return {
      ...before,
      by: whoIsHere(),
      at: new Date().toISOString(),
      ...(instrument === undefined ? {} : { with: instrument }),
    };
  }
  function take(facts: Record<string, unknown>, by: Provenance | undefined): boolean {
    if (by !== undefined && by.by === '') {
      waiting.current = () => void take(facts, { ...by, by: whoIsHere() });
      say(NOBODY);
      return false;
    }
    waiting.current = undefined;
    const refused = desk.take({ facts, seen: { [path]: by } }, asked.ask);
    say(refused);
    return refused === undefined;
  }
  const nobody = refusal === NOBODY;
  useEffect(() => {
    if (!nobody || !named) return;
    say(undefined);
    // a name is whole once its field is left; a page that goes has left it too
    const taken = () => {
      if (whoIsHere() === '') return say(NOBODY);
      waiting.current?.();
    };
    const entered = ({ key }: KeyboardEvent) => {
      if (key === 'Enter') taken();
    };
    const field = document.activeElement;
    if (!(field instanceof HTMLInputElement)) return taken();
    field.addEventListener('blur', taken, { once: true });
    field.addEventListener('keydown', entered);
    return undefined;
  }, [nobody, named]);
  return {
    value,
    seen,
    standing,
    refusal,
    say,
    answer(next) {
      if (next === undefined) return take(takenBack(asked), undefined);
      return take({ ...broughtAlong(asked, desk), [path]: next }, seenNow());
    },
    confirm: () => void take({}, seenNow()),
    notMeasured: (why) => void take({ [path]: undefined }, { ...seenNow(), notMeasured: why }),
    amend: (more) => void take({}, { ...(seen ?? seenNow()), ...more }),
  };
}

/** Taking back the kind of a motor takes the motor. */
function takenBack({ path, group }: Asked): Record<string, unknown> {
  return { [group === undefined ? path : groupPath(path, group)]: undefined };
}

function groupPath(path: string, group: string): string {
  const steps = path.split('.');
  return steps.slice(0, steps.lastIndexOf(group) + 1).join('.');
}

/** What has to come with a first answer, by whole paths. */
function broughtAlong({ path, brings, group }: Asked, desk: ReturnType<typeof useFactDesk>): Record<string, unknown> {
  if (brings === undefined || group === undefined || desk.valueAt(path) !== undefined) return {};
  const root = groupPath(path, group).slice(0, -group.length);
  return Object.fromEntries(Object.entries(brings(desk.job)).map(([at, value]) => [`${root}${at}`, value]));
}
