/**
 * The neutral drawing: what is drawn, in millimetres, without a word about how.
 *
 * Origin at the bottom left of the sheet, y up, angles in degrees counter-clockwise from east.
 * Three pens tell the same geometry because rounding happens once, in `settle`.
 */

/** A point on the sheet, mm from the bottom left corner. */
export type Point = readonly [xMm: number, yMm: number];

/** Line widths of ISO 128-2, mm, each √2 thicker than the last. */
export type PenMm = 0.18 | 0.25 | 0.35 | 0.5 | 0.7 | 1;

/** The letters of a conductor; `ALL` is a cable drawn as one line. */
export type Conductor = 'L1' | 'L2' | 'L3' | 'N' | 'PE' | 'ALL';

/** What a line stands for. A pen may show, hide or export layer by layer. */
export type Layer =
  | 'FRAME'
  | 'ROOF-OUT'
  | 'ROOF-IN'
  | 'UNDER'
  | 'CENTRE'
  | 'SIZE'
  | 'HATCH'
  | 'TEXT'
  | `WIRE-${Conductor}`;

export type LineKind = 'full' | 'hidden' | 'centre';

/** The colour of a wire's insulation: a fact of the board, never a state. */
export type WireColour =
  | 'brown'
  | 'black'
  | 'grey'
  | 'red'
  | 'white'
  | 'blue'
  | 'light-blue'
  | 'green'
  | 'yellow'
  | 'green-yellow';

/** What an ink means. The pen of a paper decides which colour that is. */
export type Ink =
  | 'ink'
  | 'quiet'
  | 'rule'
  | 'fails'
  | 'meets'
  | 'ask'
  | 'marker'
  | 'tint'
  | 'tint-deep'
  | 'film'
  | 'on-solid';

export type FaceName = 'plain' | 'close' | 'symbol';
export type Weight = 400 | 700;
export type Anchor = 'start' | 'middle' | 'end';

/** What every item carries. */
export interface Marked {
  readonly layer: Layer;
  readonly pen: PenMm;
  readonly line: LineKind;
  readonly ink: Ink;
  /** Id of the thing shown, for selection. */
  readonly of?: string;
  /** What a screen reader says of it: name, place, state. */
  readonly label?: string;
}

export interface Line extends Marked {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

export interface Polyline extends Marked {
  readonly kind: 'polyline';
  readonly points: readonly Point[];
  readonly closed: boolean;
}

/** A circular arc from `startDeg` counter-clockwise to `endDeg`; 0 to 360 is a full circle. */
export interface Arc extends Marked {
  readonly kind: 'arc';
  readonly at: Point;
  readonly radiusMm: number;
  readonly startDeg: number;
  readonly endDeg: number;
}

/** Parallel lines `gapMm` apart at `angleDeg`, in the pen and ink of the fill. */
export interface Hatch {
  readonly angleDeg: number;
  readonly gapMm: number;
}

/** An area without an edge: solid in its ink, or hatched. Inner outlines leave holes (even-odd). */
export interface Fill extends Marked {
  readonly kind: 'fill';
  readonly outlines: readonly (readonly Point[])[];
  readonly hatch?: Hatch;
}

/** How lettering looks: enough to measure it. */
export interface Lettering {
  /** Height of a capital, mm (ISO 3098: 2.5, 3.5, 5, 7, 10). */
  readonly capMm: number;
  readonly weight: Weight;
  readonly face: FaceName;
}

export interface Text extends Marked, Lettering {
  readonly kind: 'text';
  readonly text: string;
  /** Anchor point on the baseline. */
  readonly at: Point;
  readonly anchor: Anchor;
  readonly rotateDeg: number;
  /** A rim in the colour of the sheet, where lettering lies over lines. */
  readonly halo: boolean;
  readonly heading?: boolean;
}

/** A conductor: a core in the wire's colour between two edges of ink, so that black shows on dark and white on day. */
export interface Tube extends Marked {
  readonly kind: 'tube';
  readonly points: readonly Point[];
  readonly coreMm: number;
  readonly wire: WireColour;
  readonly conductor: Conductor;
}

/** A size between two points, oblique strokes at its ends (ISO 129-1). */
export interface LinearDimension extends Marked {
  readonly kind: 'dimension';
  readonly style: 'linear';
  readonly from: Point;
  readonly to: Point;
  /** Distance of the dimension line from the points, to the left of from → to. */
  readonly offsetMm: number;
  readonly text: string;
  readonly capMm: number;
  readonly face: FaceName;
}

/** Sizes that all start at one end: what is set out with one tape from one nail. */
export interface RunningDimension extends Marked {
  readonly kind: 'dimension';
  readonly style: 'running';
  /** Where the tape starts, on the thing. */
  readonly from: Point;
  /** Which way the tape runs. */
  readonly along: 'right' | 'up';
  /** Distance of the tape from the thing: positive is left of `along` (above, or to the left). */
  readonly offsetMm: number;
  readonly marks: readonly { readonly atMm: number; readonly text: string }[];
  readonly capMm: number;
  readonly face: FaceName;
}

export type Dimension = LinearDimension | RunningDimension;

/** What a group is to a screen reader; tables keep their rows and cells in the tagged PDF. */
export type GroupRole = 'symbol' | 'figure' | 'table' | 'row' | 'cell' | 'head-cell';

/** Items moved together: a symbol of the library, a cell of a table, a thing that can be selected. */
export interface Group {
  readonly kind: 'group';
  readonly name: string;
  readonly role: GroupRole;
  readonly at: Point;
  readonly quarterTurns: 0 | 1 | 2 | 3;
  readonly scale: number;
  readonly items: readonly Item[];
  readonly of?: string;
  readonly label?: string;
}

/** Items after `settle`: groups stand at the origin, hatches and dimensions have become lines and letters. */
export type Leaf = Line | Polyline | Arc | Fill | Text | Tube;
export type Item = Leaf | Dimension | Group;

export interface Drawing {
  readonly title: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly items: readonly Item[];
}
