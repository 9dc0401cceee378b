import { howFar, type Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { placeWords } from '../site/headOfSite.ts';
import { figure } from '../words/figure.ts';

const mwh = (kwh: number) => figure(kwh / 1000, 1);

/** The year with its range; below it which weather it was worked out from, and how far away that is. */
export function headOfEnergy({ energy, sun: { climate } }: Pick<Plan, 'energy' | 'sun'>): Head {
  if (energy.modules.length === 0) return { sentence: 'No modules, no energy yet.' };
  const [low, high] = energy.rangeKwh;
  const weather = climate.kind === 'weather file' ? 'A weather file' : 'Monthly normals';
  return {
    sentence: `${mwh(energy.annualKwh)} MWh a year. Nine years in ten: ${mwh(low)} to ${mwh(high)}.`,
    quiet: `${weather} of ${placeWords(climate)}, ${howFar(climate)}. ${figure(energy.kwhPerKw, 0)} kWh for each kW of modules.`,
  };
}
