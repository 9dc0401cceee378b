import { caution, gap, headline, type Part, paragraph, type Sheet, together } from '../page/index.ts';
import { cautionsFor } from './cautionTexts.ts';
import type { Pack } from './packContext.ts';
import { pagesOf } from './pagesOf.ts';

/** What can hurt somebody in this job, step by step, before the step. */
export function cautionPages(pack: Pack): Sheet[] {
  const parts = cautionsFor(pack.job).map(
    ({ step, head, body }): Part => together(gap(2), paragraph(step, { weight: 700 }), gap(0.5), caution(head, body)),
  );
  return pagesOf(pack, { no: '10.C', title: 'Cautions' }, [
    headline(
      'Read each before its step. The licensed person decides.',
      'Usual practice, not law. The law of the place, the network and the makers’ sheets come first.',
    ),
    ...parts,
  ]);
}
