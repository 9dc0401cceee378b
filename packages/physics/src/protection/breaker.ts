import { positive, Refusal, within } from '../refusal.ts';
import { IEC_60898_RATINGS_A, NEC_240_6_RATINGS_A } from './data/tables.ts';

export type RatingList = 'IEC 60898' | 'NEC 240.6(A)';

/** The standard ratings of a list, A, rising. */
export function ratingsOf(list: RatingList): readonly number[] {
  if (list === 'IEC 60898') return IEC_60898_RATINGS_A;
  if (list === 'NEC 240.6(A)') return NEC_240_6_RATINGS_A;
  throw new Refusal({
    code: 'unknown-name',
    at: 'ratingList',
    got: list,
    want: 'IEC 60898 or NEC 240.6(A)',
    mend: 'Name the list of ratings.',
  });
}

/** Rounding of a product such as 1.25 × 16 must not cost a size; no rating is given to a nanoampere. */
const SLACK_A = 1e-9;

/** Smallest standard rating not below a current, or undefined above the list. */
export function nextRatingA(list: RatingList, atLeastA: number): number | undefined {
  within(atLeastA, 0, Number.MAX_VALUE, 'atLeastA', 'Give a current.');
  return ratingsOf(list).find((a) => a >= atLeastA - SLACK_A);
}

/** Largest standard rating not above a capacity, or undefined below the list. */
export function largestRatingA(list: RatingList, atMostA: number): number | undefined {
  within(atMostA, 0, Number.MAX_VALUE, 'atMostA', 'Give a current.');
  return ratingsOf(list).findLast((a) => a <= atMostA + SLACK_A);
}

export interface ContinuousInput {
  readonly moduleInverters: number;
  readonly ratedCurrentEachA: number;
  readonly ratingList: RatingList;
  /** 1.25 for NEC continuous duty; 1 where the maker's current is already continuous (IEC). Default by list. */
  readonly continuousFactor?: number;
}

export interface ContinuousBreaker {
  readonly branchCurrentA: number;
  readonly minimumOcpdA: number;
  /** Undefined above the list. */
  readonly nextStandardA: number | undefined;
}

/**
 * The device for a branch at continuous output: next standard rating not below factor × current.
 * Source: NEC 690.8(B), 690.9(B), 240.6(A); IEC practice takes the inverter's continuous output as it is.
 */
export function continuousBreaker(input: ContinuousInput): ContinuousBreaker {
  const n = positive(input.moduleInverters, 'moduleInverters', 'Count the units of the branch.');
  const each = positive(input.ratedCurrentEachA, 'ratedCurrentEachA', 'Read it from the unit sheet.');
  const branchCurrentA = n * each;
  const minimumOcpdA = branchCurrentA * continuousFactor(input.ratingList, input.continuousFactor);
  return { branchCurrentA, minimumOcpdA, nextStandardA: nextRatingA(input.ratingList, minimumOcpdA) };
}

function continuousFactor(list: RatingList, given: number | undefined): number {
  return within(given ?? (list === 'IEC 60898' ? 1 : 1.25), 1, 2, 'continuousFactor', '1 or 1.25 is usual.');
}

export interface UnitsPerBranchInput {
  readonly ocpdA: number;
  readonly ratedCurrentEachA: number;
  /** Default 1.25. */
  readonly continuousFactor?: number;
  /** Largest count printed on the unit's or trunk's sheet. */
  readonly sheetMaximum?: number;
  /** Rating of the trunk cable and its connectors, A. */
  readonly trunkRatingA?: number;
}

export interface UnitsPerBranch {
  readonly maximumCount: number;
  readonly boundBy: 'device' | 'trunk' | 'sheet';
  /** Current of that many over the device's rating; near 1 in a hot enclosure, ask. */
  readonly loadShare: number;
}

/** Most units on a branch: floor(device / factor / unit), and no more than trunk and sheet allow. */
export function unitsPerBranch(input: UnitsPerBranchInput): UnitsPerBranch {
  const ocpdA = positive(input.ocpdA, 'ocpdA', 'Give the rating of the device.');
  const each = positive(input.ratedCurrentEachA, 'ratedCurrentEachA', 'Read it from the unit sheet.');
  const factor = within(input.continuousFactor ?? 1.25, 1, 2, 'continuousFactor', '1 or 1.25 is usual.');
  const bounds: [UnitsPerBranch['boundBy'], number][] = [['device', Math.floor(ocpdA / factor / each + SLACK_A)]];
  if (input.trunkRatingA !== undefined) {
    const trunkA = positive(input.trunkRatingA, 'trunkRatingA', 'Read it from the trunk sheet.');
    bounds.push(['trunk', Math.floor(trunkA / each + SLACK_A)]);
  }
  if (input.sheetMaximum !== undefined)
    bounds.push(['sheet', positive(input.sheetMaximum, 'sheetMaximum', 'A count.')]);
  const [boundBy, maximumCount] = bounds.reduce((least, b) => (b[1] < least[1] ? b : least));
  return { maximumCount, boundBy, loadShare: (maximumCount * each) / ocpdA };
}
