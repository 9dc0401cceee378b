export { type Area, type Flaws, flawsOf, overlaps } from './flaws.ts';
export { type Segment, segmentsOf, type TextBox, textBoxesOf } from './geometry.ts';
export { leader } from './leader.ts';
export {
  arc,
  box,
  circle,
  corners,
  dimension,
  disc,
  group,
  hatched,
  type Look,
  layerLook,
  line,
  type Placing,
  polygon,
  polyline,
  running,
  solid,
  type TextLook,
  text,
} from './make.ts';
export { cautionSign, mark, markerBand, type State, staleMark, tickBox } from './marks.ts';
export type {
  Anchor,
  Arc,
  Conductor,
  Dimension,
  Drawing,
  FaceName,
  Fill,
  Group,
  GroupRole,
  Hatch,
  Ink,
  Item,
  Layer,
  Leaf,
  Lettering,
  Line,
  LinearDimension,
  LineKind,
  Marked,
  PenMm,
  Point,
  Polyline,
  RunningDimension,
  Text,
  Tube,
  Weight,
  WireColour,
} from './model.ts';
export { northArrow } from './northArrow.ts';
export { type Gauge, ruleGauge } from './ruleGauge.ts';
export { checkBar, type Scale, scaleBar, scaleFor, scales } from './scaleBar.ts';
export { leavesOf, type Settled, type SettledDrawing, type SettledGroup, settle } from './settle.ts';
export { type TubeLook, tube } from './tube.ts';
