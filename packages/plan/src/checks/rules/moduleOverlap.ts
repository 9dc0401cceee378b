import { shiftMend } from '../rowShift.ts';
import { rule } from '../rule.ts';

/** Module overlap: does every module lie beside the others and none on another? */
export const moduleOverlap = rule({
  id: 'module-overlap',
  question: 'Does every module lie beside the others?',
  sheet: '03',
  stops: true,
  judge: (context) => {
    const { modules } = context.array;
    const onAnother = modules.filter((module) => module.overlaps !== undefined);
    if (modules.length > 0 && onAnother.length === 0) {
      return [
        {
          about: { kind: 'job', id: 'array', name: 'The array' },
          state: 'meets' as const,
          title: `None of ${modules.length} modules lies on another.`,
        },
      ];
    }
    // both of a pair know of one another: it is told once
    const pairs = onAnother.filter(
      ({ id, overlaps = '' }) => id < overlaps || !onAnother.some((one) => one.id === overlaps),
    );
    return pairs.map((module) => {
      const other = modules.find(({ id }) => id === module.overlaps);
      return {
        about: { kind: 'module' as const, id: module.id, name: module.name },
        state: 'fails' as const,
        title: `${module.name} lies on ${other?.name ?? module.overlaps}.`,
        mends:
          other?.rowId === module.rowId
            ? [{ words: 'Give them places of their own.' }]
            : shiftMend(context, module.rowId),
      };
    });
  },
});
