import { asked, idOf, isJson, type Json, type ReferenceShape, rowsIn } from './shape.ts';

/** International feet to the metre. */
const M_PER_FT = 0.3048;

/** A published example as a drop of ours; undefined where its inputs are of a kind not known. */
function asVoltageChange(inputs: Json): Json | undefined {
  const n = (key: string) => Number(inputs[key]);
  if ('mv_per_a_m' in inputs) return { kind: 'millivolt', ...inputs };
  if ('rho' in inputs) {
    const r_ohm_per_km = (n('rho') * 1000) / n('size_mm2');
    return { kind: 'two-wire', ...inputs, r_ohm_per_km };
  }
  if ('ze_ohm_per_kft' in inputs && 'length_ft' in inputs) {
    const nominal_line_v = Number.parseFloat(String(inputs.system));
    const r_ohm_per_km = n('ze_ohm_per_kft') / M_PER_FT;
    const length_m = n('length_ft') * M_PER_FT;
    return { kind: 'three-phase', line_current_a: inputs.current_a, nominal_line_v, r_ohm_per_km, length_m };
  }
  return undefined;
}

/** One unit of the last digit printed: the examples round freely. */
function lastDigit(printed: number): number {
  const decimals = String(printed).split('.')[1]?.length ?? 0;
  return 10 ** -decimals;
}

/** What the example prints, and what it comes to when computed; a table prints four digits and more. */
const FIGURES = [
  ['published_v', 'volts', 'published'],
  ['published_percent', 'percent', 'published'],
  ['computed_v', 'volts', 'computed'],
  ['computed_percent', 'percent', 'computed'],
] as const;
const KNOWN: readonly string[] = [...FIGURES.map(([key]) => key), 'id', 'source', 'seen', 'inputs', 'remark'];

/** Voltage drops as books and magazines print them. */
export const publishedVoltageShape: ReferenceShape = {
  about: 'voltage-change, published',
  knows: ({ published_examples }) => rowsIn(published_examples).some((row) => isJson(row.inputs)),
  run({ name, document }, tally) {
    rowsIn(document.published_examples).forEach((row, at) => {
      const id = idOf(row, at);
      const input = isJson(row.inputs) ? asVoltageChange(row.inputs) : undefined;
      if (input === undefined) {
        tally.skip('voltage-change, published', name, 'not yet worked out');
        return;
      }
      const result = asked('voltage-change', input);
      for (const [key, field, how] of FIGURES) {
        const want = row[key];
        if (typeof want !== 'number') continue;
        const quantity = `voltage-change ${how} ${field}`;
        const got = typeof result === 'string' ? result : (result[field] ?? result.voltsLineToLine);
        const allowed = how === 'published' ? { sameAbs: lastDigit(want) } : { sameRel: 1e-4 };
        if (typeof got === 'string') tally.noAnswer(quantity, id, got);
        else tally.figure(quantity, id, got, want, allowed);
      }
      for (const key of Object.keys(row).filter((key) => !KNOWN.includes(key)))
        tally.skip(`voltage-change ${key}`, name, 'its inputs stand in a remark only');
    });
  },
};
