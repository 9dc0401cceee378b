import type { SheetView } from '../desk/sheetView.ts';
import { workingSubjects } from '../pad/subject.ts';
import { sentence } from '../words/count.ts';
import { withUnit } from '../words/figure.ts';
import { headOfSite } from './headOfSite.ts';
import { SiteSheet } from './SiteSheet.tsx';

/** Sheet 01. */
export const siteView: SheetView = {
  head: (plan, job) => headOfSite(plan, job.name),
  subjects: ({ site, sun }, { facts }) => [
    ...workingSubjects('site', site.workings),
    ...workingSubjects('sun', sun.workings),
    ...(sun.workings[0] === undefined ? [] : [{ id: 'climate', name: 'Sun on the level', working: sun.workings[0] }]),
    ...Object.entries(facts.site.objects).map(([id, { name, kind, heightM, widthM }]) => ({
      id: `object:${id}`,
      name,
      words: [
        `A ${kind}, ${withUnit(heightM, 'm')} high and ${withUnit(widthM, 'm')} wide. It throws its shadow on the planes.`,
      ],
    })),
    ...Object.entries(facts.existing).map(([id, { name, kind, ratedA, lines }]) => ({
      id: `existing:${id}`,
      name,
      words: [`${sentence(kind)}, ${withUnit(ratedA, 'A')} on ${lines.join(' and ')}. It was there before.`],
    })),
  ],
  first: () => 'climate',
  leavesOut: ({ site, sun }) => [...site.leavesOut, ...sun.leavesOut],
  shows: 'place and supply',
  Body: SiteSheet,
};
