import { abouts } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { type Judged, rule } from '../rule.ts';
import { planesUsed } from './roofMeasures.ts';

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
  judge: (context, limit) => planesUsed(context).map((id) => judgePlane(context, id, limit.value)),
});

function judgePlane({ facts }: CheckContext, id: string, year: number): Judged {
  const plane = facts.roof.planes[id];
  if (plane === undefined) throw new Error(`plane '${id}' is not in the job`);
  const about = abouts.plane(id, plane.name);
  if (plane.asbestos === 'yes') {
    return {
      about,
      state: 'fails',
      title: `${plane.name}: the covering holds asbestos. Nobody drills it.`,
      mends: [{ words: 'A licensed remover takes it off first, or the array goes elsewhere.' }],
    };
  }
  if (plane.asbestos === 'no') return { about, state: 'meets', title: `${plane.name}: no asbestos in the covering.` };

  const built = facts.site.yearBuilt;
  const needs = [`facts.roof.planes.${id}.asbestos`];
  if (plane.asbestos === undefined && !MAY_HOLD.includes(plane.covering)) {
    return {
      about,
      state: 'meets',
      title: `${plane.name}: ${plane.covering.replace('-', ' ')}, made without asbestos.`,
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
