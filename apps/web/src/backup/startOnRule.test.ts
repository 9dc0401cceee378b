import { kestrelRise } from '@eaveline/job';
import { type MotorStart, workOut } from '@eaveline/plan';
import { expect, test } from 'vitest';
import { startOnRule } from './startOnRule.ts';

const { backup, checks } = workOut(kestrelRise);
const on = (start: MotorStart) => startOnRule(start, checks.findings);

test('word and gauge never disagree: where a start meets its rule its needle is on the allowed side', () => {
  const drawn = backup.starts.map(on).filter(({ gauge }) => gauge !== undefined);
  expect(drawn.length).toBeGreaterThan(1);
  for (const { state, words, gauge } of drawn) {
    if (gauge === undefined) continue;
    const allowed = gauge.sense === 'at most' ? gauge.value <= gauge.limit : gauge.value >= gauge.limit;
    expect([words, state === 'meets' ? allowed : true]).toEqual([words, true]);
  }
});

test('a pump that asks 9.14 of 9.00 kVA starts on the current it finds: that share is drawn, against its own limit', () => {
  const pump = backup.starts.find(({ name }) => name.startsWith('Water pump'));
  if (pump === undefined) throw new Error('The demo has a pump');
  expect(pump.withRestVA).toBeGreaterThan(pump.availableVA);
  // the rule: from 80 % of its locked-rotor current a motor starts
  expect(on(pump)).toMatchObject({
    state: 'meets',
    words: 'Starts, lights dip',
    gauge: { unit: '%', limit: 80, sense: 'at least' },
  });
});

test('a motor without a peak, or without a plate, has no gauge', () => {
  const bare = { circuitId: 'x', name: 'X', verdict: 'no start peak' } as MotorStart;
  expect(startOnRule(bare, [])).toEqual({ state: 'meets', words: 'Has no start peak', gauge: undefined });
});
