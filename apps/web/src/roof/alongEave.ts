/** A piece of the line along the eave, from one point of it to the next. */
export interface EavePiece {
  readonly fromM: number;
  readonly toM: number;
}

/**
 * The line along the eave, cut at both its ends and at both ends of a row, from left to right.
 *
 * A row that stands past an end of the eave cuts the line there: each piece is what lies between two neighbouring
 * points, so none is ever less than nothing. Points in one place make no piece.
 */
export function alongEave(eaveM: number, rowFromM: number, rowToM: number): readonly EavePiece[] {
  const cuts = [0, rowFromM, rowToM, eaveM].sort((a, b) => a - b);
  return cuts.slice(1).flatMap((toM, k) => {
    const fromM = cuts[k] as number;
    return toM - fromM < 0.0005 ? [] : [{ fromM, toM }];
  });
}
