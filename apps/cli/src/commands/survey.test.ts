import { kestrelRise, writeJob } from '@eaveline/job';
import { expect, test } from 'vitest';
import { runInMemory } from '../../test/memoryIo.ts';
import { loadFonts } from '../fonts.ts';
import { registerSurvey } from './survey.ts';

const files = () => ({ 'k.job.json': writeJob(kestrelRise) });
const run = (...more: string[]) => runInMemory(registerSurvey(loadFonts), files(), 'survey', 'k.job.json', ...more);

test('what is open, where it is filled and which rules need it; open facts change no exit code', async () => {
  const { text, verdict } = await run();
  expect(text.split('\n').slice(0, 2)).toEqual([
    '1 open.',
    '  attic.west: West: rafters, middle to middle (rafters, foot-spacing, rail-overhang)',
  ]);
  expect(text).toContain('later: Number of the approval, the network’s letter');
  expect(verdict).toBe(0);
});

test('--json is data', async () => {
  const { holes } = JSON.parse((await run('--json')).text);
  expect(holes).toHaveLength(1);
  expect(holes[0]).toMatchObject({ kind: 'fact', path: 'roof.planes.west.rafters.spacingMm' });
});

test('--out draws the form as a PDF', async () => {
  const { files: written, printed } = await run('--out', 'form.pdf');
  expect(new TextDecoder('latin1').decode((written['form.pdf'] as Uint8Array).slice(0, 5))).toBe('%PDF-');
  expect(printed.at(-1)).toMatch(/^form\.pdf: \d+ pages\.$/);
});
