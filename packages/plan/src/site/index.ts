import type { SiteFacts } from '@eaveline/job';
import type { Stage } from '../stage.ts';
import { type Working, worked } from '../working.ts';
import { climateFromFile, climateFromNormals } from './climateOf.ts';
import { givenPlace } from './givenPlace.ts';
import type { Climate, SitePlan } from './types.ts';
import { type WantedFact, wantedFacts } from './wantedFacts.ts';

/** What the site depends on: its own facts, and of all others only whether they are there. */
export interface SiteView {
  readonly site: Pick<
    SiteFacts,
    'latitudeDeg' | 'longitudeDeg' | 'zone' | 'elevationM' | 'recordLowC' | 'recordHighC' | 'recordSource'
  >;
  readonly wanted: readonly WantedFact[];
}

/** The place: its climate, its records, and what the survey still lacks. */
export const siteStage: Stage<'site', never, SiteView> = {
  name: 'site',
  before: [],
  view: (job) => {
    const { latitudeDeg, longitudeDeg, elevationM, zone, recordLowC, recordHighC, recordSource } = job.facts.site;
    return {
      site: { latitudeDeg, longitudeDeg, elevationM, zone, recordLowC, recordHighC, recordSource },
      wanted: wantedFacts(job),
    };
  },
  run: ({ site, wanted }, _, { weather }): SitePlan => {
    const { climate, heightM } = weather ? climateFromFile(weather, site) : climateFromNormals(site);
    const missing = wanted
      .filter(({ present }) => !present)
      .map(({ at, what, rules, from }) => ({ at, what, rules, from }));
    return {
      latitudeDeg: site.latitudeDeg,
      longitudeDeg: site.longitudeDeg,
      elevationM: site.elevationM ?? heightM ?? 0,
      elevationGuessed: site.elevationM === undefined,
      zone: site.zone,
      climate,
      ...(site.recordLowC !== undefined && { recordLowC: site.recordLowC }),
      ...(site.recordHighC !== undefined && { recordHighC: site.recordHighC }),
      missing,
      survey: { present: wanted.length - missing.length, wanted: wanted.length, complete: missing.length === 0 },
      workings: workingsOf(site, climate, wanted, missing.length),
      leavesOut,
    };
  },
};

const leavesOut = [
  'The record low and high come from the survey alone. No typical year and no mean stands in for them.',
  'Cold air in valleys, sea breeze and town heat are not followed.',
  'One climate for the whole job: a horizon of hills changes the light, not the weather.',
] as const;

function workingsOf(
  site: SiteView['site'],
  climate: Climate,
  wanted: readonly WantedFact[],
  missing: number,
): Working[] {
  return [
    climateWorking(site, climate),
    worked(
      'Spread of one year’s sun',
      climate.annualSd,
      '',
      '√(spread of the figures² + year to year²)',
      'leave-one-out test of the places; year to year from memory',
      [],
      {
        note: climate.quality,
      },
    ),
    worked('Facts present', wanted.length - missing, '', 'wanted − missing', 'the survey', [
      worked('wanted', wanted.length, '', 'facts this job has a use for', 'the job', []),
      worked('missing', missing, '', 'not there, or answered unknown', 'the job', []),
    ]),
  ];
}

/** Mean sun on the level and where it comes from. */
function climateWorking(site: SiteView['site'], climate: Climate): Working {
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  const annual = climate.ghiKwhM2Day.reduce((sum, mean, m) => sum + mean * (days[m] as number), 0);
  const formula =
    climate.kind === 'weather file'
      ? 'Σ days · daily mean of the file'
      : 'Σ days · mean of the places, weighted by 1/distance²';
  return worked('Sun on the level, the climate’s figure', annual, 'kWh/m² a year', formula, climate.credit, [
    ...givenPlace(site),
    ...climate.places.map(({ name, distanceKm, weight }) =>
      worked(name, distanceKm, 'km', 'great circle', 'sphere of 6371 km', [], {
        note: `share ${(weight * 100).toFixed(0)} %`,
        decimals: 0,
      }),
    ),
  ]);
}
