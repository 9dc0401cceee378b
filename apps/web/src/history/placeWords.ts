import type { Job } from '@eaveline/job';
import { valueAt } from '@eaveline/sync/edits';
import { sentence } from '../words/count.ts';
import { figure } from '../words/figure.ts';

/** Units as names of fields end with them. Longer endings first. */
const UNITS: readonly (readonly [RegExp, string])[] = [
  [/Mm2$/, 'mm²'],
  [/WM2$/, 'W/m²'],
  [/MS$/, 'm/s'],
  [/KPa$/, 'kPa'],
  [/Kwh$/, 'kWh'],
  [/VAPerLine$/, 'VA'],
  [/VATotal$/, 'VA'],
  [/VA$/, 'VA'],
  [/Mm$/, 'mm'],
  [/Ohm$/, 'Ω'],
  [/KA$/, 'kA'],
  [/Deg$/, '°'],
  [/KVA$/, 'kVA'],
  [/A$/, 'A'],
  [/V$/, 'V'],
  [/W$/, 'W'],
  [/C$/, '°C'],
  [/M$/, 'm'],
];
/** Rooms of the job nobody needs to be told. */
const UNSAID = new Set(['facts', 'choices', 'records']);

function apart(name: string): string {
  return name
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .replace(/-/g, ' ')
    .toLowerCase();
}

function unitOf(name: string): readonly [string, string] {
  const found = UNITS.find(([ending]) => ending.test(name) && name.replace(ending, '') !== '');
  return found === undefined ? [name, ''] : [name.replace(found[0], ''), found[1]];
}

/** Name of the thing that stands at a place; `A` of the trunks is Trunk A. Undefined where it has none. */
export function nameAt(job: Job, path: readonly string[]): string | undefined {
  const name = valueAt(job, [...path, 'name']);
  if (typeof name !== 'string') return undefined;
  const sort = path.at(-2)?.replace(/s$/, '');
  return name.length > 2 || sort === undefined ? name : `${sentence(sort)} ${name}`;
}

/**
 * A place of the job in words: `trunks, Trunk A, home run, length`.
 *
 * A thing that has a name goes by it rather than by its id.
 */
export function placeWords(job: Job, path: readonly string[]): string {
  return path
    .map((step, i) => {
      if (i === 0 && UNSAID.has(step)) return undefined;
      return nameAt(job, path.slice(0, i + 1)) ?? apart(unitOf(step)[0]);
    })
    .filter((words, i, all) => words !== undefined && !all[i + 1]?.toLowerCase().startsWith(words.replace(/s$/, ' ')))
    .join(', ');
}

/** A value of the job in words, with the unit its place names. */
export function thereWords(job: Job, path: readonly string[], value: unknown): string {
  if (value === undefined) return 'nothing';
  const unit = unitOf(path.at(-1) ?? '')[1];
  if (typeof value === 'number')
    return `${figure(value, Number.isInteger(value) ? 0 : 3)
      .replace(/(\.\d*?)0+$/, '$1')
      .replace(/\.$/, '')}${unit === '' || unit === '°' ? unit : ` ${unit}`}`;
  // an id is nobody's language: the sheet it names goes by its name
  if (typeof value === 'string') return job.choices.equipment[value]?.name ?? `“${value}”`;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value))
    return value.every((each) => typeof each !== 'object') ? value.join(', ') : `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null && 'name' in value && typeof value.name === 'string')
    return value.name;
  return 'there';
}
