import type { SurveyStep, ThingList } from '@eaveline/job';
import type { SurveyStanding } from '@eaveline/plan';

/** Where in the survey an address leads. */
export type Place =
  | { readonly kind: 'start' | 'close' | 'paper' | 'lost' }
  | { readonly kind: 'step'; readonly step: SurveyStep; readonly after: SurveyStep | undefined }
  /** A thing of a list that is not in the job yet, and the step its list stands on. */
  | { readonly kind: 'draft'; readonly list: ThingList; readonly on: SurveyStep };

const NEW = /^(.+)\.new$/;

/** Reads the last part of an address: `board`, `roof.planes.west`, `walls.new`, `close`. */
export function placeOf(address: string | undefined, { steps }: Pick<SurveyStanding, 'steps'>): Place {
  if (address === undefined) return { kind: 'start' };
  if (address === 'close' || address === 'paper') return { kind: address };
  const at = NEW.exec(address)?.[1];
  if (at !== undefined) {
    const on = steps.find(({ lists }) => lists.some((list) => list.at === at));
    const list = on?.lists.find((each) => each.at === at);
    return on === undefined || list === undefined ? { kind: 'lost' } : { kind: 'draft', list, on };
  }
  const index = steps.findIndex(({ id }) => id === address);
  const step = steps[index];
  return step === undefined ? { kind: 'lost' } : { kind: 'step', step, after: steps[index + 1] };
}

/** Where one goes on: the first place with something open, else the closing. */
export function goesOnAt({ steps, holes }: Pick<SurveyStanding, 'steps' | 'holes'>): { id: string; name: string } {
  const open = steps.find(({ id }) => holes.some(({ step }) => step === id));
  return open ?? { id: 'close', name: 'close the survey' };
}
