import type { PlaneFacts } from '@eaveline/job';
import { abouts } from '../abouts.ts';
import { planesInUse } from '../planesInUse.ts';
import { type Judged, rule } from '../rule.ts';

/** Coverings that were made of fibre cement; sheet steel and felt shingles were not, but a survey may still doubt. */
const MAY_HOLD = ['slate', 'concrete-tile', 'clay-tile'];

/**
 * Asbestos: is the covering known to be free of it before anybody drills?
 *
 * A sample or the maker's mark answers. A covering that was doubted, or one of a kind that was made with it on a
 * building old enough, stays open until then.
 */
export const asbestos = rule({
  id: 'asbestos',
  question: 'Is the covering known to be free of asbestos?',
  sheet: '02',
  stops: true,
  judge: (context, limit) =>
    planesInUse(context).map(({ id, facts }) => judgePlane(id, facts, context.facts.site.yearBuilt, limit.value)),
});

function judgePlane(id: string, plane: PlaneFacts, built: number | undefined, year: number): Judged {
  const about = abouts.plane(id, plane.name);
  if (plane.asbestos === 'yes') {
    return {
      about,
      state: 'fails',
      title: `${plane.name}: the covering holds asbestos. Nobody drills it.`,
      mends: [{ words: 'A licensed remover takes it off first, or the array goes elsewhere.' }],
    };
  }
  if (plane.asbestos === 'no')
    return { about, state: 'meets', title: `${plane.name}: no asbestos in the covering.`, seen: 'job' };

  const needs = [`facts.roof.planes.${id}.asbestos`];
  if (plane.asbestos === undefined && !MAY_HOLD.includes(plane.covering)) {
    return {
      about,
      state: 'meets',
      title: `${plane.name}: ${plane.covering.replace('-', ' ')}, made without asbestos.`,
      seen: 'practice',
    };
  }
  if (plane.asbestos === undefined && built !== undefined && built >= year) {
    return { about, state: 'meets', title: `${plane.name}: built ${built}, after asbestos went out of roofs.` };
  }
  return {
    about,
    state: 'ask',
    title: `${plane.name}: does the covering hold asbestos? Until a sample says no, treat it as yes.`,
    detail: built === undefined ? 'The year of the building is not known.' : `The building is of ${built}.`,
    needs: built === undefined ? [...needs, 'facts.site.yearBuilt'] : needs,
  };
}
