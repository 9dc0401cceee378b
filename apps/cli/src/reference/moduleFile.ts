import { camelKey } from '../camelKeys.ts';
import { tryFields } from './plainSunFiles.ts';
import { asked, idOf, isJson, type Json, type ReferenceShape, rowsIn } from './shape.ts';
import type { Tally } from './tally.ts';

const POINTS = ['i_sc', 'v_oc', 'i_mp', 'v_mp', 'p_mp', 'i_at_half_voc'];

/** Five parameters: one entry of tolerance, its acceptable share by parameter. */
function tryFit(module: Json, id: string, file: { document: Json; name: string }, tally: Tally): void {
  const result = asked('module-fit', module);
  const of = isJson(file.document.tolerance) ? file.document.tolerance.five_parameters : undefined;
  const wanted = isJson(module.five_parameters) ? module.five_parameters : {};
  for (const [key, want] of Object.entries(wanted)) {
    const quantity = `module-fit ${camelKey(key)}`;
    if (!isJson(of) || typeof want !== 'number') {
      tally.skip(quantity, file.name, 'the file states no tolerance');
      continue;
    }
    const byKey = isJson(of.acceptable_rel) ? of.acceptable_rel[key] : of.acceptable_rel;
    const allowed = { sameRel: Number(of.same_model_rel), okRel: typeof byKey === 'number' ? byKey : undefined };
    if (typeof result === 'string') tally.noAnswer(quantity, id, result);
    else tally.figure(quantity, id, (result.fiveParameters as Json)[camelKey(key)], want, allowed);
  }
}

/** module_iv.json */
export const moduleShape: ReferenceShape = {
  about: 'module-fit, module-curve',
  knows: ({ modules, rows }) => {
    const [module] = rowsIn(modules);
    const [row] = rowsIn(rows);
    return module !== undefined && 'five_parameters' in module && row !== undefined && 'p_mp' in row;
  },
  run({ name, document }, tally) {
    const modules = rowsIn(document.modules);
    modules.forEach((module, at) => {
      tryFit(module, idOf(module, at), { name, document }, tally);
      for (const key of ['model_gamma_pmp_pct_per_k_at_stc']) {
        if (key in module) tally.skip(`module-fit ${key}`, name, 'the file states no tolerance');
      }
    });
    rowsIn(document.rows).forEach((row, at) => {
      const { five_parameters, alpha_isc_a_per_k, datasheet } = modules.find((m) => m.module === row.module) ?? {};
      const cells_in_series = isJson(datasheet) ? datasheet.cells_in_series : undefined;
      const result = asked('module-curve', { ...row, five_parameters, alpha_isc_a_per_k, cells_in_series });
      const about = { id: idOf(row, at), where: name, tolerance: document.tolerance, tally };
      const fields = Object.fromEntries(POINTS.map((point) => [point, point]));
      tryFields({ calc: 'module-curve', fields }, row, about, result);
    });
  },
};
