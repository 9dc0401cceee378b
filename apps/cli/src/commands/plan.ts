import type { Job } from '@eaveline/job';
import { howFar, type Plan, type PlanInputs, workOut } from '@eaveline/plan';
import type { Outcome } from '../io.ts';
import { openJob, openWeather } from '../jobFile.ts';
import { planJson } from '../planJson.ts';
import type { Register } from '../program.ts';
import { textTable } from '../textTable.ts';

export interface PlanOptions {
  readonly json?: boolean;
  readonly series?: boolean;
}

/** Works a job out and shows its headline figures, or all of it as JSON. */
export function plan(job: Job, inputs: PlanInputs, { json = false, series = false }: PlanOptions = {}): Outcome {
  const worked = workOut(job, inputs);
  return { text: json ? planJson(worked, series) : planText(worked), verdict: worked.checks.tally.fails > 0 ? 1 : 0 };
}

const fixed = (value: number, decimals: number) => value.toFixed(decimals);

function planText(p: Plan): string {
  const rows: string[][] = [
    ['weather', p.site.climate.name, howFar(p.site.climate)],
    [
      'survey',
      `${p.site.survey.present} of ${p.site.survey.wanted} facts`,
      p.site.survey.complete ? 'complete' : 'has holes',
    ],
    ['sun on the level', `${fixed(p.sun.annualGhiKwhM2, 0)} kWh/m²`, 'a year'],
    ['modules', String(p.array.modules.length), `${fixed(p.array.stcW / 1000, 2)} kW`],
    [
      'a.c. energy',
      `${fixed(p.energy.annualKwh / 1000, 2)} MWh`,
      `nine years in ten ${fixed(p.energy.rangeKwh[0] / 1000, 2)} to ${fixed(p.energy.rangeKwh[1] / 1000, 2)}`,
    ],
    ...p.trunks.trunks.map((trunk) => [
      `trunk ${trunk.name}`,
      `${fixed(trunk.rise.totalV, 2)} V rise`,
      `${trunk.unitCount} units, ${trunk.lines.join(' ')}, ${fixed(trunk.currentA, 2)} A`,
    ]),
    ...(p.backup.night === undefined
      ? []
      : [
          [
            'night on the battery',
            `${fixed(p.backup.night.fullH, 1)} h`,
            `from full at ${fixed(p.backup.night.loadW, 0)} W`,
          ],
        ]),
    ['rail bars', String(p.kit.cutting.bars), `no cutting needs fewer than ${p.kit.cutting.lowerBound}`],
    [
      'days',
      p.day.refusal ?? String(p.day.days),
      p.day.refusal === undefined
        ? `with ${fixed(100 * (p.day.chanceByDays.find((c) => c.days === p.day.days)?.chance ?? 0), 0)} chances in 100`
        : '',
    ],
    ['tests', String(p.tests.rows.length), 'rows with their predictions'],
    ['findings', `${p.checks.tally.fails} fail, ${p.checks.tally.ask} ask`, `${p.checks.tally.meets} meet`],
  ];
  return `${p.jobName}${p.invented ? ' (invented)' : ''}\n${textTable(['what', 'figure', 'more'], rows)}\n--json gives every figure with its working.`;
}

/** `eaveline plan JOB`. */
export const registerPlan: Register = (program, io) => {
  program
    .command('plan')
    .description('work a job out: sun, array, trunks, board, backup, kit, day, tests')
    .argument('<job>', 'job file, or - for standard input')
    .option('--weather <file>', 'weather file to use in place of the monthly normals')
    .option('--json', 'the whole plan with its workings as JSON')
    .option('--series', 'with --json: the hourly series too')
    .action(async (path: string, { weather, ...options }: PlanOptions & { weather?: string }) => {
      const job = await openJob(path, io);
      if (!job.ok) return io.answer({ text: job.text, verdict: 2 });
      const year = await openWeather(weather, io);
      if (!year.ok) return io.answer({ text: year.text, verdict: 2 });
      if (options.json !== true) for (const note of [...job.notes, ...year.notes]) io.print(note);
      io.answer(plan(job.value, year.value === undefined ? {} : { weather: year.value }, options));
    });
};
