import { group, type Item, scaleFor } from '../drawing/index.ts';
import {
  caution,
  gap,
  headline,
  type Part,
  paragraph,
  picture,
  type Sheet,
  type SheetSize,
  table,
} from '../page/index.ts';
import { counted, figure, listed, mm, mmFrom, withUnit } from './figures.ts';
import type { Pack } from './packContext.ts';
import { headed, pagesOf, roomOf } from './pagesOf.ts';
import { planeItems } from './planeItems.ts';
import type { PlaneSubject, PlaneView } from './planeSubject.ts';
import { keptFree } from './roofPlanPage.ts';

/** Paper kept for sizes: left, right, above, below. */
const ROOM = { left: 17, right: 13, above: 12, below: 18 };

/** The head of a sheet: a sentence of one line and its quiet line. */
const HEAD = 14;

/** One sheet for each plane that carries modules: seen from the eaves, at true lengths up the slope. */
export function planePages(pack: Pack): Sheet[] {
  return pack.plan.roof.planes.flatMap((plane) => {
    const { array } = pack.plan;
    const here = { rows: array.rows, rails: array.rails, modules: array.modules };
    const subject: PlaneSubject = {
      pack,
      plane,
      rows: here.rows.filter((row) => row.planeId === plane.id).sort((a, b) => a.row - b.row),
      rails: here.rails.filter((rail) => rail.planeId === plane.id),
      modules: here.modules.filter((module) => module.planeId === plane.id),
    };
    return subject.modules.length === 0 ? [] : onePlane(subject);
  });
}

function onePlane(subject: PlaneSubject): Sheet[] {
  const { pack, plane } = subject;
  const us = plane.outline.map(([u]) => u);
  const vs = plane.outline.map(([, v]) => v);
  const [from, low] = [Math.min(...us), Math.min(...vs)];
  const thing = { widthMm: 1000 * (Math.max(...us) - from), heightMm: 1000 * (Math.max(...vs) - low) };
  const alone = scaleOn(pack, thing, 'A4-landscape', 0);
  const withList = scaleOn(pack, thing, 'A4-portrait', listMm(subject));
  const onePage = withList !== undefined && withList <= (alone ?? 200);
  const size = onePage ? 'A4-portrait' : 'A4-landscape';
  const scale = (onePage ? withList : alone) ?? 200;
  const high = thing.heightMm / scale + ROOM.above + ROOM.below;
  const drawn = picture(high, ([x, y], wide): Item[] => {
    const left = x + ROOM.left + (wide - ROOM.left - ROOM.right - thing.widthMm / scale) / 2;
    const view: PlaneView = {
      scale,
      onPaper: ([u, v]) => [left + (1000 * (u - from)) / scale, y + ROOM.below + (1000 * (v - low)) / scale],
    };
    const edge = { left: x, bottom: y, right: x + wide, top: y + high };
    const label = `${plane.name} plane from the eaves, 1:${scale}`;
    return [group(plane.name, planeItems(subject, view, edge), { role: 'figure', label })];
  });
  const kind = {
    no: `03.${plane.letter}`,
    title: `${plane.name} plane`,
    size,
    scale: `1:${scale}`,
  } as const;
  const list = { no: `03.${plane.letter}`, title: `${plane.name} plane, feet and rails` } as const;
  if (onePage) return pagesOf(pack, kind, [...headOf(subject), drawn, ...listBody(subject)]);
  return [...pagesOf(pack, kind, [...headOf(subject), drawn]), ...pagesOf(pack, list, listParts(subject))];
}

/** The first scale at which the plane and what stands below it fit a page. */
function scaleOn(pack: Pack, thing: { widthMm: number; heightMm: number }, size: SheetSize, belowMm: number) {
  const { widthMm, heightMm } = roomOf(pack, { size, scale: 'any' });
  return scaleFor(thing, {
    widthMm: widthMm - ROOM.left - ROOM.right,
    heightMm: heightMm - HEAD - ROOM.above - ROOM.below - belowMm,
  });
}

/** Room the tables of a plane ask for, about. */
function listMm({ rails, rows }: PlaneSubject): number {
  return 74 + 9.4 * rails.length + 5.4 * rows.length;
}

function headOf({ plane, rails, modules }: PlaneSubject): Part[] {
  const feet = rails.reduce((sum, rail) => sum + rail.feet.length, 0);
  const sentence = `${plane.name} plane: ${counted(modules.length, 'module')}, ${counted(rails.length, 'rail')}, ${counted(feet, 'foot', 'feet')}.`;
  return [headline(sentence, 'Seen from the eaves, looking up the roof. True lengths up the slope, in millimetres.')];
}

function listParts(subject: PlaneSubject): Part[] {
  const { plane, rails } = subject;
  const onRafters = rails.every((rail) => rail.onRafters);
  const quiet = onRafters
    ? 'Feet stand on rafters, counted from the left end of the eave. Running sizes from the left end of each rail.'
    : 'Rafters are not known: places of feet are nominal. Find the rafters, then set out again.';
  return [headline(`${plane.name} plane: where every foot stands.`, quiet), gap(3), ...listBody(subject)];
}

function listBody(subject: PlaneSubject): Part[] {
  const { pack, plane } = subject;
  return [
    caution('Scan before you drill. Eyes, ears and dust.', 'No work outside the guard. The licensed person decides.'),
    gap(3),
    railTable(subject),
    gap(4),
    headed('Rows', rowTable(subject)),
    gap(3),
    paragraph(`Kept free of modules, mm: eave, ridge, sides ${keptFree(plane)}. ${mountingWords(pack)}`, {
      capMm: 2.5,
      ink: 'quiet',
    }),
  ];
}

function railTable({ rails }: PlaneSubject): Part {
  return table({
    label: 'rails and feet',
    columns: [
      { head: 'rail', share: 1.7, weight: 700 },
      { head: 'length', share: 1.2, align: 'end' },
      { head: 'up the slope', share: 1.2, align: 'end' },
      { head: 'eave end to rail end', share: 1.5, align: 'end' },
      { head: 'feet, from the left end of the rail', share: 5.2 },
      { head: 'on rafters', share: 2.4 },
      { head: 'set', share: 0.7 },
    ],
    rows: rails.map((rail) => ({
      of: rail.id,
      cells: [
        rail.name,
        figure(Math.round(rail.lengthMm), 0),
        mmFrom(rail.v, 'below the eave'),
        mmFrom(rail.fromU, 'left of it'),
        rail.feet.map((foot) => mm(foot.u - rail.fromU)).join('  '),
        rail.onRafters ? rail.feet.map((foot) => String(foot.rafter ?? '?')).join(' ') : 'nominal',
        { boxes: 1 },
      ],
    })),
  });
}

function rowTable({ rows, modules }: PlaneSubject): Part {
  return table({
    label: 'rows of modules',
    columns: [
      { head: 'row', share: 1, weight: 700 },
      { head: 'lies', share: 1.4 },
      { head: 'modules', share: 1.2, align: 'end' },
      { head: 'from the left end of the eave', share: 2.4, align: 'end' },
      { head: 'up the slope', share: 1.6, align: 'end' },
      { head: 'length', share: 1.4, align: 'end' },
      { head: 'gap', share: 0.9, align: 'end' },
    ],
    rows: rows.map((row) => ({
      of: row.id,
      cells: [
        row.name,
        row.orientation,
        figure(modules.filter((module) => module.rowId === row.id).length, 0),
        mmFrom(row.at[0], 'left of it'),
        mmFrom(row.at[1], 'below the eave'),
        figure(Math.round(row.lengthMm), 0),
        figure(row.gapMm, 0),
      ],
    })),
  });
}

/** Clamps, fixing and gap as chosen, with their torques. */
function mountingWords({ job }: Pack): string {
  const { mounting, equipment } = job.choices;
  if (mounting === undefined) return 'No mounting is chosen yet.';
  const torques = [mounting.midClampSheet, mounting.endClampSheet, mounting.fixingSheet].flatMap((id) => {
    const sheet = equipment[id];
    if (sheet === undefined || !('torqueNm' in sheet) || sheet.torqueNm === undefined) return [];
    return [`${sheet.name} ${withUnit(sheet.torqueNm, 'N·m')}`];
  });
  return `Torques by the equipment sheets: ${listed(torques)}. Rails run ${figure(mounting.railPastMm, 0)} past the frames.`;
}
