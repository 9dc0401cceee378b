import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import type { ComponentType } from 'react';
import type { Head } from '../frame/head.ts';
import type { Subject } from '../pad/subject.ts';

/** What a sheet's drawing or list is given. */
export interface SheetProps {
  readonly plan: Plan;
  readonly job: Job;
  /** Id of the subject selected on this sheet. */
  readonly selected: string | undefined;
  readonly onSelect: (id: string) => void;
}

/** One sheet: how it opens, what can be selected on it, what it shows. */
export interface SheetView {
  readonly head: (plan: Plan, job: Job) => Head;
  readonly subjects: (plan: Plan, job: Job) => readonly Subject[];
  /** What the pad shows before anything is selected: what matters most here. Where left out, the first that does not meet. */
  readonly first?: (plan: Plan) => string | undefined;
  readonly leavesOut: (plan: Plan) => readonly string[];
  /** For the title block: what is drawn. */
  readonly shows: string;
  readonly Body: ComponentType<SheetProps>;
}
