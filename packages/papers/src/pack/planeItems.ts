import type { PlacedModule, Rail, UV } from '@eaveline/plan';
import { box, dimension, type Item, line, type Point, polygon, running, solid, text } from '../drawing/index.ts';
import { metrics } from '../type/index.ts';
import { mm } from './figures.ts';
import { lineLetters } from './packContext.ts';
import { type Ground, type Patch, patchOf, placeLabel } from './placeLabel.ts';
import { clearRing, cornersOf } from './planeGeometry.ts';
import type { PlaneSubject, PlaneView } from './planeSubject.ts';
import { lineOfModule, placeOfUnit } from './unitPlaces.ts';

const CLOSE = { capMm: 2.5, weight: 400, face: 'close' } as const;

/** A plane as it is set out: edges, rafters, modules, rails with their feet, obstructions, sizes. */
export function planeItems(subject: PlaneSubject, view: PlaneView, edge: Patch): Item[] {
  const ground: Ground = { edge, taken: [] };
  const frames = subject.modules.map((module) =>
    polygon(module.corners.map(view.onPaper), { layer: 'ROOF-IN', of: module.id, label: module.name }),
  );
  // names lie over rails and feet, so they are drawn after them
  const names = subject.modules.flatMap((module) => moduleNames(subject, module, view, ground));
  const sizes = sizeItems(subject, view, ground);
  return [
    ...rafterItems(subject, view),
    ...frames,
    ...outlineItems(subject, view),
    ...subject.rails.flatMap((rail) => railItems(rail, view)),
    ...names,
    ...sizes,
    ...thingItems(subject, view, ground),
    ...freeLabel(subject, view, ground),
  ];
}

function outlineItems({ plane }: PlaneSubject, { onPaper }: PlaneView): Item[] {
  const sides = plane.edges.map((one) => {
    const inner = one.kind === 'ridge' || one.kind === 'hip' || one.kind === 'valley';
    const pen = one.side === 'eave' ? { pen: 0.7 as const } : {};
    return line(onPaper(one.from), onPaper(one.to), {
      layer: inner ? 'ROOF-IN' : 'ROOF-OUT',
      ...pen,
      of: plane.id,
      label: one.kind,
    });
  });
  if (plane.usable.length < 3) return sides;
  return [...sides, polygon(plane.usable.map(onPaper), { layer: 'UNDER', of: plane.id, label: 'kept free outside' })];
}

/** Rafters show as far as they are known, from the eave a little down and up to where the plane ends. */
function rafterItems({ plane }: PlaneSubject, { onPaper }: PlaneView): Item[] {
  return (plane.raftersU ?? []).flatMap((u) => {
    const [low, high] = acrossAt(plane.outline, u);
    if (!(high - low > 0.05)) return [];
    return [line(onPaper([u, low]), onPaper([u, high]), { layer: 'CENTRE', pen: 0.18, ink: 'rule' })];
  });
}

/** Lowest and highest v of an outline at one u. */
function acrossAt(outline: readonly UV[], u: number): [number, number] {
  const found = outline.flatMap(([au, av], k) => {
    const [bu, bv] = outline[(k + 1) % outline.length] as UV;
    if (au === bu || (u - au) * (u - bu) > 0) return [];
    return [av + ((bv - av) * (u - au)) / (bu - au)];
  });
  return found.length < 2 ? [0, 0] : [Math.min(...found), Math.max(...found)];
}

function moduleNames({ pack, rails }: PlaneSubject, module: PlacedModule, view: PlaneView, ground: Ground): Item[] {
  const corners = module.corners.map(view.onPaper);
  const patch = patchOf(corners);
  ground.taken.push(patch);
  const x = (patch.left + patch.right) / 2;
  const letters = lineLetters(lineOfModule(pack.plan, module));
  const drop = placeOfUnit(pack.plan, module.unitId)?.drop.name ?? 'no drop';
  const y = clearBand(patch, rails, view);
  const look = { ...CLOSE, anchor: 'middle', halo: true } as const;
  const second = [drop, letters].filter((words) => words !== '').join(' ');
  const wide = patch.right - patch.left - 0.8;
  const small = [2.5, 2.1, 1.8].find((capMm) => metrics.widthMm(second, { ...CLOSE, capMm }) <= wide);
  return [
    text(`${module.row}·${module.place}`, [x, y + 0.5], { ...look, weight: 700 }),
    ...(small === undefined ? [] : [text(second, [x, y - 0.6 - small], { ...look, capMm: small })]),
  ];
}

/** Middle of the tallest band of a module that no rail crosses. */
function clearBand(patch: Patch, rails: readonly Rail[], { onPaper }: PlaneView): number {
  const inside = rails.map((rail) => onPaper([rail.fromU, rail.v])[1]).filter((y) => y > patch.bottom && y < patch.top);
  const cuts = [patch.bottom, ...new Set(inside), patch.top].sort((a, b) => a - b);
  const bands = cuts.slice(1).map((top, k) => [cuts[k] as number, top] as const);
  const widest = bands.reduce((best, band) => (band[1] - band[0] > best[1] - best[0] ? band : best));
  return (widest[0] + widest[1]) / 2;
}

function railItems(rail: Rail, { onPaper, scale }: PlaneView): Item[] {
  const [x, y] = onPaper([rail.fromU, rail.v]);
  const half = 20 / scale;
  const bar = box([x, y - half], rail.lengthMm / scale, 2 * half, { layer: 'ROOF-IN', of: rail.id, label: rail.name });
  const feet = rail.feet.map((foot) => {
    const [at] = onPaper([foot.u, rail.v]);
    const shape: Point[] = [
      [at, y - half],
      [at - 0.9, y - half - 1.6],
      [at + 0.9, y - half - 1.6],
    ];
    return rail.onRafters
      ? solid(shape, { layer: 'ROOF-IN', of: foot.id })
      : polygon(shape, { layer: 'ROOF-IN', pen: 0.25, of: foot.id, label: 'nominal' });
  });
  return [bar, ...feet];
}

/** Eave and slope, the first row up from the eave, and the feet of the lowest and the highest rail. */
function sizeItems({ plane, rows, rails }: PlaneSubject, { onPaper, scale }: PlaneView, ground: Ground): Item[] {
  const us = plane.outline.map(([u]) => u);
  const vs = plane.outline.map(([, v]) => v);
  const [left, right, low, high] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)];
  const corner = onPaper([left, low]);
  const top = onPaper([left, high]);
  const end = onPaper([right, low]);
  const first = rows[0];
  const items: Item[] = [
    dimension(corner, end, -15, mm(right - left), { face: 'close' }),
    dimension(corner, [corner[0], top[1]], 12, mm(high - low), { face: 'close' }),
  ];
  if (first !== undefined) {
    const [lowV, highV] = [first.at[1], first.at[1] + first.heightM];
    for (const [a, b] of [
      [low, lowV],
      [lowV, highV],
    ] as const) {
      if ((1000 * (b - a)) / scale < metrics.widthMm(mm(b - a), CLOSE) + 2) continue;
      items.push(
        dimension([corner[0], onPaper([left, a])[1]], [corner[0], onPaper([left, b])[1]], 6, mm(b - a), {
          face: 'close',
        }),
      );
    }
  }
  const [lowest, highest] = [rails[0], rails.at(-1)];
  if (lowest !== undefined) items.push(...feetSizes(lowest, onPaper([lowest.fromU, low]), -5, scale));
  if (highest !== undefined && highest !== lowest)
    items.push(...feetSizes(highest, onPaper([highest.fromU, high]), 5, scale));
  ground.taken.push({ left: corner[0] - 17, right: end[0] + 12, bottom: corner[1] - 18, top: corner[1] });
  ground.taken.push({ left: corner[0] - 17, right: corner[0], bottom: corner[1], top: top[1] });
  ground.taken.push({ left: corner[0], right: end[0] + 12, bottom: top[1] + 3, top: top[1] + 14 });
  return items;
}

/** Running sizes of a rail's feet and its far end; figures that would touch the one before are left to the table. */
function feetSizes(rail: Rail, from: Point, offsetMm: number, scale: number): Item[] {
  const all = [...rail.feet.map((foot) => 1000 * (foot.u - rail.fromU)), rail.lengthMm];
  let last = 0;
  let half = metrics.widthMm('0', CLOSE) / 2;
  const marks = all.flatMap((along) => {
    const words = mm(along / 1000);
    const wide = metrics.widthMm(words, CLOSE) / 2;
    const atMm = along / scale;
    if (atMm - last < wide + half + 1.2) return [];
    last = atMm;
    half = wide;
    return [{ atMm, text: words }];
  });
  const [x, y] = from;
  const name = metrics.widthMm(rail.name, CLOSE);
  return [
    running(from, 'right', offsetMm, marks, { face: 'close', of: rail.id }),
    text(rail.name, [x - 2.5 - name, y + offsetMm - 1.25], { ...CLOSE, ink: 'quiet', halo: true }),
  ];
}

function thingItems({ plane }: PlaneSubject, { onPaper, scale }: PlaneView, ground: Ground): Item[] {
  return plane.obstructions.flatMap((thing) => {
    const ring = clearRing(thing).map(onPaper);
    const words = thing.clearM > 0 ? `${thing.name}, ${mm(thing.clearM)} clear` : thing.name;
    const reach = (1000 * (Math.max(thing.widthM, thing.depthM) / 2 + thing.clearM)) / scale;
    return [
      polygon(cornersOf(thing).map(onPaper), { layer: 'ROOF-IN', pen: 0.5, of: thing.id, label: thing.name }),
      ...(ring.length > 0 ? [polygon(ring, { layer: 'CENTRE', of: thing.id })] : []),
      ...placeLabel(words, onPaper(thing.centre), ground, reach),
    ];
  });
}

/** The broken line says what it is, once. */
function freeLabel({ plane }: PlaneSubject, { onPaper }: PlaneView, ground: Ground): Item[] {
  const ridge = plane.edges.find((one) => one.side === 'ridge') ?? plane.edges.find((one) => one.side === 'right');
  if (plane.usable.length < 3 || ridge === undefined || ridge.setbackM === 0) return [];
  const usable = plane.usable.map(onPaper);
  const highest = Math.max(...usable.map(([, y]) => y));
  const at = usable.filter(([, y]) => highest - y < 0.01).reduce((best, one) => (one[0] > best[0] ? one : best));
  return placeLabel(`kept free ${mm(ridge.setbackM)}`, at, ground);
}
