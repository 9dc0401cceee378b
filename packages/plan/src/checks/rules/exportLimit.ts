import { linesOf } from '../../supply.ts';
import { given, worked } from '../../working.ts';
import { abouts, withArticle } from '../abouts.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/**
 * Export limit: is what can go out held to what the network lets out?
 *
 * What can go out is the limit set on the system, else everything the units give with nothing on. The battery is
 * taken to be set not to export.
 */
export const exportLimit = rule({
  id: 'export-limit',
  sheet: '07',
  stops: true,
  question: 'Is export held to what the network lets out?',
  judge({ facts: { network, supply }, choices, trunks, pack }, limit): Judged[] {
    const about = abouts.network('export', 'Export');
    const perLine = network.exportLimitVAPerLine;
    const total = network.exportLimitVATotal;
    if (perLine === undefined && total === undefined) {
      return [
        {
          about,
          state: 'ask',
          title: `What does the ${pack.words.network} let out?`,
          detail:
            limit.value > 0
              ? `Until its letter is here, ${(limit.value / 1000).toFixed(2)} kVA on each ${pack.words.line} is taken.`
              : 'Only its letter says.',
          needs: ['facts.network.exportLimitVAPerLine', 'facts.network.exportLimitVATotal'],
        },
      ];
    }
    const lines = linesOf(supply.system);
    const cases = [
      ...(perLine === undefined
        ? []
        : [
            {
              id: 'export-line',
              where: ` on ${withArticle(pack.words.line)}`,
              limitVA: perLine,
              fullVA: Math.max(...lines.map((line) => trunks.lineVA[line])),
              at: 'facts.network.exportLimitVAPerLine',
            },
          ]),
      ...(total === undefined
        ? []
        : [
            {
              id: 'export-sum',
              where: ' in sum',
              limitVA: total,
              fullVA: lines.reduce((sum, line) => sum + trunks.lineVA[line], 0),
              at: 'facts.network.exportLimitVATotal',
            },
          ]),
    ];
    return cases.map(({ id, where, limitVA, fullVA, at }): Judged => {
      // what is set counts a line where the network counts lines, else the sum
      const setCounts = perLine === undefined || id === 'export-line';
      const setVA = setCounts ? choices.exportLimitSetVA : undefined;
      const value = Math.min(fullVA, setVA ?? fullVA);
      const shown = showWithin(value / 1000, limitVA / 1000, 'at most', 2);
      return {
        about: abouts.network(id, 'Export'),
        title: `${shown.value} kVA can go out${where}. The ${pack.words.network} lets ${shown.limit} kVA out.`,
        value: value / 1000,
        limit: limitVA / 1000,
        unit: 'kVA',
        sense: 'at most',
        seen: 'network letter',
        working: worked(
          `What can go out${where}`,
          value / 1000,
          'kVA',
          setVA === undefined
            ? 'ratings of the units, the house taking nothing'
            : 'the lesser of the ratings and what is set',
          'equipment sheets and the job',
          [
            worked(
              'ratings of the units',
              fullVA,
              'VA',
              id === 'export-line' ? 'the fullest line' : 'all lines',
              'equipment sheets',
              [],
            ),
            ...(setVA === undefined ? [] : [given('limit set', setVA, 'VA', 'choices.exportLimitSetVA')]),
            given('limit of the network', limitVA, 'VA', at, 'network letter'),
          ],
          { decimals: 2 },
        ),
        mends: setCounts
          ? [
              {
                words: `Set the export limit to ${(limitVA / 1000).toFixed(2)} kVA${where}.`,
                value: limitVA / 1000,
                changes: [{ path: ['choices', 'exportLimitSetVA'], value: limitVA }],
              },
            ]
          : [{ words: 'Set a limit on the sum as well, or fit fewer units.' }],
      };
    });
  },
});
