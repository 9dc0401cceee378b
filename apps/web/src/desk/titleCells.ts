import { designSignature, type Job, signedWords } from '@eaveline/job';
import type { Plan, SheetNo } from '@eaveline/plan';
import { sheetName } from '../frame/sheetNames.ts';
import type { TitleCell } from '../frame/TitleBlock.tsx';
import type { OpenJob } from '../job/jobSession.ts';
import { clock } from '../words/clock.ts';
import { figure } from '../words/figure.ts';
import { planFor } from './sheetStages.ts';

/** `normals, 21 km off`: every sheet says which weather its figures stand on. */
export function weatherWords({ site: { climate } }: Plan): string {
  const kind = climate.kind === 'weather file' ? 'file' : 'normals';
  return climate.distanceKm === undefined
    ? `${kind}, place not known`
    : `${kind}, ${figure(climate.distanceKm, 0)} km off`;
}

function hour(date: Date): string {
  return clock(date.getHours() + date.getMinutes() / 60);
}

/** Cells of a job's title block: whose sheet it is, what fixed it, when it was worked out. */
export function titleCells(no: SheetNo, shows: string, open: OpenJob): TitleCell[] {
  const { job, stale, workedOutAt } = open;
  const plan = planFor(no, open);
  const { present, wanted } = plan?.site.survey ?? {};
  return [
    { what: 'job', says: job.name, strong: true },
    { what: 'sheet', says: `${no} ${sheetName(no)}`, strong: true },
    { what: 'shows', says: shows, spare: true },
    ...(plan === undefined ? [] : [{ what: 'weather', says: weatherWords(plan) }]),
    ...(present === undefined ? [] : [{ what: 'facts known', says: `${present} of ${wanted}` }]),
    {
      what: 'worked out',
      says: workedOutAt === undefined ? 'not yet' : stale ? `${hour(workedOutAt)}, before` : hour(workedOutAt),
    },
    { what: 'checked', says: checkedWords(job), spare: true },
  ];
}

/** `Nia, 12 May 2026`, `Nia, for an earlier design`, `not signed`. */
function checkedWords(job: Job): string {
  const { who, when } = signedWords(designSignature(job));
  return when === '' ? who : `${who}, ${when}`;
}
