import type { BackupChoice, BoardFacts, SupplyFacts } from '@eaveline/job';
import type { TrunkPlan } from '../trunks/types.ts';
import { given, type Working, worked } from '../working.ts';
import { lineVA } from './backedCircuits.ts';
import type { LineRating } from './lineRatings.ts';
import type { BackedCircuit } from './types.ts';

export interface ChangeoverInput {
  readonly supply: SupplyFacts;
  readonly mainSwitchA: BoardFacts['mainSwitchA'];
  readonly backup: BackupChoice;
  readonly circuits: readonly BackedCircuit[];
  readonly ratings: readonly LineRating[];
  readonly trunks: readonly TrunkPlan[];
}

/**
 * The most that passes through the changeover on one line.
 *
 * A whole-house changeover carries what the service or the main lets through. One for a part board carries, on its
 * busiest line, the greater of load and charging together and battery and sun together.
 */
export function changeoverNeed(input: ChangeoverInput): Working & { readonly value: number } {
  return input.backup.scope === 'whole' ? wholeHouse(input) : partBoard(input);
}

function wholeHouse({ supply, mainSwitchA }: ChangeoverInput): Working & { readonly value: number } {
  const value = Math.min(supply.serviceA, mainSwitchA ?? supply.serviceA);
  const formula = 'the lesser of service and main';
  const inputs = [
    given('service', supply.serviceA, 'A', 'facts.supply.serviceA'),
    ...(mainSwitchA === undefined ? [] : [given('main', mainSwitchA, 'A', 'facts.board.mainSwitchA')]),
  ];
  return { ...worked('Through the changeover', value, 'A', formula, 'common practice, no source', inputs), value };
}

function partBoard({ supply, circuits, ratings, trunks }: ChangeoverInput): Working & { readonly value: number } {
  const fed = circuits.filter((circuit) => circuit.fed);
  const { nominalV } = supply;
  const lines = ratings.map((rating) => {
    const loadA = lineVA(fed, rating.line) / nominalV;
    const batteryA = rating.continuousVA / nominalV;
    const sunA = trunks
      .filter((trunk) => trunk.lines.includes(rating.line))
      .reduce((sum, trunk) => sum + trunk.currentA, 0);
    return { line: rating.line, loadA, batteryA, sunA, value: batteryA + Math.max(loadA, sunA) };
  });
  const none = { line: 'L1', loadA: 0, batteryA: 0, sunA: 0, value: 0 };
  const busiest = lines.reduce((most, here) => (here.value > most.value ? here : most), none);
  const part = (name: string, value: number, source: string): Working => ({ name, value, unit: 'A', source });
  const working = worked(
    `Through the changeover on ${busiest.line}`,
    busiest.value,
    'A',
    'battery + the greater of load and sun',
    'Kirchhoff; everything on at once, the safe reading',
    [
      part('battery, charging or giving', busiest.batteryA, 'equipment sheets'),
      part('load', busiest.loadA, 'facts.loads.circuits'),
      part('sun', busiest.sunA, 'rated currents of the units'),
    ],
  );
  return { ...working, value: busiest.value };
}
