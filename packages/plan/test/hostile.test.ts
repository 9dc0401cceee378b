import { demoJobs, type Job, parseJob, practiceYard } from '@eaveline/job';
import { expect, test } from 'vitest';
import type { Plan } from '../src/plan.ts';
import { createPlanner, workOut } from '../src/workOut.ts';
import { figureFaults } from './figureFaults.ts';
import { mutateJob, seededChance } from './mutateJob.ts';

type Draft = ReturnType<typeof JSON.parse>;

const jobs: readonly Job[] = [...new Set([...demoJobs, practiceYard])];

/** A job with the first two modules of every row: every stage has its work, and a year of it takes a third of the time. */
function thinned(job: Job): Job {
  const thin = structuredClone(job);
  const { modules, units, trunks } = thin.choices;
  for (const [id, { place }] of Object.entries(modules)) if (place > 2) delete modules[id];
  const used = new Set(Object.values(modules).map(({ unitId }) => unitId));
  for (const id of Object.keys(units)) if (!used.has(id)) delete units[id];
  for (const [id, trunk] of Object.entries(trunks)) {
    const last = Math.max(1, ...Object.values(units).map(({ trunkId, drop }) => (trunkId === id ? drop : 1)));
    trunk.feedDrop = Math.min(trunk.feedDrop, last);
    for (const [jumper, { afterDrop }] of Object.entries(trunk.jumpers))
      if (afterDrop >= last) delete trunk.jumpers[jumper];
  }
  return thin;
}

/** Without a crew no day is drawn, which takes longer than all other stages together. */
const crewless = (job: Job): Job => ({ ...job, choices: { ...job.choices, crew: {} } });

const thin = jobs.map(thinned);
const bare = thin.map(crewless);

const planners = new Map(jobs.map(({ id }) => [id, createPlanner()]));
/** A plan by the planner of the job it was changed from, which redoes only what the change touches. */
const planOf = (job: Job, of: string) => planners.get(of)?.(job) as Plan;

/** A changed job as it would come from its file, and what the reader said of it. */
function opened(job: Job, change: (draft: Draft) => void) {
  const draft: Draft = structuredClone(job);
  change(draft);
  return parseJob(JSON.stringify(draft));
}

test('the walker sees a hole in a figure, in a column and in a text', () => {
  const plan = {
    a: [1, Number.NaN],
    hours: Float64Array.of(0, 1 / 0),
    title: 'Trunk undefined rises NaN V',
    ok: 'null and void',
  };
  expect(figureFaults(plan)).toEqual([
    'plan.a.1 is NaN',
    'plan.hours[1] is Infinity',
    'plan.title reads "Trunk undefined rises NaN V"',
    'plan.ok reads "null and void"',
  ]);
});

test.each(jobs)('$id: no figure is without a value, no text shows a hole', (job) => {
  expect(figureFaults(workOut(job))).toEqual([]);
});

test.each(jobs)('$id: changed anywhere by chance it is refused with a reason or worked out whole', ({ id }) => {
  // forty that open, of about twice as many tried; the same on every machine. Every third has a crew and so a day.
  const chance = seededChance(7);
  const sources = [thin, bare, bare].map((list) => list.find((job) => job.id === id) as Job);
  let worked = 0;
  for (let turn = 0; worked < 40; turn++) {
    expect(turn, 'hardly any opens').toBeLessThan(400);
    const done: string[] = [];
    const { job: changed, remarks } = opened(sources[turn % 3] as Job, (draft) => {
      const times = 1 + Math.floor(chance() * 3);
      for (let n = 0; n < times; n++) done.push(mutateJob(draft, chance));
    });
    const what = `turn ${turn}: ${done.join(' | ')}`;
    expect(figureFaults(remarks, 'remarks'), what).toEqual([]);
    if (changed === undefined) {
      expect(
        remarks.some(({ severity }) => severity === 'stop'),
        what,
      ).toBe(true);
      continue;
    }
    worked++;
    const plan = planOrFail(() => planOf(changed, id), what);
    expect(figureFaults(plan), what).toEqual([]);
    for (const finding of plan.checks.findings.filter(({ state }) => state === 'ask'))
      expect(finding.needs.length, `${what}: ${finding.id}`).toBeGreaterThan(0);
  }
});

function planOrFail(run: () => Plan | undefined, what: string): Plan {
  try {
    return run() as Plan;
  } catch (thrown) {
    throw new Error(`${what}: ${String(thrown)}`, { cause: thrown });
  }
}

/** What a rule meets without the fact, because the thing itself does not ask for it. */
const NOT_NEEDED = /leaves the neutral alone|made without asbestos/;

/** A fact by its path, `*` for every plane, circuit or wall, and the rules that cannot be met without it. */
const NEEDED: readonly (readonly [facts: readonly string[], rules: readonly string[]])[] = [
  [['facts.site.recordLowC'], ['cold-voltage']],
  [['facts.site.recordHighC'], ['hot-voltage']],
  [['facts.site.wind.basicSpeedMS', 'facts.site.wind.region'], ['foot-uplift']],
  [['facts.site.wind.terrain'], ['foot-uplift']],
  [['facts.site.wind.roofHeightM'], ['foot-uplift']],
  [['choices.wind.netUplift'], ['foot-uplift']],
  [['facts.site.wind.exposed'], ['wind-exposed']],
  [['facts.network.exportLimitVAPerLine', 'facts.network.exportLimitVATotal'], ['export-limit']],
  [['facts.network.approvalNumber'], ['network-approval']],
  [['facts.supply.loopOhm', 'facts.supply.declaredLoopOhm'], ['fault-loop']],
  [['facts.supply.prospectiveA'], ['breaking-capacity']],
  [['facts.supply.mains.lengthM'], ['trunk-rise', 'trunk-rise-with-battery']],
  [['facts.supply.mains.conductor'], ['trunk-rise', 'trunk-rise-with-battery']],
  [['facts.supply.measuredV'], ['supply-voltage']],
  [['facts.board.busA'], ['bus']],
  [['facts.board.freeWays'], ['free-ways']],
  [['facts.board.wiring'], ['wiring-colours']],
  [['facts.board.backing', 'facts.site.yearBuilt'], ['board-backing']],
  [['facts.board.surgeDevice'], ['surge']],
  [['facts.board.electrode', 'choices.backup.electrode'], ['island-earthing']],
  [['facts.roof.planes.*.planWidthM'], ['roof-measures']],
  [['facts.roof.planes.*.rafters.firstMm'], ['rafters']],
  [['facts.roof.planes.*.rafters.spacingMm'], ['rafters']],
  [['facts.roof.planes.*.asbestos', 'facts.site.yearBuilt'], ['asbestos']],
  [['facts.loads.circuits.*.residualDevice', 'choices.backup.circuits.*.residualDevice'], ['backup-residual-device']],
  [['facts.loads.circuits.*.neutralTraced'], ['backup-neutral']],
  [['facts.walls.*.habitableBehind', 'choices.batteries.*.barrier'], ['battery-barrier']],
  [['facts.walls.*.combustible', 'choices.batteries.*.barrier'], ['battery-barrier']],
];

test.each(bare)('$id: without the fact a rule needs, the rule is not met', (job) => {
  for (const [facts, rules] of NEEDED) {
    const { job: without } = opened(job, (draft) => {
      for (const path of facts) takeAway(draft, path.split('.'));
    });
    const what = `without ${facts.join(' and ')}`;
    if (without === undefined) throw new Error(`${what} it does not open`);
    const met = planOf(without, job.id).checks.findings.filter(
      ({ rule, state, title }) => rules.includes(rule) && state === 'meets' && !NOT_NEEDED.test(title),
    );
    expect(
      met.map(({ id, title }) => `${id}: ${title}`),
      what,
    ).toEqual([]);
  }
});

test('every such rule is asked somewhere, so that the test above cannot pass for want of things to judge', () => {
  const asked = new Set(bare.flatMap((job) => planOf(job, job.id).checks.findings.map(({ rule }) => rule)));
  expect(NEEDED.flatMap(([, rules]) => rules).filter((rule) => !asked.has(rule))).toEqual([]);
});

function takeAway(owner: Draft, [step, ...rest]: readonly string[]): void {
  if (typeof owner !== 'object' || owner === null || step === undefined) return;
  for (const key of step === '*' ? Object.keys(owner) : [step]) {
    if (rest.length === 0) delete owner[key];
    else takeAway(owner[key], rest);
  }
}

/** Whole parts of a job that may not be there yet. */
const BARE: readonly (readonly [string, (draft: Draft) => void])[] = [
  ['a trunk of sixty units in one row, far past the rafters', sixtyOnOne],
  [
    'no planes, so no array',
    (job) =>
      Object.assign(job.choices, { rows: {}, modules: {}, units: {}, trunks: {}, backup: undefined }, noPlanes(job)),
  ],
  ['no modules', (job) => Object.assign(job.choices, { modules: {} })],
  [
    'no units and no trunks',
    (job) => Object.assign(job.choices, { modules: {}, units: {}, trunks: {}, backup: undefined }),
  ],
  ['no battery', (job) => Object.assign(job.choices, { batteries: {} })],
  ['no backup', (job) => delete job.choices.backup],
  ['no mounting', (job) => delete job.choices.mounting],
  ['no crew', (job) => Object.assign(job.choices, { crew: {} })],
  ['no loads', (job) => Object.assign(job.facts, { loads: { circuits: {} } }, noBackedCircuits(job))],
  ['a board nobody opened', (job) => Object.assign(job.facts, { board: {} })],
  ['no rafters anywhere', (job) => eachPlane(job, { rafters: {} })],
  ['flat', (job) => eachPlane(job, { pitchDeg: 0 })],
  ['as steep as it may be', (job) => eachPlane(job, { pitchDeg: 75 })],
  ['planes that are triangles', (job) => eachPlane(job, { ridgeFromM: 2, ridgeToM: 2 })],
  ['a plane of no size to speak of', (job) => eachPlane(job, { eaveLengthM: 1e-6, slopeLengthM: 1e-6 })],
  ['the north pole', (job) => at(job, 90, 0)],
  ['the south pole', (job) => at(job, -90, 180)],
  ['the polar circle', (job) => at(job, 66.6, -180)],
  ['nought and nought', (job) => at(job, 0, 0)],
  ['the longitude with its sign lost', (job) => at(job, job.facts.site.latitudeDeg, -job.facts.site.longitudeDeg)],
  ['the latitude with its sign lost', (job) => at(job, -job.facts.site.latitudeDeg, job.facts.site.longitudeDeg)],
];

function sixtyOnOne({ choices }: Draft): void {
  const rowId = Object.keys(choices.rows)[0] as string;
  const trunkId = Object.keys(choices.trunks)[0] as string;
  const unit = (Object.values(choices.units) as Draft[]).find((one) => one.trunkId === trunkId);
  for (let n = 1; n <= 60; n++) {
    choices.units[`more-${n}`] = { ...unit, drop: n + 40 };
    choices.modules[`more-${n}`] = { rowId, place: n + 20, unitId: `more-${n}` };
  }
}

const noPlanes = (job: Draft) => void Object.assign(job.facts.roof, { planes: {}, obstructions: {} });
const noBackedCircuits = (job: Draft) =>
  void (job.choices.backup && Object.assign(job.choices.backup, { circuits: {} }));
const at = (job: Draft, latitudeDeg: number, longitudeDeg: number) =>
  Object.assign(job.facts.site, { latitudeDeg, longitudeDeg });
const eachPlane = (job: Draft, change: object) => {
  for (const plane of Object.values(job.facts.roof.planes)) Object.assign(plane as object, change);
};

test.each(bare)('$id: whatever is not there yet, it is worked out whole', (job) => {
  for (const [what, change] of BARE) {
    // with its crew where the day is what is looked at
    const from = job.id === 'kestrel-rise' ? (thin[0] as Job) : job;
    const { job: changed, remarks } = opened(from, change);
    expect(
      remarks.filter(({ severity }) => severity === 'stop'),
      what,
    ).toEqual([]);
    const plan = planOrFail(() => planOf(changed as Job, job.id), what);
    expect(figureFaults(plan), what).toEqual([]);
  }
});
