import { textLines } from '../text/lines.ts';

/** Kinds of file told apart by their content. */
export type FileKind =
  | 'epw'
  | 'tmy3'
  | 'pvgis-tmy'
  | 'pvgis-hourly'
  | 'pvgis-json'
  | 'hourly-weather'
  | 'nem12'
  | 'nem13'
  | 'green-button'
  | 'geojson'
  | 'osm-xml'
  | 'register-map'
  | 'web-page'
  | 'service-error'
  | 'table'
  | 'unknown';

/** What a file is, and the mark by which it was known. */
export interface Recognised {
  readonly kind: FileKind;
  /** One sentence: what in the file says so. */
  readonly why: string;
}

const HEAD_CHARS = 20_000;

/** Tells what a file is from its first records. The name of the file plays no part. */
export function recogniseFile(text: string): Recognised {
  const head = text.slice(0, HEAD_CHARS);
  const lines = textLines(head);
  const start = head.replace(/^\ufeff/, '').trimStart();
  return (
    recogniseXml(start) ??
    (start.startsWith('{') || start.startsWith('[') ? recogniseJson(start) : undefined) ??
    recogniseLines(lines) ?? { kind: 'unknown', why: 'None of the known openings was found.' }
  );
}

function recogniseXml(start: string): Recognised | undefined {
  if (!start.startsWith('<')) return undefined;
  if (/^<(!doctype html|html)/i.test(start)) return { kind: 'web-page', why: 'It begins like a web page.' };
  if (start.includes('http://naesb.org/espi')) {
    return { kind: 'green-button', why: 'It names the ESPI namespace.' };
  }
  if (/<osm[\s>]/.test(start)) return { kind: 'osm-xml', why: 'Its root element is osm.' };
  return undefined;
}

function recogniseJson(start: string): Recognised | undefined {
  const has = (key: string) => new RegExp(`"${key}"\\s*:`).test(start);
  if (has('inputs') && has('outputs')) return { kind: 'pvgis-json', why: 'It has inputs and outputs.' };
  if (has('T2m') && has('G(h)')) return { kind: 'pvgis-json', why: 'Its records hold T2m and G(h).' };
  if (has('type') && (has('features') || has('coordinates'))) {
    return { kind: 'geojson', why: 'It has a type and features.' };
  }
  if (has('message') && has('status')) return { kind: 'service-error', why: 'It holds a message and a status only.' };
  return undefined;
}

function recogniseLines(lines: readonly string[]): Recognised | undefined {
  const first = (lines[0] ?? '').trim();
  const second = (lines[1] ?? '').trim();
  if (/^"?LOCATION"?\s*[,;]/i.test(first)) return { kind: 'epw', why: 'The first line begins with LOCATION.' };
  if (/^(DESIGN CONDITIONS|TYPICAL\/EXTREME PERIODS|GROUND TEMPERATURES)[,;]/i.test(first)) {
    return { kind: 'epw', why: 'It has head lines of an EPW file, but no LOCATION line.' };
  }
  if (/^100,\s*NEM12\b/i.test(first)) return { kind: 'nem12', why: 'The first record is 100,NEM12.' };
  if (/^100,\s*NEM13\b/i.test(first)) return { kind: 'nem13', why: 'The first record is 100,NEM13.' };
  if (/^200,[A-Z0-9]{10,11},/i.test(first)) {
    return { kind: 'nem12', why: 'It begins with a 200 record; the 100 record is missing.' };
  }
  if (/^Date \(MM\/DD\/YYYY\)/i.test(second)) {
    return { kind: 'tmy3', why: 'The second line begins with Date (MM/DD/YYYY).' };
  }
  if (/^Latitude \(decimal degrees\):/i.test(first)) return recognisePvgis(lines);
  if (/^"?sun_time_utc"?\s*,/i.test(first)) return { kind: 'hourly-weather', why: 'The first column is sun_time_utc.' };
  if (/^SunS\b/.test(first) || /^(0x)?5375[\s,]+(0x)?6e53/i.test(first)) {
    return { kind: 'register-map', why: 'The first words spell SunS.' };
  }
  const separator = [',', ';', '\t'].find((mark) => first.includes(mark) && second.includes(mark));
  return separator === undefined ? undefined : { kind: 'table', why: 'Its lines are rows of fields.' };
}

function recognisePvgis(lines: readonly string[]): Recognised {
  const typical = lines.some((line) => /^time\(UTC\),/i.test(line.trim()));
  return typical
    ? { kind: 'pvgis-tmy', why: 'A PVGIS head, then columns that begin with time(UTC).' }
    : { kind: 'pvgis-hourly', why: 'A PVGIS head without the columns of a typical year.' };
}
