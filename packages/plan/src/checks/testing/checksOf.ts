import type { Job } from '@eaveline/job';
import { arrayStage } from '../../array/index.ts';
import { backupStage } from '../../backup/index.ts';
import { boardStage } from '../../board/index.ts';
import type { WorkedPlan } from '../../plan.ts';
import { roofStage } from '../../roof/index.ts';
import { siteStage } from '../../site/index.ts';
import { structureStage } from '../../structure/index.ts';
import { sunStage } from '../../sun/index.ts';
import { trunksStage } from '../../trunks/index.ts';
import { checksStage } from '../index.ts';
import type { ChecksPlan } from '../types.ts';

/** The road up to the checks, each stage with what it names and nothing else. */
export function checksOf(job: Job): ChecksPlan {
  let plan = {} as WorkedPlan;
  plan = { ...plan, site: siteStage.run(siteStage.view(job), plan, {}) };
  plan = { ...plan, sun: sunStage.run(sunStage.view(job), plan, {}) };
  plan = { ...plan, roof: roofStage.run(roofStage.view(job), plan, {}) };
  plan = { ...plan, array: arrayStage.run(arrayStage.view(job), plan, {}) };
  plan = { ...plan, trunks: trunksStage.run(trunksStage.view(job), plan, {}) };
  plan = { ...plan, board: boardStage.run(boardStage.view(job), plan, {}) };
  plan = { ...plan, backup: backupStage.run(backupStage.view(job), plan, {}) };
  plan = { ...plan, structure: structureStage.run(structureStage.view(job), plan, {}) };
  return checksStage.run(checksStage.view(job), plan, {});
}
