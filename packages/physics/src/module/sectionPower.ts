import { type ModuleModel, REFERENCE_K, saturationGrowth } from './diode.ts';

/** Voltage a bypassed section costs, V: a silicon diode that carries the module's current; common practice, no source. */
export const BYPASS_V = 0.5;

/** One way a partly shaded module can be worked: with its brightest sections active and the others bypassed. */
export interface Hill {
  readonly sections: 1 | 2 | 3;
  powerW: number;
  voltageV: number;
  currentA: number;
}

/** Room for the sections of one module, so that a loop allocates nothing. */
export interface SectionState {
  /** Brightest first: light current, saturation current, shunt conductance of each section. */
  readonly photoA: Float64Array;
  readonly shuntSiemens: Float64Array;
  saturationA: number;
  logSaturation: number;
  /** Of one section: a third of the module's. */
  idealityV: number;
  seriesOhm: number;
  readonly hills: readonly [Hill, Hill, Hill];
}

export function blankSectionState(): SectionState {
  const hill = (sections: Hill['sections']): Hill => ({ sections, powerW: 0, voltageV: 0, currentA: 0 });
  return {
    photoA: new Float64Array(3),
    shuntSiemens: new Float64Array(3),
    saturationA: 0,
    logSaturation: 0,
    idealityV: 1,
    seriesOhm: 0,
    hills: [hill(1), hill(2), hill(3)],
  };
}

/**
 * Three sections of one module under their own light, ready for `sectionHills`.
 *
 * A section is the module with a third of its ideality and series resistance and three times its shunt conductance.
 *
 * @param light  Effective irradiance of each section, W/m², in any order.
 */
export function sectionsAt(
  model: ModuleModel,
  light: ArrayLike<number>,
  cellC: number,
  into: SectionState = blankSectionState(),
): SectionState {
  const kelvin = cellC + 273.15;
  const perSun = model.photoCurrentA + model.alphaIscAPerK * (kelvin - REFERENCE_K);
  into.logSaturation = Math.log(model.saturationCurrentA) + saturationGrowth(kelvin);
  into.saturationA = Math.exp(into.logSaturation);
  into.idealityV = (model.idealityV * kelvin) / REFERENCE_K / 3;
  into.seriesOhm = model.seriesOhm / 3;
  const [a, b, c] = [light[0] as number, light[1] as number, light[2] as number];
  const most = Math.max(a, b, c);
  const least = Math.min(a, b, c);
  const suns = [most, a + b + c - most - least, least];
  for (let k = 0; k < 3; k++) {
    const sun = Math.max(0, suns[k] as number) / 1000;
    into.photoA[k] = Math.max(0, sun * perSun);
    into.shuntSiemens[k] = 3 * model.shuntSiemens * sun;
  }
  return into;
}

/** Diode voltage of a section that carries a current, V: Newton's method from the right, where it comes down safely. */
function diodeVoltage(state: SectionState, k: number, currentA: number): number {
  const { saturationA, logSaturation, idealityV: a } = state;
  const g = state.shuntSiemens[k] as number;
  const left = (state.photoA[k] as number) + saturationA - currentA;
  if (!(left > 0)) return Number.NEGATIVE_INFINITY;
  let v = a * (Math.log(left) - logSaturation); // without shunt: never left of the root
  if (g === 0) return v;
  for (let turn = 0; turn < 8; turn++) {
    const e = Math.exp(v / a + logSaturation);
    const step = (e + v * g - left) / (e / a + g);
    v -= step;
    if (Math.abs(step) < 1e-8) break;
  }
  return v;
}

/** Module voltage at a current with its `active` brightest sections at work, V; also its slope and bend by the current. */
function stack(state: SectionState, active: number, currentA: number, into: Float64Array): void {
  const { logSaturation, idealityV: a, seriesOhm } = state;
  let volts = -(3 - active) * BYPASS_V;
  let slope = 0;
  let bend = 0;
  for (let k = 0; k < active; k++) {
    const v = diodeVoltage(state, k, currentA);
    const e = v === Number.NEGATIVE_INFINITY ? 0 : Math.exp(v / a + logSaturation);
    const steep = e / a + (state.shuntSiemens[k] as number);
    volts += v - currentA * seriesOhm;
    slope -= 1 / steep + seriesOhm;
    bend -= e / (a * a) / (steep * steep * steep);
  }
  into[0] = volts;
  into[1] = slope;
  into[2] = bend;
}

const scratch = new Float64Array(3);

/** Its top is flat: a current this near, as a share of its light's, costs nothing. */
const NEAR = 1e-6;

/** Climbs one hill: Newton's method on the slope of I·V(I), held inside the bracket the slope's sign has drawn. */
function climb(state: SectionState, hill: Hill): void {
  hill.powerW = hill.voltageV = hill.currentA = 0;
  const active = hill.sections;
  const most = state.photoA[active - 1] as number;
  if (!(most > 0)) return;
  let [low, high] = [0, most];
  let current = 0.95 * most;
  for (let turn = 0; turn < 40; turn++) {
    stack(state, active, current, scratch);
    const [volts, slope, bend] = [scratch[0] as number, scratch[1] as number, scratch[2] as number];
    const rises = volts + current * slope;
    if (rises > 0) low = current;
    else high = current;
    const next = current - rises / (2 * slope + current * bend);
    const inside = next > low && next < high;
    const step = (inside ? next : (low + high) / 2) - current;
    current += step;
    if (Math.abs(step) < NEAR * most) break;
  }
  stack(state, active, current, scratch);
  const volts = scratch[0] as number;
  if (!(volts > 0)) return;
  hill.currentA = current;
  hill.voltageV = volts;
  hill.powerW = current * volts;
}

/**
 * The hills of a partly shaded module's power: at most one with one, two and three sections at work, each at its top.
 *
 * A section in less light than the current needs is bypassed and costs `BYPASS_V`.
 */
export function sectionHills(state: SectionState): readonly [Hill, Hill, Hill] {
  for (const hill of state.hills) climb(state, hill);
  return state.hills;
}

/** No hill is higher than the current of its darkest section at the open-circuit voltages of all at work. */
function highest(state: SectionState, active: number): number {
  const { logSaturation, idealityV, photoA } = state;
  let volts = 0;
  for (let k = 0; k < active; k++) volts += Math.max(0, idealityV * (Math.log(photoA[k] as number) - logSaturation));
  return (photoA[active - 1] as number) * volts;
}

/** What a unit gets of a partly shaded module, if it finds the highest hill its input can hold. */
export interface SectionBest {
  powerW: number;
  voltageV: number;
}

/**
 * The highest hill within an input's window, or the best point at the window's edges.
 *
 * Above a hill's top its power falls towards open circuit, below it towards the next hill: outside the window the
 * nearer edge of each hill is held. Hills that cannot be the highest are not climbed.
 *
 * @param lowV, highV  Edges of the tracking window, V.
 */
export function sectionBest(
  state: SectionState,
  lowV: number,
  highV: number,
  into: SectionBest = { powerW: 0, voltageV: 0 },
): SectionBest {
  into.powerW = into.voltageV = 0;
  const [one, two, three] = [highest(state, 1), highest(state, 2), highest(state, 3)];
  const first = three >= two && three >= one ? 2 : two >= one ? 1 : 0;
  for (let turn = 0; turn < 3; turn++) {
    const k = (first + turn) % 3;
    const bound = k === 0 ? one : k === 1 ? two : three;
    if (!(bound > into.powerW)) continue;
    const hill = state.hills[k] as Hill;
    climb(state, hill);
    if (hill.powerW === 0) continue;
    const held = Math.min(Math.max(hill.voltageV, lowV), highV);
    const powerW = held === hill.voltageV ? hill.powerW : held * currentAt(state, hill.sections, held);
    if (powerW > into.powerW) {
      into.powerW = powerW;
      into.voltageV = held;
    }
  }
  return into;
}

/** Current with so many sections at work at a module voltage, A; bisection, for it is asked at the window's edges only. */
function currentAt(state: SectionState, active: number, voltageV: number): number {
  let low = 0;
  let high = state.photoA[active - 1] as number;
  stack(state, active, low, scratch);
  if ((scratch[0] as number) <= voltageV) return 0;
  for (let turn = 0; turn < 50; turn++) {
    const middle = (low + high) / 2;
    stack(state, active, middle, scratch);
    if ((scratch[0] as number) > voltageV) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
