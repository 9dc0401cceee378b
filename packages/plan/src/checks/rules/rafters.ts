import type { PlaneFacts } from '@eaveline/job';
import type { Rail } from '../../array/types.ts';
import { abouts } from '../abouts.ts';
import { planesInUse } from '../planesInUse.ts';
import { type Judged, rule } from '../rule.ts';

/** Rafters: does every foot stand on a rafter that somebody found? */
export const rafters = rule({
  id: 'rafters',
  question: 'Does every foot stand on a known rafter?',
  sheet: '03',
  stops: true,
  judge: (context) => planesInUse(context).map(({ id, facts }) => judgePlane(id, facts, context.array.rails)),
});

function judgePlane(id: string, plane: PlaneFacts, all: readonly Rail[]): Judged {
  const about = abouts.plane(id, plane.name);
  const at = `facts.roof.planes.${id}.rafters`;
  const { firstMm, spacingMm } = plane.rafters;
  const needs = [
    ...(firstMm === undefined ? [`${at}.firstMm`] : []),
    ...(spacingMm === undefined ? [`${at}.spacingMm`] : []),
  ];
  if (needs.length > 0) {
    return {
      about,
      state: 'ask',
      title: `${plane.name}: where are the rafters? Its feet are drawn at nominal places.`,
      detail: needs.length === 2 ? 'First rafter and spacing were not taken.' : `Not taken: ${wordsOf(needs)}.`,
      needs,
      // a foot in no rafter is no matter of practice
      seen: 'job',
    };
  }
  const rails = all.filter(({ planeId }) => planeId === id);
  const adrift = rails.filter(({ onRafters, feet }) => !onRafters || feet.some(({ rafter }) => rafter === undefined));
  if (adrift.length > 0) {
    return {
      about,
      state: 'fails',
      title: `${plane.name}: ${adrift.map(({ name }) => name).join(', ')} find no rafters to stand on.`,
      mends: [{ words: 'Move the rows over rafters, or put blocking between them.' }],
      seen: 'job',
    };
  }
  const feet = rails.reduce((sum, rail) => sum + rail.feet.length, 0);
  return { about, state: 'meets', title: `${plane.name}: ${feet} feet, each on a rafter, ${spacingMm} mm apart.` };
}

function wordsOf(needs: readonly string[]): string {
  return needs[0]?.endsWith('firstMm') === true ? 'the first rafter' : 'the spacing';
}
