import type { Records } from '@eaveline/job';
import type { TestRow } from './types.ts';

/**
 * Rows with the last reading on record beside them, and how it stands: lawful is one question, as designed another.
 *
 * A reading that a later one supersedes does not count. Of several, the latest by its own time counts.
 */
export function withReadings(rows: readonly TestRow[], readings: Records['readings']): TestRow[] {
  const gone = new Set(Object.values(readings).flatMap((reading) => reading.supersedes ?? []));
  return rows.map((row) => {
    const mine = Object.entries(readings)
      .filter(([id, reading]) => reading.test === row.id && !gone.has(id))
      .map(([, reading]) => reading)
      .sort((a, b) => Date.parse(b.at) - Date.parse(a.at));
    const last = mine[0];
    if (last === undefined) return row;
    const inLimit =
      row.limit === undefined || row.limit.unit !== last.unit
        ? undefined
        : row.limit.sense === 'at most'
          ? last.value <= row.limit.value
          : last.value >= row.limit.value;
    const nearPrediction =
      row.predicted === undefined || row.predicted.unit !== last.unit
        ? undefined
        : last.value >= row.predicted.low && last.value <= row.predicted.high;
    return {
      ...row,
      reading: {
        value: last.value,
        unit: last.unit,
        at: last.at,
        by: last.by,
        ...(inLimit === undefined ? {} : { inLimit }),
        ...(nearPrediction === undefined ? {} : { nearPrediction }),
      },
    };
  });
}
