import { blankSectionState, sectionBest, sectionsAt } from './sectionPower.ts';

/** As fitted to an invented sheet of 430 W, 54 cells in series. */
const model = {
  photoCurrentA: 13.91,
  saturationCurrentA: 1.6e-11,
  seriesOhm: 0.2,
  shuntSiemens: 1 / 400,
  idealityV: 1.42,
  alphaIscAPerK: 0.0064,
};
const room = blankSectionState();
const light = new Float64Array(3);
const best = { powerW: 0, voltageV: 0 };
const POINTS = 10_000;

export const benches = [
  {
    name: `physics/sectionBest: ${POINTS} points with one of three sections in shade`,
    run: () => {
      let sum = 0;
      for (let k = 0; k < POINTS; k++) {
        light[0] = light[1] = 200 + (k % 700);
        light[2] = 60 + (k % 130);
        sum += sectionBest(sectionsAt(model, light, 20 + (k % 45), room), 0, 100, best).powerW;
      }
      return sum;
    },
    check: (sum: number) => sum > 0 && Number.isFinite(sum),
    budget: { ms: 20, why: 'two microseconds a point: some 3 % of a year’s steps are shaded so' },
  },
];
