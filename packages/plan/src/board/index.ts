import type { BoardFacts, Choices, ExistingFacts, Job, SupplyFacts } from '@eaveline/job';
import {
  addPhasors,
  exportPhasors,
  magnitudes,
  type Phasors,
  prospectiveCurrentA,
  sourcePhasors,
} from '@eaveline/physics';
import { sheetOf } from '../equipment.ts';
import { packFor } from '../rules/index.ts';
import type { Stage } from '../stage.ts';
import { linesOf } from '../supply.ts';
import { batteryPhasors } from '../trunks/batteryPhasors.ts';
import { layDrops, sourcesOf, unitsByTrunk } from '../trunks/layDrops.ts';
import type { Line } from '../trunks/types.ts';
import { given, worked } from '../working.ts';
import { busRule } from './busRule.ts';
import { existingSources } from './existingSources.ts';
import { batteryCircuit, trunkCircuit } from './sourceCircuits.ts';
import type { BoardPlan } from './types.ts';

interface View {
  readonly supply: SupplyFacts;
  readonly board: BoardFacts;
  readonly existing: Readonly<Record<string, ExistingFacts>>;
  readonly trunks: Choices['trunks'];
  readonly units: Choices['units'];
  readonly batteries: Choices['batteries'];
  readonly equipment: Choices['equipment'];
  readonly rules: Choices['rules'];
}

/** Source circuits at the board: currents, cables, breakers, loops, balance of the lines, bars and ways. */
export const boardStage: Stage<'board', 'trunks', View> = {
  name: 'board',
  before: ['trunks'],
  view: (job: Job): View => ({
    supply: job.facts.supply,
    board: job.facts.board,
    existing: job.facts.existing,
    trunks: job.choices.trunks,
    units: job.choices.units,
    batteries: job.choices.batteries,
    equipment: job.choices.equipment,
    rules: job.choices.rules,
  }),

  run(view, { trunks }): BoardPlan {
    const { supply, board, equipment } = view;
    const pack = packFor(view.rules);
    const context = { supply, equipment, pack };
    const circuits = [
      ...trunks.trunks.flatMap((trunk) => {
        const choice = view.trunks[trunk.id];
        return choice === undefined ? [] : [trunkCircuit(trunk, choice, context)];
      }),
      ...Object.entries(view.batteries).map(([id, battery]) => batteryCircuit(id, battery, context)),
    ];

    const lines = linesOf(supply.system);
    const voltage = sourcePhasors(supply.system, supply.nominalV);
    const there = existingSources(view.existing, voltage);
    const all = addPhasors(
      currents(view, voltage, () => true),
      there.solar,
    );
    const onBars = [
      currents(view, voltage, (source) => source.landsOn !== 'changeover'),
      there.solar,
      there.besideNetwork,
    ].reduce(addPhasors);
    const neutralA = magnitudes(all)[3];
    const lineA = perLine(all);
    const lineVA: Record<Line, number> = {
      L1: lineA.L1 * supply.nominalV,
      L2: lineA.L2 * supply.nominalV,
      L3: lineA.L3 * supply.nominalV,
    };
    const va = lines.map((line) => lineVA[line]);
    const prospectiveA =
      supply.prospectiveA ??
      (supply.loopOhm === undefined ? undefined : prospectiveCurrentA(supply.nominalV, supply.loopOhm));
    const waysNeeded = circuits.reduce((sum, { breakerSheetId, of, kind }) => {
      const away = (kind === 'trunk' ? view.trunks[of] : view.batteries[of])?.landsOn === 'changeover';
      return away ? sum : sum + sheetOf(equipment, breakerSheetId, 'breaker').poles;
    }, 0);
    const standingLeakageMA = Object.values(view.units).reduce(
      (sum, unit) => sum + sheetOf(equipment, unit.sheet, 'unit').standingLeakageMA,
      0,
    );

    return {
      name: board.name,
      circuits,
      lineA,
      lineVA,
      thereA: perLine(there.solar),
      thereApartA: perLine(there.solarApart),
      largestDifferenceVA: Math.max(...va) - Math.min(...va),
      ...(lines.length > 1 ? { neutralA } : {}),
      bus: busRule(board, supply, { sourceA: Math.max(...magnitudes(onBars).slice(0, 3)), there }, pack),
      waysNeeded,
      ...(board.freeWays === undefined ? {} : { waysFree: board.freeWays }),
      standingLeakageMA,
      ...(prospectiveA === undefined ? {} : { prospectiveA }),
      workings: [
        ...lines.map((line) =>
          worked(
            `Sources on ${line}`,
            lineA[line],
            'A',
            'solar and batteries at their ratings',
            'equipment sheets',
            there.givens
              .filter(({ lines, kind }) => kind === 'solar' && lines.includes(line))
              .map(({ working }) => working),
          ),
        ),
        worked('Ways', waysNeeded, '', 'poles of the breakers that land in this board', 'equipment sheets', []),
        ...(supply.loopOhm === undefined
          ? []
          : [given('Loop of the supply', supply.loopOhm, 'Ω', 'facts.supply.loopOhm', 'survey')]),
      ],
      leavesOut: [
        'Batteries count as giving their full rating at the same time as the sun.',
        'Loads are not set against the sources: this is the worst of a sunny day with nothing on.',
        'Loops are added as numbers; the reactance of the network is not taken apart.',
        'Car chargers, controlled loads and a second board are loads: they are not in these sums of sources.',
      ],
    };
  },
};

function perLine(sum: Phasors): Record<Line, number> {
  const [L1, L2, L3] = magnitudes(sum);
  return { L1, L2, L3 };
}

/** Phasor sum of the sources that pass a test, each at its rating. */
function currents(
  view: View,
  voltage: Phasors,
  counts: (source: { landsOn?: 'board' | 'changeover' | undefined }) => boolean,
): Phasors {
  const unitsOf = unitsByTrunk(view.units);
  const trunks = Object.entries(view.trunks)
    .filter(([, trunk]) => counts(trunk))
    .flatMap(([id, trunk]) => layDrops(id, trunk, unitsOf, view.equipment))
    .map((drop) => exportPhasors(sourcesOf(drop), voltage));
  const batteries = Object.fromEntries(Object.entries(view.batteries).filter(([, battery]) => counts(battery)));
  const battery = batteryPhasors(batteries, view.equipment, view.supply.system === 'split-phase', voltage);
  return [...trunks, battery.current].reduce(addPhasors, new Float64Array(8));
}
