import { isRaw, type Raw } from '../parse/gather.ts';
import type { Remarked } from '../parse/remark.ts';
import { JOB_VERSION } from '../schema/job.ts';
import type { Lifted } from './lifted.ts';
import { liftV0 } from './liftV0.ts';

/** One step for each version: entry n lifts version n to n + 1. */
const STEPS: readonly ((document: Raw) => Lifted)[] = [liftV0];

/** Lifts a document of an older version to this one, step by step; one of this version is handed back as it is. */
export function liftJob(document: Raw): Lifted {
  const from = document.version;
  if (typeof from !== 'number' || from >= JOB_VERSION) return { document, remarks: [] };
  const remarks: Remarked[] = [
    {
      severity: 'note',
      at: 'version',
      found: `version ${from}`,
      wanted: `version ${JOB_VERSION}`,
      mend: 'It was lifted while opening. The file itself is as it was until you save.',
    },
  ];
  let lifted = document;
  for (let version = from; version < JOB_VERSION; version++) {
    const step = STEPS[version];
    if (!step) throw new Error(`no step lifts a job from version ${version}`);
    const next = step(lifted);
    lifted = next.document;
    for (const remark of next.remarks) remarks.push(remark);
  }
  if (!isRaw(lifted)) throw new Error('a lifted job is a group of fields');
  return { document: lifted, remarks };
}
