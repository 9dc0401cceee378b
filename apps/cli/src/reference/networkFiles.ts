import { type CoupledFeeder, coupledFeeder, Refusal } from '@eaveline/physics';
import { camelKey, camelKeys } from '../camelKeys.ts';
import { asked, idOf, isJson, type Json, type ReferenceShape, rowsIn, without } from './shape.ts';
import type { Tally } from './tally.ts';
import type { Tolerance } from './tolerance.ts';

/** `1e-6 V, 1e-6 A, 1e-4 W asked of a tool` as tolerances by unit. */
function byUnit(words: unknown): (field: string) => Tolerance {
  const of = (unit: string) => Number(new RegExp(`([\\d.e-]+) ${unit}\\b`).exec(String(words))?.[1] ?? 1e-6);
  const [volts, amperes, watts] = [of('V'), of('A'), of('W')];
  return (field) => {
    if (/losses|_p_w|_q_var/.test(field)) return { sameAbs: watts };
    return { sameAbs: /current/.test(field) ? amperes : volts };
  };
}

function tryCase(row: Json, id: string, toleranceOf: (field: string) => Tolerance, tally: Tally): void {
  const result = asked('power-flow', without(row, ['expected']));
  const expected = isJson(row.expected) ? row.expected : {};
  // through the outer object, so that names of nodes stay as they are
  const wanted = camelKeys(expected) as Json;
  for (const field of Object.keys(expected)) {
    const closedForm = field === 'closed_form_terminal_v';
    const quantity = `power-flow ${camelKey(field)}`;
    if (typeof result === 'string') tally.noAnswer(quantity, id, result);
    else {
      const got = closedForm ? (result.terminals as readonly Json[])[0]?.terminalV : result[camelKey(field)];
      tally.group(quantity, id, got, wanted[camelKey(field)], toleranceOf(field));
    }
  }
}

/** Own low-voltage networks. */
export const loadFlowShape: ReferenceShape = {
  about: 'power-flow',
  knows: ({ own_cases }) => isJson(own_cases) && rowsIn(own_cases.cases).some((row) => Array.isArray(row.segments)),
  run({ document }, tally) {
    const { cases, tolerance } = document.own_cases as Json;
    rowsIn(cases).forEach((row, at) => void tryCase(row, idOf(row, at), byUnit(tolerance), tally));
  },
};

type Complex = readonly [number, number];
const RAD = Math.PI / 180;
const polar = (size: number, deg: number): Complex => [size * Math.cos(deg * RAD), size * Math.sin(deg * RAD)];
const asPolar = ([re, im]: Complex): Complex => [Math.hypot(re, im), Math.atan2(im, re) / RAD];

/** The published feeder: line, star–star transformer, line, load at its end. */
function solveFeeder(data: Json, load: readonly Complex[]): CoupledFeeder | string {
  const transformer = data.transformer as Json;
  const [highV, lowV] = [Number(data.source_line_v), Number(data.low_v)];
  const baseOhm = lowV ** 2 / (Number(transformer.kva) * 1000);
  const perMile = data.line_impedance_ohm_per_mile_r_x as Complex[][];
  const line = (feet: number) => ({
    kind: 'line' as const,
    zOhm: perMile.map((row) =>
      row.map(([r, x]): Complex => [(r * feet) / Number(data.feet_per_mile), (x * feet) / Number(data.feet_per_mile)]),
    ),
  });
  const zLowOhm: Complex = [Number(transformer.r_pu) * baseOhm, Number(transformer.x_pu) * baseOhm];
  try {
    return coupledFeeder({
      sourceV: (data.source_angles_deg as number[]).map((deg) => polar(highV / Math.sqrt(3), deg)),
      stages: [
        line(Number(data.line_1_ft)),
        { kind: 'transformer', ratio: highV / lowV, zLowOhm },
        line(Number(data.line_2_ft)),
      ],
      loadVa: load.map(([kw, pf]): Complex => [kw * 1000, kw * 1000 * Math.tan(Math.acos(pf))]),
    });
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    throw error;
  }
}

/** Where a name of the example stands in the answer: V2 after the first stage, I12 into it. */
function phasorsNamed(name: string, feeder: CoupledFeeder): readonly Complex[] | undefined {
  const stage = { I12: 0, I34: 2 }[name];
  if (stage !== undefined) return feeder.stageA[stage];
  const node = /^V(\d)$/.exec(name)?.[1];
  return node === undefined ? undefined : feeder.nodeV[Number(node) - 1];
}

interface Rounding {
  readonly size: number;
  readonly deg: number;
}

function tryPhasors(
  quantity: string,
  id: string,
  wanted: unknown,
  feeder: CoupledFeeder | string,
  r: Rounding,
  tally: Tally,
): void {
  if (!isJson(wanted)) return;
  for (const [name, phases] of Object.entries(wanted)) {
    const row = `${id} ${name}`;
    const found = typeof feeder === 'string' ? undefined : phasorsNamed(name, feeder)?.map(asPolar);
    if (found === undefined) {
      tally.noAnswer(`${quantity} size`, row, typeof feeder === 'string' ? feeder : `no ${name} in the answer`);
      continue;
    }
    const want = phases as Complex[];
    const part = (of: readonly Complex[], k: 0 | 1) => of.map((each) => each[k]);
    tally.group(`${quantity} size`, row, part(found, 0), part(want, 0), { sameAbs: r.size });
    tally.group(`${quantity} angle`, row, part(found, 1), part(want, 1), { sameAbs: r.deg });
  }
}

/** `published figures are rounded: 1 V and 0.1 degree` */
function roundingIn(words: unknown): Rounding {
  const size = /([\d.]+) V\b/.exec(String(words))?.[1];
  const deg = /([\d.]+) degree/.exec(String(words))?.[1];
  return { size: Number(size ?? 1), deg: Number(deg ?? 0.1) };
}

/** The 4-node test feeder of the IEEE, with mutual impedances. */
export const feederShape: ReferenceShape = {
  about: '4-node feeder',
  knows: ({ ieee_4_node_feeder: feeder }) => isJson(feeder) && isJson(feeder.data) && rowsIn(feeder.cases).length > 0,
  run({ name, document }, tally) {
    const { data, cases, tolerance } = document.ieee_4_node_feeder as Json;
    rowsIn(cases).forEach((row, at) => {
      const id = idOf(row, at);
      const feeder = solveFeeder(data as Json, row.load_kw_and_lagging_pf as Complex[]);
      tryPhasors('feeder published voltage', id, row.published_voltage_v_deg, feeder, roundingIn(tolerance), tally);
      // printed to six decimals by three methods that agree
      tryPhasors('feeder own solution', id, row.own_solution, feeder, { size: 1e-4, deg: 1e-4 }, tally);
      if (row.published_current_a_deg_from_memory !== undefined)
        tally.skip('feeder published current', name, 'from memory, and the file states no tolerance');
    });
  },
};
