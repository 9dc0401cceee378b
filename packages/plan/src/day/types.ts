import type { Working } from '../working.ts';

export interface DayTask {
  /** `feet:north`. */
  readonly id: string;
  readonly name: string;
  readonly place: 'roof' | 'board' | 'battery' | 'ground' | 'all';
  readonly who: string;
  readonly electricians: number;
  readonly people: number;
  readonly hours: { readonly low: number; readonly likely: number; readonly high: number };
  readonly after: readonly string[];
  /** Hold point that must be signed after it: `H3 attic look, torque sample 10 %`. */
  readonly hold?: string;
  /** Caution printed before it. */
  readonly caution?: string;
  readonly steps: readonly string[];
  readonly doneBefore: boolean;
  /** Placed by the plan: day from 1, hours from the start of that day. Undefined where done before. */
  readonly day?: number;
  readonly startH?: number;
  readonly endH?: number;
  /** Every stretch of it, where the end of a day breaks it off. */
  readonly parts: readonly { readonly day: number; readonly startH: number; readonly endH: number }[];
  readonly working: Working;
}

export interface DayPlan {
  readonly tasks: readonly DayTask[];
  readonly crew: { readonly electricians: number; readonly people: number; readonly names: readonly string[] };
  /** Fewest days in which it is done with the wanted chance. */
  readonly days: number;
  /** The chance a number of days is promised with. */
  readonly wantedChance: number;
  /** Days the tasks fill when every one takes its likely hours: how they are placed below. */
  readonly likelyDays: number;
  /** Chance that it is done in this many days: seeded trials. */
  readonly chanceByDays: readonly {
    readonly days: number;
    readonly chance: number;
    readonly interval: readonly [number, number];
  }[];
  readonly trials: number;
  /** Working hours in all, and the bound no order can beat. */
  readonly hours: number;
  readonly boundHours: number;
  /** What done the day before would save: each single task, then the smallest set found that saves a whole day. */
  readonly ahead: readonly {
    readonly taskIds: readonly string[];
    readonly words: string;
    readonly savesHours: number;
    readonly days: number;
    readonly chance: number;
    /** Chance that it is done in one day less than the plan's own number of days. */
    readonly chanceOneDayLess: number;
  }[];
  readonly dusk?: { readonly date: string; readonly setH: number };
  readonly outage?: { readonly fromH: number; readonly toH: number; readonly day: number };
  /** Longest chain of tasks, by id. */
  readonly critical: readonly string[];
  /** Undefined when the crew cannot do the work at all: then `refusal` says why. */
  readonly refusal?: string;
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}
