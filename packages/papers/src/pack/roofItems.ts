import type { PlacedModule, RoofObstruction, RoofPlane, UV } from '@eaveline/plan';
import {
  dimension,
  type Item,
  type Lettering,
  line,
  type Point,
  polygon,
  type TextLook,
  text,
} from '../drawing/index.ts';
import { metrics } from '../type/index.ts';
import { figure, mm } from './figures.ts';
import { lineLetters, type Pack } from './packContext.ts';
import { type Ground, type Patch, patchOf, placeLabel, placeWord } from './placeLabel.ts';
import { clearRing, cornersOf, seenFromAbove } from './planeGeometry.ts';
import type { PlanView } from './planView.ts';
import { lineOfModule } from './unitPlaces.ts';

const SMALL = { capMm: 2.5, weight: 400, face: 'close' } as const;
/** A module's name and its line's letters, from the size we like to the smallest that still reads. */
const NAMES = [2.5, 2.1, 1.8].map((capMm): Lettering => ({ capMm, weight: 700, face: 'close' }));
const LETTERS = [2.1, 1.8].map((capMm): Lettering => ({ capMm, weight: 400, face: 'close' }));

/** Everything of the roof from above: planes, what is kept free, modules, obstructions, sizes; names last. */
export function roofItems(pack: Pack, view: PlanView, ground: Ground): Item[] {
  const { planes } = pack.plan.roof;
  const drawn = planes.flatMap((plane) => [...edgeItems(plane, view), ...freeItems(plane, view)]);
  const modules = pack.plan.array.modules.flatMap((module) => moduleItems(pack, module, view, ground));
  const sizes = planes.flatMap((plane) => sizeItems(pack, plane, view, ground));
  const things = planes.flatMap((plane) => thingItems(plane, view, ground));
  const names = planes.flatMap((plane) => nameItems(pack, plane, view, ground));
  return [...drawn, ...modules, ...sizes, ...things, ...names];
}

function paperOf(plane: RoofPlane, points: readonly UV[], { onPaper }: PlanView): Point[] {
  return points.map((uv) => onPaper(seenFromAbove(plane, uv)));
}

function edgeItems(plane: RoofPlane, view: PlanView): Item[] {
  return plane.edges.map((edge) => {
    const [from, to] = paperOf(plane, [edge.from, edge.to], view) as [Point, Point];
    const inner = edge.kind === 'ridge' || edge.kind === 'hip' || edge.kind === 'valley';
    return line(from, to, {
      layer: inner ? 'ROOF-IN' : 'ROOF-OUT',
      of: plane.id,
      label: `${plane.name}, ${edge.kind}`,
    });
  });
}

function freeItems(plane: RoofPlane, view: PlanView): Item[] {
  if (plane.usable.length < 3) return [];
  return [
    polygon(paperOf(plane, plane.usable, view), { layer: 'UNDER', of: plane.id, label: `${plane.name}, kept free` }),
  ];
}

function moduleItems(pack: Pack, module: PlacedModule, view: PlanView, ground: Ground): Item[] {
  const plane = pack.plan.roof.planes.find((one) => one.id === module.planeId);
  if (plane === undefined) return [];
  const corners = paperOf(plane, module.corners, view);
  const patch = patchOf(corners);
  const [x, y] = [(patch.left + patch.right) / 2, (patch.bottom + patch.top) / 2];
  const letters = lineLetters(lineOfModule(pack.plan, module));
  ground.taken.push(patchOf(corners, 0.3));
  const room = patch.right - patch.left - 0.8;
  const look = { anchor: 'middle', halo: true } as const;
  const below = fitting(letters, LETTERS, room);
  return [
    polygon(corners, { layer: 'ROOF-IN', of: module.id, label: `${module.name}, ${letters}` }),
    ...words(`${module.row}·${module.place}`, fitting('2·12', NAMES, room), [x, y + 0.35], look),
    ...(below === undefined ? [] : words(letters, below, [x, y - 0.35 - below.capMm], look)),
  ];
}

function words(said: string, lettering: Lettering | undefined, at: Point, look: TextLook): Item[] {
  return lettering === undefined || said === '' ? [] : [text(said, at, { ...lettering, ...look })];
}

/** The largest lettering in which words keep inside a width. */
function fitting(said: string, tries: readonly Lettering[], roomMm: number): Lettering | undefined {
  return tries.find((lettering) => metrics.widthMm(said, lettering) <= roomMm);
}

/** From the middle of a thing to its clear ring, on paper. */
function ringMm({ widthM, depthM, clearM }: RoofObstruction, { scale }: PlanView): number {
  return (1000 * (Math.max(widthM, depthM) / 2 + clearM)) / scale;
}

function thingItems(plane: RoofPlane, view: PlanView, ground: Ground): Item[] {
  return plane.obstructions.flatMap((thing) => {
    const outline = paperOf(plane, cornersOf(thing), view);
    const ring = paperOf(plane, clearRing(thing), view);
    const [at] = paperOf(plane, [thing.centre], view) as [Point];
    return [
      polygon(outline, { layer: 'ROOF-IN', of: thing.id, label: thing.name }),
      ...(ring.length > 0 ? [polygon(ring, { layer: 'CENTRE', of: thing.id })] : []),
      ...placeLabel(
        thing.clearM > 0 ? `${thing.name}, ${mm(thing.clearM)} clear` : thing.name,
        at,
        ground,
        ringMm(thing, view),
      ),
    ];
  });
}

/** Along the eave: the row nearest to it, and the whole. Sizes too short for their figure are on the plane's sheet. */
function sizeItems(pack: Pack, plane: RoofPlane, view: PlanView, ground: Ground): Item[] {
  const eave = plane.edges.find((edge) => edge.side === 'eave');
  if (eave === undefined) return [];
  const [from, to] = [eave.from[0], eave.to[0]];
  const row = pack.plan.array.rows.filter((one) => one.planeId === plane.id).sort((a, b) => a.row - b.row)[0];
  const cuts = row === undefined ? [] : [row.at[0], row.at[0] + row.lengthMm / 1000];
  const chain = row === undefined ? [] : pieces([from, ...cuts, to]);
  const at = (u: number): Point => paperOf(plane, [[u, eave.from[1]]], view)[0] as Point;
  const sized = [...chain.map((piece) => ({ piece, off: -5 })), { piece: [from, to] as const, off: -11 }];
  return sized.flatMap(({ piece: [a, b], off }) => {
    const words = mm(b - a);
    const paper = (1000 * (b - a)) / view.scale;
    if (paper < metrics.widthMm(words, SMALL) + 2) return [];
    ground.taken.push(sizePatch(at(a), at(b), off));
    return [dimension(at(a), at(b), off, words, { face: 'close', of: plane.id })];
  });
}

function pieces(cuts: readonly number[]): (readonly [number, number])[] {
  return cuts.slice(1).flatMap((b, k) => (b - (cuts[k] as number) > 0.001 ? [[cuts[k] as number, b] as const] : []));
}

/** The strip of paper a size along an eave takes. */
function sizePatch(a: Point, b: Point, off: number): Patch {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const out: Point = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
  const moved = (p: Point): Point => [p[0] + out[0] * off, p[1] + out[1] * off];
  return patchOf([moved(a), moved(b)], 3.8);
}

function nameItems(pack: Pack, plane: RoofPlane, view: PlanView, ground: Ground): Item[] {
  const outline = paperOf(plane, plane.outline, view);
  const used = pack.plan.array.modules.some((module) => module.planeId === plane.id);
  const name = `${plane.name} ${figure(plane.pitchDeg, 1)}°${used ? '' : ', left clear'}`;
  const lettering = { capMm: 3, weight: 400, face: 'plain' } as const;
  const patch = patchOf(outline);
  const near: Point = [(patch.left + patch.right) / 2, (patch.bottom + patch.top) / 2];
  // names keep inside their plane's own rectangle, and off its modules
  const inside: Ground = { edge: patch, taken: [...ground.taken, ...modulePatches(pack, plane, view)] };
  const word = placeWord(name, near, inside, lettering);
  if (word === undefined) {
    const clear = pack.plan.roof.planes.map((one) => patchOf(paperOf(one, one.outline, view), 1));
    const outside: Ground = { edge: ground.edge, taken: [...ground.taken, ...clear] };
    const label = placeLabel(name, near, outside, (patch.top - patch.bottom) / 2);
    if (label.length > 0) ground.taken.push(outside.taken.at(-1) as Patch);
    return label;
  }
  ground.taken.push(inside.taken.at(-1) as Patch);
  return [word];
}

function modulePatches(pack: Pack, plane: RoofPlane, view: PlanView): Patch[] {
  return pack.plan.array.modules
    .filter((module) => module.planeId === plane.id)
    .map((module) => patchOf(paperOf(plane, module.corners, view), 0.5));
}
