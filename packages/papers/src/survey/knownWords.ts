import type { Answer, Conductor, Job } from '@eaveline/job';
import { civilDay, withUnit } from '../pack/figures.ts';

/** A fact as a form prints it: `0.31 Ω`, `16 mm² copper`, `L1, L2`; empty where there is none. */
export function knownWords(answer: Answer, value: unknown, job: Pick<Job, 'facts'>): string {
  if (value === undefined) return '';
  switch (answer.kind) {
    case 'number':
      // a year and a count of ways are no quantities: their digits stand together
      if (answer.unit === '') return String(value);
      return typeof value === 'number' ? withUnit(value, answer.unit, decimalsOf(value)) : String(value);
    case 'pick':
      return answer.options.find((option) => option.value === value)?.words ?? String(value);
    case 'yes-no':
      return value === true ? answer.yes : answer.no;
    case 'date':
      return civilDay(String(value));
    case 'lines':
      return (value as readonly string[]).join(', ');
    case 'plane':
      return job.facts.roof.planes[String(value)]?.name ?? String(value);
    case 'conductor': {
      const { areaMm2, awg, material } = value as Conductor;
      return `${awg === undefined ? `${areaMm2}\u00a0mm²` : `${awg}\u00a0AWG`} ${material}`;
    }
    case 'text':
      return String(value);
    case 'brought':
      return 'there';
  }
}

/** As many places as were measured. */
function decimalsOf(value: number): number {
  return String(Number(value.toPrecision(10))).split('.')[1]?.length ?? 0;
}
