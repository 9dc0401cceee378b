import type { Choices, Sheet, SheetKind } from '@eaveline/job';

/** The sheet of one kind. */
export type SheetOf<K extends SheetKind> = Extract<Sheet, { kind: K }>;

/**
 * The equipment sheet of an id, known to be of one kind.
 *
 * @throws {Error} when it is missing or of another kind: `parseJob` refuses such a job, so it is our own mistake.
 */
export function sheetOf<K extends SheetKind>(equipment: Choices['equipment'], id: string, kind: K): SheetOf<K> {
  const sheet = equipment[id];
  if (sheet === undefined || sheet.kind !== kind) {
    throw new Error(`equipment '${id}' should be a ${kind} sheet, found ${sheet?.kind ?? 'nothing'}`);
  }
  return sheet as SheetOf<K>;
}

/** All sheets of one kind with their ids, in the order of the ids. */
export function sheetsOfKind<K extends SheetKind>(
  equipment: Choices['equipment'],
  kind: K,
): readonly { readonly id: string; readonly sheet: SheetOf<K> }[] {
  return Object.keys(equipment)
    .sort()
    .flatMap((id) => {
      const sheet = equipment[id];
      return sheet?.kind === kind ? [{ id, sheet: sheet as SheetOf<K> }] : [];
    });
}
