import type { WeatherYear } from '@eaveline/formats';
import type { ArrayPlan } from './array/types.ts';
import type { BackupPlan } from './backup/types.ts';
import type { BoardPlan } from './board/types.ts';
import type { ChecksPlan } from './checks/types.ts';
import type { DayPlan } from './day/types.ts';
import type { EnergyFigures, EnergyPlan } from './energy/types.ts';
import type { KitPlan } from './kit/types.ts';
import type { LitRoof, RoofPlan } from './roof/types.ts';
import type { SitePlan } from './site/types.ts';
import type { StructurePlan } from './structure/types.ts';
import type { SunFigures, SunPlan } from './sun/types.ts';
import type { TestsPlan } from './tests/types.ts';
import type { TrunksPlan } from './trunks/types.ts';

/** What the plan is told beside the job. The core asks for nothing itself: no file, no clock, no chance. */
export interface PlanInputs {
  /** A weather file already read; where left out, the embedded monthly normals make the year. */
  readonly weather?: WeatherYear;
}

/**
 * Everything that was worked out from a job, stage by stage along the road: what sheets and papers read. It holds no
 * series of steps, and is the same after a way through JSON.
 */
export interface Plan {
  readonly jobId: string;
  readonly jobName: string;
  readonly invented: boolean;
  readonly site: SitePlan;
  readonly sun: SunFigures;
  readonly roof: RoofPlan;
  readonly array: ArrayPlan;
  readonly trunks: TrunksPlan;
  readonly board: BoardPlan;
  readonly energy: EnergyFigures;
  readonly backup: BackupPlan;
  readonly structure: StructurePlan;
  readonly checks: ChecksPlan;
  readonly kit: KitPlan;
  readonly day: DayPlan;
  readonly tests: TestsPlan;
}

export type StageName = Exclude<keyof Plan, 'jobId' | 'jobName' | 'invented'>;

/** A plan as the stages have it among themselves: with a value for every step of the year. */
export interface WorkedPlan extends Plan {
  readonly sun: SunPlan;
  readonly roof: LitRoof;
  readonly energy: EnergyPlan;
}
