import { designSignature, type Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import { failsReading } from '../tests/standing.ts';

/** What a handover still lacks. */
export interface OpenEnds {
  readonly stopping: number;
  /** All that fail, whether they stop the job or not. */
  readonly failing: number;
  readonly asking: number;
  readonly facts: number;
  readonly unconfirmed: Plan['checks']['unconfirmed'];
  readonly testsUnread: number;
  /** Readings on record that miss their limit or the drawing. */
  readonly testsPast: number;
  /** Units without a serial on record. */
  readonly unitsUnscanned: number;
  /** True where a licensed person has signed the design as it stands. */
  readonly signed: boolean;
}

/** Everything that is open between a plan and a pack that may be handed over. */
export function openEnds(plan: Plan, job: Job): OpenEnds {
  const { checks, tests, site } = plan;
  const scanned = new Set(Object.values(job.records.serials).map(({ of }) => of));
  return {
    stopping: checks.findings.filter(({ state, stops }) => state === 'fails' && stops).length,
    failing: checks.tally.fails,
    asking: checks.tally.ask,
    facts: site.missing.length,
    unconfirmed: checks.unconfirmed,
    testsUnread: tests.rows.filter(({ reading }) => reading === undefined).length,
    testsPast: tests.rows.filter(failsReading).length,
    unitsUnscanned: Object.keys(job.choices.units).filter((id) => !scanned.has(id)).length,
    signed: designSignature(job)?.of === 'this design',
  };
}
