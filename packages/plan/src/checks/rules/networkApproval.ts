import { linesOf } from '../../supply.ts';
import { given, worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** The network's letter: is it here, and for as much as is fitted? */
export const networkApproval = rule({
  id: 'network-approval',
  sheet: '07',
  stops: true,
  question: 'Is the network’s answer here, for as much as is fitted?',
  judge({ facts: { network, supply }, board, pack }, limit) {
    const about = abouts.network('letter', 'The network’s letter');
    const name = network.name ?? `the ${pack.words.network}`;
    const needs = (['approvalNumber', 'approvalDate'] as const)
      .filter((fact) => network[fact] === undefined)
      .map((fact) => `facts.network.${fact}`);
    if (needs.length > 0) {
      return [
        {
          about,
          state: 'ask',
          title: `The letter of ${name} is not here.`,
          detail: `Wanted: ${limit.value}, and its date.`,
          needs,
        },
      ];
    }
    if (network.approvedVA === undefined) {
      return [
        {
          about,
          state: 'meets',
          title: `${name} answered under ${network.approvalNumber} on ${network.approvalDate}.`,
          detail: 'The letter’s figure in VA is not entered.',
        },
      ];
    }
    const fitted = (board.lineVA.L1 + board.lineVA.L2 + board.lineVA.L3) / 1000;
    const shown = showWithin(fitted, network.approvedVA / 1000, 'at most', 2);
    return [
      {
        about,
        title: `${shown.value} kVA are fitted. The letter of ${name} is for ${shown.limit} kVA.`,
        value: fitted,
        limit: network.approvedVA / 1000,
        unit: 'kVA',
        sense: 'at most',
        seen: 'network letter',
        working: worked(
          'Fitted',
          fitted,
          'kVA',
          'sum of the lines, solar and battery at their ratings',
          'equipment sheets',
          [
            ...linesOf(supply.system).map((line) =>
              worked(line, board.lineVA[line], 'VA', 'sum of the ratings on it', 'equipment sheets', []),
            ),
            given('approved', network.approvedVA, 'VA', 'facts.network.approvedVA', 'network letter'),
          ],
          { decimals: 2 },
        ),
        mends: [{ words: `Apply to ${name} again for what is fitted.` }],
      },
    ];
  },
});
