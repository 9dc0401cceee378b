import { expect, test } from 'vitest';
import { gbPack } from '../rules/iecEu.ts';
import { limit } from '../rules/limit.ts';
import type { CheckContext } from './context.ts';
import { contextOf } from './context.ts';
import { finding } from './finding.ts';
import { isWithin, stateOf } from './rule.ts';
import { baseStages } from './testing/baseStages.ts';
import { baseView } from './testing/baseView.ts';

const about = { kind: 'trunk', id: 'a', name: 'Trunk A' } as const;
const fromMemory = limit(4.6, 'BS 7671', 'BS 7671 551.7', 'memory');
const rise = { id: 'trunk-rise', sheet: '04', stops: true } as const;
const measured = (value: number) => ({
  about,
  title: 't',
  value,
  limit: 4.6,
  unit: 'V',
  sense: 'at most' as const,
  mends: [{ words: 'mend' }],
});

type Confirmations = CheckContext['choices']['confirmations'];

function contextWith(confirmations: Confirmations = {}) {
  const view = baseView('gb');
  return contextOf(
    {
      ...view,
      choices: { ...view.choices, rules: { ...view.choices.rules, editions: { 'BS 7671': '2018+A4' } }, confirmations },
    },
    gbPack,
    baseStages('gb'),
  );
}

const word = (edition: string, rule = 'trunk-rise'): Confirmations => ({
  one: { rule, edition, by: 'Nia', on: '2026-05-02' },
});

test('margin is what is left to the limit, negative over it: 4.60 − 3.45 and 4.60 − 5.32', () => {
  expect(finding(rise, fromMemory, contextWith(), measured(3.45)).margin).toBeCloseTo(1.15, 12);
  const over = finding(rise, fromMemory, contextWith(), measured(5.32));
  expect(over).toMatchObject({ id: 'trunk-rise:a', state: 'fails', stops: true, edition: 'BS 7671 2018+A4' });
  expect(over.margin).toBeCloseTo(-0.72, 12);
});

test('meeting a limit from memory reads unconfirmed until a licensed person gives their word for that edition', () => {
  expect(finding(rise, fromMemory, contextWith(), measured(3)).unconfirmed).toBe(true);
  expect(finding(rise, fromMemory, contextWith(word('2018+A4')), measured(3)).unconfirmed).toBe(false);
  expect(finding(rise, fromMemory, contextWith(word('BS 7671 2018+A4')), measured(3)).unconfirmed).toBe(false);
  // a word for the edition before, or for another rule, is none
  expect(finding(rise, fromMemory, contextWith(word('2018+A2')), measured(3)).unconfirmed).toBe(true);
  expect(finding(rise, fromMemory, contextWith(word('2018+A4', 'fault-loop')), measured(3)).unconfirmed).toBe(true);
});

test('what fails or asks is never called unconfirmed, nor is a limit that was seen', () => {
  expect(finding(rise, fromMemory, contextWith(), measured(5)).unconfirmed).toBe(false);
  expect(
    finding(rise, fromMemory, contextWith(), { about, title: 't', state: 'ask', needs: ['facts.x'] }),
  ).toMatchObject({
    state: 'ask',
    unconfirmed: false,
    needs: ['facts.x'],
    stops: true,
  });
  const seen = { ...fromMemory, seen: 'public text' as const };
  expect(finding(rise, seen, contextWith(), measured(3)).unconfirmed).toBe(false);
});

test('what meets offers no way out and stops nothing', () => {
  expect(finding(rise, fromMemory, contextWith(), measured(3))).toMatchObject({ mends: [], stops: false });
  expect(finding(rise, fromMemory, contextWith(), measured(5)).mends).toHaveLength(1);
});

test('a limit of common practice fails without stopping the job', () => {
  const practice = limit(4.6, 'common practice', 'a guide', 'practice');
  expect(finding(rise, practice, contextWith(), measured(5))).toMatchObject({ state: 'fails', stops: false });
});

test('a limit that stands in another text is cited there', () => {
  const from = { clause: 'strip chosen for this job', document: 'job', seen: 'job' as const };
  expect(finding(rise, fromMemory, contextWith(), { ...measured(3), from })).toMatchObject({
    clause: 'strip chosen for this job',
    seen: 'job',
    edition: 'job',
    unconfirmed: false,
  });
});

test('judged unrounded: a millionth over is over, the last bits of the machine are not', () => {
  expect(isWithin(4.600001, 4.6, 'at most')).toBe(false);
  expect(isWithin(2 * 2.3 + 1e-15, 4.6, 'at most')).toBe(true);
  expect(isWithin(0.599999, 0.6, 'at least')).toBe(false);
  expect(isWithin(0.2 + 0.4, 0.6, 'at most')).toBe(true);
  expect(isWithin(-0.1, 0, 'at least')).toBe(false);
});

test('a rule that gives neither figure nor state is our own mistake', () => {
  expect(() => stateOf({ about, title: 't' } as never)).toThrow('neither a state nor a figure');
});
