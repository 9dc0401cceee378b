import { cleanJob, isRegionCode, regions, remarkLine, writeJob } from '@eaveline/job';
import type { Io, Outcome } from '../io.ts';
import type { Register } from '../program.ts';

export interface NewOptions {
  readonly name: string;
  readonly region: string;
  readonly lat: string;
  readonly lon: string;
}

/** A clean job as text, or why there is none. */
export function newJob({ name, region, lat, lon }: NewOptions): Outcome {
  if (!isRegionCode(region)) {
    return { text: `There is no region '${region}'. There are: ${Object.keys(regions).join(', ')}.`, verdict: 2 };
  }
  const made = cleanJob({ name, region, latitudeDeg: Number(lat), longitudeDeg: Number(lon) });
  if ('job' in made) return { text: writeJob(made.job), verdict: 0 };
  return { text: ['The job could not be made.', ...made.remarks.map(remarkLine)].join('\n'), verdict: 2 };
}

/** `eaveline new FILE`. Never writes over a file that is there. */
export const registerNew: Register = (program, io) => {
  program
    .command('new')
    .description('begin a job file: one address, a place and a region; the survey fills the rest')
    .argument('<file>', 'job file to write')
    .requiredOption('--name <name>', 'address or name of the job')
    .requiredOption('--region <code>', Object.keys(regions).join(', '))
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
