import { sheetOf, sheetsOfKind } from '../../equipment.ts';
import type { Mend } from '../../finding.ts';
import type { IslandNeutral } from '../../rules/ruleLimits.ts';
import { abouts } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { type Judged, rule } from '../rule.ts';

const WANTED: Readonly<Record<IslandNeutral, string>> = {
  'grid neutral stays': 'The grid’s neutral and its earth link stay through here.',
  'bond relay and own electrode': 'An island makes its own earth here: a bond relay and an electrode.',
  'bond stays at the service': 'The bond stays at the service here.',
};

/** Island earthing: does the neutral come to earth in island the way the region wants, and only once? */
export const islandEarthing = rule({
  id: 'island-earthing',
  sheet: '06',
  stops: true,
  question: 'Does the neutral come to earth in island the way the region wants?',
  judge(context, { value: wanted }): Judged[] {
    const { choices, facts } = context;
    const { backup } = choices;
    if (backup === undefined) return [];
    const about = abouts.backup('earthing', 'Earth in island');
    const changeover = sheetOf(choices.equipment, backup.changeoverSheet, 'changeover');
    const wantsRelay = wanted === 'bond relay and own electrode';
    if (changeover.bondRelay !== wantsRelay) {
      return [
        {
          about,
          state: 'fails',
          title: `${changeover.name} ${changeover.bondRelay ? 'joins neutral and earth' : 'has no bond relay'} in island. ${WANTED[wanted]}`,
          mends: [otherChangeover(context, wantsRelay)],
        },
      ];
    }
    if (!wantsRelay)
      return [{ about, state: 'meets', title: `${changeover.name} leaves the neutral alone. ${WANTED[wanted]}` }];

    const electrode = backup.electrode ?? facts.board.electrode;
    if (electrode === undefined) {
      return [
        {
          about,
          state: 'ask',
          title: `${changeover.name} has its bond relay. Is there an earth electrode of the house’s own?`,
          needs: ['facts.board.electrode'],
        },
      ];
    }
    if (!electrode) {
      return [
        {
          about,
          state: 'fails',
          title: `${changeover.name} bonds to an earth that goes with the grid: no electrode is there or chosen.`,
          mends: [
            { words: 'Drive an electrode.', changes: [{ path: ['choices', 'backup', 'electrode'], value: true }] },
          ],
        },
      ];
    }
    return [{ about, state: 'meets', title: `${changeover.name} has its bond relay, and the house its electrode.` }];
  },
});

function otherChangeover({ choices, facts }: CheckContext, wantsRelay: boolean): Mend {
  const fit = sheetsOfKind(choices.equipment, 'changeover').find(
    ({ sheet }) =>
      sheet.bondRelay === wantsRelay &&
      sheet.supply === facts.supply.system &&
      sheet.backupLines >= (choices.backup?.lines.length ?? 1),
  );
  if (fit === undefined) {
    return { words: `Choose a changeover ${wantsRelay ? 'with' : 'without'} a bond relay.` };
  }
  return {
    words: `Use ${fit.sheet.name}.`,
    changes: [{ path: ['choices', 'backup', 'changeoverSheet'], value: fit.id }],
  };
}
