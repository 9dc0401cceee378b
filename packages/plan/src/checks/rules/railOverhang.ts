import { worked } from '../../working.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Overhang: is each free end of a rail short against the span beside it? */
export const railOverhang = rule({
  id: 'rail-overhang',
  sheet: '03',
  stops: false,
  question: 'Are the free ends of the rails short enough?',
  judge({ array }, limit) {
    return failingOrNearest(
      array.rails.flatMap((rail): Judged[] => {
        const u = rail.feet.map((foot) => foot.u).sort((a, b) => a - b);
        const [first, second] = u;
        const last = u.at(-1);
        const beforeLast = u.at(-2);
        if (first === undefined || second === undefined || last === undefined || beforeLast === undefined) return [];
        const ends = [
          { end: 'left', overM: first - rail.fromU, spanM: second - first },
          { end: 'right', overM: rail.toU - last, spanM: last - beforeLast },
        ];
        return ends.map(({ end, overM, spanM }): Judged => {
          const value = 1000 * overM;
          const most = 1000 * limit.value * spanM;
          const shown = showWithin(value, most, 'at most', 0);
          return {
            about: { kind: 'rail', id: `${rail.id}-${end}`, name: rail.name },
            title: `${rail.name} overhangs ${shown.value} mm at its ${end} end. A third of its span is ${shown.limit} mm.`,
            value,
            limit: most,
            unit: 'mm',
            sense: 'at most',
            working: worked(
              `${rail.name}, ${end} end past its last foot`,
              value,
              'mm',
              'end of the rail − last foot',
              'the drawing',
              [worked('span beside it', 1000 * spanM, 'mm', 'foot to foot', 'the drawing', [], { decimals: 0 })],
              { decimals: 0 },
            ),
            mends: [{ words: 'Put the end foot on the next rafter outward, or add a foot.' }],
          };
        });
      }),
    );
  },
});
