import type { Choices, SupplyFacts } from '@eaveline/job';
import type { RulePack } from '../rules/pack.ts';
import type { TrunksPlan } from '../trunks/types.ts';

/** What the tests with the units running are predicted from. */
export interface GeneratingInput {
  readonly pack: RulePack;
  readonly supply: SupplyFacts;
  readonly equipment: Choices['equipment'];
  readonly rows: Choices['rows'];
  /** Modules of a unit. */
  readonly modulesOf: (unitId: string) => readonly Choices['modules'][string][];
  readonly units: Choices['units'];
  readonly trunks: TrunksPlan;
  /** Limit that has to hold, VA, on each line or in sum. */
  readonly exportLimit?: { readonly va: number; readonly perLine: boolean; readonly at: string };
}
