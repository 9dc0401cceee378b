import { expect, test } from 'vitest';
import { remarkSentence } from './remark.ts';
import { REMARKS_OF_A_KIND, remarkLog } from './remarkLog.ts';

const short = (line: number) =>
  ({
    severity: 'drop',
    code: 'row-short',
    line,
    found: `Line ${line} has 12 fields.`,
    wanted: 'At least 22 are needed.',
    done: 'The hour was left out.',
  }) as const;

test('keeps twenty remarks of a kind and counts the rest', () => {
  const log = remarkLog();
  for (let line = 9; line < 109; line++) log.add(short(line));
  const reading = log.close('epw', 'data');
  expect(reading.remarks).toHaveLength(REMARKS_OF_A_KIND);
  expect(reading.counts).toEqual({ 'row-short': 100 });
  expect(reading.data).toBe('data');
});

test('a stop leaves no data', () => {
  const log = remarkLog();
  log.add({ ...short(1), severity: 'stop' });
  expect(log.stopped()).toBe(true);
  expect(log.close('epw', 'data').data).toBeUndefined();
});

test('a remark reads as plain sentences', () => {
  expect(remarkSentence(short(39))).toBe('Line 39 has 12 fields. At least 22 are needed. The hour was left out.');
});
