import { demoJobs, type Job, kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { withoutClockAndDice } from '../test/withoutClockAndDice.ts';
import { stageNames } from './stageNames.ts';
import { createPlanner, workOut } from './workOut.ts';

const changed = (change: (job: Job) => void): Job => {
  const job = structuredClone(kestrelRise);
  change(job);
  return job;
};

test('every demo job is worked out through all thirteen stages', () => {
  for (const job of demoJobs) {
    const plan = workOut(job);
    for (const name of stageNames) expect(plan[name], `${job.id} ${name}`).toBeDefined();
    expect(Object.keys(plan)).toHaveLength(stageNames.length + 3); // its id, its name, whether it is invented
    expect(plan.checks.findings.length).toBeGreaterThan(10);
  }
});

test('rows of hundreds of modules, lying over each other, are worked out and each overlap found', {
  timeout: 60_000,
}, () => {
  const job = changed((one) => {
    const modules = one.choices.modules as Record<string, Job['choices']['modules'][string]>;
    const units = one.choices.units as Record<string, Job['choices']['units'][string]>;
    const trunks = one.choices.trunks as Record<string, Job['choices']['trunks'][string]>;
    const rows = one.choices.rows as Record<string, Job['choices']['rows'][string]>;
    const [row] = Object.values(rows);
    const [trunk] = Object.values(trunks);
    const [unit] = Object.values(units);
    if (row === undefined || trunk === undefined || unit === undefined) throw new Error('Kestrel Rise has all three');
    for (let n = 0; n < 400; n += 1) {
      const [rowId, trunkId] = [`row-${Math.floor(n / 100)}`, `trunk-${Math.floor(n / 9)}`];
      rows[rowId] ??= row;
      trunks[trunkId] ??= { ...trunk, jumpers: {}, feedDrop: 1 };
      units[`more-${n}`] = { sheet: unit.sheet, trunkId, drop: (n % 9) + 1 };
      modules[`more-${n}`] = { rowId, place: (n % 100) + 1, unitId: `more-${n}`, input: 1 };
    }
  });
  const plan = workOut(job);
  expect(plan.array.modules).toHaveLength(426);
  expect(plan.checks.findings.filter(({ rule, state }) => rule === 'module-overlap' && state === 'fails')).not.toEqual(
    [],
  );
});

test('workOut consults neither clock nor dice', () => {
  withoutClockAndDice(() => {
    for (const job of demoJobs) workOut(job);
  });
});

const FAULTS: readonly (readonly [string, () => unknown])[] = [
  ['new Date()', () => String(new Date())],
  ['Date()', () => Date()],
  ['Date.now', () => Date.now()],
  ['performance.now', () => performance.now()],
  ['a format of no instant', () => new Intl.DateTimeFormat('en-GB').formatToParts()],
  ['Math.random', () => Math.random()],
  ['crypto.getRandomValues', () => crypto.getRandomValues(new Uint8Array(1))],
  ['crypto.randomUUID', () => crypto.randomUUID()],
];

test.each(FAULTS)(
  '%s planted where workOut reads the record low is caught, and only while it is watched',
  (_, fault) => {
    const planted = structuredClone(kestrelRise);
    Object.defineProperty(planted.facts.site, 'recordLowC', {
      enumerable: true,
      get: () => {
        fault();
        return -4;
      },
    });
    expect(() => withoutClockAndDice(() => workOut(planted))).toThrow('is not an input of a job');
    expect(workOut(planted).checks.findings.length).toBeGreaterThan(10);
  },
);

test('the same job gives the same plan', () => {
  expect(workOut(kestrelRise)).toEqual(workOut(structuredClone(kestrelRise)));
});

test('the job is never written to', () => {
  const before = JSON.stringify(kestrelRise);
  workOut(kestrelRise);
  expect(JSON.stringify(kestrelRise)).toBe(before);
});

test('a changed cable length redoes what hangs on it and nothing else', () => {
  const planner = createPlanner();
  const first = planner(kestrelRise);
  expect(planner.redone()).toEqual(stageNames);
  const second = planner(
    changed((job) => {
      const trunk = job.choices.trunks.a;
      if (trunk) trunk.homeRun.lengthM += 1;
    }),
  );
  expect(planner.redone()).toContain('trunks');
  expect(planner.redone()).not.toContain('sun');
  expect(planner.redone()).not.toContain('day');
  expect(second.roof).toBe(first.roof);
  expect(second.trunks.trunks[0]?.rise.totalV).toBeGreaterThan(first.trunks.trunks[0]?.rise.totalV ?? Number.NaN);
});

test('a planner with a memory answers as one without', () => {
  const planner = createPlanner();
  for (const job of demoJobs) planner(job);
  const job = changed((draft) => {
    draft.facts.site.recordLowC = -9;
  });
  expect(planner(job)).toEqual(workOut(job));
  expect(planner(kestrelRise)).toEqual(workOut(kestrelRise));
});

test('each stage is heard of as it is done, in the order of the road, with the part the plan then holds', () => {
  const heard: unknown[] = [];
  const plan = workOut(kestrelRise, {}, (name, part, done, of) => heard.push([name, part, done, of]));
  expect(heard).toEqual(stageNames.map((name, i) => [name, plan[name], i + 1, 13]));
});

test('a walk that is left half way is taken up where it was, for what has not changed meanwhile', () => {
  const planner = createPlanner();
  const left = planner.walk(kestrelRise);
  // thirteen stages from nothing: halting before the fifth, trunks, leaves four that stand
  for (const stage of ['site', 'sun', 'roof', 'array', 'trunks'])
    expect(left.next().value).toMatchObject({ stage, of: 13 });
  expect(planner.redone()).toEqual(['site', 'sun', 'roof', 'array']);

  const longer = changed((job) => {
    const trunk = job.choices.trunks.a;
    if (trunk) trunk.homeRun.lengthM += 1;
  });
  expect(planner(longer)).toEqual(workOut(longer));
  expect(planner.redone()).toEqual(stageNames.slice(4));
});

test('stages somebody waits for come first, on all that they stand on; the plan is the same', () => {
  const planner = createPlanner();
  const order: string[] = [];
  const walk = planner.walk(kestrelRise, {}, (stage) => order.push(stage), ['checks']);
  let step = walk.next();
  while (!step.done) step = walk.next();
  // by the road of the house the year comes before the checks, which do not stand on it; so do kit, day and tests
  expect(order.slice(0, 9)).toEqual(stageNames.filter((name) => !['energy', 'kit', 'day', 'tests'].includes(name)));
  expect(order.slice(9)).toEqual(['energy', 'kit', 'day', 'tests']);
  expect(JSON.stringify(step.value)).toBe(JSON.stringify(workOut(kestrelRise)));
});

test('after a stage that fell over the planner answers the next job as a new one would', () => {
  const planner = createPlanner();
  const job = changed((draft) => Object.assign(draft.choices, { trunks: undefined }));
  expect(() => planner(job)).toThrow();
  const before = planner.redone();
  expect(before).not.toEqual(stageNames);
  expect(planner(kestrelRise)).toEqual(workOut(kestrelRise));
});

test('fields the plan does not know change nothing', () => {
  const job = changed((draft) => {
    Object.assign(draft.facts.site, { colourOfTheDoor: 'green' });
  });
  expect(workOut(job).checks.tally).toEqual(workOut(kestrelRise).checks.tally);
});
