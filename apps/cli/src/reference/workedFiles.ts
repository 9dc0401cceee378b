import { dealtInTurn, iecOhmPerKm20c, largestRatingA, resistanceAtTemperature } from '@eaveline/physics';
import { camelKeys } from '../camelKeys.ts';
import { constantPowerTrunk } from './constantPowerTrunk.ts';
import { ask, isJson, type Json, NoAnswer, type ReferenceShape, without } from './shape.ts';
import type { Tolerance } from './tolerance.ts';

/** What an example comes to, under the names of its `expected`. */
type Worked = (inputs: Json, example: Json) => Json;

const rOhmPerKm = (cable: Json): number => {
  const at20 = {
    standard: 'IEC 60228',
    class: cable.class as 2,
    material: 'copper',
    sizeMm2: Number(cable.size_mm2),
  } as const;
  return resistanceAtTemperature(
    iecOhmPerKm20c(at20),
    20,
    Number(cable.temperature_c ?? cable.conductor_temperature_c),
  );
};

/** Rise from the point of supply: mains, home run and the longest arm, and the same at constant power. */
function branchRise(inputs: Json): Json {
  const { trunk, home_run: homeRun, consumer_mains: mains } = inputs;
  if (!isJson(trunk) || !isJson(homeRun) || !isJson(mains)) throw new NoAnswer('trunk, home run or mains are missing');
  const arms = inputs.module_inverters_per_arm as number[];
  const row = {
    module_inverters: arms,
    power_each_w: inputs.rated_va,
    nominal_v: inputs.nominal_v,
    home_run_m: homeRun.length_m,
    home_run_r_ohm_per_km: rOhmPerKm(homeRun),
    first_drop_m: trunk.first_drop_m,
    pitch_m: trunk.pitch_m,
    trunk_r_ohm_per_km: rOhmPerKm(trunk),
  };
  const rise = ask('voltage-change', { kind: 'distributed', ...row });
  const branchA = Number(rise.currentEachA) * arms.reduce((sum, n) => sum + n, 0);
  const mainsRun = { lengthM: Number(mains.length_m), rOhmPerKm: rOhmPerKm(mains) };
  const feed = ask('voltage-change', {
    kind: 'two-wire',
    current_a: branchA,
    length_m: mainsRun.lengthM,
    r_ohm_per_km: mainsRun.rOhmPerKm,
    nominal_v: inputs.nominal_v,
  });
  const flow = ask('power-flow', constantPowerTrunk(row, mainsRun));
  const totalV = Number(feed.volts) + Number(rise.totalRiseV);
  const percent = (100 * totalV) / Number(inputs.nominal_v);
  return {
    current_each_a: rise.currentEachA,
    branch_current_a: branchA,
    mains_v: feed.volts,
    home_run_v: rise.homeRunV,
    trunk_v: rise.trunkV,
    total_v: totalV,
    total_percent: percent,
    exact_constant_power_percent: (flow.highestModuleInverter as Json).risePercentOfSourceV,
    pass: percent <= Number(inputs.limit_percent),
  };
}

function capacityAndBreaker(inputs: Json): Json {
  const { tabulatedA, capacityA } = ask('cable-capacity', {
    standard: 'IEC 60364-5-52',
    conductor: 'copper',
    ...inputs,
  });
  return { table_a: tabulatedA, iz_a: capacityA, largest_breaker_a: largestRatingA('IEC 60898', Number(capacityA)) };
}

function busbarOptions(inputs: Json): Json {
  const branches = Object.entries(inputs).find(([key]) => key.startsWith('branches'))?.[1];
  const currentA = (branches as [number, number][]).reduce((sum, [units, each]) => sum + units * each, 0);
  const row = { busbar_a: inputs.busbar_a, main_breaker_a: inputs.main_a, inverter_output_current_a: currentA };
  const sum = ask('bus-rating', { option: 'sum', ...row });
  const ends = ask('bus-rating', { option: '120 percent opposite ends', ...row });
  return {
    inverter_current_a: currentA,
    '125_percent_a': Number(sum.comparedA) - Number(inputs.main_a),
    option_1: sum.allowed,
    option_2: ends.allowed,
    largest_inverter_current_option_2_a: ends.largestInverterCurrentA,
  };
}

function loopAndEarth(inputs: Json): Json {
  const perM = Number(inputs.line_mohm_per_m) + Number(inputs.protective_mohm_per_m);
  const row = {
    standard: 'BS 7671',
    r1_plus_r2_mohm_per_m_20c: perM,
    temperature_factor: inputs.hot_factor,
    u0_v: inputs.u0_v,
  };
  const { breaker, ze_ohm, length_m } = inputs;
  const loop = ask('fault-loop', { ...row, breaker, ze_ohm, length_m });
  const earth = ask('adiabatic', {
    fault_current_a: loop.faultCurrentA,
    time_s: inputs.disconnection_time_s,
    k: inputs.k,
  });
  return {
    r1_plus_r2_cold_ohm: loop.r1PlusR2ColdOhm,
    zs_cold_ohm: loop.zsColdOhm,
    zs_hot_ohm: loop.zsOhm,
    table_max_ohm: loop.tableMaxOhm,
    pass: loop.pass,
    fault_current_a: loop.faultCurrentA,
    minimum_protective_mm2: earth.minimumMm2,
  };
}

/** The limit stands in the name of the rules: `5 kVA between phases`. */
function balanceInTurn(inputs: Json, { rules }: Json): Json {
  const limit_va = 1000 * Number(/([\d.]+) kVA/.exec(String(rules))?.[1]);
  const units = dealtInTurn(Number(inputs.module_inverters));
  const found = ask('phase-balance', {
    module_inverters_on_a_b_c: units,
    rating_va_each: inputs.rating_va_each,
    phase_v: inputs.phase_v,
    limit_va,
  });
  return {
    phase_va: found.phaseVa,
    largest_difference_va: found.largestDifferenceVa,
    within_limit: found.allowed,
    phase_current_a: found.phaseCurrentA,
    neutral_current_a: found.neutralCurrentA,
  };
}

function railsFromStock(inputs: Json): Json {
  const demand = Object.entries(inputs).find(([key]) => key.startsWith('demand'))?.[1] as [number, number][];
  const sizes = demand.flatMap(([length, pieces]) => new Array<number>(pieces).fill(length));
  const { count, lowerBound } = ask('cut-stock', { bin_capacity: inputs.stock_mm, sizes });
  const waste = Number(count) * Number(inputs.stock_mm) - sizes.reduce((sum, size) => sum + size, 0);
  return { fewest_lengths: count, sum_bound: lowerBound, waste_mm: waste };
}

/** Known by the inputs an example has; the first that fits. */
const BY_INPUTS: readonly (readonly [keys: readonly string[], work: Worked])[] = [
  [['breaker_a', 'limit_percent', 'method'], (i) => ask('smallest-cable', without(i, ['conductor']))],
  [
    ['rated_va', 'limit_percent', 'size_mm2'],
    (i) => ask('voltage-change', { kind: 'longest-route', ...i, r_ohm_per_km: rOhmPerKm(i) }),
  ],
  [['module_inverters_per_arm', 'consumer_mains'], branchRise],
  [['awg', 'one_way_ft'], (i) => ask('nec-branch', { ...i, r_ohm_per_kft: i.r_ohm_per_kft_pvc_conduit })],
  [['insulation', 'method', 'size_mm2'], capacityAndBreaker],
  [['busbar_a', 'main_a'], busbarOptions],
  [
    ['voc_stc_v', 'lowest_ambient_c'],
    (i) => {
      const found = ask('cold-voltage', { ...i, lowest_temperature_c: i.lowest_ambient_c });
      return { factor: found.factor, volts: found.maxVoltageV, allowed: found.withinInverterLimit };
    },
  ],
  [['ze_ohm', 'line_mohm_per_m', 'k'], loopAndEarth],
  [['allocation', 'rating_va_each'], balanceInTurn],
  [['region', 'terminal_v'], (i) => ask('response-curve', i)],
  [['stock_mm'], railsFromStock],
  [
    ['mv_per_a_m', 'length_m'],
    (i) => {
      const found = ask('voltage-change', { kind: 'millivolt', ...i });
      return { ...found, below_5_percent: Number(found.percent) < 5 };
    },
  ],
];

/** The tolerance an example states in words. */
function toleranceInWords(words: unknown): Tolerance {
  const text = String(words ?? '');
  const relative = /relative ([\d.e-]+)/.exec(text)?.[1];
  const absolute = /([\d.e-]+) absolute/.exec(text)?.[1];
  if (absolute !== undefined) return { sameAbs: Number(absolute) };
  // `exact` is for counts; an example that states nothing else prints its figures to four digits
  return { sameRel: relative !== undefined ? Number(relative) : text === 'exact' ? 1e-9 : 1e-4 };
}

function answerOf(work: Worked, inputs: Json, example: Json): Json | string {
  try {
    return camelKeys(work(inputs, example)) as Json;
  } catch (error) {
    if (error instanceof NoAnswer) return error.message;
    throw error;
  }
}

/** One small complete example a file. */
export const workedShape: ReferenceShape = {
  about: 'worked example',
  knows: ({ id, inputs, expected }) => typeof id === 'string' && isJson(inputs) && isJson(expected),
  run({ name, document }, tally) {
    const { inputs, expected } = document as { inputs: Json; expected: Json };
    const id = String(document.id);
    const found = BY_INPUTS.find(([keys]) => keys.every((key) => key in inputs));
    if (found === undefined) {
      tally.skip(`worked example: ${String(document.title ?? id)}`, name, 'not yet worked out');
      return;
    }
    const result = answerOf(found[1], inputs, document);
    const wanted = camelKeys(expected) as Json;
    for (const [field, want] of Object.entries(wanted)) {
      const quantity = `worked ${id}`;
      if (typeof result === 'string') tally.noAnswer(quantity, `${id} ${field}`, result);
      else if (result[field] === undefined) tally.skip(`worked ${id} ${field}`, name, 'not a result of ours');
      else tally.group(quantity, `${id} ${field}`, result[field], want, toleranceInWords(document.tolerance));
    }
  },
};
