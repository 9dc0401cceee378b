import { NEC_SMALL_CONDUCTOR_MAX_A } from '../conductor/data/necAmpacity.ts';
import type { AwgSize } from '../conductor/data/necChapter9.ts';
import { type NecColumnC, necCableCapacity } from '../conductor/necCapacity.ts';
import { positive, Refusal } from '../refusal.ts';
import { continuousBreaker } from './breaker.ts';
import { NEC_250_122_COPPER } from './data/tables.ts';

export interface NecBranchInput {
  readonly moduleInverters: number;
  readonly ratedCurrentEachA: number;
  readonly awg: string;
  readonly insulationC: NecColumnC;
  readonly terminalC: NecColumnC;
  readonly ambientC: number;
  readonly currentCarryingConductors: number;
  readonly roofGapMm?: number;
  readonly oneWayFt: number;
  readonly nominalV: number;
  /** Of the conduit's column in Chapter 9 Table 9. */
  readonly rOhmPerKft: number;
}

export interface NecBranch {
  readonly branchCurrentA: number;
  readonly minimumOcpdA: number;
  readonly ocpdA: number | undefined;
  readonly terminalColumnA: number;
  readonly terminalOk: boolean;
  readonly correctedAmpacityA: number;
  readonly conditionsOk: boolean;
  readonly smallConductorOk: boolean;
  readonly riseV: number;
  readonly risePercent: number;
}

/**
 * A branch of units by the NEC: device, terminals, conditions of use, small-conductor rule, rise.
 *
 *     I = n·i;  device ≥ 1.25·I;  terminal column ≥ 1.25·I;  corrected ampacity ≥ I;  rise = 2·L·R·I
 *
 * Source: NEC 2023 240.6(A), 240.4(D), 110.14(C), 310.15, 310.16, 690.8, 690.9; Chapter 9 Table 9.
 */
export function necBranch(input: NecBranchInput): NecBranch {
  const { branchCurrentA, minimumOcpdA, nextStandardA } = continuousBreaker({ ...input, ratingList: 'NEC 240.6(A)' });
  const capacity = necCableCapacity({
    conductor: 'copper',
    awg: input.awg,
    insulationColumnC: input.insulationC,
    terminalColumnC: input.terminalC,
    ambientC: input.ambientC,
    currentCarryingConductors: input.currentCarryingConductors,
    ...(input.roofGapMm === undefined ? {} : { roofGapMm: input.roofGapMm }),
  });
  const kft = positive(input.oneWayFt, 'oneWayFt', 'Measure along the cable.') / 1000;
  const riseV = 2 * kft * positive(input.rOhmPerKft, 'rOhmPerKft', 'See Chapter 9 Table 9.') * branchCurrentA;
  const smallMaxA = NEC_SMALL_CONDUCTOR_MAX_A[input.awg as AwgSize];
  return {
    branchCurrentA,
    minimumOcpdA,
    ocpdA: nextStandardA,
    terminalColumnA: capacity.terminalLimitA,
    terminalOk: capacity.terminalLimitA >= minimumOcpdA,
    correctedAmpacityA: capacity.correctedA,
    conditionsOk: capacity.correctedA >= branchCurrentA,
    smallConductorOk: nextStandardA !== undefined && (smallMaxA === undefined || nextStandardA <= smallMaxA),
    riseV,
    risePercent: (100 * riseV) / positive(input.nominalV, 'nominalV', 'Give the nominal voltage.'),
  };
}

/** Copper equipment grounding conductor for a device: the next listed rating at or above it. NEC 250.122. */
export function necGroundingAwg(ocpdA: number): string {
  positive(ocpdA, 'ocpdA', 'Give the rating of the device.');
  const row = NEC_250_122_COPPER.find(([upToA]) => ocpdA <= upToA);
  if (!row) {
    throw new Refusal({
      code: 'outside-range',
      at: 'ocpdA',
      got: ocpdA,
      want: 'up to 400 A',
      mend: 'See Table 250.122.',
    });
  }
  return row[1];
}
