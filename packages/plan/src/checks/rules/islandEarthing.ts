import { sheetOf, sheetsOfKind } from '../../equipment.ts';
import type { Mend } from '../../finding.ts';
import { abouts } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { type Judged, rule } from '../rule.ts';

/**
 * Earth in an island: is the neutral earthed the way the region wants it?
 *
 * One region keeps the grid's neutral through; one wants a relay that bonds neutral to earth, and an electrode of
 * the house's own; one keeps the bond at the service.
 */
export const islandEarthing = rule({
  id: 'island-earthing',
  sheet: '06',
  stops: true,
  question: 'Is the neutral earthed in an island?',
  judge(context, limit): Judged[] {
    const { choices, facts, pack } = context;
    if (choices.backup === undefined) return [];
    const about = abouts.backup('earth', 'Earth in an island');
    const changeover = sheetOf(choices.equipment, choices.backup.changeoverSheet, 'changeover');
    const wantsRelay = limit.value === 'bond relay and own electrode';
    if (changeover.bondRelay !== wantsRelay) {
      return [
        {
          about,
          state: 'fails',
          title: wantsRelay
            ? `${changeover.name} joins no neutral to ${pack.words.earth} in an island.`
            : `${changeover.name} switches a bond in an island. Here the ${limit.value}.`,
          detail: wantsRelay
            ? 'Without it every residual device is blind with the grid gone.'
            : 'Two bonds put current in the earth.',
          mends: [otherChangeover(context, wantsRelay)],
        },
      ];
    }
    if (!wantsRelay) {
      return [{ about, state: 'meets', title: `In an island the ${limit.value}.` }];
    }
    const electrode = choices.backup.electrode ?? facts.board.electrode;
    if (electrode === undefined) {
      return [
        {
          about,
          state: 'ask',
          title: 'Has the house an electrode of its own?',
          detail: 'An island may not rely on the distributor’s earth.',
          needs: ['facts.board.electrode'],
        },
      ];
    }
    return electrode
      ? [{ about, state: 'meets', title: 'In an island a relay bonds the neutral to the house’s own electrode.' }]
      : [
          {
            about,
            state: 'fails',
            title: 'The house has no electrode of its own. An island may not rely on the distributor’s earth.',
            mends: [
              {
                words: 'Drive an electrode and test it.',
                changes: [{ path: ['choices', 'backup', 'electrode'], value: true }],
              },
            ],
          },
        ];
  },
});

function otherChangeover({ choices, facts }: CheckContext, bondRelay: boolean): Mend {
  const lines = choices.backup?.lines.length ?? 1;
  const other = sheetsOfKind(choices.equipment, 'changeover').find(
    ({ sheet }) => sheet.bondRelay === bondRelay && sheet.supply === facts.supply.system && sheet.backupLines >= lines,
  );
  return other === undefined
    ? {
        words: bondRelay
          ? 'Choose a changeover with a bond relay.'
          : 'Choose a changeover that leaves the neutral through.',
      }
    : {
        words: `Choose ${other.sheet.name}.`,
        changes: [{ path: ['choices', 'backup', 'changeoverSheet'], value: other.id }],
      };
}
