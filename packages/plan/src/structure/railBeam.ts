import type { RailSheet } from '@eaveline/job';
import { type Beam, continuousBeam } from '@eaveline/physics';
import type { PlacedModule, Rail } from '../array/types.ts';

/** What bears on a rail at one clamp. */
export interface ClampLoad {
  /** From the rail's left end, m. */
  readonly atM: number;
  /** Module surface carried here, m². */
  readonly areaM2: number;
  /** Modules with their units carried here, kg. */
  readonly massKg: number;
}

/** A rail as a beam: its feet, what its clamps carry, and its own stiffness and mass. */
export interface RailBeam {
  readonly lengthM: number;
  readonly feetAtM: readonly number[];
  readonly clamps: readonly ClampLoad[];
  readonly eiNm2: number;
  readonly massKgPerM: number;
}

/**
 * Share of a row that one of its two rails carries, by the lever between them: half where both stand equally far from
 * the middle of the modules.
 */
export function shareOfRow(fromModuleEdgeMm: number, otherMm: number, heightMm: number): number {
  return (otherMm - heightMm / 2) / (otherMm - fromModuleEdgeMm);
}

/**
 * The loads of a rail stand at its clamps: a module bears on a rail at its two frames, half at each. Uniform load would
 * hide what the end clamps do to an overhang.
 *
 * @param massKg  Mass of a module with its share of a unit.
 */
export function railBeam(
  rail: Rail,
  share: number,
  modules: readonly PlacedModule[],
  massKg: (module: PlacedModule) => number,
  sheet: Pick<RailSheet, 'elasticGPa' | 'secondMomentCm4' | 'massKgPerM'>,
): RailBeam {
  const clamps = rail.clamps.map(({ u }) => ({ atM: u - rail.fromU, areaM2: 0, massKg: 0 }));
  for (const module of modules) {
    const left = module.at[0];
    for (const u of [left, left + module.widthM]) {
      const clamp = clamps.reduce((nearest, here) =>
        Math.abs(here.atM + rail.fromU - u) < Math.abs(nearest.atM + rail.fromU - u) ? here : nearest,
      );
      clamp.areaM2 += (share * module.widthM * module.heightM) / 2;
      clamp.massKg += (share * massKg(module)) / 2;
    }
  }
  return {
    lengthM: rail.toU - rail.fromU,
    feetAtM: rail.feet.map(({ u }) => u - rail.fromU),
    clamps,
    // GPa · cm⁴ = 10 N·m²
    eiNm2: sheet.elasticGPa * sheet.secondMomentCm4 * 10,
    massKgPerM: sheet.massKgPerM,
  };
}

/** The rail under a force at each clamp and along its own length. */
export function bend(beam: RailBeam, forceAt: (clamp: ClampLoad) => number, uniformNPerM: number): Beam {
  return continuousBeam({
    lengthM: beam.lengthM,
    supportsAtM: beam.feetAtM,
    eiNm2: beam.eiNm2,
    uniformNPerM,
    pointLoads: beam.clamps.map((clamp) => ({ atM: clamp.atM, forceN: forceAt(clamp) })),
  });
}

/** What each foot carries by the reactions of the beam: module surface, m², and mass, kg. May be negative at a foot that is pried. */
export function carriedByFeet(beam: RailBeam): readonly { readonly areaM2: number; readonly massKg: number }[] {
  const areas = bend(beam, ({ areaM2 }) => areaM2, 0).reactionsN;
  const masses = bend(beam, ({ massKg }) => massKg, beam.massKgPerM).reactionsN;
  return areas.map((areaM2, k) => ({ areaM2, massKg: masses[k] ?? 0 }));
}

/** Longest span between feet and longest overhang beyond the end feet, m. */
export function spansOf(rail: Rail): { longestSpanM: number; longestOverhangM: number } {
  const feet = rail.feet.map(({ u }) => u);
  const first = feet[0];
  const last = feet.at(-1);
  if (first === undefined || last === undefined) return { longestSpanM: 0, longestOverhangM: rail.toU - rail.fromU };
  return {
    longestSpanM: Math.max(0, ...feet.slice(1).map((u, k) => u - (feet[k] ?? u))),
    longestOverhangM: Math.max(first - rail.fromU, rail.toU - last),
  };
}
