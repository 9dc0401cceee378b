import { join } from 'node:path';
import type { Job } from '@eaveline/job';
import { type Fonts, type InstallPack, installPack } from '@eaveline/papers';
import { type PlanInputs, workOut } from '@eaveline/plan';
import type { Io, Outcome } from '../io.ts';
import { openJob, openWeather } from '../jobFile.ts';
import type { Register } from '../program.ts';
import { VERSION } from '../version.ts';

/** Works a job out and draws its pack. */
export async function pack(
  job: Job,
  inputs: PlanInputs,
  drawnAt: Date,
  fonts: Fonts,
): Promise<{ readonly drawn: InstallPack; readonly fails: number }> {
  const plan = workOut(job, inputs);
  const drawn = await installPack({ job, plan, drawnAt: drawnAt.toISOString(), version: VERSION, fonts });
  return { drawn, fails: plan.checks.tally.fails };
}

/** Files of a pack by name: one PDF, the tables, the plan. */
export function packFiles(job: Job, { pdf, csv, json }: InstallPack): Readonly<Record<string, string | Uint8Array>> {
  return { [`${job.id}-pack.pdf`]: pdf, ...csv, [`${job.id}-plan.json`]: json };
}

/** Everything is drawn before anything is written, and each file is written whole or not at all. */
async function write(dir: string, files: Readonly<Record<string, string | Uint8Array>>, io: Io): Promise<void> {
  for (const [name, data] of Object.entries(files)) await io.writeFile(join(dir, name), data);
}

/** `eaveline pack JOB --out DIR`. The verdict is the job's own: a pack of a failing job is drawn, and says so. */
export function registerPack(loadFonts: () => Promise<Fonts>): Register {
  return (program, io) => {
    program
      .command('pack')
      .description('draw the install pack: one PDF, with its tables as CSV and the plan as JSON')
      .argument('<job>', 'job file, or - for standard input')
      .requiredOption('--out <dir>', 'folder to write into; made where there is none')
      .option('--weather <file>', 'weather file to use in place of the monthly normals')
      .option('--json', 'names of the files written as JSON')
      .action(async (path: string, options: { out: string; weather?: string; json?: boolean }) => {
        const job = await openJob(path, io);
        if (!job.ok) return io.answer({ text: job.text, verdict: 2 });
        const year = await openWeather(options.weather, io);
        if (!year.ok) return io.answer({ text: year.text, verdict: 2 });
        if (options.json !== true) for (const note of [...job.notes, ...year.notes]) io.print(note);
        const inputs = year.value === undefined ? {} : { weather: year.value };
        const { drawn, fails } = await pack(job.value, inputs, io.now(), await loadFonts());
        const files = packFiles(job.value, drawn);
        await write(options.out, files, io);
        io.answer(said(options.out, Object.keys(files), drawn.svg.length, fails, options.json === true));
      });
  };
}

function said(dir: string, names: readonly string[], pages: number, fails: number, json: boolean): Outcome {
  const verdict = fails > 0 ? 1 : 0;
  const paths = names.map((name) => join(dir, name));
  if (json) return { text: JSON.stringify({ files: paths, pages, fails }, null, 2), verdict };
  const warning = fails > 0 ? [`${fails} ${fails === 1 ? 'figure fails' : 'figures fail'}: every page says so.`] : [];
  return { text: [`${pages} pages.`, ...paths.map((path) => `  ${path}`), ...warning].join('\n'), verdict };
}
