import { decodeText, type FileKind, recogniseFile } from '@eaveline/formats';
import type { Verdict } from '../io.ts';
import type { Held } from './held.ts';
import { jobHeld } from './jobHeld.ts';
import { weatherHeld } from './weatherHeld.ts';

export interface FileReport extends Held {
  readonly kind: FileKind | 'job';
  /** The kind in words. */
  readonly what: string;
  /** What in the file says so. */
  readonly why: string;
  readonly verdict: Verdict;
}

const WORDS: Readonly<Record<FileReport['kind'], string>> = {
  epw: 'EPW weather year',
  tmy3: 'TMY3 weather year',
  'pvgis-tmy': 'PVGIS typical year',
  'pvgis-hourly': 'PVGIS hourly series',
  'pvgis-json': 'PVGIS answer in JSON',
  'hourly-weather': 'plain hourly weather table',
  nem12: 'NEM12 interval meter file',
  nem13: 'NEM13 accumulated meter file',
  'green-button': 'Green Button meter file',
  geojson: 'GeoJSON outlines',
  'osm-xml': 'map extract in OSM XML',
  'register-map': 'register map of a device',
  'web-page': 'web page',
  'service-error': 'error message of a service',
  table: 'table of a kind not known here',
  unknown: 'file of a kind not known here',
  job: 'Eaveline job',
};

type Reader = (file: Uint8Array, name: string) => Held;

/** Kinds that can be read so far. */
const READERS: Readonly<Partial<Record<FileReport['kind'], Reader>>> = {
  job: jobHeld,
  epw: weatherHeld,
  tmy3: weatherHeld,
  'pvgis-tmy': weatherHeld,
  'pvgis-hourly': weatherHeld,
  'pvgis-json': weatherHeld,
  'hourly-weather': weatherHeld,
  // these two say what went wrong at the service, in the words of the weather reader
  'web-page': weatherHeld,
  'service-error': weatherHeld,
};

const isJob = (text: string, name: string) =>
  name.endsWith('.job.json') || (/^\s*\{/.test(text) && /"format"\s*:\s*"eaveline-job"/.test(text));

/** A kind that is known by sight only, or not at all. */
function unread(kind: FileReport['kind'], why: string): Held {
  const known = kind !== 'unknown' && kind !== 'table';
  const found = known ? `This is a ${WORDS[kind]}.` : `This is a ${WORDS[kind]}. ${why}`;
  const wanted = `Kinds read so far: ${Object.keys(READERS)
    .filter((each) => each !== 'web-page' && each !== 'service-error')
    .join(', ')}.`;
  const done = known ? 'It was recognised, but Eaveline does not read this kind yet.' : 'Nothing was read.';
  const remarks = [{ severity: 'stop', code: known ? 'no-reader-yet' : 'not-known', found, wanted, done }] as const;
  return { usable: false, facts: [], holds: {}, remarks, counts: { [remarks[0].code]: 1 }, assumptions: [] };
}

/** 0: usable, nothing to look at. 1: usable, with a remark that something was left out or is doubtful. 2: not usable. */
function verdictOf({ usable, remarks }: Held): Verdict {
  if (!usable) return 2;
  return remarks.some(({ severity }) => severity === 'drop' || severity === 'warn') ? 1 : 0;
}

/**
 * Says what a file is, by its content, and what a reader makes of it.
 *
 * @param name  of the file: only a job is known by its name too, when its text is too broken to tell.
 */
export function reportFile(file: Uint8Array, name: string): FileReport {
  const { text, remarks } = decodeText(file);
  const stopped = remarks.some(({ severity }) => severity === 'stop');
  const recognised = recogniseFile(text);
  const job = isJob(text, name);
  const kind = job ? 'job' : recognised.kind;
  const why = job ? 'Its format says eaveline-job, or its name does.' : recognised.why;
  const reader = READERS[kind];
  const held: Held = stopped
    ? { usable: false, facts: [], holds: {}, remarks, counts: {}, assumptions: [] }
    : (reader?.(file, name) ?? unread(kind, why));
  return { kind, what: WORDS[kind], why, ...held, verdict: verdictOf(held) };
}
