import type { Choices, ModuleChoice, RowChoice } from '@eaveline/job';
import type { PlaneStand } from './placeModules.ts';

/** What the array depends on. */
export interface ArrayView {
  readonly rows: Readonly<Record<string, RowChoice>>;
  readonly modules: Readonly<Record<string, ModuleChoice>>;
  readonly units: Choices['units'];
  readonly equipment: Choices['equipment'];
  readonly mounting?: NonNullable<Choices['mounting']>;
  readonly stands: Readonly<Record<string, PlaneStand>>;
}
