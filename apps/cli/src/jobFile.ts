import { readWeatherFile, remarkSentence, type WeatherYear } from '@eaveline/formats';
import { type Job, type JobRemark, parseJob, remarkLine } from '@eaveline/job';
import type { Io } from './io.ts';

/** A job file opened, or all that stands against it. */
export type Opened<T> =
  | { readonly ok: true; readonly value: T; readonly notes: readonly string[] }
  | { readonly ok: false; readonly text: string };

/** Share of the hours a year cannot do without; fewer gaps count as nothing and are told. Common practice, no source. */
const WANTED_COVER = 0.9;
const LIGHT_AND_HEAT = [
  ['ghi', 'sun on the level'],
  ['dni', 'direct light'],
  ['dhi', 'diffuse light'],
  ['airC', 'air temperature'],
] as const;

const bySeverity = (remarks: readonly JobRemark[], severity: JobRemark['severity']) =>
  remarks.filter((remark) => remark.severity === severity);

/** Opens a job file. Every problem is named at once; a file with one that stops gives no job. */
export async function openJob(path: string, io: Io): Promise<Opened<Job>> {
  const { job, remarks } = parseJob(path === '-' ? await io.readStdin() : await io.readText(path), path);
  if (job !== undefined) return { ok: true, value: job, notes: remarks.map(remarkLine) };
  const stops = bySeverity(remarks, 'stop');
  const lines = [...stops, ...bySeverity(remarks, 'warn')].map(remarkLine);
  return {
    ok: false,
    text: [
      `${path} cannot be opened. ${stops.length} ${stops.length === 1 ? 'thing stops' : 'things stop'} it:`,
      ...lines,
    ].join('\n'),
  };
}

/** Reads a weather file, where one was named. A file that cannot be used is refused with the reader's own words. */
export async function openWeather(path: string | undefined, io: Io): Promise<Opened<WeatherYear | undefined>> {
  if (path === undefined) return { ok: true, value: undefined, notes: [] };
  const { data, remarks } = readWeatherFile(await io.readBytes(path));
  const notes = remarks.map((remark) => `${path}: ${remarkSentence(remark)}`);
  if (data === undefined) return { ok: false, text: [`${path} cannot be used as weather.`, ...notes].join('\n') };
  if (data.annual === undefined) {
    return {
      ok: false,
      text: [`${path} does not hold a whole year, so no year can be worked out from it.`, ...notes].join('\n'),
    };
  }
  const gaps = LIGHT_AND_HEAT.filter(([column]) => data.covered[column] < WANTED_COVER * data.hoursInYear);
  if (gaps.length > 0) {
    const lacks = gaps.map(([column, words]) => `${words} for ${data.covered[column]} of ${data.hoursInYear} hours`);
    return {
      ok: false,
      text: [`${path} has ${lacks.join(', ')}: no year can be worked out from it.`, ...notes].join('\n'),
    };
  }
  return { ok: true, value: data, notes };
}
