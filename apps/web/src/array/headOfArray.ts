import type { Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { breachWords } from '../roof/breachWords.ts';
import { counted, countWord, sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';

const mwh = (kwh: number, decimals = 1) => figure(kwh / 1000, decimals);

/** How many modules on how many planes, and what they make of a year, with its range. */
export function headOfArray({ array, energy, roof }: Pick<Plan, 'array' | 'energy' | 'roof'>): Head {
  const { modules } = array;
  if (modules.length === 0) return { sentence: 'No modules yet. Lay the first row along an eave.' };
  const planes = new Set(modules.map(({ planeId }) => planeId)).size;
  const [low, high] = energy.rangeKwh;
  const over = modules.filter((module) => {
    const plane = roof.planes.find(({ id }) => id === module.planeId);
    return plane !== undefined && breachWords(module, plane) !== undefined;
  });
  const make = `make ${mwh(energy.annualKwh)} MWh a year`;
  return {
    sentence: `${sentence(counted(modules.length, 'module'))} on ${counted(planes, 'plane')} ${modules.length === 1 ? make.replace('make', 'makes') : make}.`,
    quiet: `Nine years in ten: ${mwh(low)} to ${mwh(high)}. ${over.length === 0 ? 'All keep their setbacks and clear rings.' : `${sentence(countWord(over.length))} ${over.length === 1 ? 'lies' : 'lie'} where none may.`}`,
  };
}
