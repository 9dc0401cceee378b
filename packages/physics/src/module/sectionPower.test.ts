import { expect, test } from 'vitest';
import { seededRandom } from '../series/seededRandom.ts';
import { type ModuleModel, moduleAt } from './diode.ts';
import { moduleCurrentAt } from './moduleCurrent.ts';
import { moduleFit } from './moduleFit.ts';
import { moduleMaxPower } from './moduleMaxPower.ts';
import { BYPASS_V, sectionBest, sectionHills, sectionsAt } from './sectionPower.ts';

/** The invented sheet of the demo jobs: 430 W, 54 cells in series. */
const { model } = moduleFit({
  vOcV: 38.9,
  iScA: 13.9,
  vMpV: 32.6,
  iMpA: 13.2,
  pMpW: 430,
  alphaIscAPerK: 0.00046 * 13.9,
  betaVocVPerK: -0.0025 * 38.9,
  cellsInSeries: 54,
});

/** A third of a module as a module of its own. */
const third = (whole: ModuleModel): ModuleModel => ({
  ...whole,
  idealityV: whole.idealityV / 3,
  seriesOhm: whole.seriesOhm / 3,
  shuntSiemens: whole.shuntSiemens * 3,
});

/** Voltage of a section that carries a current, by halving between its curve's ends; bypassed where it would be lower. */
function sectionVolts(section: ModuleModel, light: number, cellC: number, currentA: number): number {
  const state = moduleAt(section, light, cellC);
  let [low, high] = [-BYPASS_V, 20];
  if (moduleCurrentAt(state, low) < currentA) return -BYPASS_V;
  for (let turn = 0; turn < 60; turn++) {
    const middle = (low + high) / 2;
    if (moduleCurrentAt(state, middle) > currentA) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Best power of the summed current–voltage curve, looked for at so many currents. */
function bestOfCurve(whole: ModuleModel, light: readonly number[], cellC: number, points: number): number {
  const most = Math.max(...light.map((one) => moduleCurrentAt(moduleAt(whole, one, cellC), 0)));
  let best = 0;
  for (let n = 1; n < points; n++) {
    const current = (most * n) / points;
    const volts = light.reduce((sum, one) => sum + sectionVolts(third(whole), one, cellC, current), 0);
    best = Math.max(best, current * volts);
  }
  return best;
}

test('alike in all three sections the module is the module', () => {
  for (const [light, cellC] of [
    [1000, 25],
    [400, 60],
    [20, -5],
  ] as const) {
    const whole = moduleMaxPower(moduleAt(model, light, cellC));
    const best = sectionBest(sectionsAt(model, [light, light, light], cellC), 0, 100);
    expect(best.powerW).toBeCloseTo(whole.powerW, 6);
    expect(best.voltageV).toBeCloseTo(whole.voltageV, 3);
  }
});

test('one of three sections shaded: the summed curve, point by point, has no higher power', () => {
  const light = [800, 800, 150] as const;
  const best = sectionBest(sectionsAt(model, [...light], 65), 0, 100);
  const curve = bestOfCurve(model, light, 65, 6000);
  // the search stands at most half a step of 1/6000 beside the top, where the curve is flat: under 1 in 10⁵
  expect(Math.abs(best.powerW / curve - 1)).toBeLessThan(1e-5);
  // in whichever order the sections lie
  expect(sectionBest(sectionsAt(model, [150, 800, 800], 65), 0, 100).powerW).toBe(best.powerW);
});

test('three hundred random shadings against the summed curve: none of the hills is missed', () => {
  const random = seededRandom(3).uniform;
  for (let n = 0; n < 300; n++) {
    const light = [0, 0, 0].map(() => 1100 * random() ** 2) as [number, number, number];
    const cellC = -10 + 80 * random();
    const best = sectionBest(sectionsAt(model, light, cellC), 0, 100).powerW;
    const curve = bestOfCurve(model, light, cellC, 400);
    expect(best).toBeGreaterThan(curve * (1 - 1e-9)); // the top is never below a point of the curve
    expect(best).toBeLessThan(curve * 1.002 + 0.01);
  }
});

test('a unit that cannot go below its window holds the edge of it, as the summed curve has it there', () => {
  // two sections at work stand near 19 V, below a window that begins at 20.5 V
  const state = sectionsAt(model, [800, 800, 150], 65);
  const [, two] = sectionHills(state);
  expect(two.voltageV).toBeLessThan(20);
  const free = two.powerW;
  const held = sectionBest(sectionsAt(model, [800, 800, 150], 65), 20.5, 60);
  expect(held.voltageV).toBe(20.5);
  expect(held.powerW).toBeLessThan(free);
  const curveThere = (() => {
    let best = 0;
    for (let n = 1; n < 4000; n++) {
      const current = (15 * n) / 4000;
      const volts = [800, 800, 150].reduce((sum, one) => sum + sectionVolts(third(model), one, 65, current), 0);
      if (volts >= 20.5) best = Math.max(best, 20.5 * current);
    }
    return best;
  })();
  // the curve's steps of 15/4000 A at 20.5 V
  expect(Math.abs(held.powerW - curveThere)).toBeLessThan(0.1);
});

test('the worked case: 303 W unshaded; one section at 150 W/m²: 197 W at 18.5 V, 181 W held at 20 V, 65 W on the wrong hill', () => {
  // figures of an independent prototype of the same equations; printed to a watt and a tenth of a volt
  expect(sectionBest(sectionsAt(model, [800, 800, 800], 65), 0, 100).powerW).toBeCloseTo(303, -0.4);
  const [, two, three] = sectionHills(sectionsAt(model, [800, 800, 150], 65));
  expect(Math.abs(two.powerW - 197)).toBeLessThan(0.6);
  expect(Math.abs(two.voltageV - 18.5)).toBeLessThan(0.06);
  expect(Math.abs(three.powerW - 65)).toBeLessThan(0.6);
  expect(Math.abs(sectionBest(sectionsAt(model, [800, 800, 150], 65), 20, 60).powerW - 181)).toBeLessThan(0.6);
});

test('in the dark there is no hill, and with one section lit there is one', () => {
  expect(sectionBest(sectionsAt(model, [0, 0, 0], 20), 0, 100).powerW).toBe(0);
  const [one, two, three] = sectionHills(sectionsAt(model, [600, 0, 0], 20));
  expect(one.powerW).toBeGreaterThan(0);
  expect([two.powerW, three.powerW]).toEqual([0, 0]);
});
