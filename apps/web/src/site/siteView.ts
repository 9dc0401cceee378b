import type { SheetView } from '../desk/sheetView.ts';
import { workingSubjects } from '../pad/subject.ts';
import { headOfSite } from './headOfSite.ts';
import { SiteSheet } from './SiteSheet.tsx';

/** Sheet 01. */
export const siteView: SheetView = {
  head: (plan, job) => headOfSite(plan, job.name),
  subjects: ({ site, sun }) => [
    ...workingSubjects('site', site.workings),
    ...workingSubjects('sun', sun.workings),
    ...(sun.workings[0] === undefined ? [] : [{ id: 'climate', name: 'Sun on the level', working: sun.workings[0] }]),
  ],
  first: () => 'climate',
  leavesOut: ({ site, sun }) => [...site.leavesOut, ...sun.leavesOut],
  shows: 'place and supply',
  Body: SiteSheet,
};
