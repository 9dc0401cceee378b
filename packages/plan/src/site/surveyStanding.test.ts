import { demoJobs, factAt, type Job, kestrelRise, surveySteps } from '@eaveline/job';
import { expect, test } from 'vitest';
import { goesInto } from './goesInto.ts';
import { surveyStanding, usualAnswer } from './surveyStanding.ts';
import { wantedFacts } from './wantedFacts.ts';

/** A job with some of its facts changed, back in survey. */
function inSurvey(change: (facts: Job['facts']) => void = () => {}, job: Job = kestrelRise): Job {
  const changed = structuredClone(job);
  changed.state = 'survey';
  change(changed.facts);
  return changed;
}
const holes = (job: Job, kind: string) => surveyStanding(job).holes.filter((hole) => hole.kind === kind);
const seen = { by: 'Nia', at: '2026-05-15T01:00:00Z' };

test('every fact the plan of any demo job wants is asked for in its survey, one question each', () => {
  let looked = 0;
  for (const demo of demoJobs) {
    for (const job of [demo, inSurvey(undefined, demo)]) {
      const asked = surveySteps(job).flatMap(({ asks, lists }) => [
        ...asks.map(({ path }) => path),
        ...lists.map(({ at }) => at),
      ]);
      for (const { at } of wantedFacts(job)) {
        expect(
          asked.filter((path) => `facts.${path}` === at),
          `${job.id}: ${at}`,
        ).toHaveLength(1);
        looked += 1;
      }
    }
  }
  expect(looked).toBeGreaterThan(300);
});

test('a fact that is missing is a hole at its step, and names the rules that need it', () => {
  const hole = holes(kestrelRise, 'fact').find(({ path }) => path === 'roof.planes.west.rafters.spacingMm');
  expect(hole).toMatchObject({
    step: 'attic.west',
    what: 'West: rafters, middle to middle',
    rules: ['rafters', 'foot-spacing', 'rail-overhang'],
    because: 'feet stand on rafters',
  });
});

test('a fact no rule needs names the sheet, the paper or the crew’s step that does', () => {
  const job = inSurvey(({ supply, access, roof, loads }) => {
    delete supply.rotation;
    delete access.scaffoldNeeded;
    delete roof.planes.west?.fragile;
    delete loads.annualKwh;
  });
  const needs = new Map(surveyStanding(job).holes.map(({ path, rules, goesInto }) => [path, [rules, goesInto]]));
  expect(needs.get('supply.rotation')).toEqual([[], 'sheet 11, the row “Phase rotation”']);
  expect(needs.get('access.scaffoldNeeded')).toEqual([
    [],
    'the crew’s step “Edge protection, anchors, hoist”, sheet 10',
  ]);
  expect(needs.get('roof.planes.west.fragile')).toEqual([[], 'paper 10.C, the cautions']);
  expect(needs.get('loads.annualKwh')).toEqual([[], 'sheet 07, what the house uses by the hour']);
});

test('whatever the survey of a demo job may ask has its place', () => {
  let looked = 0;
  for (const demo of demoJobs) {
    for (const step of surveySteps(inSurvey(undefined, demo))) {
      const paths = [
        ...step.asks.map(({ path }) => path),
        ...step.lists.map(({ at }) => at),
        step.photo?.of ?? step.id,
      ];
      for (const path of paths) expect(goesInto(step, path), path).toMatch(/^(sheet \d\d|paper|the )/);
      looked += paths.length;
    }
  }
  expect(looked).toBeGreaterThan(300);
});

test('what the network’s letter brings is no hole: it comes later, and is said to', () => {
  const { holes, later } = surveyStanding(kestrelRise);
  expect(holes.some(({ path }) => path.startsWith('network.approval'))).toBe(false);
  expect(later.map(({ what, from }) => `${what}: ${from}`)).toContain('Number of the approval: the network’s letter');
});

test('a fact closed with a reason is no hole; who, why and the rules that go on asking are told', () => {
  const job = inSurvey((facts) => {
    facts.provenance['roof.planes.west.rafters.spacingMm'] = { ...seen, notMeasured: 'the hatch is painted shut' };
  });
  expect(holes(job, 'fact').some(({ path }) => path.endsWith('west.rafters.spacingMm'))).toBe(false);
  expect(surveyStanding(job).notMeasured).toEqual([
    {
      step: 'attic.west',
      path: 'roof.planes.west.rafters.spacingMm',
      what: 'West: rafters, middle to middle',
      why: 'the hatch is painted shut',
      by: 'Nia',
      rules: ['rafters', 'foot-spacing', 'rail-overhang'],
    },
  ]);
  // the rule still has no spacing: nothing was made up
  expect(wantedFacts(job).find(({ at }) => at.endsWith('west.rafters.spacingMm'))?.present).toBe(false);
});

test('the declared loop stands in for the measured one: no hole', () => {
  const job = inSurvey(({ supply }) => {
    delete supply.loopOhm;
  });
  expect(holes(job, 'fact').some(({ path }) => path === 'supply.loopOhm')).toBe(true);
  job.facts.supply.declaredLoopOhm = 0.35;
  expect(holes(job, 'fact').some(({ path }) => path === 'supply.loopOhm')).toBe(false);
});

test('16.800 m up the slope and 16.420 m by its plan: 2.3 in 100 apart keeps the survey open; 16.500 m does not', () => {
  // a plan width of 16.420 · cos 22.5° = 15.170 m; 16.800 ÷ 16.420 − 1 = 2.31 %; 16.500 ÷ 16.420 − 1 = 0.49 %
  const plane = (slopeLengthM: number) =>
    inSurvey(({ roof }) => {
      Object.assign(roof.planes.west as object, { slopeLengthM, planWidthM: 16.42 * Math.cos((22.5 * Math.PI) / 180) });
    });
  const [hole] = holes(plane(16.8), 'two measures');
  expect(hole).toMatchObject({ step: 'roof.planes.west', rules: ['roof-measures'] });
  expect(hole?.measures?.secondM).toBeCloseTo(16.42, 9);
  expect(hole?.measures?.apart).toBeCloseTo(0.0231, 4);
  expect(holes(plane(16.5), 'two measures')).toEqual([]);
});

test('a fuse of 63 A that only the region brought has not been seen; named with who and when, it has', () => {
  const job = inSurvey((facts) => {
    delete facts.provenance['supply.serviceA'];
  });
  const notSeen = () => holes(job, 'not seen').map(({ path }) => path);
  expect(notSeen()).toContain('supply.serviceA');
  job.facts.provenance['supply.serviceA'] = seen;
  expect(notSeen()).not.toContain('supply.serviceA');
});

test('nobody looked for existing sources, until somebody says there is none', () => {
  const job = inSurvey();
  const lists = () => holes(job, 'list').map(({ path }) => path);
  expect(lists()).toContain('existing');
  job.facts.provenance.existing = { ...seen, note: 'none' };
  expect(lists()).not.toContain('existing');
});

test('a house without a plane cannot close, and the rules that need one are named', () => {
  const job = inSurvey((facts) => {
    facts.roof.planes = {};
  });
  job.choices.rows = {};
  expect(holes(job, 'list').find(({ path }) => path === 'roof.planes')).toMatchObject({
    what: 'The first plane',
    rules: ['roof-measures', 'rafters', 'setbacks'],
  });
});

test('every hole leads to a step of the walk, and an answer there fills it', () => {
  const job = inSurvey((facts) => {
    facts.provenance = {};
  });
  const { holes: all, steps } = surveyStanding(job);
  expect(all.length).toBeGreaterThan(10);
  for (const { step } of all)
    expect(
      steps.some(({ id }) => id === step),
      step,
    ).toBe(true);
  for (const { path, kind } of all) {
    if (kind === 'not seen') expect(factAt(job, path), path).toBeDefined();
    if (kind === 'photo' || kind === 'list' || kind === 'not seen')
      job.facts.provenance[path] = { ...seen, photo: 'photo-1' };
    if (kind === 'fact') job.facts.provenance[path] = { ...seen, notMeasured: 'dark' };
  }
  expect(surveyStanding(job).holes).toEqual([]);
});

test('the region’s usual colours are shown beside the question, and are no answer to it', () => {
  const job = inSurvey(({ board }) => {
    delete board.wiring;
  });
  expect(usualAnswer(job, 'board.wiring')).toBe('iec');
  expect(holes(job, 'fact').find(({ path }) => path === 'board.wiring')?.rules).toEqual(['wiring-colours']);
  expect(usualAnswer(job, 'board.busA')).toBeUndefined();
});

test('a loop of 0.31 Ω read by Nia with nothing named keeps the survey open; with her tester it does not', () => {
  const at = 'supply.loopOhm';
  const read = (more: object) => inSurvey((facts) => Object.assign(facts.provenance, { [at]: { ...seen, ...more } }));
  expect(holes(read({}), 'no instrument')).toMatchObject([
    { step: 'live', path: at, what: 'Loop impedance, line to earth, what it was read with' },
  ]);
  expect(holes(read({ with: ' ' }), 'no instrument')).toHaveLength(1);
  expect(holes(read({ with: 'loop tester 3' }), 'no instrument')).toEqual([]);
  // what was filled in by other means is no reading, and a survey that is closed stays closed
  expect(holes(inSurvey(), 'no instrument')).toEqual([]);
  expect(holes({ ...read({}), state: 'design' }, 'no instrument')).toEqual([]);
});
