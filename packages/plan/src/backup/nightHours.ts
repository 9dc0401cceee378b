import { given, type Working, worked } from '../working.ts';
import { runningOf } from './backedCircuits.ts';
import type { FeedingBattery } from './lineRatings.ts';
import type { BackedCircuit, BackupPlan } from './types.ts';

/**
 * Hours of a night without sun, from full and from the reserve alone.
 *
 *     hours = usable energy · one-way efficiency ÷ night load,   one-way = √(round trip)
 *
 * Lines without a battery in common last each on their own; the hours are those of the first to go dark. Undefined
 * where no battery feeds the backed-up side or nothing on it draws at night.
 */
export function nightHours(
  batteries: readonly FeedingBattery[],
  circuits: readonly BackedCircuit[],
  reserve: number,
): BackupPlan['night'] {
  const running = runningOf(circuits);
  const stores = storesOf(batteries)
    .map((store) => storeNight(store, running))
    .filter(({ loadW }) => loadW > 0);
  const first = stores.reduce<StoreNight | undefined>(
    (least, store) => (least === undefined || store.fullH < least.fullH ? store : least),
    undefined,
  );
  if (first === undefined) return undefined;
  return {
    loadW: stores.reduce((sum, { loadW }) => sum + loadW, 0),
    fullH: first.fullH,
    reserveH: first.fullH * reserve,
    working: nightWorking(first, reserve, stores.length > 1),
  };
}

interface StoreNight {
  readonly batteries: readonly FeedingBattery[];
  readonly names: readonly string[];
  readonly loadW: number;
  readonly givenKwh: number;
  readonly fullH: number;
}

/** Batteries that share a line, together: one store each. */
function storesOf(batteries: readonly FeedingBattery[]): readonly (readonly FeedingBattery[])[] {
  const stores: FeedingBattery[][] = [];
  for (const battery of batteries) {
    const touching = stores.filter((store) =>
      store.some((other) => other.lines.some((line) => battery.lines.includes(line))),
    );
    for (const store of touching) stores.splice(stores.indexOf(store), 1);
    stores.push([...touching.flat(), battery]);
  }
  return stores;
}

function storeNight(batteries: readonly FeedingBattery[], running: readonly BackedCircuit[]): StoreNight {
  const lines = new Set(batteries.flatMap((battery) => battery.lines));
  const share = ({ lines: mine }: BackedCircuit) => mine.filter((line) => lines.has(line)).length / mine.length;
  const loads = running.filter((circuit) => circuit.nightW * share(circuit) > 0);
  const loadW = loads.reduce((sum, circuit) => sum + circuit.nightW * share(circuit), 0);
  const givenKwh = batteries.reduce((sum, { sheet }) => sum + sheet.usableKwh * Math.sqrt(sheet.roundTrip), 0);
  return { batteries, names: loads.map(({ name }) => name), loadW, givenKwh, fullH: (1000 * givenKwh) / loadW };
}

function nightWorking(store: StoreNight, reserve: number, several: boolean): Working {
  const energy = worked(
    'Energy it gives from full',
    store.givenKwh,
    'kWh',
    'usable · √(round trip): the losses of discharging alone',
    'equipment sheet',
    store.batteries.flatMap(({ sheet, sheetId }) => [
      given(
        `${sheet.name}, usable`,
        sheet.usableKwh,
        'kWh',
        `choices.equipment.${sheetId}.usableKwh`,
        'equipment sheet',
      ),
      given(
        `${sheet.name}, round trip`,
        sheet.roundTrip,
        '',
        `choices.equipment.${sheetId}.roundTrip`,
        'equipment sheet',
      ),
    ]),
  );
  const load = worked(
    'Night load',
    store.loadW,
    'W',
    `sum of the night means: ${store.names.join(', ')}`,
    'facts.loads.circuits',
    [],
  );
  return worked(
    'Hours of a night, from full',
    store.fullH,
    'h',
    't = E ÷ P',
    several ? 'the lines that go dark first' : 'energy balance',
    [
      energy,
      load,
      worked('from the reserve alone', store.fullH * reserve, 'h', 'reserve · hours from full', 'energy balance', [
        given('reserve', reserve, '', 'choices.backup.reserve'),
      ]),
    ],
    { symbol: 't', decimals: 1 },
  );
}
