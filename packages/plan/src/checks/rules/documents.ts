import type { RulePack } from '../../rules/pack.ts';
import { BEGUN } from '../begun.ts';
import type { CheckContext } from '../context.ts';
import { type Judged, rule } from '../rule.ts';

type Paper = RulePack['documents'][number];

/**
 * Documents: is every paper there that somebody else gives, when it has to be?
 *
 * A permission is asked for until it is signed, and missing once work has begun. A certificate can only follow the
 * work: it is missing once the job is handed over, and asked for when it is tested. The network's own letter is
 * known by its number, which another rule asks for.
 */
export const documents = rule({
  id: 'documents',
  sheet: '12',
  stops: false,
  question: 'Is every paper there that the job needs by now?',
  judge: (context) => context.pack.documents.flatMap((paper) => judgePaper(paper, context)),
});

function judgePaper(paper: Paper, { signed, state, facts }: CheckContext): readonly Judged[] {
  const { id, name, who, clause, seen } = paper;
  const about = { kind: 'document' as const, id, name };
  const from = { clause, document: clause, seen };
  const numbered = paper.first === 'network' && facts.network.approvalNumber !== undefined;
  if (signed.includes(`document:${id}`) || numbered) {
    return [{ about, state: 'meets', title: `${name}: there.`, from }];
  }
  const due = paper.first === undefined ? state === 'handed over' : BEGUN.includes(state);
  if (due) {
    return [
      {
        about,
        state: 'fails',
        title: `${name}: missing, and the job is ${state}.`,
        from,
        mends: [{ words: `Get it from the ${who}, and record the signature.` }],
      },
    ];
  }
  if (paper.first === undefined && state !== 'tested') return [];
  // until then `network-approval` asks for the number
  if (paper.first === 'network') return [];
  return [
    {
      about,
      state: 'ask',
      title: `${name}: not here yet. It comes from the ${who}.`,
      from,
      needs: [`records.signatures, document:${id}`],
    },
  ];
}
