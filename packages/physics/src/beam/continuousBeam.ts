import { finite, positive, Refusal, within } from '../refusal.ts';

export interface PointLoad {
  readonly atM: number;
  /** Positive in the direction the reactions push back against. */
  readonly forceN: number;
}

export interface BeamInput {
  readonly lengthM: number;
  /** Rising; the ends may overhang. */
  readonly supportsAtM: readonly number[];
  /** E·I, N·m². */
  readonly eiNm2: number;
  /** Over the whole length. Default 0. */
  readonly uniformNPerM?: number;
  readonly pointLoads?: readonly PointLoad[];
  /** Places that carry no moment: a splice taken at its worst. */
  readonly hingesAtM?: readonly number[];
}

export interface BeamExtreme {
  readonly value: number;
  readonly atM: number;
}

export interface Beam {
  /** Positive pushes against the load; negative has to hold the beam down on the other side. */
  readonly reactionsN: readonly number[];
  /** Over each support, N·m; negative is hogging. */
  readonly supportMomentsNm: readonly number[];
  /** Largest sagging moment and largest hogging moment (as a negative number). */
  readonly sagging: BeamExtreme;
  readonly hogging: BeamExtreme;
  /** The greater of the two in size. */
  readonly largestMomentNm: number;
  /** Largest deflection in size, m; positive with the load. */
  readonly deflection: BeamExtreme;
  /** Deflection at the two ends, m. */
  readonly tipsM: readonly [number, number];
}

interface Element {
  readonly fromM: number;
  readonly lengthM: number;
  /** Freedoms: deflection and slope at the left end, then at the right. */
  readonly dof: readonly [number, number, number, number];
}

/**
 * Nodes closer than this are one. An element's stiffness goes with 1/length³: a clamp a hair from a foot would drown
 * every other stiffness in rounding, and the beam would look free to swing.
 */
const SAME_M = 5e-4;
/** A pivot below this share of the stiffest one is none: rounding leaves 1e-16, the stiffest element allowed 1e-13. */
const NO_PIVOT = 1e-14;

/**
 * Continuous beam on rigid supports, with overhangs, point and uniform loads and hinges.
 *
 * Hermite elements between supports, loads, hinges and ends: exact for these loads, as the uniform load's own
 * quartic is added inside each element. Constant E·I, small deflections, no shear deflection.
 *
 * Judge feet by reactions, never by tributary width: a reaction can be 2.5 times its half-span share.
 *
 * @throws {Refusal} `missing`, `outside-range`, `not-positive`; `no-solution` for a mechanism.
 *
 * Source: any structures book; checked against handbook tables of continuous beams.
 */
export function continuousBeam(input: BeamInput): Beam {
  const q = finite(input.uniformNPerM ?? 0, 'uniformNPerM');
  const ei = positive(input.eiNm2, 'eiNm2', 'Modulus times second moment of area.');
  check(input);
  const nodes = nodePlaces(input);
  const { elements, deflectionDof, freedoms } = meshOf(nodes, input.hingesAtM ?? []);
  const { k, f } = assemble(elements, freedoms, ei, q);
  for (const { atM, forceN } of input.pointLoads ?? []) f[deflectionDof[nodeAt(nodes, atM)]] += forceN;
  const held = input.supportsAtM.map((at) => deflectionDof[nodeAt(nodes, at)]);
  const d = solve(k, f, held);

  const reactionsN = held.map((dof) => f[dof] - k[dof].reduce((sum, kij, j) => sum + kij * d[j], 0));
  return { reactionsN, ...extremes(input, elements, d, ei, q) };
}

function check({ lengthM, supportsAtM, pointLoads = [], hingesAtM = [] }: BeamInput): void {
  positive(lengthM, 'lengthM', 'Give the length of the beam.');
  if (supportsAtM.length === 0) {
    throw new Refusal({
      code: 'missing',
      at: 'supportsAtM',
      got: 0,
      want: 'at least two supports',
      mend: 'Place the feet.',
    });
  }
  supportsAtM.forEach((at, i) => {
    const low = i === 0 ? 0 : supportsAtM[i - 1] + 2 * SAME_M;
    within(at, low, lengthM, `supportsAtM[${i}]`, 'Supports rise along the beam and lie on it.');
  });
  pointLoads.forEach(({ atM, forceN }, i) => {
    within(atM, 0, lengthM, `pointLoads[${i}].atM`, 'The load lies on the beam.');
    finite(forceN, `pointLoads[${i}].forceN`);
  });
  hingesAtM.forEach((at, i) => {
    within(at, SAME_M, lengthM - SAME_M, `hingesAtM[${i}]`, 'A hinge lies inside the beam.');
  });
}

function nodePlaces({ lengthM, supportsAtM, pointLoads = [], hingesAtM = [] }: BeamInput): number[] {
  const all = [0, lengthM, ...supportsAtM, ...pointLoads.map((p) => p.atM), ...hingesAtM].sort((a, b) => a - b);
  return all.reduce<number[]>((kept, at) => {
    if (kept.length === 0 || at - kept[kept.length - 1] > SAME_M) kept.push(at);
    return kept;
  }, []);
}

function nodeAt(nodes: readonly number[], atM: number): number {
  let best = 0;
  nodes.forEach((at, i) => {
    if (Math.abs(at - atM) < Math.abs(nodes[best] - atM)) best = i;
  });
  return best;
}

function meshOf(nodes: readonly number[], hingesAtM: readonly number[]) {
  const hinged = new Set(hingesAtM.map((at) => nodeAt(nodes, at)));
  const deflectionDof: number[] = [];
  const slopeLeft: number[] = [];
  const slopeRight: number[] = [];
  let freedoms = 0;
  nodes.forEach((_, i) => {
    deflectionDof.push(freedoms++);
    slopeLeft.push(freedoms++);
    // a hinge has a slope of its own on either side
    slopeRight.push(hinged.has(i) ? freedoms++ : slopeLeft[i]);
  });
  const elements = nodes.slice(1).map(
    (to, i): Element => ({
      fromM: nodes[i],
      lengthM: to - nodes[i],
      dof: [deflectionDof[i], slopeRight[i], deflectionDof[i + 1], slopeLeft[i + 1]],
    }),
  );
  return { elements, deflectionDof, freedoms };
}

function assemble(elements: readonly Element[], freedoms: number, ei: number, q: number) {
  const k = Array.from({ length: freedoms }, () => new Array<number>(freedoms).fill(0));
  const f = new Array<number>(freedoms).fill(0);
  for (const { lengthM: l, dof } of elements) {
    const c = ei / l ** 3;
    const local = [
      [12, 6 * l, -12, 6 * l],
      [6 * l, 4 * l * l, -6 * l, 2 * l * l],
      [-12, -6 * l, 12, -6 * l],
      [6 * l, 2 * l * l, -6 * l, 4 * l * l],
    ];
    const load = [(q * l) / 2, (q * l * l) / 12, (q * l) / 2, (-q * l * l) / 12];
    for (let i = 0; i < 4; i++) {
      f[dof[i]] += load[i];
      for (let j = 0; j < 4; j++) k[dof[i]][dof[j]] += c * local[i][j];
    }
  }
  return { k, f };
}

/** Gauss elimination with the held freedoms at zero. */
function solve(k: readonly number[][], f: readonly number[], held: readonly number[]): number[] {
  const free = f.map((_, i) => i).filter((i) => !held.includes(i));
  const a = free.map((i) => [...free.map((j) => k[i][j]), f[i]]);
  const n = free.length;
  const scale = Math.max(...a.map((row, i) => Math.abs(row[i])));
  for (let col = 0; col < n; col++) {
    let pivot = col;
    for (let row = col + 1; row < n; row++) if (Math.abs(a[row][col]) > Math.abs(a[pivot][col])) pivot = row;
    [a[col], a[pivot]] = [a[pivot], a[col]];
    if (!(Math.abs(a[col][col]) > NO_PIVOT * scale)) {
      throw new Refusal({
        code: 'no-solution',
        at: 'supportsAtM',
        got: 'a beam free to swing',
        want: 'two supports at least, and no hinge the others do not steady',
        mend: 'Add a foot, or move the splice to another span.',
      });
    }
    for (let row = col + 1; row < n; row++) {
      const factor = a[row][col] / a[col][col];
      if (factor === 0) continue;
      for (let j = col; j <= n; j++) a[row][j] -= factor * a[col][j];
    }
  }
  const d = new Array<number>(f.length).fill(0);
  for (let row = n - 1; row >= 0; row--) {
    let sum = a[row][n];
    for (let j = row + 1; j < n; j++) sum -= a[row][j] * d[free[j]];
    d[free[row]] = sum / a[row][row];
  }
  return d;
}

/** Deflection, slope and moment at a place of an element; x from its left end. */
function inside(e: Element, d: readonly number[], ei: number, q: number, x: number) {
  const l = e.lengthM;
  const [w1, s1, w2, s2] = e.dof.map((i) => d[i]);
  // w = w1 + s1·x + b·x² + c·x³, plus the clamped beam's own quartic
  const b = (3 * (w2 - w1)) / l ** 2 - (2 * s1 + s2) / l;
  const c = (2 * (w1 - w2)) / l ** 3 + (s1 + s2) / l ** 2;
  return {
    w: w1 + s1 * x + b * x * x + c * x ** 3 + (q * x * x * (l - x) ** 2) / (24 * ei),
    slope: s1 + 2 * b * x + 3 * c * x * x + (q * (2 * x * l * l - 6 * l * x * x + 4 * x ** 3)) / (24 * ei),
    moment: -ei * (2 * b + 6 * c * x) - (q * (2 * l * l - 12 * l * x + 12 * x * x)) / 24,
    /** Where the shear is zero, if q is not. */
    zeroShearX: q === 0 ? Number.NaN : l / 2 - (ei * 6 * c) / q,
  };
}

function extremes(input: BeamInput, elements: readonly Element[], d: readonly number[], ei: number, q: number) {
  let sagging: BeamExtreme = { value: 0, atM: 0 };
  let hogging: BeamExtreme = { value: 0, atM: 0 };
  let deflection: BeamExtreme = { value: 0, atM: 0 };
  for (const e of elements) {
    const at = (x: number) => inside(e, d, ei, q, x);
    const top = at(0).zeroShearX;
    for (const x of [0, e.lengthM, ...(top > 0 && top < e.lengthM ? [top] : [])]) {
      const { moment } = at(x);
      if (moment > sagging.value) sagging = { value: moment, atM: e.fromM + x };
      if (moment < hogging.value) hogging = { value: moment, atM: e.fromM + x };
    }
    for (const x of [0, e.lengthM, ...levelPlaces((x) => at(x).slope, e.lengthM)]) {
      const { w } = at(x);
      if (Math.abs(w) > Math.abs(deflection.value)) deflection = { value: w, atM: e.fromM + x };
    }
  }
  const momentAt = (place: number) => {
    const e = elements.findLast((el) => el.fromM <= place + SAME_M && el.lengthM > 0) as Element;
    return inside(e, d, ei, q, Math.min(e.lengthM, Math.max(0, place - e.fromM))).moment;
  };
  const tip = (e: Element, x: number) => inside(e, d, ei, q, x).w;
  const last = elements[elements.length - 1];
  return {
    supportMomentsNm: input.supportsAtM.map(momentAt),
    sagging,
    hogging,
    largestMomentNm: Math.max(sagging.value, -hogging.value),
    deflection,
    tipsM: [tip(elements[0], 0), tip(last, last.lengthM)] as const,
  };
}

/** Places inside an element where the slope is zero, by halving between sixteen samples. */
function levelPlaces(slope: (x: number) => number, lengthM: number): number[] {
  const found: number[] = [];
  const n = 16;
  for (let i = 0; i < n; i++) {
    let low = (i / n) * lengthM;
    let high = ((i + 1) / n) * lengthM;
    if (slope(low) * slope(high) > 0) continue;
    for (let turn = 0; turn < 40; turn++) {
      const mid = (low + high) / 2;
      if (slope(low) * slope(mid) <= 0) high = mid;
      else low = mid;
    }
    found.push((low + high) / 2);
  }
  return found;
}
