import { quaysideTerrace, writeJob } from '@eaveline/job';
import { expect, test } from 'vitest';
import { runInMemory } from '../../test/memoryIo.ts';
import { registerPlan } from './plan.ts';

const files = () => ({ 'q.job.json': writeJob(quaysideTerrace) });

test('headline figures in a table, the weather named with its distance', async () => {
  const { text } = await runInMemory(registerPlan, files(), 'plan', 'q.job.json');
  expect(text).toMatch(/modules +10 +3\.95 kW/);
  expect(text).toMatch(/weather .* km away/);
});

test('--json holds all thirteen stages; the hourly series only when asked for', async () => {
  const short = await runInMemory(registerPlan, files(), 'plan', 'q.job.json', '--json');
  const plan = JSON.parse(short.text);
  expect(Object.keys(plan)).toEqual(expect.arrayContaining(['site', 'sun', 'kit', 'day', 'tests']));
  expect(plan.sun.ghi).toEqual({ series: 8760, note: 'left out; --series writes it' });

  const long = await runInMemory(registerPlan, files(), 'plan', 'q.job.json', '--json', '--series');
  expect(JSON.parse(long.text).sun.ghi).toHaveLength(8760);
});
