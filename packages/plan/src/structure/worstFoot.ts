import type { Rail } from '../array/types.ts';
import { given, givenAngle, type Working, worked } from '../working.ts';
import type { UpliftFactors } from './combinations.ts';
import type { LoadedFoot } from './loadRail.ts';
import type { StructurePlan } from './types.ts';

export interface WorstFootInput {
  readonly feet: readonly LoadedFoot[];
  readonly rails: readonly Rail[];
  readonly factorsOf: (planeId: string) => UpliftFactors;
  readonly pitchOf: (planeId: string) => number;
  readonly pressure: Working;
  readonly pressurePa: number;
  readonly coefficients: Readonly<Record<LoadedFoot['zone'], number>>;
  readonly coefficientSource: string;
  readonly capacityN?: number;
}

/** The foot with the greatest uplift, where it stands in words, and how its load comes about. */
export function worstFoot(input: WorstFootInput): StructurePlan['worst'] {
  const loaded = input.feet.filter(({ upliftN }) => upliftN !== undefined);
  const worst = loaded.reduce<LoadedFoot | undefined>(
    (most, foot) => (most === undefined || (foot.upliftN ?? 0) > (most.upliftN ?? 0) ? foot : most),
    undefined,
  );
  const rail = input.rails.find(({ id }) => id === worst?.railId);
  if (worst === undefined || rail === undefined) return undefined;
  const number = rail.feet.findIndex(({ id }) => id === worst.footId) + 1;
  const where = `${rail.name} rail, foot ${number}, ${worst.zone === 'interior' ? 'interior' : `${worst.zone} zone`}`;
  return {
    footId: worst.footId,
    where,
    upliftN: worst.upliftN ?? 0,
    ...(input.capacityN === undefined ? {} : { capacityN: input.capacityN }),
    working: upliftWorking(worst, where, input),
  };
}

function upliftWorking(foot: LoadedFoot, where: string, input: WorstFootInput): Working {
  const { wind, weight, combination } = input.factorsOf(foot.planeId);
  const c = input.coefficients[foot.zone];
  const windN = wind * input.pressurePa * c * foot.areaM2;
  const area: Working = {
    name: 'module surface on this foot',
    symbol: 'A',
    value: foot.areaM2,
    unit: 'm²',
    source: 'reaction of the continuous rail with the loads at its clamps',
  };
  const windWorking = worked('wind', windN, 'N', 'γ_W · q · C · A', combination, [
    { name: 'factor on the wind', symbol: 'γ_W', value: wind, unit: '', source: combination },
    input.pressure,
    given(`net uplift, ${foot.zone}`, c, '', `choices.wind.netUplift.${foot.zone}`, input.coefficientSource),
    area,
  ]);
  const weightWorking = worked(
    'weight that holds it',
    windN - (foot.upliftN ?? 0),
    'N',
    'γ_G · g · m · cos pitch',
    combination,
    [
      { name: 'factor on the weight, with cos pitch', value: weight, unit: '', source: combination },
      givenAngle('pitch', input.pitchOf(foot.planeId), `facts.roof.planes.${foot.planeId}.pitchDeg`, 'survey'),
      {
        name: 'array on this foot',
        symbol: 'm',
        value: foot.massKg,
        unit: 'kg',
        source: 'equipment sheets; reaction of the continuous rail',
      },
    ],
  );
  return worked(
    `Uplift, ${where}`,
    foot.upliftN ?? 0,
    'N',
    'wind − weight',
    combination,
    [windWorking, weightWorking],
    {
      symbol: 'F',
      decimals: 0,
    },
  );
}
