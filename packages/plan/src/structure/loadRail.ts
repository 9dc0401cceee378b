import type { RailSheet } from '@eaveline/job';
import type { LoadCode } from '@eaveline/physics';
import type { Rail } from '../array/types.ts';
import { type DownPressures, downN, GRAVITY, type UpliftFactors } from './combinations.ts';
import { bend, carriedByFeet, type RailBeam, spansOf } from './railBeam.ts';
import type { FootLoad, StructurePlan } from './types.ts';

/** Net uplift coefficients by zone, as entered, positive. */
export type Coefficients = Readonly<Record<FootLoad['zone'], number>>;

/** What loads a rail; parts that are not known are left out. */
export interface RailLoading {
  readonly code: LoadCode;
  readonly slopeDeg: number;
  readonly factors: UpliftFactors;
  /** Velocity pressure and coefficients, where both are known. */
  readonly up?: { readonly pressurePa: number; readonly coefficients: Coefficients };
  readonly down?: DownPressures;
}

/** A foot with what it carries, for the working of the worst one. */
export interface LoadedFoot extends FootLoad {
  readonly areaM2: number;
  readonly massKg: number;
}

export interface LoadedRail {
  readonly feet: readonly LoadedFoot[];
  readonly rail: StructurePlan['rails'][number];
}

/**
 * Loads of a rail's feet and its bending.
 *
 *     uplift of a foot = γ_W · q · C(its zone) · A − γ_G · g · m · cos pitch
 *
 * A and m are reactions of the continuous beam. The rail itself is bent with the worst coefficient any of its feet has.
 */
export function loadRail(
  rail: Rail,
  beam: RailBeam,
  zones: readonly FootLoad['zone'][],
  loading: RailLoading,
  sheet: Pick<RailSheet, 'sectionModulusCm3'>,
): LoadedRail {
  const { factors, up, down, code, slopeDeg } = loading;
  const carried = carriedByFeet(beam);
  const feet = rail.feet.map(({ id }, k): LoadedFoot => {
    const { areaM2, massKg } = carried[k] ?? { areaM2: 0, massKg: 0 };
    const zone = zones[k] ?? 'corner';
    const netN = up && factors.wind * up.pressurePa * up.coefficients[zone] * areaM2 - heldN(factors, massKg);
    const pressedN = down && downN(code, down, slopeDeg, areaM2, massKg);
    return {
      footId: id,
      railId: rail.id,
      planeId: rail.planeId,
      zone,
      areaM2,
      massKg,
      ...(netN === undefined ? {} : { upliftN: Math.max(0, netN) }),
      // a foot that is pried presses on the roof while the wind lifts
      ...(pressedN === undefined ? {} : { downN: Math.max(pressedN, netN === undefined ? 0 : -netN) }),
    };
  });
  return { feet, rail: { railId: rail.id, ...spansOf(rail), ...bending(beam, zones, loading, sheet) } };
}

const heldN = (factors: UpliftFactors, massKg: number) => factors.weight * GRAVITY * massKg;

function bending(
  beam: RailBeam,
  zones: readonly FootLoad['zone'][],
  { factors, up, down, code, slopeDeg }: RailLoading,
  { sectionModulusCm3 }: Pick<RailSheet, 'sectionModulusCm3'>,
): Pick<StructurePlan['rails'][number], 'momentNm' | 'stressMPa' | 'deflectionMm'> {
  const cases = [];
  if (up) {
    const windPa = factors.wind * up.pressurePa * Math.max(...zones.map((zone) => up.coefficients[zone]));
    cases.push(
      bend(beam, ({ areaM2, massKg }) => windPa * areaM2 - heldN(factors, massKg), -heldN(factors, beam.massKgPerM)),
    );
  }
  if (down) {
    cases.push(
      bend(
        beam,
        ({ areaM2, massKg }) => downN(code, down, slopeDeg, areaM2, massKg),
        downN(code, down, slopeDeg, 0, beam.massKgPerM),
      ),
    );
  }
  if (cases.length === 0) return {};
  const momentNm = Math.max(...cases.map(({ largestMomentNm }) => largestMomentNm));
  return {
    momentNm,
    // N·m over cm³ is MPa
    stressMPa: momentNm / sectionModulusCm3,
    deflectionMm: 1000 * Math.max(...cases.map(({ deflection }) => Math.abs(deflection.value))),
  };
}
