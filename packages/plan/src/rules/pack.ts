import type { WallFacts } from '@eaveline/job';
import type { Seen } from '../finding.ts';
import type { Limit } from './limit.ts';
import type { IslandNeutral, RuleBook, RuleId } from './ruleLimits.ts';

export type { Limit } from './limit.ts';

/** What a label tells, in whatever words: by it a list is held against what its region asks for. */
export type LabelSays =
  | 'solar present'
  | 'battery present'
  | 'shutdown'
  | 'multiple supplies'
  | 'multiple mode'
  | 'solar switch'
  | 'battery switch'
  | 'alternative supply'
  | 'do not relocate'
  | 'both sides live'
  | 'no unplugging'
  | 'cable route'
  | 'battery data'
  | 'settings'
  | 'emergency phone'
  | 'test dates'
  | 'directory';

export interface LabelText {
  readonly id: string;
  readonly says: LabelSays;
  readonly text: string;
  readonly where: string;
  readonly clause: string;
  readonly document: string;
  readonly seen: Seen;
  /** When it is needed. */
  readonly when: 'always' | 'battery' | 'backup' | 'per source' | 'per trunk';
}

/** Words of the region for the things the tool names. */
export interface PackWords {
  readonly board: string;
  readonly earth: string;
  readonly line: string;
  readonly breaker: string;
  readonly residualDevice: string;
  readonly network: string;
  readonly supply: string;
  readonly homeRun: string;
  readonly changeover: string;
  readonly isolator: string;
}

/**
 * A region's figures as data, with the rules of the checks. Judging is done by small functions in `checks/rules`.
 * A rule that the region lacks is named in `lacks` with the reason, and the checks say so.
 */
export interface RulePack extends PackFigures {
  readonly rules: RuleBook;
  readonly lacks: readonly { readonly rule: RuleId; readonly why: string }[];
  /** What was not found out about this region's texts. */
  readonly unsettled: readonly string[];
}

/** Figures of a region that more than one stage reads. */
export interface PackFigures {
  readonly id: 'au-nz' | 'iec-eu' | 'us';
  readonly variant: 'au' | 'nz' | 'gb' | 'ie' | 'eu' | 'us';
  readonly words: PackWords;
  readonly wiring: 'iec' | 'au-nz' | 'us-120-240' | 'us-120-208';
  /** Editions taken where the job names none. */
  readonly editions: Readonly<Record<string, string>>;

  /** Voltage rise, terminals of the farthest unit to the point of supply, share of nominal. */
  readonly riseShare: Limit;
  /** Design current times this may not pass the breaker; 1 or 1.25. */
  readonly continuousFactor: Limit;
  /** Largest share of its rating a breaker may carry for hours where its sheet does not say. */
  readonly breakerContinuousShare: Limit;
  readonly cableMethod: 'iec' | 'nec';
  readonly loop?: { readonly standard: 'BS 7671' | 'AS/NZS 3000'; readonly limit: Limit<string> };
  readonly bus: { readonly kind: 'sum of sources' | '120 percent'; readonly limit: Limit };
  readonly lineDifferenceVA?: Limit;
  /** Above this on any line the network has to be asked first; at or below it may be told. */
  readonly tellOnlyA?: Limit;
  readonly tellOnlyVA?: Limit;
  readonly exportVAPerLine?: Limit;
  /** Supply band, shares of nominal below and above. */
  readonly supplyBand: Limit<readonly [number, number]>;

  readonly setbacks: { readonly eaveM: Limit; readonly ridgeM: Limit; readonly sideM: Limit };
  /** Least distance from every edge, in gaps under the module, where a region says so. */
  readonly setbackGaps?: Limit;
  /** Wider strip at the ridge where the array covers more than a share of the roof, in plan. */
  readonly ridgeAboveShare?: Limit<{ readonly roofShare: number; readonly ridgeM: number }>;
  readonly gapUnderMm: Limit<readonly [number, number]>;
  readonly dcAcRatio?: Limit;
  readonly coldVoltage: Limit<string>;
  /** Extra-low-voltage promise of a unit per module, V. */
  readonly lowVoltageDcV?: Limit;

  readonly wind: {
    readonly method: 'AS/NZS 1170.2' | 'EN 1991-1-4' | 'ASCE 7';
    readonly limit: Limit<string>;
    /** Least ratio of resistance to load on the worst foot. */
    readonly footMargin: Limit;
  };

  readonly batteryPlace: {
    readonly sideMm: Limit;
    readonly aboveMm: Limit;
    readonly frontMm: Limit;
    readonly forbidden: Limit<readonly WallFacts['place'][]>;
  };
  readonly batteryKwhMost?: Limit;
  readonly backup: {
    readonly runningShare: Limit;
    readonly startShare: Limit;
    /** Solar on the backed-up side over the battery's rating. */
    readonly solarShare: Limit;
    readonly neutral: Limit<IslandNeutral>;
  };

  readonly tests: {
    readonly insulationMOhm: Limit;
    readonly insulationTestV: Limit;
    readonly mainEarthOhm: Limit;
    readonly railBondOhm: Limit;
    readonly residualMs: Limit;
    /** Measured cold loop over the table's hot limit. */
    readonly coldLoopShare: Limit;
    readonly lossOfMainsS: Limit;
    readonly reconnectS: Limit;
  };

  readonly labels: readonly LabelText[];
  readonly documents: readonly {
    readonly id: string;
    readonly name: string;
    readonly who: string;
    readonly clause: string;
    readonly seen: Seen;
    /** Needed before work starts, and whether the network's number stands for it; others are made when it is done. */
    readonly first?: 'network' | 'permission';
  }[];
}
