import { given, worked } from '../../working.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { shiftMend } from '../rowShift.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { against } from '../units.ts';

/**
 * Obstruction clear: do the modules stay outside the ring kept free round what stands out of the roof?
 *
 * Ring and module are rectangles; the corner of the ring is left square, which errs on the safe side.
 */
export const obstructionClear = rule({
  id: 'obstruction-clear',
  question: 'Do the modules stay outside the ring round what stands out of the roof?',
  sheet: '03',
  stops: true,
  judge: (context) =>
    failingOrNearest(
      context.array.modules.flatMap((module): Judged[] => {
        const { obstruction } = module;
        if (obstruction === undefined) return [];
        const clearM = context.roof.planes
          .flatMap(({ obstructions }) => obstructions)
          .find(({ id }) => id === obstruction.id)?.clearM;
        if (clearM === undefined) throw new Error(`obstruction '${obstruction.id}' of ${module.name} is on no plane`);
        const standsMm = 1000 * (obstruction.roomM + clearM);
        const { shown, ...measured } = against(standsMm, 'at least', 1000 * clearM, 'mm');
        return [
          {
            about: { kind: 'module', id: module.id, name: module.name },
            ...measured,
            title:
              measured.value < 0
                ? `${module.name} lies on the ${obstruction.name}. ${shown.limit} must stay clear.`
                : `${module.name} stands ${shown.value} from the ${obstruction.name}. ${shown.limit} must stay clear.`,
            working: worked(
              `Room to the ${obstruction.name}`,
              measured.value,
              'mm',
              'rectangle to rectangle',
              'plane geometry',
              [
                given('ring', clearM, 'm', `facts.roof.obstructions.${obstruction.id}.clearM`, 'survey'),
                { name: 'room to the ring', value: obstruction.roomM, unit: 'm', source: 'the array' },
              ],
              { decimals: 0 },
            ),
            mends: isWithin(measured.value, measured.limit, 'at least') ? [] : shiftMend(context, module.rowId),
          },
        ];
      }),
    ),
});
