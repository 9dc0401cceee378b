import { insideByM, leftOf } from '../../roof/clipConvex.ts';
import { worked } from '../../working.ts';
import { rule } from '../rule.ts';
import { against } from '../units.ts';

/**
 * Roof path: is a path from eave to ridge left free beside the array, on every plane that carries modules?
 *
 * The wider of the two strips beside the array counts. A path through the middle of an array is not looked for.
 */
export const roofPath = rule({
  id: 'roof-path',
  question: 'Is a path from eave to ridge left free on every plane with modules?',
  sheet: '03',
  stops: true,
  judge: ({ roof, array }, limit) =>
    roof.planes.flatMap((plane) => {
      const modules = array.modules.filter(({ planeId }) => planeId === plane.id);
      if (modules.length === 0) return [];
      const stripsM = plane.edges
        .filter(({ side }) => side === 'left' || side === 'right')
        .map(({ from, to }) => {
          const line = leftOf(from, to);
          return Math.min(...modules.flatMap(({ corners }) => corners.map((at) => insideByM(line, at))));
        });
      const { shown, ...measured } = against(1000 * Math.max(...stripsM), 'at least', 1000 * limit.value, 'mm');
      return [
        {
          about: { kind: 'plane' as const, id: plane.id, name: `${plane.name} plane` },
          ...measured,
          working: worked(
            `${plane.name}, the wider strip beside the array`,
            measured.value,
            'mm',
            'the greater of the two',
            'geometry',
            stripsM.map((stripM, k) =>
              worked(
                `strip ${k + 1}`,
                1000 * stripM,
                'mm',
                'edge of the plane to the nearest frame',
                'the drawing',
                [],
                {
                  decimals: 0,
                },
              ),
            ),
            { decimals: 0 },
          ),
          title: `${plane.name}: the wider strip beside the array is ${shown.value}. A path is ${shown.limit}.`,
          mends: [{ words: 'Move the rows to one side, or take a column out. The official may waive it.' }],
        },
      ];
    }),
});
