import type { Job } from '@eaveline/job';
import { type Fonts, surveyForm } from '@eaveline/papers';
import { surveyStanding } from '@eaveline/plan';
import type { Outcome } from '../io.ts';
import { openJob } from '../jobFile.ts';
import type { Register } from '../program.ts';
import { VERSION } from '../version.ts';

/** What keeps the survey from closing, one line a hole: where it is filled, what it is, which rules need it, or which sheet. */
export function surveyReport(job: Job, json: boolean): Outcome {
  const { holes, notMeasured, later } = surveyStanding(job);
  if (json) return { text: JSON.stringify({ holes, notMeasured, later }, null, 2), verdict: 0 };
  const head = holes.length === 0 ? 'Nothing is open: the survey can close.' : `${holes.length} open.`;
  return {
    text: [
      head,
      ...holes.map(
        ({ step, what, rules, goesInto }) => `  ${step}: ${what} (${rules.length === 0 ? goesInto : rules.join(', ')})`,
      ),
      ...notMeasured.map(({ what, why, by }) => `  not measured: ${what}. ${why}, ${by}`),
      ...later.map(({ what, from }) => `  later: ${what}, ${from}`),
    ].join('\n'),
    verdict: 0,
  };
}

/** `eaveline survey JOB [--out FILE.pdf]`: what is open, and the form to write on. Open facts change no exit code. */
export function registerSurvey(loadFonts: () => Promise<Fonts>): Register {
  return (program, io) => {
    program
      .command('survey')
      .description('say what keeps the survey open and which rules need it; draw its form to write on')
      .argument('<job>', 'job file, or - for standard input')
      .option('--out <file>', 'draw the survey form as a PDF, in walking order')
      .option('--json', 'what is open, as JSON')
      .action(async (path: string, options: { out?: string; json?: boolean }) => {
        const job = await openJob(path, io);
        if (!job.ok) return io.answer({ text: job.text, verdict: 2 });
        if (options.json !== true) for (const note of job.notes) io.print(note);
        if (options.out !== undefined) {
          const { pdf, svg } = await surveyForm({
            job: job.value,
            drawnAt: io.now().toISOString(),
            version: VERSION,
            fonts: await loadFonts(),
          });
          await io.writeFile(options.out, pdf);
          if (options.json !== true) io.print(`${options.out}: ${svg.length} pages.`);
        }
        io.answer(surveyReport(job.value, options.json === true));
      });
  };
}
