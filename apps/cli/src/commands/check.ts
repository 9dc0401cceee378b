import type { Job } from '@eaveline/job';
import { confirmedWords, type Finding, howFar, type Plan, type PlanInputs, stateWords, workOut } from '@eaveline/plan';
import type { Outcome } from '../io.ts';
import { openJob, openWeather } from '../jobFile.ts';
import type { Register } from '../program.ts';

export interface CheckOptions {
  readonly json?: boolean;
  /** Every finding, also what meets. */
  readonly all?: boolean;
}

/** Judges a job: what stops it, what waits for an answer, what meets. Verdict 1 where something fails. */
export function check(job: Job, inputs: PlanInputs, { json = false, all = false }: CheckOptions = {}): Outcome {
  const plan = workOut(job, inputs);
  const verdict = plan.checks.tally.fails > 0 ? 1 : 0;
  return { text: json ? findingsJson(plan) : findingsText(plan, all), verdict };
}

function findingsJson(plan: Plan): string {
  const { checks, site } = plan;
  return JSON.stringify(
    {
      job: plan.jobId,
      name: plan.jobName,
      invented: plan.invented,
      weather: { kind: site.climate.kind, name: site.climate.name, distanceKm: site.climate.distanceKm },
      rules: { pack: checks.pack, variant: checks.variant, editions: checks.editions },
      tally: checks.tally,
      findings: checks.findings,
      unconfirmed: checks.unconfirmed,
      idleConfirmations: checks.idleConfirmations,
      leavesOut: checks.leavesOut,
    },
    null,
    2,
  );
}

function findingsText(plan: Plan, all: boolean): string {
  const { checks, site } = plan;
  const { fails, ask, meets, unconfirmed } = checks.tally;
  const head = [
    `${plan.jobName}${plan.invented ? ' (invented)' : ''}`,
    `${fails} ${fails === 1 ? 'fails' : 'fail'}, ${ask} ask, ${meets} meet${unconfirmed > 0 ? `, ${unconfirmed} of them by a limit nobody has confirmed` : ''}.`,
    `Weather: ${site.climate.kind}, ${site.climate.name}, ${howFar(site.climate)}.`,
    `Rules: ${checks.pack}/${checks.variant}. The licensed person decides.`,
    ...checks.idleConfirmations,
    '',
  ];
  const shown = checks.findings.filter((finding) => all || finding.state !== 'meets');
  const quiet = checks.findings.length - shown.length;
  return [
    ...head,
    ...shown.flatMap(findingLines),
    ...(quiet > 0 ? [`${quiet} more meet. --all shows them, --json gives their workings.`] : []),
  ].join('\n');
}

function findingLines(finding: Finding): string[] {
  const confirmed = confirmedWords(finding);
  const mends = finding.mends.map((mend) => `      mend: ${mend.words}`);
  return [
    `${stateWords(finding).padEnd(5)} ${finding.title}`,
    ...(finding.detail === undefined ? [] : [`      ${finding.detail}`]),
    `      ${[finding.clause, finding.edition, finding.seen].filter((part) => part !== '').join(' · ')}`,
    ...(confirmed === undefined ? [] : [`      ${confirmed}`]),
    ...mends,
    '',
  ];
}

/** `eaveline check JOB`. */
export const registerCheck: Register = (program, io) => {
  program
    .command('check')
    .description('judge a job by the rules of its place')
    .argument('<job>', 'job file, or - for standard input')
    .option('--weather <file>', 'weather file to use in place of the monthly normals')
    .option('--all', 'show what meets as well')
    .option('--json', 'findings with their workings as JSON')
    .action(async (path: string, { weather, ...options }: CheckOptions & { weather?: string }) => {
      const job = await openJob(path, io);
      if (!job.ok) return io.answer({ text: job.text, verdict: 2 });
      const year = await openWeather(weather, io);
      if (!year.ok) return io.answer({ text: year.text, verdict: 2 });
      if (options.json !== true) for (const note of [...job.notes, ...year.notes]) io.print(note);
      io.answer(check(job.value, year.value === undefined ? {} : { weather: year.value }, options));
    });
};
