import { mixedColours } from '@eaveline/job';
import { caution, gap, type Part } from '../page/index.ts';
import type { Pack } from './packContext.ts';

/** The caution of a board of two colour schemes, above what goes by its colours. None where there is one scheme. */
export function mixedColoursPart({ job }: Pack): Part[] {
  return job.facts.board.wiringMixed ? [caution(mixedColours.head, mixedColours.body), gap(3)] : [];
}
