import type { Finding } from '../../finding.ts';
import { linesOf } from '../../supply.ts';
import type { Line } from '../../trunks/types.ts';
import { worked } from '../../working.ts';
import { abouts, plural, withArticle } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

const AFTER_THE_LETTER: readonly CheckContext['state'][] = ['booked', 'on site', 'tested', 'handed over'];

/**
 * The network's threshold: on which side of it does the job fall, with the solar alone and with the battery?
 *
 * Above it nothing is wrong, but the network is asked first: it asks until the answer's number is here, and fails
 * once the job goes on without it or the answer is for less than is fitted.
 */
export const networkThreshold = rule({
  id: 'network-threshold',
  sheet: '07',
  stops: true,
  question: 'Which side of the network’s threshold does the job fall on?',
  judge(context, limit): Judged[] {
    const { trunks, board, facts, choices, pack } = context;
    const lines = linesOf(facts.supply.system);
    const { unit } = limit.value;
    const most = lines.length === 3 ? limit.value.threePhase : limit.value.onePhase;
    const each = (of: Record<'lineA' | 'lineVA', Readonly<Record<Line, number>>>) => (line: Line) =>
      (unit === 'A' ? of.lineA : of.lineVA)[line];
    // the network counts what stood there before: the two feed together
    const there = (line: Line) => board.thereA[line] * (unit === 'A' ? 1 : facts.supply.nominalV);
    const cases = [
      { id: 'solar', words: 'Solar alone', ofLine: (line: Line) => each(trunks)(line) + there(line) },
      ...(Object.keys(choices.batteries).length > 0
        ? [{ id: 'with-battery', words: 'Solar and battery', ofLine: each(board) }]
        : []),
    ]
      .map((one) => ({ ...one, value: Math.max(...lines.map(one.ofLine)) }))
      .filter(({ value }) => value > 0);
    const unitA = Math.max(0, ...trunks.trunks.map((trunk) => trunk.unitA));

    return cases.map(({ id, words, value, ofLine }): Judged => {
      const scale = unit === 'VA' ? 1000 : 1;
      const shown = showWithin(value / scale, most / scale, 'at most', 1);
      const unitWord = unit === 'VA' ? 'kVA' : 'A';
      const above = !isWithin(value, most, 'at most');
      const state = answered(context);
      return {
        about: abouts.network(id, words),
        title: `${words}: ${shown.value} ${unitWord} on ${withArticle(pack.words.line)}. ${shown.limit} ${unitWord} is the edge: ${above ? limit.value.above : limit.value.below}.`,
        ...(limit.note === undefined ? {} : { detail: limit.note }),
        working: worked(
          `${words}, the fullest line`,
          value / scale,
          unitWord,
          'the greatest of the lines, everything at its rating',
          'Kirchhoff’s laws',
          lines.map((line) =>
            worked(line, ofLine(line) / scale, unitWord, 'sum of the ratings on it', 'equipment sheets', [], {
              decimals: 1,
            }),
          ),
          { decimals: 1 },
        ),
        // the edge is no limit once the network has answered for what is fitted
        ...(above && state === 'meets'
          ? { state }
          : {
              value: value / scale,
              limit: most / scale,
              unit: unitWord,
              sense: 'at most',
              ...(above ? { state } : {}),
            }),
        needs: ['facts.network.approvalNumber', 'facts.network.approvedVA'],
        mends: [
          { words: `Apply to the ${pack.words.network} and wait for the answer.` },
          ...(unit === 'A' && id === 'solar' && unitA > 0
            ? [
                {
                  words: `Or stay at ${plural(Math.floor(most / unitA + 1e-9), 'unit')} on ${withArticle(pack.words.line)}.`,
                },
              ]
            : []),
        ],
      };
    });
  },
});

/** How a job above the threshold stands with its network. */
function answered({ facts: { network }, board, state }: CheckContext): Finding['state'] {
  const fittedVA = board.lineVA.L1 + board.lineVA.L2 + board.lineVA.L3;
  if (network.approvalNumber === undefined) return AFTER_THE_LETTER.includes(state) ? 'fails' : 'ask';
  if (network.approvedVA === undefined) return 'ask';
  return isWithin(fittedVA, network.approvedVA, 'at most') ? 'meets' : 'fails';
}
