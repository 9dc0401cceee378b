import type { PlacedModule } from '../../array/types.ts';
import { insideByM, leftOf } from '../../roof/clipConvex.ts';
import type { RoofEdge } from '../../roof/types.ts';
import { given, worked } from '../../working.ts';
import type { CheckContext } from '../context.ts';
import { edgeLimit } from '../edgeLimit.ts';
import { shiftMend } from '../rowShift.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { against } from '../units.ts';

const NAMES: Readonly<Record<RoofEdge['kind'], string>> = {
  eave: 'eave',
  ridge: 'ridge',
  hip: 'hip',
  valley: 'valley',
  verge: 'verge',
  wall: 'wall',
};

/**
 * Setbacks: does every module keep clear of every edge of its plane?
 *
 * One finding for each edge, of the module that stands nearest to it. The strip is the larger of the region's and
 * the one chosen. Mended by the shortest straight move of the row that clears everything.
 */
export const setbacks = rule({
  id: 'setbacks',
  question: 'Does every module keep clear of the edges of its plane?',
  sheet: '03',
  stops: true,
  judge: (context) =>
    context.roof.planes.flatMap((plane) => {
      const modules = context.array.modules.filter(({ planeId }) => planeId === plane.id);
      return modules.length === 0 ? [] : plane.edges.map((edge) => judgeEdge(context, edge, modules));
    }),
});

function judgeEdge(context: CheckContext, edge: RoofEdge, modules: readonly PlacedModule[]): Judged {
  const line = leftOf(edge.from, edge.to);
  const roomM = (module: PlacedModule) => Math.min(...module.corners.map((at) => insideByM(line, at)));
  const nearest = modules.reduce((near, one) => (roomM(one) < roomM(near) ? one : near));
  const { limitM, from } = edgeLimit(context, edge.side);
  const { shown, ...measured } = against(1000 * roomM(nearest), 'at least', 1000 * limitM, 'mm');
  const over = measured.value < 0;
  const name = NAMES[edge.kind];
  return {
    about: { kind: 'module', id: `${nearest.id}-${edge.side}`, name: `${nearest.name}, ${edge.side} edge` },
    ...measured,
    title: over
      ? `${nearest.name} reaches ${shown.value.replace('−', '')} over the ${name}. ${shown.limit} must stay clear.`
      : `${nearest.name} stands ${shown.value} from the ${name}. ${shown.limit} must stay clear.`,
    from,
    working: worked(
      `Room to the ${name}`,
      measured.value,
      'mm',
      'least distance of a corner from the edge',
      'plane geometry',
      [
        { name: 'module', value: nearest.name, unit: '', source: 'the array' },
        given(
          'row along the eave',
          context.choices.rows[nearest.rowId]?.uM ?? 0,
          'm',
          `choices.rows.${nearest.rowId}.uM`,
        ),
        given(
          'row up the slope',
          context.choices.rows[nearest.rowId]?.vM ?? 0,
          'm',
          `choices.rows.${nearest.rowId}.vM`,
        ),
      ],
      { decimals: 0 },
    ),
    mends: isWithin(measured.value, measured.limit, 'at least') ? [] : shiftMend(context, nearest.rowId),
  };
}
