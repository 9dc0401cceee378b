import type { Job } from '../schema/job.ts';

/** What a reading is taken with. The survey asks once which one is in the bag; `plate` and `papers` are read, not measured. */
export const INSTRUMENTS = {
  tape: 'tape or laser',
  inclinometer: 'inclinometer',
  compass: 'compass, declination taken off',
  voltmeter: 'voltmeter',
  loopTester: 'loop tester',
  rotationTester: 'phase rotation tester',
  earthTester: 'earth tester',
  thermometer: 'thermometer',
} as const;
export type Instrument = keyof typeof INSTRUMENTS;

/** How a question is answered. */
export type Answer =
  | { readonly kind: 'number'; readonly unit: string }
  | {
      readonly kind: 'pick';
      readonly options: readonly { readonly value: string; readonly words: string; readonly caution?: string }[];
    }
  /** `caution` is said where it is so. */
  | { readonly kind: 'yes-no'; readonly yes: string; readonly no: string; readonly caution?: string }
  | { readonly kind: 'text' }
  | { readonly kind: 'date' }
  /** Size and metal of a cable, as one answer: neither means anything without the other. */
  | { readonly kind: 'conductor' }
  /** One or more of the supply's lines. */
  | { readonly kind: 'lines' }
  /** The id of a roof plane. */
  | { readonly kind: 'plane' }
  /** Cannot be answered at the house. */
  | { readonly kind: 'brought' };

/** One thing to find out, asked of a thing `T`: the whole job, a plane, a wall. */
export interface Question<T = unknown> {
  /** Path in the thing, with dots: `rafters.spacingMm`. */
  readonly at: string;
  /** A few words, the thing first. */
  readonly ask: string;
  /** How it is measured, or where it is read. */
  readonly how?: string;
  readonly answer: Answer;
  readonly with?: Instrument;
  /** What it is for, where a rule's name does not say enough. */
  readonly because: string;
  /** Left out: always asked. */
  readonly when?: (thing: T, job: Job) => boolean;
  /** The document cannot hold the thing without it. */
  readonly must?: true;
  /** The region brings a value; it counts once somebody has seen it. */
  readonly assumed?: true;
  /** Who brings it later; the survey closes without. */
  readonly later?: string;
  /** Values that come with the first answer, because the document cannot hold one without the other. */
  readonly brings?: (job: Job) => Readonly<Record<string, unknown>>;
  /** Taken back, the whole group goes: a motor without a kind is no motor. */
  readonly group?: string;
  /** Another field that answers the same, asked beside it where this one cannot be measured. */
  readonly or?: string;
}

/** Things of one sort at the house, as many as there are. */
export interface ThingList {
  /** Path below `facts`, with dots: `existing`. */
  readonly at: string;
  /** Of one: `wall`. */
  readonly one: string;
  readonly many: string;
  /** What is said where one looked and there is none; left out where a job needs at least one. */
  readonly none?: string;
  /** Whether the survey may close with nobody having looked. */
  readonly optional?: true;
  readonly because: string;
  readonly questions: readonly Question<never>[];
  /** A photograph of each. */
  readonly photo?: string;
  /** Lists inside each thing, by their path in it. */
  readonly inside?: readonly ThingList[];
}

/** Hazard and what to do, before the step. */
export interface SurveyCaution {
  readonly head: string;
  readonly body: string;
}

/** A photograph the survey wants, and the fact or group it shows. */
export interface WantedPhoto {
  /** Path below `facts` whose provenance names it: `board`. */
  readonly of: string;
  readonly what: string;
  /** Path of the question that is asked before it is taken: its answer decides what may be photographed. */
  readonly after?: string;
}

const number = (unit: string): Answer => ({ kind: 'number', unit });

/** Short ways to write answers down. */
export const answers = {
  number,
  text: { kind: 'text' },
  date: { kind: 'date' },
  conductor: { kind: 'conductor' },
  lines: { kind: 'lines' },
  plane: { kind: 'plane' },
  brought: { kind: 'brought' },
  yesNo: (yes = 'yes', no = 'no', caution?: string): Answer => ({
    kind: 'yes-no',
    yes,
    no,
    ...(caution === undefined ? {} : { caution }),
  }),
  pick: (...options: readonly (string | readonly [value: string, words: string, caution?: string])[]): Answer => ({
    kind: 'pick',
    options: options.map((option) => {
      if (typeof option === 'string') return { value: option, words: option };
      const [value, words, caution] = option;
      return caution === undefined ? { value, words } : { value, words, caution };
    }),
  }),
} as const satisfies Record<string, Answer | ((...given: never[]) => Answer)>;
