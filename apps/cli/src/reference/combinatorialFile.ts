import { AS_PRINTED } from './checkFiles.ts';
import { asked, idOf, isJson, type Json, type ReferenceShape, rowsIn } from './shape.ts';

const sorted = (values: readonly number[]) => [...values].sort((a, b) => a - b);

/** Every wanted length cut once, and no bar longer than it is. */
function isPlan(bins: readonly (readonly number[])[], sizes: readonly number[], capacity: number): boolean {
  const cut = sorted(bins.flat());
  const wanted = sorted(sizes);
  const all = cut.length === wanted.length && cut.every((size, i) => size === wanted[i]);
  return all && bins.every((bar) => bar.reduce((sum, size) => sum + size, 0) <= capacity + 1e-9);
}

/** Bin packing with a proven optimum. */
export const packingShape: ReferenceShape = {
  about: 'cut-stock',
  knows: ({ bin_packing: packing }) => isJson(packing) && rowsIn(packing.instances).length > 0,
  run({ name, document }, tally) {
    rowsIn((document.bin_packing as Json).instances).forEach((row, at) => {
      const id = idOf(row, at);
      const result = asked('cut-stock', row);
      if (typeof result === 'string') {
        tally.noAnswer('cut-stock count', id, result);
        return;
      }
      const optimum = Number(row.optimum_bins);
      const plan = isPlan(result.bins as number[][], row.sizes as number[], Number(row.bin_capacity));
      tally.figure('cut-stock count', id, result.count, optimum, AS_PRINTED);
      tally.group('cut-stock every length cut, no bar overfull', id, plan, true, AS_PRINTED);
      tally.group('cut-stock bound not above the optimum', id, Number(result.lowerBound) <= optimum, true, AS_PRINTED);
      for (const key of ['first_fit_decreasing_bins', 'lp_pattern_bound', 'lower_bound_sum'])
        if (key in row) tally.skip(`cut-stock ${key}`, name, 'not a result of ours');
    });
  },
};

/** Battery dispatch with the optimum cost. */
export const dispatchShape: ReferenceShape = {
  about: 'dispatch',
  knows: ({ battery_dispatch: dispatch }) => isJson(dispatch) && rowsIn(dispatch.cases).length > 0,
  run({ name, document }, tally) {
    for (const _ of rowsIn((document.battery_dispatch as Json).cases))
      tally.skip('battery_dispatch', name, 'not yet worked out');
  },
};
