import type { Asked } from '@eaveline/job';
import type { OnQuestion } from './useAnswer.ts';

/** What every way of answering a question is handed. */
export interface AskControlProps {
  readonly asked: Asked;
  readonly on: OnQuestion;
  /** Id of the field; `-ask` and `-how` behind it name the question and how it is measured. */
  readonly id: string;
}
