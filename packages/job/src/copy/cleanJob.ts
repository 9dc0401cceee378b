import { issueRemark } from '../parse/issueRemark.ts';
import type { Remarked } from '../parse/remark.ts';
import { type Job, type JobDraft, jobSchema } from '../schema/job.ts';
import { demoSheets, type SheetId, takeSheets } from '../sheets/index.ts';
import { idFrom } from './idFrom.ts';
import { type RegionCode, regions, type Supply } from './regions.ts';

/** What a clean sheet has to be told. */
export interface CleanSheet {
  /** What the job is called; its address too, where no other is given. */
  readonly name: string;
  readonly address?: string | undefined;
  readonly region: RegionCode;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** The region's usual one where left out. */
  readonly system?: Supply['system'] | undefined;
  /** Civil clock, IANA; the region's first where left out. */
  readonly zone?: string | undefined;
  readonly firm?: string | undefined;
  readonly customer?: string | undefined;
  /** Made of the name where left out. */
  readonly id?: string;
}

/** A clean job, or every reason why there is none. */
export type CleanJob = { readonly job: Job } | { readonly remarks: readonly Remarked[] };

/**
 * A clean job: one address, a place, a region. Everything the survey has to find is open, and the checks ask for it.
 *
 * The supply is the region's usual one until the survey says otherwise.
 */
export function cleanJob(sheet: CleanSheet): CleanJob {
  const { name, address = name, latitudeDeg, longitudeDeg, firm = 'your firm', customer } = sheet;
  const region = regions[sheet.region];
  const supply = region.supplies.find(({ system }) => system === sheet.system);
  if (supply === undefined && sheet.system !== undefined)
    return { remarks: [noSuchSupply(sheet.region, sheet.system)] };
  const draft: JobDraft = {
    format: 'eaveline-job',
    version: 1,
    id: sheet.id ?? idFrom(name),
    name,
    firm: { name: firm },
    ...(customer === undefined ? {} : { customer: { name: customer } }),
    facts: {
      site: { address, latitudeDeg, longitudeDeg, zone: sheet.zone ?? region.zones[0] },
      supply: { ...(supply ?? region.supplies[0]), nominalV: region.nominalV, earthing: region.earthing },
      board: {},
      roof: { planes: {} },
    },
    choices: { rules: region.rules, equipment: takeSheets(...(Object.keys(demoSheets) as SheetId[])) },
  };
  const parsed = jobSchema.safeParse(draft);
  if (parsed.success) return { job: parsed.data };
  return { remarks: parsed.error.issues.map((issue) => issueRemark(issue, draft)) };
}

function noSuchSupply(code: RegionCode, system: string): Remarked {
  const names = regions[code].supplies.map((each) => each.system);
  return {
    severity: 'stop',
    at: 'facts.supply.system',
    found: system,
    wanted: names.join(' or '),
    mend: `Houses of ${regions[code].name} have one of these.`,
  };
}
