import { readWeatherFile, remarkSentence, type WeatherYear } from '@eaveline/formats';
import { Refusal, type SunSite, stationPressure } from '@eaveline/physics';
import type { NamedFiles } from './calc.ts';

/** A file is read once, however many rows name it. */
const known = new WeakMap<Uint8Array, WeatherYear>();

/**
 * The whole year of weather in a file that a row names.
 *
 * @throws {Refusal} `missing` without the file, or where it does not cover the year; `inconsistent` where it cannot be read.
 */
export function yearNamed(path: string, files: NamedFiles): WeatherYear {
  const bytes = files.get(path);
  if (bytes === undefined) {
    const mend = 'Give the path from here, or from the folder of the file of rows.';
    throw new Refusal({ code: 'missing', at: 'weatherFile', got: path, want: 'a file that can be opened', mend });
  }
  const before = known.get(bytes);
  if (before) return before;
  const { data, remarks } = readWeatherFile(bytes);
  if (data === undefined) {
    const stop = remarks.find(({ severity }) => severity === 'stop');
    const want = 'a weather file that can be read';
    const mend = stop ? remarkSentence(stop) : 'eaveline read says what is wrong with it.';
    throw new Refusal({ code: 'inconsistent', at: 'weatherFile', got: path, want, mend });
  }
  const { annual } = data;
  const lacking = (['ghiKwhM2', 'dniKwhM2', 'dhiKwhM2', 'meanAirC', 'meanWindMS'] as const).filter(
    (name) => annual?.[name] === undefined,
  );
  if (lacking.length > 0) {
    const got = annual === undefined ? `${data.month.length} hours` : `no ${lacking.join(', ')}`;
    const want = `a whole year, ${data.hoursInYear} hours, with every quantity in nine of ten`;
    throw new Refusal({
      code: 'missing',
      at: 'weatherFile',
      got,
      want,
      mend: 'eaveline read says which hours are missing.',
    });
  }
  known.set(bytes, data);
  return data;
}

/** What a row may say about where its weather was taken. */
export interface PlaceRow extends Partial<Pick<SunSite, 'altitudeM' | 'pressurePa' | 'temperatureC' | 'deltaTS'>> {
  readonly lat?: number;
  readonly lon?: number;
}

/** Where the year was taken: what the row says, else what the file says. @throws {Refusal} `missing`. */
export function siteOfYear(row: PlaceRow, { place }: WeatherYear): SunSite {
  const latitudeDeg = row.lat ?? place?.latitudeDeg;
  const longitudeDeg = row.lon ?? place?.longitudeDeg;
  if (latitudeDeg === undefined || longitudeDeg === undefined) {
    const at = latitudeDeg === undefined ? 'lat' : 'lon';
    const mend = 'This weather file does not say where it was taken: give lat and lon in the row.';
    throw new Refusal({ code: 'missing', at, got: 'nothing', want: 'degrees', mend });
  }
  const altitudeM = row.altitudeM ?? place?.elevationM ?? 0;
  return {
    latitudeDeg,
    longitudeDeg,
    altitudeM,
    pressurePa: row.pressurePa ?? stationPressure(altitudeM),
    temperatureC: row.temperatureC ?? 12,
    deltaTS: row.deltaTS ?? 67,
  };
}
