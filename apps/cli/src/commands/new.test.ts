import { parseJob } from '@eaveline/job';
import { expect, test } from 'vitest';
import { runInMemory } from '../../test/memoryIo.ts';
import { registerCheck } from './check.ts';
import { registerNew } from './new.ts';
import { registerSchema } from './schema.ts';

const line = ['new', 'j.job.json', '--name', '4 Finch Row', '--region', 'gb', '--lat', '53.4', '--lon', '-2.3'];

test('a clean sheet opens, holds no guess, and the checks ask for what is missing', async () => {
  const { files, verdict } = await runInMemory(registerNew, {}, ...line);
  expect(verdict).toBe(0);
  const { job, remarks } = parseJob(String(files['j.job.json']));
  expect(remarks.filter(({ severity }) => severity === 'stop')).toEqual([]);
  expect(job?.facts.site.recordLowC).toBeUndefined();
  const checked = await runInMemory(registerCheck, files, 'check', 'j.job.json');
  expect(checked.verdict).toBe(0);
});

test('never writes over a file that is there', async () => {
  const { files, text, verdict } = await runInMemory(registerNew, { 'j.job.json': 'mine' }, ...line);
  expect(verdict).toBe(2);
  expect(text).toContain('nothing was written');
  expect(files['j.job.json']).toBe('mine');
});

test.each([
  ['a region that is not there', ['--region', 'moon'], 'au, nz, gb, ie, eu, us'],
  ['a latitude that is no number', ['--lat', 'north'], 'latitudeDeg'],
  ['a latitude beyond the pole', ['--lat', '95'], 'latitudeDeg'],
])('%s is refused and nothing is written', async (_what, instead, says) => {
  const { files, text, verdict } = await runInMemory(registerNew, {}, ...line, ...instead);
  expect(verdict).toBe(2);
  expect(text).toContain(says);
  expect(files).toEqual({});
});

test('the schema of a job is JSON Schema draft 2020-12; another name is refused', async () => {
  const job = await runInMemory(registerSchema, {}, 'schema', 'job');
  expect(JSON.parse(job.text).$schema).toContain('2020-12');
  const other = await runInMemory(registerSchema, {}, 'schema', 'cat');
  expect(other.verdict).toBe(2);
  expect(other.text).toContain('There is: job');
});
