import { demoJobs, type Job, jobSchema, kestrelRise, larkspurLane, practiceYard, quaysideTerrace } from '@eaveline/job';
import { expect, test } from 'vitest';
import { confirmedWords, type Finding } from '../finding.ts';
import { rulePacks } from '../rules/index.ts';
import { checksStage } from './index.ts';
import { leftOut } from './leftOut.ts';
import { rules } from './rules/index.ts';
import { checksOf } from './testing/checksOf.ts';
import type { ChecksPlan } from './types.ts';

const plans = new Map([...demoJobs, practiceYard].map((job) => [job.id, { job, checks: checksOf(job) }]));
const all = [...plans.values()];
const of = (job: Job) => plans.get(job.id)?.checks as ChecksPlan;
const found = (job: Job, id: string) => of(job).findings.find((finding) => finding.id === id);

function changed(job: Job, change: (draft: Job) => void): Job {
  const draft = structuredClone(job);
  change(draft);
  return jobSchema.parse(draft);
}

test.each(all)('$job.id: every finding has an id of its own, a clause, an edition and a sentence', ({ checks }) => {
  const ids = checks.findings.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const finding of checks.findings) {
    expect(finding.clause, finding.id).not.toBe('');
    expect(finding.edition, finding.id).not.toBe('');
    expect(finding.title, finding.id).toMatch(/[.?]$/);
    expect(finding.title, finding.id).not.toMatch(/undefined|NaN|Infinity|please|sorry|error/i);
  }
});

test.each(all)('$job.id: nothing meets a limit from memory in silence', ({ checks }) => {
  for (const finding of checks.findings.filter(({ state, seen }) => state === 'meets' && seen === 'memory')) {
    expect(finding.unconfirmed, finding.id).toBe(true);
    const { rule, clause, edition } = finding;
    expect(checks.unconfirmed).toContainEqual({ rule, clause, edition });
  }
});

test.each(all)('$job.id: state, figure, margin and stopping agree', ({ checks }) => {
  for (const finding of checks.findings) {
    const { state, margin, value, limit } = finding;
    if (margin !== undefined && state === 'meets')
      expect(margin, finding.id).toBeGreaterThanOrEqual(-1e-9 * Math.abs(limit ?? 0));
    if (value !== undefined) expect(Number.isFinite(value) && Number.isFinite(limit), finding.id).toBe(true);
    if (state === 'meets') expect(finding.stops, finding.id).toBe(false);
    // what is asked names what it waits for
    if (state === 'ask') expect(finding.needs.length, finding.id).toBeGreaterThan(0);
  }
});

test.each(all)('$job.id: the working of a figure ends in the figure, that of its limit in the limit', ({ checks }) => {
  for (const { id, value, limit, working, limitWorking } of checks.findings) {
    if (value === undefined) continue;
    expect(working?.value, id).toBe(value);
    if (limitWorking !== undefined) expect(limitWorking.value, id).toBe(limit);
  }
});

test('a limit that is worked out shows how, beside the figure it judges', () => {
  // 2 % of 230 V, without the tail that 0.02 · 230 has in binary
  expect(found(kestrelRise, 'trunk-rise:a')?.limitWorking).toMatchObject({
    value: 4.6,
    inputs: [{ value: 0.02 }, { value: 230 }],
  });
  const rules = ['backup-start', 'breaker-continuous', 'breaker-rating', 'units-per-trunk', 'standing-leakage'];
  for (const rule of rules) {
    const judged = all.flatMap(({ checks }) => checks.findings.filter((each) => each.rule === rule && 'value' in each));
    expect(judged.length, rule).toBeGreaterThan(0);
    for (const { id, working } of judged) expect(working?.inputs?.length, id).toBeGreaterThan(0);
    expect(judged.filter(({ limitWorking }) => limitWorking?.inputs?.length).length, rule).toBeGreaterThan(0);
  }
});

test.each(all)('$job.id: a mend changes choices that stand in the job, and nothing else', ({ job, checks }) => {
  for (const { path } of checks.findings.flatMap(({ mends }) => mends.flatMap(({ changes = [] }) => changes))) {
    expect(path[0]).toBe('choices');
    const holder = path.slice(0, -1).reduce<unknown>((thing, key) => (thing as Record<string, unknown>)?.[key], job);
    expect(holder, path.join('.')).toBeTypeOf('object');
  }
});

test.each(all)('$job.id: what stops comes first', ({ checks }) => {
  const group = ({ state, stops }: Finding) =>
    state === 'fails' ? (stops ? 0 : 1) : state === 'ask' ? (stops ? 2 : 3) : 4;
  const groups = checks.findings.map(group);
  expect(groups).toEqual([...groups].sort((a, b) => a - b));
  expect(checks.tally.fails + checks.tally.ask + checks.tally.meets).toBe(checks.findings.length);
});

test('Kestrel Rise: trunk A, the battery’s place and the motors’ start do not hold; west rafters and the backing are asked', () => {
  expect(found(kestrelRise, 'trunk-rise:a')).toMatchObject({ state: 'fails', limit: 4.6 });
  // window to 2000 mm, battery from 2480 mm: 480 of 600, so 120 mm further
  expect(found(kestrelRise, 'battery-clearance:battery-laundry-window')).toMatchObject({
    state: 'fails',
    value: 480,
    limit: 600,
    mends: [{ changes: [{ path: ['choices', 'batteries', 'battery', 'place', 'leftMm'], value: 2600 }] }],
  });
  // 46 A · 230 V + 1610 W of the rest = 12 190 VA on 9000: a compressor may still start slowly, so it is asked
  expect(found(kestrelRise, 'backup-start:cooling')).toMatchObject({ state: 'ask', value: 12190, limit: 9000 });
  expect(found(kestrelRise, 'rafters:west')).toMatchObject({
    state: 'ask',
    needs: ['facts.roof.planes.west.rafters.spacingMm'],
  });
  expect(found(kestrelRise, 'board-backing:board')?.state).toBe('ask');
});

test('a mend does what it says: each change put into Kestrel Rise brings the figure that was promised', () => {
  const mended = of(kestrelRise).findings.flatMap((finding) =>
    finding.mends
      .filter(({ value, changes }) => value !== undefined && changes !== undefined)
      .map((mend) => ({ finding, mend })),
  );
  expect(mended.length).toBeGreaterThan(0);
  for (const { finding, mend } of mended) {
    const job = changed(kestrelRise, (draft) => {
      for (const { path, value } of mend.changes ?? []) {
        const holder = path
          .slice(0, -1)
          .reduce<unknown>((thing, key) => (thing as Record<string, unknown>)[key], draft);
        (holder as Record<string, unknown>)[path.at(-1) as string] = value;
      }
    });
    const after = checksOf(job).findings.find(({ id }) => id === finding.id);
    expect(after?.value, `${finding.id}: ${mend.words}`).toBeCloseTo(mend.value ?? Number.NaN, 6);
    expect(after?.state, `${finding.id}: ${mend.words}`).not.toBe('fails');
  }
});

test('the shorter way along the wall is taken: to 720 mm on one side of the window, to 3100 mm on the other', () => {
  // window 2000 to 2500 mm, 600 mm clear, battery 680 mm wide: 2000 − 600 − 680 = 720, 2500 + 600 = 3100
  const from = (leftMm: number) =>
    checksOf(
      changed(kestrelRise, ({ facts, choices }) => {
        Object.assign(facts.walls['east-wall']?.items['laundry-window'] ?? {}, { leftMm: 2000, widthMm: 500 });
        Object.assign(choices.batteries.battery?.place ?? {}, { leftMm });
      }),
    ).findings.find(({ rule }) => rule === 'battery-clearance')?.mends[0]?.changes?.[0]?.value;
  expect(from(1400)).toBe(720);
  expect(from(2600)).toBe(3100);
});

test('a permission is asked for in the office and missing on site; a certificate is missing once handed over', () => {
  const papers = (state: Job['state'], signed: readonly string[] = []) =>
    Object.fromEntries(
      checksOf(
        changed(larkspurLane, (draft) => {
          draft.state = state;
          signed.forEach((of, k) => {
            draft.records.signatures[`s${k}`] = { at: '2026-05-01T08:00:00Z', by: 'Ode', of, name: 'Ode' };
          });
        }),
      )
        .findings.filter(({ rule }) => rule === 'documents')
        .map((finding) => [finding.about.id, finding.state]),
    );
  expect(papers('design')).toEqual({ interconnection: 'meets', permit: 'ask' });
  expect(papers('on site')).toMatchObject({ permit: 'fails' });
  expect(papers('tested')).toMatchObject({ permit: 'fails', inspection: 'ask' });
  expect(papers('handed over', ['document:permit'])).toMatchObject({ permit: 'meets', inspection: 'fails' });
});

test('a signature that a later one sets aside no longer counts', () => {
  const signature = { at: '2026-05-01T08:00:00Z', by: 'Ode', name: 'Ode' };
  const job = changed(larkspurLane, ({ records }) => {
    records.signatures.one = { ...signature, of: 'document:permit' };
    records.signatures.two = { ...signature, of: 'withdrawn', supersedes: 'one' };
  });
  expect(checksStage.view(job).signed).toEqual(['withdrawn']);
});

/** Factor to the unit in the numerator, for a figure said in thousands or hundredths. */
const IN_UNIT: Readonly<Record<string, number>> = { kVA: 1000, kA: 1000, '%': 0.01 };
const plain = (value: number, unit = '') => value * (IN_UNIT[unit] ?? 1);

test.each(all)('$job.id: a figure that is judged, or its limit, shows how it came about', ({ checks }) => {
  for (const { id, rule, value, limit, unit, working } of checks.findings) {
    if (value === undefined || limit === undefined) continue;
    expect(working, id).toBeDefined();
    // a motor's start is judged in VA and worked out as the share of its starting current that is left
    if (rule === 'backup-start') continue;
    const shown = plain(Number(working?.value), working?.unit);
    const off = Math.min(...[value, limit].map((one) => Math.abs(plain(one, unit) - shown)));
    expect(off, id).toBeLessThan(1e-6);
  }
});

test('cold voltage waits for the survey’s record low: no typical year stands in', () => {
  const without = checksOf(changed(kestrelRise, (draft) => delete draft.facts.site.recordLowC));
  const cold = without.findings.filter(({ rule }) => rule === 'cold-voltage');
  expect(cold).toHaveLength(1);
  expect(cold[0]).toMatchObject({ state: 'ask', stops: true, needs: ['facts.site.recordLowC'] });
  expect(cold[0]?.value).toBeUndefined();
});

test('a licensed person’s word closes one line of the unconfirmed, for its edition', () => {
  const open = of(quaysideTerrace).unconfirmed.find(({ rule }) => rule === 'bus' || rule === 'cable-capacity');
  const rule = open?.rule as string;
  const word = (edition: string) => ({ rule, edition, by: 'Nia', licence: 'E-1', on: '2026-05-02' });
  const edition = open?.edition as string;
  const confirmed = checksOf(
    changed(quaysideTerrace, (draft) => Object.assign(draft.choices.confirmations, { one: word(edition) })),
  );
  expect(confirmed.unconfirmed.some((one) => one.rule === rule)).toBe(false);
  const older = checksOf(
    changed(quaysideTerrace, (draft) => Object.assign(draft.choices.confirmations, { one: word('1992') })),
  );
  expect(older.unconfirmed.some((one) => one.rule === rule)).toBe(true);
  // whose word it is stands in every finding it is behind
  const behind = confirmed.findings.filter((finding) => finding.rule === rule && finding.edition === edition);
  expect(behind.length).toBeGreaterThan(0);
  for (const finding of behind) expect(finding.confirmed).toEqual({ by: 'Nia', licence: 'E-1', on: '2026-05-02' });
  expect(confirmedWords(behind[0] as Finding)).toBe('Limit confirmed by Nia, licence E-1, 2026-05-02.');
  expect(confirmed.idleConfirmations).toEqual([]);
  expect(older.findings.some((finding) => finding.confirmed !== undefined)).toBe(false);
});

test('a word for a rule the region lacks, or for another edition, is told and counts for nothing', () => {
  const word = (rule: string, edition: string) => ({ rule, edition, by: 'Nia', on: '2026-05-02' });
  const { idleConfirmations, leavesOut } = checksOf(
    changed(kestrelRise, (draft) => {
      draft.choices.confirmations = {
        right: word('fault-loop', 'AS/NZS 3000 2018'),
        misspelt: word('fault-lop', 'AS/NZS 3000 2018'),
        old: word('fault-loop', '2007'),
      };
    }),
  );
  expect(idleConfirmations).toEqual([
    'Confirmation misspelt by Nia (fault-lop, edition AS/NZS 3000 2018) counts for nothing: au-nz/au has no rule of that name.',
    'Confirmation old by Nia (fault-loop, edition 2007) counts for nothing: the edition in force is AS/NZS 3000 2018.',
  ]);
  expect(leavesOut).toEqual(expect.arrayContaining([...idleConfirmations]));
});

test('the stage’s view leaves out what no rule reads', () => {
  const view = (change: (draft: Job) => void) => JSON.stringify(checksStage.view(changed(kestrelRise, change)));
  const as = JSON.stringify(checksStage.view(kestrelRise));
  expect(view((draft) => Object.assign(draft.facts.loads, { annualKwh: 9999 }))).toBe(as);
  expect(view((draft) => Object.assign(draft.choices.day, { startsAt: '09:00' }))).toBe(as);
  expect(view((draft) => Object.assign(draft.facts.supply, { loopOhm: 0.5 }))).not.toBe(as);
});

test.each(Object.values(rulePacks))('$variant: what the region lacks is said', (pack) => {
  for (const { rule } of pack.lacks) expect(leftOut(pack).some((line) => line.startsWith(`${rule}:`))).toBe(true);
});

test.each(Object.values(rulePacks))('$variant: every rule of the pack has its file', (pack) => {
  const written = new Set<string>(rules.map(({ id }) => id));
  for (const id of Object.keys(pack.rules)) expect(written.has(id), id).toBe(true);
  expect(written.size).toBe(rules.length);
});
