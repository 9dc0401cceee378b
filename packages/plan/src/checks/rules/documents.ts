import { type Judged, rule } from '../rule.ts';

/**
 * Documents: is every paper of the region signed before the job is handed over?
 *
 * Silent until the tests are done: before that nobody could sign. A signature is a record of `document:<id>`.
 */
export const documents = rule({
  id: 'documents',
  sheet: '12',
  stops: false,
  question: 'Is every paper signed before handover?',
  judge({ state, signed, pack }): Judged[] {
    if (state !== 'tested' && state !== 'handed over') return [];
    return pack.documents.map((paper): Judged => {
      const about = { kind: 'document' as const, id: paper.id, name: paper.name };
      if (signed.includes(`document:${paper.id}`)) {
        return { about, state: 'meets', title: `${paper.name}: signed.`, seen: paper.seen };
      }
      return state === 'tested'
        ? {
            about,
            state: 'ask',
            title: `${paper.name}: not signed yet.`,
            detail: `Signs: ${paper.who}. ${paper.clause}.`,
            needs: ['records.signatures'],
          }
        : {
            about,
            state: 'fails',
            title: `Handed over without ${paper.name}.`,
            detail: `Signs: ${paper.who}. ${paper.clause}.`,
            mends: [{ words: `Have it signed: ${paper.who}.` }],
          };
    });
  },
});
