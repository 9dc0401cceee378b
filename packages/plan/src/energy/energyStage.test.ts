import { type Job, kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { arrayStage } from '../array/index.ts';
import { roofStage } from '../roof/index.ts';
import { siteStage } from '../site/index.ts';
import { sunStage } from '../sun/index.ts';
import type { TrunksPlan } from '../trunks/types.ts';
import type { Working } from '../working.ts';
import { energyStage } from './index.ts';

/** Trunks as the energy sees them: every unit one volt above the board. */
function plainTrunks(job: Job): TrunksPlan {
  const trunks = Object.entries(job.choices.trunks).map(([id, { lines }]) => ({
    id,
    lines,
    drops: Object.entries(job.choices.units)
      .filter(([, unit]) => unit.trunkId === id)
      .map(([unitId]) => ({ unitId, aboveBoardV: 1 })),
  }));
  return { trunks } as unknown as TrunksPlan;
}

function energyOf(job: Job) {
  const trunks = plainTrunks(job);
  const site = siteStage.run(siteStage.view(job), {}, {});
  const sun = sunStage.run({}, { site }, {});
  const roof = roofStage.run(roofStage.view(job), { sun }, {});
  const array = arrayStage.run(arrayStage.view(job), { roof }, {});
  const plan = { site, sun, roof, array, trunks };
  return { energy: energyStage.run(energyStage.view(job), plan, {}), plan };
}

const { energy, plan } = energyOf(kestrelRise);
const nameOf = (moduleId: string) => plan.array.modules.find(({ id }) => id === moduleId)?.name;
const moduleNamed = (name: string) => energy.modules.find(({ moduleId }) => nameOf(moduleId) === name);

test('hours, months, lines and modules tell the same year', () => {
  const hours = energy.acW.reduce((sum, watts) => sum + watts, 0) / 1000;
  const lines = Object.values(energy.acByLineW).reduce(
    (sum, line) => sum + line.reduce((all, watts) => all + watts, 0),
    0,
  );
  const modules = energy.modules.reduce((sum, { annualKwh }) => sum + annualKwh, 0);
  expect(hours).toBeCloseTo(energy.annualKwh, 6);
  expect(lines / 1000).toBeCloseTo(energy.annualKwh, 6);
  expect(modules).toBeCloseTo(energy.annualKwh, 6);
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const meanDays = energy.meanDayW.reduce(
    (sum, day, m) => sum + (days[m] as number) * day.reduce((a, b) => a + b, 0),
    0,
  );
  expect(meanDays / 1000).toBeCloseTo(energy.annualKwh, 6);
});

test('26 modules of 430 W in Victoria make 1300 to 1700 kWh a kW, the usual figure for Australia (from memory)', () => {
  expect(energy.modules).toHaveLength(26);
  expect(plan.array.stcW).toBe(11180);
  expect(energy.kwhPerKw).toBeGreaterThan(1300);
  expect(energy.kwhPerKw).toBeLessThan(1700);
});

test('each ledger runs from the level to the board: its factors multiply, and its end is the module’s year', () => {
  for (const { ledger, annualKwh, moduleId } of energy.modules) {
    const rated = ledger[2];
    const product = ledger.slice(3).reduce((value, { factor }) => value * (factor ?? Number.NaN), rated?.value ?? 0);
    expect(product, moduleId).toBeCloseTo(annualKwh, 6);
    expect(ledger.at(-1)?.value).toBe(annualKwh);
    // on this plane × 430 W
    expect(rated?.value).toBeCloseTo((ledger[1]?.value ?? 0) * 0.43, 9);
  }
});

test('what near objects take is the factor of their line in the ledger, and a clear module has no such line', () => {
  const lineOf = (name: string) => moduleNamed(name)?.ledger.find(({ what }) => what === 'near objects');
  expect(1 - (lineOf('E1·5')?.factor ?? 0)).toBeCloseTo(moduleNamed('E1·5')?.shadeLoss ?? 0, 12);
  expect(lineOf('W1·3')).toBeUndefined();
});

test('one volt of 230 at full export costs less than 1/230, and more than half of that under real sun', () => {
  const wire = moduleNamed('W1·1')?.ledger.at(-1)?.factor ?? 0;
  expect(1 - wire).toBeLessThan(1 / 230);
  expect(1 - wire).toBeGreaterThan(0.5 / 230);
});

test('the gum in the north-east takes from the east row’s north end and nothing from the west plane', () => {
  // places on the east plane run from the south: E1·5 stands nearest the tree
  expect(moduleNamed('E1·5')?.shadeLoss).toBeGreaterThan(0.01);
  expect(moduleNamed('E1·5')?.shadeLoss).toBeGreaterThan(moduleNamed('E1·1')?.shadeLoss ?? 1);
  expect(moduleNamed('W1·3')?.shadeLoss).toBe(0);
});

test('with the tree felled and nothing on the roof no module loses to near objects, and the loss it made comes back', () => {
  const felled = structuredClone(kestrelRise);
  felled.facts.site.objects = {};
  felled.facts.roof.obstructions = {};
  const without = energyOf(felled).energy;
  expect(without.modules.every(({ shadeLoss }) => shadeLoss === 0)).toBe(true);
  expect(without.annualKwh).toBeGreaterThan(energy.annualKwh);
});

test('a limit the array never reaches costs nothing; half of it costs something; the set limit goes before the network’s', () => {
  const limited = (setVA: number) => {
    const job = structuredClone(kestrelRise);
    job.choices.exportLimitSetVA = setVA;
    return energyOf(job).energy.exportLimitLossAtMostKwh;
  };
  expect(limited(5000)).toBe(0); // nine units of 400 VA are 3600 VA a line
  expect(limited(2000)).toBeGreaterThan(100);
});

test('solar already there makes a limit bite that the array alone never reaches: 5 kVA less 3.68 on L1', () => {
  const job = structuredClone(kestrelRise);
  job.choices.exportLimitSetVA = 5000;
  job.facts.existing = { old: { kind: 'solar', name: 'Old array', ratedA: 16, lines: ['L1'] } };
  expect(energyOf(job).energy.exportLimitLossAtMostKwh).toBeGreaterThan(100);
  job.facts.existing = { charger: { kind: 'car charger', name: 'Charger', ratedA: 16, lines: ['L1'] } };
  expect(energyOf(job).energy.exportLimitLossAtMostKwh).toBe(0);
});

test('units of 300 VA hold back what 400 VA let pass', () => {
  const small = structuredClone(kestrelRise);
  const unit = small.choices.equipment['alder-400'];
  if (unit?.kind !== 'unit') throw new Error('Kestrel Rise has Alder 400');
  unit.ratedVA = 300;
  const held = energyOf(small).energy;
  expect(held.clippedKwh).toBeGreaterThan(10 * energy.clippedKwh);
  expect(Math.max(...held.acW)).toBeLessThanOrEqual(26 * 300);
});

test('the range is the figure within nine in ten of climate and model', () => {
  const half = 1.645 * Math.hypot(plan.sun.climate.annualSd, 0.04);
  expect(energy.rangeKwh[0]).toBeCloseTo(energy.annualKwh * (1 - half), 6);
  expect(energy.working.range).toEqual(energy.rangeKwh);
});

test('a changed cable, breaker or record leaves the year as it was', () => {
  const changed = structuredClone(kestrelRise);
  changed.facts.supply.mains.lengthM = 40;
  const breaker = changed.choices.equipment['breaker-c20'];
  if (breaker?.kind !== 'breaker') throw new Error('Kestrel Rise has a breaker of 20 A');
  breaker.ratedA = 25;
  expect(JSON.stringify(energyStage.view(changed))).toBe(JSON.stringify(energyStage.view(kestrelRise)));
});

test('a longer cable loses more on the wires and leaves every module’s years as they were made', () => {
  // the same sun, roof and array objects, other trunks: what the planner hands on when a cable is changed
  const again = energyStage.run(
    energyStage.view(kestrelRise),
    {
      sun: plan.sun,
      roof: plan.roof,
      array: plan.array,
      trunks: {
        ...plan.trunks,
        trunks: plan.trunks.trunks.map((trunk) => ({
          ...trunk,
          drops: trunk.drops.map((drop) => ({ ...drop, aboveBoardV: 2 })),
        })),
      },
    },
    {},
  );
  const before = energy.modules[0];
  const after = again.modules[0];
  expect(after?.ledger.at(-2)).toEqual(before?.ledger.at(-2));
  // twice the volts, twice the loss
  const lost = (factor: number | undefined) => 1 - (factor ?? 0);
  expect(lost(after?.ledger.at(-1)?.factor)).toBeCloseTo(2 * lost(before?.ledger.at(-1)?.factor), 12);
});

test('the working of a module goes down to the facts it was made of, each with its place in the job', () => {
  const places = (working: Working): string[] => [
    ...(working.at === undefined ? [] : [working.at]),
    ...(working.inputs ?? []).flatMap(places),
  ];
  expect(places(moduleNamed('N1·7')?.working ?? energy.working)).toEqual(
    expect.arrayContaining([
      'facts.site.latitudeDeg',
      'facts.roof.planes.north.facingDeg',
      'choices.equipment.pellucid-430.noctC',
      'choices.equipment.alder-400.efficiency',
    ]),
  );
});
