import type { BoardFacts, Choices, Facts, SupplyFacts } from '@eaveline/job';
import type { ArrayPlan } from '../array/types.ts';
import type { BoardPlan } from '../board/types.ts';
import type { TrunksPlan } from '../trunks/types.ts';

/** What the kit depends on. */
export interface KitView {
  readonly system: SupplyFacts['system'];
  readonly board: Pick<BoardFacts, 'surgeDevice' | 'electrode'>;
  readonly circuits: Facts['loads']['circuits'];
  readonly units: Choices['units'];
  readonly trunks: Choices['trunks'];
  readonly batteries: Choices['batteries'];
  readonly backup?: NonNullable<Choices['backup']>;
  readonly mounting?: NonNullable<Choices['mounting']>;
  readonly equipment: Choices['equipment'];
  readonly parts: Choices['parts'];
  readonly spares: Choices['spares'];
  readonly labels: Choices['labels'];
  readonly rules: Choices['rules'];
}

/** The view with the stages before it: what every counter gets. */
export interface KitInput {
  readonly view: KitView;
  readonly array: ArrayPlan;
  readonly trunks: TrunksPlan;
  readonly board: BoardPlan;
}
