import type { Working } from '../working.ts';

export interface KitLine {
  readonly id: string;
  /** Sheet it comes from, where one does. */
  readonly sheetId?: string;
  readonly name: string;
  readonly group: 'array' | 'mounting' | 'trunks' | 'cables' | 'board' | 'battery' | 'labels' | 'tools and tests';
  readonly count: number;
  readonly unit: 'pieces' | 'm' | 'lengths' | 'sets';
  readonly working: Working;
}

export interface RailCut {
  /** Which stock bar, from 1. */
  readonly bar: number;
  readonly stockMm: number;
  readonly pieces: readonly { readonly railId: string; readonly railName: string; readonly lengthMm: number }[];
  readonly offcutMm: number;
}

export interface KitPlan {
  readonly lines: readonly KitLine[];
  readonly cuts: readonly RailCut[];
  readonly cutting: {
    readonly bars: number;
    readonly lowerBound: number;
    readonly proven: boolean;
    readonly wasteShare: number;
    readonly kerfMm: number;
    readonly method: string;
  };
  /** Splices: on which rail, at what u of the rail from its left end, mm. */
  readonly splices: readonly {
    readonly railId: string;
    readonly atMm: number;
    /** Off the middle of its span, off the feet, and off the splices of the rail beside it. */
    readonly clear: boolean;
  }[];
  /** Expansion breaks: the rail is two rails there, 20 mm apart, between two modules. From its left end, mm. */
  readonly breaks: readonly { readonly railId: string; readonly atMm: number }[];
  readonly labels: readonly {
    readonly id: string;
    readonly text: string;
    readonly where: string;
    readonly clause: string;
    readonly seen: string;
    /** Sets: one label for every place named in `where`; pieces where it goes with each trunk, battery or source. */
    readonly count: number;
  }[];
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}
