import { demoSheets, type JobDraft, jobSchema, writeJob } from '@eaveline/job';
import type { Io, Outcome } from '../io.ts';
import type { Register } from '../program.ts';

export interface NewOptions {
  readonly name: string;
  readonly region: string;
  readonly lat: string;
  readonly lon: string;
}

/** What a region brings to a clean sheet. Facts of the place are left for the survey. */
const REGIONS: Readonly<
  Record<string, { rules: JobDraft['choices']['rules']; zone: string; supply: JobDraft['facts']['supply'] }>
> = {
  au: region('au-nz', 'au', 'Australia/Melbourne', {
    system: 'single-phase',
    nominalV: 230,
    earthing: 'MEN',
    serviceA: 63,
  }),
  nz: region('au-nz', 'nz', 'Pacific/Auckland', {
    system: 'single-phase',
    nominalV: 230,
    earthing: 'MEN',
    serviceA: 63,
  }),
  gb: region('iec-eu', 'gb', 'Europe/London', {
    system: 'single-phase',
    nominalV: 230,
    earthing: 'TN-C-S',
    serviceA: 80,
  }),
  ie: region('iec-eu', 'ie', 'Europe/Dublin', {
    system: 'single-phase',
    nominalV: 230,
    earthing: 'TN-C-S',
    serviceA: 63,
  }),
  eu: region('iec-eu', 'eu', 'Europe/Berlin', { system: 'three-phase', nominalV: 230, earthing: 'TN-S', serviceA: 35 }),
  us: region('us', 'us', 'America/Denver', {
    system: 'split-phase',
    nominalV: 120,
    earthing: 'US-grounded',
    serviceA: 200,
  }),
};

function region(
  pack: JobDraft['choices']['rules']['pack'],
  variant: JobDraft['choices']['rules']['variant'],
  zone: string,
  supply: JobDraft['facts']['supply'],
) {
  return { rules: { pack, variant }, zone, supply };
}

/** A clean job: one address, a place, a region. Everything the survey has to find is open, and the checks ask for it. */
export function newJob({ name, region: code, lat, lon }: NewOptions): Outcome {
  const brought = REGIONS[code];
  if (brought === undefined) {
    return { text: `There is no region '${code}'. There are: ${Object.keys(REGIONS).join(', ')}.`, verdict: 2 };
  }
  const id = name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  const draft: JobDraft = {
    format: 'eaveline-job',
    version: 1,
    id: id === '' ? 'job' : id,
    name,
    firm: { name: 'your firm' },
    facts: {
      site: { address: name, latitudeDeg: Number(lat), longitudeDeg: Number(lon), zone: brought.zone },
      supply: brought.supply,
      board: {},
      roof: { planes: {} },
    },
    choices: {
      rules: brought.rules,
      equipment: structuredClone<JobDraft['choices']['equipment']>(demoSheets),
    },
  };
  const parsed = jobSchema.safeParse(draft);
  if (!parsed.success) {
    const lines = parsed.error.issues.map((issue) => `${issue.path.join('.')}: ${issue.message}`);
    return { text: ['The job could not be made.', ...lines].join('\n'), verdict: 2 };
  }
  return { text: writeJob(parsed.data), verdict: 0 };
}

/** `eaveline new FILE`. Never writes over a file that is there. */
export const registerNew: Register = (program, io) => {
  program
    .command('new')
    .description('begin a job file: one address, a place and a region; the survey fills the rest')
    .argument('<file>', 'job file to write')
    .requiredOption('--name <name>', 'address or name of the job')
    .requiredOption('--region <code>', Object.keys(REGIONS).join(', '))
    .requiredOption('--lat <degrees>', 'latitude, north positive')
    .requiredOption('--lon <degrees>', 'longitude, east positive')
    .action(async (path: string, options: NewOptions) => {
      if (await isThere(path, io)) {
        return io.answer({ text: `${path} is there already. Choose another name; nothing was written.`, verdict: 2 });
      }
      const made = newJob(options);
      if (made.verdict !== 0) return io.answer(made);
      await io.writeFile(path, made.text);
      io.answer({
        text: `A clean sheet: ${path}. \`eaveline check ${path}\` says what the survey has to find.`,
        verdict: 0,
      });
    });
};

async function isThere(path: string, io: Io): Promise<boolean> {
  try {
    await io.readBytes(path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false;
    throw error;
  }
}
