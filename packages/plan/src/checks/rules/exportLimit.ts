import type { LineName } from '@eaveline/job';
import { linesOf } from '../../supply.ts';
import { given, worked } from '../../working.ts';
import { abouts, withArticle } from '../abouts.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** What the sources of a line, or of all, give together, and what of it was there before. */
interface Going {
  readonly fullVA: number;
  readonly thereVA: number;
}

const goesOutVA = ({ fullVA, thereVA }: Going, setVA: number | undefined) =>
  setVA === undefined ? fullVA : Math.min(fullVA, Math.max(setVA, thereVA));

/**
 * Export limit: is what can go out held to what the network lets out?
 *
 * What can go out is everything the units and the solar that was there give with nothing on; with a limit set, that
 * much, for it is held at the point of supply, by the units alone: solar that was there goes out whatever is set. The
 * battery is taken to be set not to export.
 */
export const exportLimit = rule({
  id: 'export-limit',
  sheet: '07',
  stops: true,
  question: 'Is export held to what the network lets out?',
  judge({ facts: { network, supply }, choices, trunks, board, pack }, limit): Judged[] {
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
    const thereVA = (line: LineName) => board.thereA[line] * supply.nominalV;
    const fullVA = (line: LineName) => trunks.lineVA[line] + thereVA(line);
    // the line that is fullest may not be the one with most solar of before: each is held by itself
    const onLine = (line: LineName): Going => ({ fullVA: fullVA(line), thereVA: thereVA(line) });
    const inSum: Going = {
      fullVA: lines.reduce((sum, line) => sum + fullVA(line), 0),
      thereVA: lines.reduce((sum, line) => sum + thereVA(line), 0),
    };
    const cases = [
      ...(perLine === undefined
        ? []
        : [
            {
              id: 'export-line',
              where: ` on ${withArticle(pack.words.line)}`,
              limitVA: perLine,
              going: lines.map(onLine),
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
              going: [inSum],
              at: 'facts.network.exportLimitVATotal',
            },
          ]),
    ];
    return cases.map(({ id, where, limitVA, going, at }): Judged => {
      // what is set counts a line where the network counts lines, else the sum
      const setCounts = perLine === undefined || id === 'export-line';
      const setVA = setCounts ? choices.exportLimitSetVA : undefined;
      const worst = going.reduce((one, other) => (goesOutVA(other, setVA) > goesOutVA(one, setVA) ? other : one));
      const value = goesOutVA(worst, setVA);
      const before = Math.max(...going.map((each) => each.thereVA));
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
            : 'the lesser of the ratings and what is set; solar that was there is not held',
          'equipment sheets and the job',
          [
            worked(
              worst.thereVA > 0 ? 'ratings of the units and of the solar that was there' : 'ratings of the units',
              worst.fullVA,
              'VA',
              id === 'export-line' ? 'the fullest line' : 'all lines',
              worst.thereVA > 0 ? 'equipment sheets, survey' : 'equipment sheets',
              [],
            ),
            ...(worst.thereVA > 0
              ? [
                  {
                    name: 'solar that was there',
                    value: worst.thereVA,
                    unit: 'VA',
                    source: 'survey: its rated current at nominal voltage',
                  },
                ]
              : []),
            ...(setVA === undefined ? [] : [given('limit set', setVA, 'VA', 'choices.exportLimitSetVA')]),
            given('limit of the network', limitVA, 'VA', at, 'network letter'),
          ],
          { decimals: 2 },
        ),
        mends:
          before > limitVA
            ? [
                {
                  words:
                    'The solar that was there gives more than that by itself: ask the network, or have it held too.',
                },
              ]
            : setCounts
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
