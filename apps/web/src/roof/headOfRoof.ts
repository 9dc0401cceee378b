import type { Plan } from '@eaveline/plan';
import type { Head } from '../frame/head.ts';
import { counted, sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';

/** How much roof there is, and which of it sees most sun. */
export function headOfRoof({ roof }: Pick<Plan, 'roof'>): Head {
  const { planes } = roof;
  if (planes.length === 0) return { sentence: 'A clean sheet. One eave, one slope, one pitch.' };
  const usable = planes.reduce((sum, { usableAreaM2 }) => sum + usableAreaM2, 0);
  const best = planes.reduce((a, b) => (b.sun.annualKwhM2 > a.sun.annualKwhM2 ? b : a));
  const unmeasured = planes.filter(({ raftersU }) => raftersU === undefined);
  const rafters =
    unmeasured.length === 0
      ? 'Rafters are known on all of them.'
      : `Rafters are not measured on ${unmeasured.map(({ name }) => name).join(', ')}: feet there are nominal.`;
  return {
    sentence: `${sentence(counted(planes.length, 'plane'))}, ${figure(usable, 0)} m² free for modules.`,
    quiet: `${best.name} sees most sun, ${figure(best.sun.annualKwhM2, 0)} kWh/m² a year. ${rafters}`,
  };
}
