import { camelKey } from '../camelKeys.ts';
import { asked, idOf, isJson, type Json, type ReferenceShape, rowsIn } from './shape.ts';
import type { Tally } from './tally.ts';
import { toleranceOf } from './tolerance.ts';

/** A file of rows whose expected figures stand beside the inputs and are compared by difference. */
interface PlainFile {
  readonly calc: string;
  /** Fields that tell the file from others. */
  readonly marks: readonly string[];
  /** Expected fields, and the entry of the file's `tolerance` that holds for each. */
  readonly fields: Readonly<Record<string, string>>;
  /** Expected fields without a tolerance of their own. */
  readonly unjudged?: readonly string[];
}

const PLAIN: readonly PlainFile[] = [
  {
    calc: 'sky-split',
    marks: ['diffuse_fraction', 'kt'],
    fields: { kt: 'kt', dni: 'dni', dhi: 'dhi' },
    unjudged: ['diffuse_fraction'],
  },
  { calc: 'clear-sky', marks: ['apparent_zenith_deg', 'ghi', 'model'], fields: { ghi: 'ghi', dni: 'dni', dhi: 'dhi' } },
  {
    calc: 'plane-irradiance',
    marks: ['sky_perez', 'poa_beam'],
    fields: {
      aoi_deg: 'aoi_deg',
      poa_beam: 'poa_beam',
      sky_isotropic: 'sky_isotropic',
      sky_haydavies: 'sky_haydavies',
      sky_perez: 'sky_perez',
      ground_diffuse: 'ground_diffuse',
      perez_part_isotropic: 'perez_parts',
      perez_part_circumsolar: 'perez_parts',
      perez_part_horizon: 'perez_parts',
    },
    unjudged: ['perez_epsilon', 'perez_delta', 'perez_bin'],
  },
  {
    calc: 'incidence-modifier',
    marks: ['model', 'iam'],
    fields: { iam: 'iam', iam_sky: 'iam_sky', iam_ground: 'iam_ground' },
  },
  {
    calc: 'cell-temperature',
    marks: ['temp_c', 'poa', 'air_c'],
    fields: { temp_c: 'temp_c', module_back_c: 'module_back_c' },
  },
];

/** Tries the expected fields of one row against a quantity's answer. */
export function tryFields(
  { calc, fields }: Pick<PlainFile, 'calc' | 'fields'>,
  row: Json,
  { id, where, tolerance, tally }: { id: string; where: string; tolerance: unknown; tally: Tally },
  result: Json | string,
): void {
  for (const [field, entry] of Object.entries(fields)) {
    const want = row[field];
    if (want === undefined) continue;
    const quantity = `${calc} ${camelKey(field)}`;
    const allowed = toleranceOf(tolerance, entry, row.model);
    if (allowed === undefined) tally.skip(quantity, where, 'the file states no tolerance');
    else if (typeof result === 'string') tally.noAnswer(quantity, id, result);
    else tally.group(quantity, id, result[camelKey(field)], want, allowed);
  }
}

const tryRow = (plain: PlainFile, row: Json, about: Parameters<typeof tryFields>[2]): void => {
  tryFields(plain, row, about, asked(plain.calc, row));
  for (const field of plain.unjudged ?? []) {
    if (field in row) about.tally.skip(`${plain.calc} ${camelKey(field)}`, about.where, 'the file states no tolerance');
  }
};

/** The angle of a published plane: without light, for the angle needs none. */
function tryPublishedAngles(document: Json, where: string, tally: Tally): void {
  rowsIn(document.published).forEach((row, at) => {
    const dark = { dni: 0, dhi: 0, ghi: 0, dni_extra: 1366.1 };
    const about = { id: idOf(row, at), where, tolerance: document.tolerance, tally };
    const fields = { aoi_deg: 'aoi_deg' };
    tryFields({ calc: 'plane-irradiance', fields }, row, about, asked('plane-irradiance', { ...dark, ...row }));
  });
}

/** Splits, clear skies, planes, modifiers and cell temperatures. */
export const plainSunShapes: readonly ReferenceShape[] = PLAIN.map((plain) => ({
  about: plain.calc,
  knows: ({ rows, tolerance }) =>
    isJson(tolerance) && rowsIn(rows).some((row) => plain.marks.every((mark) => mark in row)),
  run({ name, document }, tally) {
    rowsIn(document.rows).forEach((row, at) => {
      tryRow(plain, row, { id: idOf(row, at), where: name, tolerance: document.tolerance, tally });
    });
    if (plain.calc === 'plane-irradiance') tryPublishedAngles(document, name, tally);
  },
}));
