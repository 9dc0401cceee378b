import type { Plan, Working } from '@eaveline/plan';
import { sheetWorking } from '../pad/sheetWorking.ts';

/** The year of the modules of one plane. */
export interface PlaneYear {
  readonly planeId: string;
  readonly name: string;
  readonly modules: number;
  readonly kw: number;
  readonly kwh: number;
  readonly monthlyKwh: readonly number[];
  /** Light taken by near objects, share of the year, of the plane's modules together. */
  readonly shadeLoss: number;
  readonly clippedKwh: number;
  readonly working: Working;
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Planes that bear modules, each with the sum of its modules' years. */
export function planeYears({ roof, array, energy }: Pick<Plan, 'roof' | 'array' | 'energy'>): PlaneYear[] {
  const years = new Map(energy.modules.map((each) => [each.moduleId, each]));
  return roof.planes.flatMap(({ id, name }): PlaneYear[] => {
    const placed = array.modules.filter(({ planeId }) => planeId === id);
    const mine = placed.flatMap(({ id: module }) => years.get(module) ?? []);
    if (mine.length === 0) return [];
    const kwh = sum(mine.map(({ annualKwh }) => annualKwh));
    const kw = sum(placed.map(({ pmpW }) => pmpW)) / 1000;
    const lost = sum(mine.map(({ annualKwh, shadeLoss }) => annualKwh * shadeLoss));
    return [
      {
        planeId: id,
        name,
        modules: mine.length,
        kw,
        kwh,
        monthlyKwh: Array.from({ length: 12 }, (_, m) => sum(mine.map(({ monthlyKwh }) => monthlyKwh[m] ?? 0))),
        shadeLoss: kwh === 0 ? 0 : lost / kwh,
        clippedKwh: sum(mine.map(({ clippedKwh }) => clippedKwh)),
        working: sheetWorking(
          `${name} plane, energy in a year`,
          kwh,
          'kWh',
          'Σ of its modules',
          'each module on its own page',
          mine.map(({ working }) => working),
          { decimals: 0 },
        ),
      },
    ];
  });
}
