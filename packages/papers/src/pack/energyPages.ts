import type { ModuleEnergy, PlacedModule } from '@eaveline/plan';
import { gap, headline, type Part, type Sheet, table } from '../page/index.ts';
import { capital, counted, figure, monthNames, perCent, rangeOf, withUnit } from './figures.ts';
import { lineLetters, type Pack } from './packContext.ts';
import { headed, pagesOf } from './pagesOf.ts';

/** A module with its year. */
interface Made {
  readonly module: PlacedModule;
  readonly year: ModuleEnergy;
}

/** The year of the array: months, planes, trunks, and every module with what near objects take from it. */
export function energyPages(pack: Pack): Sheet[] {
  const { energy, array, sun } = pack.plan;
  if (energy.modules.length === 0) return [];
  const years = new Map(energy.modules.map((year) => [year.moduleId, year]));
  const made = array.modules.flatMap((module): Made[] => {
    const year = years.get(module.id);
    return year === undefined ? [] : [{ module, year }];
  });
  const [low, high] = energy.rangeKwh;
  return pagesOf(pack, { no: '07', title: 'Energy' }, [
    headline(
      `${capital(counted(made.length, 'module'))} make ${withUnit(energy.annualKwh / 1000, 'MWh', 1)} a year at the board.`,
      `Nine years in ten: ${rangeOf(low / 1000, high / 1000, 'MWh', 1)}. Weather: ${sun.climate.name}.`,
    ),
    gap(3),
    headed('Months', months(pack)),
    gap(3),
    headed('Planes', sums('plane', planeSums(pack, made))),
    gap(3),
    headed('Trunks', sums('trunk', trunkSums(pack, made))),
    gap(3),
    headed('Modules', modules(pack, made)),
  ]);
}

/** Each month with a mean day of it, made and on level ground. */
function months({ plan: { energy, sun } }: Pack): Part {
  const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return table({
    label: 'energy by month',
    columns: [
      { head: 'month', share: 1.4, weight: 700 },
      { head: 'made, kWh', share: 1.6, align: 'end' },
      { head: 'of the year', share: 1.5, align: 'end' },
      { head: 'a mean day, kWh', share: 1.9, align: 'point' },
      { head: 'sun on the level, kWh/m²', share: 2.6, align: 'point' },
    ],
    rows: energy.monthlyKwh.map((kwh, m) => ({
      of: `month:${m + 1}`,
      cells: [
        monthNames[m] as string,
        figure(kwh, 0),
        perCent(energy.annualKwh > 0 ? kwh / energy.annualKwh : 0),
        figure(kwh / (days[m] as number), 1),
        figure(sun.monthlyGhiKwhM2[m] as number, 1),
      ],
    })),
  });
}

interface Sum {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  readonly kw: number;
  readonly kwh: number;
}

function sumOf(id: string, name: string, own: readonly Made[]): Sum[] {
  if (own.length === 0) return [];
  return [
    {
      ...{ id, name, count: own.length },
      kw: own.reduce((sum, { module }) => sum + module.pmpW / 1000, 0),
      kwh: own.reduce((sum, { year }) => sum + year.annualKwh, 0),
    },
  ];
}

const planeSums = ({ plan }: Pack, made: readonly Made[]) =>
  plan.roof.planes.flatMap(({ id, name }) =>
    sumOf(
      id,
      name,
      made.filter(({ module }) => module.planeId === id),
    ),
  );

const trunkSums = ({ plan, job }: Pack, made: readonly Made[]) =>
  plan.trunks.trunks.flatMap(({ id, name, lines }) =>
    sumOf(
      id,
      `${name}, ${lineLetters(lines)}`,
      made.filter(({ module }) => job.choices.units[module.unitId]?.trunkId === id),
    ),
  );

function sums(head: string, rows: readonly Sum[]): Part {
  return table({
    label: `energy by ${head}`,
    columns: [
      { head, share: 2.4, weight: 700 },
      { head: 'modules', share: 1.2, align: 'end' },
      { head: 'kW', share: 1.2, align: 'point' },
      { head: 'kWh a year', share: 1.6, align: 'end' },
      { head: 'kWh for each kW', share: 2, align: 'end' },
    ],
    rows: rows.map(({ id, name, count, kw, kwh }) => ({
      of: id,
      cells: [name, figure(count, 0), figure(kw, 2), figure(kwh, 0), figure(kwh / kw, 0)],
    })),
  });
}

function modules({ plan }: Pack, made: readonly Made[]): Part {
  const planes = new Map(plan.roof.planes.map(({ id, name }) => [id, name]));
  return table({
    label: 'energy by module',
    columns: [
      { head: 'module', share: 1.6, weight: 700 },
      { head: 'plane', share: 2 },
      { head: 'kWh a year', share: 1.6, align: 'end' },
      { head: 'near objects take', share: 2, align: 'end' },
      { head: 'above its unit’s rating, kWh', share: 2.8, align: 'point' },
    ],
    rows: made.map(({ module, year }) => ({
      of: module.id,
      cells: [
        module.name,
        planes.get(module.planeId) ?? module.planeId,
        figure(year.annualKwh, 0),
        year.shadeLoss === 0 ? 'nothing' : `${figure(100 * year.shadeLoss, 1)}\u00a0%`,
        figure(year.clippedKwh, 1),
      ],
    })),
  });
}
