import type { Records } from '@eaveline/job';
import type { Change, TestRow } from '@eaveline/plan';

export type Readings = Records['readings'];

/** A reading as it was taken at the meter, before it is kept. */
export interface Taken {
  /** Id of the test. */
  readonly test: string;
  readonly value: number;
  readonly unit: string;
  readonly by: string;
  /** Instrument and its number. */
  readonly with?: string;
  readonly sunWM2?: number;
  readonly cellC?: number;
}

/** Unit of an answer to a look: 1 is yes, 0 is no. Readings hold numbers only. */
export const YES_OR_NO = 'yes';

/** A test that is looked at and answered yes or no: nothing is expected of a meter and no limit is set. */
export function isLook({ predicted, limit }: Pick<TestRow, 'predicted' | 'limit'>): boolean {
  return predicted === undefined && limit === undefined;
}

/** Unit a reading of the test is taken in. */
export function unitOf(row: Pick<TestRow, 'predicted' | 'limit'>): string {
  return row.predicted?.unit ?? row.limit?.unit ?? YES_OR_NO;
}

/** Whether sun and cell temperature belong beside the reading: a current or a rise while the units run. */
export function wantsSun({ group, predicted }: Pick<TestRow, 'group' | 'predicted'>): boolean {
  return group === 'generating' && (predicted?.unit === 'A' || predicted?.unit === 'V');
}

/** The reading of a test that counts: not superseded, and of those the latest by its own time. */
export function latestReading(readings: Readings, test: string): string | undefined {
  const gone = new Set(Object.values(readings).flatMap(({ supersedes }) => supersedes ?? []));
  const mine = Object.entries(readings).filter(([id, reading]) => reading.test === test && !gone.has(id));
  return mine.sort(([, a], [, b]) => Date.parse(b.at) - Date.parse(a.at))[0]?.[0];
}

/** `current:a` at an instant as an id of small letters, digits and hyphens; told apart where it is taken. */
function readingId(readings: Readings, test: string, at: Date): string {
  const plain = `${test}-${at.toISOString()}`
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  for (let n = 1; ; n++) {
    const id = n === 1 ? plain : `${plain}-${n}`;
    if (readings[id] === undefined) return id;
  }
}

/**
 * The change that keeps a reading: a record more, at an instant of its own. Records are never edited; the one that
 * counted until now is named as superseded and stays where it is.
 */
export function readingChange(readings: Readings, taken: Taken, at: Date): Change {
  const { test, value, unit, by, sunWM2, cellC } = taken;
  const before = latestReading(readings, test);
  const record: Readings[string] = {
    at: at.toISOString(),
    by,
    test,
    value,
    unit,
    ...(taken.with === undefined || taken.with === '' ? {} : { with: taken.with }),
    ...(sunWM2 === undefined ? {} : { sunWM2 }),
    ...(cellC === undefined ? {} : { cellC }),
    ...(before === undefined ? {} : { supersedes: before }),
  };
  return { path: ['records', 'readings', readingId(readings, test, at)], value: record };
}

/** The instrument last named for a test that asks for the same kind: `clamp 2`. */
export function lastInstrument(
  readings: Readings,
  rows: readonly Pick<TestRow, 'id' | 'instrument'>[],
  instrument: string,
): string {
  const same = new Set(rows.filter((row) => row.instrument === instrument).map(({ id }) => id));
  const mine = Object.values(readings).filter((reading) => same.has(reading.test) && reading.with !== undefined);
  return mine.sort((a, b) => Date.parse(b.at) - Date.parse(a.at))[0]?.with ?? '';
}
