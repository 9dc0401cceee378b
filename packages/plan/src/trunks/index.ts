import type { Choices, ExistingFacts, Job, SupplyFacts } from '@eaveline/job';
import { addPhasors, exportPhasors, magnitudes, type Phasors, sourcePhasors } from '@eaveline/physics';
import { existingSources } from '../board/existingSources.ts';
import { byKey } from '../byKey.ts';
import type { Stage } from '../stage.ts';
import { worked } from '../working.ts';
import { batteryPhasors } from './batteryPhasors.ts';
import { layDrops, sourcesOf, unitsByTrunk } from './layDrops.ts';
import type { Line, TrunksPlan } from './types.ts';
import { workTrunk } from './workTrunk.ts';

interface View {
  readonly supply: SupplyFacts;
  readonly existing: Readonly<Record<string, ExistingFacts>>;
  readonly trunks: Choices['trunks'];
  readonly units: Choices['units'];
  readonly modules: Choices['modules'];
  readonly batteries: Choices['batteries'];
  readonly equipment: Choices['equipment'];
}

const ZERO: Phasors = new Float64Array(8);

/** Units on trunks and lines, drops and caps, and the voltage from each unit down to the point of supply. */
export const trunksStage: Stage<'trunks', 'array', View> = {
  name: 'trunks',
  before: ['array'],
  view: (job: Job): View => ({
    supply: job.facts.supply,
    existing: job.facts.existing,
    trunks: job.choices.trunks,
    units: job.choices.units,
    modules: job.choices.modules,
    batteries: job.choices.batteries,
    equipment: job.choices.equipment,
  }),

  run({ supply, existing, trunks, units, modules, batteries, equipment }, { array }): TrunksPlan {
    const voltage = sourcePhasors(supply.system, supply.nominalV);
    const unitsOf = unitsByTrunk(units);
    const laid = Object.entries(trunks)
      .map(([id, trunk]) => ({ id, trunk, drops: layDrops(id, trunk, unitsOf, equipment) }))
      .sort((a, b) => a.trunk.name.localeCompare(b.trunk.name, 'en') || (a.id < b.id ? -1 : 1));
    const trunksCurrent = laid
      .flatMap(({ drops }) => drops.map((drop) => exportPhasors(sourcesOf(drop), voltage)))
      .reduce(addPhasors, ZERO);
    const there = existingSources(existing, voltage);
    const battery = batteryPhasors(batteries, equipment, supply.system === 'split-phase', voltage);
    const context = {
      supply,
      equipment,
      modules,
      array,
      modulesOf: byKey(array.modules, ({ unitId }) => unitId),
      mainsCurrent: addPhasors(trunksCurrent, there.solar),
      there: there.givens.filter(({ kind }) => kind === 'solar').map(({ working }) => working),
      ...(battery.ratedVA > 0 ? { batteryCurrent: battery.current } : {}),
    };

    const [l1, l2, l3] = magnitudes(trunksCurrent);
    const lineA: Record<Line, number> = { L1: l1, L2: l2, L3: l3 };
    const va = (line: Line) => lineA[line] * supply.nominalV;
    return {
      trunks: laid.map(({ id, trunk, drops }) => workTrunk(id, trunk, drops, context)),
      lineA,
      lineVA: { L1: va('L1'), L2: va('L2'), L3: va('L3') },
      nominalV: supply.nominalV,
      workings: (['L1', 'L2', 'L3'] as const)
        .filter((line) => lineA[line] > 0)
        .map((line) =>
          worked(
            `Solar on ${line}`,
            lineA[line],
            'A',
            'sum of the rated currents of its units',
            'equipment sheets',
            [],
          ),
        ),
      leavesOut: [
        'Units count as constant currents at nominal voltage. The true rise is lower by about its own percentage.',
        'Conductors are taken at 75 °C in the trunk, 60 °C in the home run and 50 °C in the mains.',
        'Reactance is left out. It matters above 35 mm².',
        'The street beyond the point of supply is not in these figures.',
        'A unit is taken to sit under the middle of its module. Clamps, feet and boxes may shift it.',
      ],
    };
  },
};
