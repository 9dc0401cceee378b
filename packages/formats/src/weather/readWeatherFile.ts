import type { Reading } from '../reading/remark.ts';
import { remarkLog } from '../reading/remarkLog.ts';
import { type FileKind, recogniseFile } from '../recognise/recogniseFile.ts';
import { decodeText } from '../text/decodeText.ts';
import { readEpw } from './readEpw.ts';
import { readHourlyWeather } from './readHourlyWeather.ts';
import { readPvgis } from './readPvgis.ts';
import { readPvgisJson } from './readPvgisJson.ts';
import { readTmy3 } from './readTmy3.ts';
import type { WeatherReadOptions, WeatherYear } from './weatherYear.ts';

type Reader = (text: string, options: WeatherReadOptions) => Reading<WeatherYear>;

const READERS: Partial<Record<FileKind, Reader>> = {
  epw: readEpw,
  tmy3: readTmy3,
  'pvgis-tmy': readPvgis,
  'pvgis-hourly': readPvgis,
  'pvgis-json': readPvgisJson,
  'hourly-weather': readHourlyWeather,
};

/** Reads any weather file this room knows, told by its content. Never throws on what a file holds. */
export function readWeatherFile(file: Uint8Array | string, options: WeatherReadOptions = {}): Reading<WeatherYear> {
  const { text, remarks } = typeof file === 'string' ? { text: file, remarks: [] } : decodeText(file);
  const { kind, why } = recogniseFile(text);
  const reader = READERS[kind];
  const unread = remarks.some(({ severity }) => severity === 'stop');
  const reading = reader && !unread ? reader(text, options) : notWeather(text, kind, why);
  const counts = { ...reading.counts };
  for (const { code } of remarks) counts[code] = (counts[code] ?? 0) + 1;
  return { ...reading, counts, remarks: unread ? remarks : [...remarks, ...reading.remarks] };
}

function notWeather(text: string, kind: FileKind, why: string): Reading<WeatherYear> {
  const log = remarkLog();
  const message = kind === 'service-error' ? /"message"\s*:\s*"((?:[^"\\]|\\.)*)"/.exec(text)?.[1] : undefined;
  const page = kind === 'web-page' ? (/<title>([^<]*)</i.exec(text)?.[1] ?? 'a web page') : undefined;
  const error = message ?? page;
  log.add({
    severity: 'stop',
    code: error === undefined ? 'not-weather' : 'service-error',
    line: 1,
    found:
      error === undefined
        ? `This is no weather file known here. ${why}`
        : `The file holds an error message from the service: ${error.trim()}.`,
    wanted: 'EPW, TMY3 CSV, a PVGIS typical year or the plain hourly table can be read.',
    done: 'Nothing was read.',
    mend: error === undefined ? 'Choose another file.' : 'Ask the service again.',
  });
  return log.close<WeatherYear>(kind, undefined);
}
