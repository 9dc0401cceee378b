import type { CircuitFacts } from '@eaveline/job';
import { islandFault } from '@eaveline/physics';
import { given, type Working, worked } from '../working.ts';
import { runningOf } from './backedCircuits.ts';
import type { LineRating } from './lineRatings.ts';
import type { BackedCircuit, BackupPlan } from './types.ts';

/** The most an island drives into a fault on one line, and whether the quickest breaker of each rating would see it. */
export function islandFaults(
  ratings: readonly LineRating[],
  circuits: readonly BackedCircuit[],
  facts: Readonly<Record<string, CircuitFacts>>,
): Pick<BackupPlan, 'islandFaultA' | 'islandTrips'> & { readonly working?: Working } {
  const strongest = ratings.reduce<LineRating | undefined>(
    (most, rating) => (rating.faultA > (most?.faultA ?? 0) ? rating : most),
    undefined,
  );
  if (strongest === undefined) return { islandTrips: [] };
  const islandTrips = runningOf(circuits).flatMap((circuit) => {
    const breakerA = facts[circuit.id]?.breakerA;
    const faultA = ratings
      .filter(({ line }) => circuit.lines.includes(line))
      .reduce((least, rating) => Math.min(least, rating.faultA), Number.POSITIVE_INFINITY);
    if (breakerA === undefined || !(faultA > 0) || faultA === Number.POSITIVE_INFINITY) return [];
    // the curve on site is not known: type B trips first, so what it misses every other misses too
    const trip = islandFault({ breaker: { curve: 'B', ratingA: breakerA }, sourceFaultA: faultA });
    const { magneticFromA, magneticTrip } = trip;
    return [{ circuitId: circuit.id, breakerA, magneticFromA, magneticTrip }];
  });
  return { islandFaultA: strongest.faultA, islandTrips, working: faultWorking(strongest) };
}

function faultWorking(rating: LineRating): Working {
  return worked(
    `Fault current in island, ${rating.line}`,
    rating.faultA,
    'A',
    'sum of the batteries on that line',
    'equipment sheets; where one states none, short-time rating ÷ volts',
    rating.batteries.map(({ sheet, sheetId }) =>
      sheet.faultA === undefined
        ? given(
            `${sheet.name}, short time`,
            sheet.peakVA,
            'VA',
            `choices.equipment.${sheetId}.peakVA`,
            'equipment sheet',
          )
        : given(`${sheet.name}, fault`, sheet.faultA, 'A', `choices.equipment.${sheetId}.faultA`, 'equipment sheet'),
    ),
  );
}
