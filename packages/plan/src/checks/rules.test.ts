import { choicesSchema } from '@eaveline/job';
import { expect, test } from 'vitest';
import { type Finding, isMendChange } from '../finding.ts';
import { describeRules } from '../rules/describeRules.ts';
import { rulePacks } from '../rules/index.ts';
import { rules } from './rules/index.ts';
import { runRule } from './runRules.ts';
import { caseOf } from './testing/caseOf.ts';
import type { Example, Examples } from './testing/example.ts';
import { examplesBattery } from './testing/examplesBattery.ts';
import { examplesBoard } from './testing/examplesBoard.ts';
import { examplesRoof } from './testing/examplesRoof.ts';
import { withChanges } from './testing/withChanges.ts';

const examples: readonly Examples[] = [...examplesRoof, ...examplesBoard, ...examplesBattery];

function findingsOf({ rule: id, variant = 'au' }: Examples, example: Example): readonly Finding[] {
  const rule = rules.find((each) => each.id === id);
  if (rule === undefined) throw new Error(`no rule ${id}`);
  return runRule(rule, caseOf(variant, example.set));
}

/** What an example says of its finding is what the finding says. Figures to half a hundredth: they were worked by hand. */
function expectSaid(finding: Finding | undefined, example: Example): void {
  expect(finding).toBeDefined();
  if (finding === undefined) return;
  if (example.value !== undefined) expect(finding.value).toBeCloseTo(example.value, 2);
  if (example.limit !== undefined) expect(finding.limit).toBeCloseTo(example.limit, 2);
  const [mend] = finding.mends;
  if (example.mend !== undefined) expect(mend?.words.slice(0, example.mend.length)).toBe(example.mend);
  if (example.mended !== undefined) expect(mend?.value).toBeCloseTo(example.mended, 3);
  if (example.change !== undefined) {
    const [change] = mend?.changes ?? [];
    expect([change?.path.join('.'), change?.value]).toEqual(example.change);
  }
  if (example.needs !== undefined) expect(finding.needs).toContain(example.needs);
}

/** The finding that an example means: the first of the state, of those with its value where it gives one. */
function meant(findings: readonly Finding[], state: Finding['state'], { value }: Example): Finding | undefined {
  const inState = findings.filter((finding) => finding.state === state);
  if (value === undefined) return inState[0];
  return inState.find((finding) => Math.abs((finding.value ?? Number.NaN) - value) < 0.01) ?? inState[0];
}

test.each(examples.map((each) => [`${each.rule}, ${each.variant ?? 'au'}`, each] as const))('%s fails', (_, each) => {
  const failed = meant(findingsOf(each, each.fails), 'fails', each.fails);
  expectSaid(failed, each.fails);
  if (failed?.margin !== undefined) expect(failed.margin).toBeLessThan(0);
  expect(failed?.mends.length).toBeGreaterThan(0);
});

test.each(examples.map((each) => [`${each.rule}, ${each.variant ?? 'au'}`, each] as const))('%s meets', (_, each) => {
  const findings = findingsOf(each, each.meets);
  expect(findings.filter(({ state }) => state !== 'meets').map(({ title }) => title)).toEqual([]);
  expectSaid(meant(findings, 'meets', each.meets), each.meets);
});

const asking = examples.filter((each) => each.asks !== undefined);
test.each(asking.map((each) => [`${each.rule}, ${each.variant ?? 'au'}`, each] as const))('%s asks', (_, each) => {
  const example = each.asks as Example;
  const asked = meant(findingsOf(each, example), 'ask', example);
  expectSaid(asked, example);
  expect(asked?.needs.length).toBeGreaterThan(0);
});

test.each(examples.map((each) => [`${each.rule}, ${each.variant ?? 'au'}`, each] as const))(
  '%s: its mends change choices only, to what a job may hold',
  (_, each) => {
    for (const example of [each.fails, each.asks ?? {}]) {
      const { choices } = caseOf(each.variant ?? 'au', example.set);
      for (const { words, changes = [] } of findingsOf(each, example).flatMap(({ mends }) => mends)) {
        expect(changes.every(isMendChange), words).toBe(true);
        const mended = withChanges({ choices }, changes) as { readonly choices: unknown };
        expect(choicesSchema.partial().safeParse(mended.choices).error?.issues ?? [], words).toEqual([]);
      }
    }
  },
);

test('a rule whose mend reached past the choices would be found out at once', () => {
  const spoilt = {
    id: 'labels' as const,
    sheet: '12' as const,
    stops: false,
    question: '',
    judge: () => [
      {
        about: { kind: 'document' as const, id: 'x', name: 'x' },
        state: 'fails' as const,
        title: 'x',
        mends: [{ words: 'Measure it smaller.', changes: [{ path: ['facts', 'supply', 'loopOhm'], value: 0.1 }] }],
      },
    ],
  };
  expect(() => runRule(spoilt as never, caseOf('au'))).toThrow(
    'labels: “Measure it smaller.” changes facts.supply.loopOhm. A mend changes choices only.',
  );
});

test('every rule of every pack has an example that fails and one that meets', () => {
  const held = new Set(Object.values(rulePacks).flatMap((pack) => describeRules(pack).map(({ rule }) => rule)));
  const shown = new Set(examples.map(({ rule }) => rule));
  expect([...held].filter((rule) => !shown.has(rule))).toEqual([]);
  expect(rules.map(({ id }) => id).filter((id) => !held.has(id))).toEqual([]);
});

test('each region judges its own limit: one design, three packs', () => {
  // a rise of 3.0 V on 230 V: inside 2 % (4.6 V) in Australia, over 1 % (2.3 V) in Great Britain
  const rise = (variant: 'au' | 'gb') =>
    findingsOf(
      { rule: 'trunk-rise', variant, fails: {}, meets: {} },
      {
        set: ({ stages }) => {
          const trunk = stages.trunks.trunks[0];
          if (trunk) Object.assign(trunk.rise, { totalV: 3, share: 3 / 230 });
        },
      },
    )[0]?.state;
  expect([rise('au'), rise('gb')]).toEqual(['meets', 'fails']);
});

test('a rail outside its clamp zone says from where to where the zone goes, with digits that tell them apart', () => {
  const saidAt = (mm: number) =>
    findingsOf(
      { rule: 'clamp-zone', variant: 'au', fails: {}, meets: {} },
      { set: ({ stages }) => Object.assign(stages.array.rails[0] ?? {}, { fromModuleEdgeMm: mm, inZone: false }) },
    ).find(({ state }) => state === 'fails')?.title;
  // 20 to 30 % of 1722 mm: 344.4 to 516.6 mm
  expect(saidAt(250)).toBe('N1 lower crosses 250 mm from the lower edge. The zone is 344 to 517 mm.');
  expect(saidAt(344)).toBe('N1 lower crosses 344.0 mm from the lower edge. The zone is 344.4 to 517 mm.');
  expect(saidAt(517)).toBe('N1 lower crosses 517.0 mm from the lower edge. The zone is 344 to 516.6 mm.');
});

test('above an older edition’s figure for lines it asks, for the one in force was not found', () => {
  const [finding] = findingsOf(
    { rule: 'line-difference', variant: 'au', fails: {}, meets: {} },
    {
      set: ({ view, stages }) => {
        view.facts.supply.system = 'three-phase';
        stages.board.largestDifferenceVA = 6400;
      },
    },
  );
  expect(finding?.state).toBe('ask');
});

test('a cold voltage without the record low asks whatever the weather says', () => {
  const [finding] = findingsOf(
    { rule: 'cold-voltage', variant: 'au', fails: {}, meets: {} },
    {
      set: ({ view, stages }) => {
        delete view.facts.site.recordLowC;
        // a typical year's coldest hour, should anybody think of it
        stages.site.recordLowC = -2;
      },
    },
  );
  expect(finding?.state).toBe('ask');
});
