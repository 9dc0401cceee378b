import type { KitPlan, RailCut } from '@eaveline/plan';
import { sheetWorking } from '../pad/sheetWorking.ts';
import type { Subject } from '../pad/subject.ts';
import { figure } from '../words/figure.ts';

/** What the saw takes out of a bar: what is neither piece nor left over. */
function sawnMm({ stockMm, pieces, offcutMm }: RailCut): number {
  return stockMm - offcutMm - pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
}

/** Every bar with what is left of it, as a sum: stock, less each piece, less the saw. */
export function barSubjects({ cuts, cutting }: Pick<KitPlan, 'cuts' | 'cutting'>): Subject[] {
  return cuts.map((cut): Subject => {
    const { bar, stockMm, pieces, offcutMm } = cut;
    const saw = sawnMm(cut);
    let left = stockMm;
    const lines = pieces.map(({ railName, lengthMm }) => {
      left -= lengthMm;
      return { what: railName, factor: `\u2212 ${figure(lengthMm, 0)}`, value: figure(left, 0) };
    });
    const inputs = [
      sheetWorking('a bar of stock', stockMm, 'mm', 'as it is sold', 'equipment sheet', [], { decimals: 0 }),
      ...pieces.map(({ railName, lengthMm }) =>
        sheetWorking(railName, lengthMm, 'mm', 'a piece of its run', 'sheet 03', [], { decimals: 0 }),
      ),
      sheetWorking('saw', saw, 'mm', `${cutting.kerfMm} mm a cut`, 'common practice, no source', [], { decimals: 0 }),
    ];
    return {
      id: `bar:${bar}`,
      name: `Bar ${bar}, cut`,
      ledger: {
        lines: [
          { what: 'a bar of stock', value: `${figure(stockMm, 0)} mm` },
          ...lines,
          ...(saw > 0 ? [{ what: 'saw', factor: `\u2212 ${figure(saw, 0)}`, value: figure(offcutMm, 0) }] : []),
        ],
        total: { what: 'left over', value: `${figure(offcutMm, 0)} mm` },
      },
      working: sheetWorking('Left over', offcutMm, 'mm', 'stock \u2212 pieces \u2212 saw', cutting.method, inputs, {
        decimals: 0,
      }),
    };
  });
}
