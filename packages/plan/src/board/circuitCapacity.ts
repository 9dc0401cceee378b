import type { Conductor, Route } from '@eaveline/job';
import { iecCableCapacity, necCableCapacity, Refusal } from '@eaveline/physics';
import type { SheetOf } from '../equipment.ts';
import { sizeName } from '../trunks/ohmPerMetre.ts';
import { given, worked } from '../working.ts';
import type { SourceCircuit } from './types.ts';

/** Conductors of a circuit that heat it: two for line and neutral or two lines, three for three-phase. */
export type Loaded = 2 | 3;

/**
 * What a cable may carry where it runs: table current, each correction, what is left.
 *
 * `raceway` goes by the NEC table with the terminal column of 60 °C, which holds for circuits of 100 A and less whose
 * terminals are not marked hotter (NEC 110.14(C)(1)(a), from memory). All else goes by IEC 60364-5-52. Where the tables
 * do not reach, `noTable` says why.
 */
export function circuitCapacity(
  cable: SheetOf<'cable'>,
  route: Route,
  loaded: Loaded,
  at: string,
): SourceCircuit['capacity'] {
  try {
    return route.method === 'raceway' ? necCapacity(cable, route, loaded, at) : iecCapacity(cable, route, loaded, at);
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return noCapacity(cable, refusal);
  }
}

/** Where no table at hand reaches: too hot, too many together, metric in an American table. Counts as carrying nothing. */
function noCapacity(cable: SheetOf<'cable'>, { message }: Refusal): SourceCircuit['capacity'] {
  return {
    tableA: 0,
    factors: [],
    capacityA: 0,
    noTable: message,
    working: worked(`${sizeName(cable.conductor)} where it runs`, 0, 'A', message, 'no table at hand reaches it', [], {
      symbol: 'I_z',
      decimals: 1,
    }),
  };
}

function iecCapacity(cable: SheetOf<'cable'>, route: Route, loaded: Loaded, at: string): SourceCircuit['capacity'] {
  const method = route.method === 'raceway' ? 'B1' : route.method;
  const got = iecCableCapacity({
    conductor: copper(cable.conductor),
    insulation: cable.insulation,
    loadedConductors: loaded,
    method,
    sizeMm2: cable.conductor.areaMm2 ?? 0,
    ambientC: route.ambientC,
    grouping: 'bunched_or_enclosed',
    circuits: route.circuitsTogether,
    insulationLengthMm: route.insulationMm,
  });
  const factors = [
    { name: `air at ${route.ambientC} °C`, factor: got.ambientFactor },
    { name: `${route.circuitsTogether} circuits together`, factor: got.groupingFactor },
    { name: `${route.insulationMm} mm in insulation`, factor: got.insulationFactor },
  ];
  return {
    tableA: got.tabulatedA,
    factors,
    capacityA: got.capacityA,
    working: capacityWorking(cable, got.tabulatedA, factors, got.capacityA, 'IEC 60364-5-52', [
      given('method', method, '', `${at}.route.method`),
      given('air', route.ambientC, '°C', `${at}.route.ambientC`),
      given('circuits together', route.circuitsTogether, '', `${at}.route.circuitsTogether`),
    ]),
  };
}

function necCapacity(cable: SheetOf<'cable'>, route: Route, loaded: Loaded, at: string): SourceCircuit['capacity'] {
  const column = cable.insulationC >= 90 ? 90 : cable.insulationC >= 75 ? 75 : 60;
  const got = necCableCapacity({
    conductor: copper(cable.conductor),
    awg: cable.conductor.awg ?? '',
    insulationColumnC: column,
    ambientC: route.ambientC,
    currentCarryingConductors: loaded * route.circuitsTogether,
    terminalColumnC: 60,
    ...(route.aboveRoofMm === undefined ? {} : { roofGapMm: route.aboveRoofMm }),
  });
  const factors = [
    { name: `air at ${got.adjustedAmbientC} °C`, factor: got.ambientFactor },
    { name: `${loaded * route.circuitsTogether} conductors together`, factor: got.adjustmentFactor },
  ];
  return {
    tableA: got.tableA,
    factors,
    capacityA: got.usableA,
    working: capacityWorking(cable, got.tableA, factors, got.usableA, 'NEC 310.16, 310.15(B)(1), 310.15(C)(1)', [
      given('air', route.ambientC, '°C', `${at}.route.ambientC`),
      { name: 'terminal at 60 °C', value: got.terminalLimitA, unit: 'A', source: 'NEC 110.14(C), from memory' },
    ]),
  };
}

function capacityWorking(
  cable: SheetOf<'cable'>,
  tableA: number,
  factors: SourceCircuit['capacity']['factors'],
  capacityA: number,
  source: string,
  inputs: Parameters<typeof worked>[5],
) {
  return worked(
    `${sizeName(cable.conductor)} where it runs`,
    capacityA,
    'A',
    `${tableA} A × ${factors.map(({ factor }) => factor.toFixed(2)).join(' × ')}`,
    source,
    [
      { name: 'table', value: tableA, unit: 'A', source },
      ...factors.map(({ name, factor }) => ({ name, value: factor, unit: '', source })),
      ...inputs,
    ],
    { symbol: 'I_z', decimals: 1 },
  );
}

/** Tables at hand are for copper; `conductorSchema` allows aluminium, whose capacity is the maker's to give. */
function copper(conductor: Conductor): 'copper' {
  if (conductor.material !== 'copper') throw new Error('capacity of aluminium is not worked out; parseJob refuses it');
  return 'copper';
}
