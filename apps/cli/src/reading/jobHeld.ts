import { decodeText } from '@eaveline/formats';
import { type Job, parseJob } from '@eaveline/job';
import type { Held, ReportRemark } from './held.ts';

function factsOf({ id, name, version, choices }: Job) {
  const { pack, variant } = choices.rules;
  return {
    facts: [
      ['job', `${name} (${id}), version ${version}`],
      ['rules', variant === pack ? pack : `${pack}/${variant}`],
    ] as const,
    holds: { id, name, version, rules: { pack, variant } },
  };
}

/** What a job file holds, and every remark on it. */
export function jobHeld(file: Uint8Array): Held {
  const { job, remarks } = parseJob(decodeText(file).text);
  const listed = remarks.map(({ severity, at, line, found, wanted, mend }): ReportRemark => {
    const place = { ...(line === undefined ? {} : { line }), ...(at === '' ? {} : { field: at }) };
    return { severity, ...place, found: `Found ${found}.`, wanted: `Wanted ${wanted}.`, mend };
  });
  const about = job === undefined ? { facts: [], holds: {} } : factsOf(job);
  return { usable: job !== undefined, ...about, remarks: listed, counts: {}, assumptions: [] };
}
