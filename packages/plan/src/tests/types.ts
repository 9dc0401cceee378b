import type { Working } from '../working.ts';

export interface TestRow {
  /** `rise:a`: steady, readings name it. */
  readonly id: string;
  readonly group: 'dead' | 'live' | 'generating' | 'backup';
  readonly order: number;
  readonly name: string;
  readonly point: string;
  readonly instrument: string;
  /** Conditions that must be written down beside the reading, or be met first. */
  readonly conditions: readonly string[];
  /** What the design predicts; undefined for a look or a yes-or-no test. */
  readonly predicted?: {
    readonly value: number;
    readonly unit: string;
    readonly low: number;
    readonly high: number;
    readonly working: Working;
  };
  /** For tests answered yes or no: what has to be seen. */
  readonly wanted?: string;
  /** Lawful limit, apart from the prediction. */
  readonly limit?: {
    readonly value: number;
    readonly unit: string;
    readonly sense: 'at most' | 'at least';
    readonly clause: string;
    readonly seen: string;
  };
  /** Reading outside its band: what to do, likeliest first. */
  readonly suspects: readonly string[];
  readonly caution?: string;
  readonly hold?: string;
  /** Last reading on record and how it stands. */
  readonly reading?: {
    readonly value: number;
    readonly unit: string;
    readonly at: string;
    readonly by: string;
    readonly inLimit?: boolean;
    readonly nearPrediction?: boolean;
  };
  readonly sheet: 'dead' | 'live' | 'generating' | 'backup';
}

export interface TestsPlan {
  readonly rows: readonly TestRow[];
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}
