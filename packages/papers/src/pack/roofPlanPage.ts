import type { RoofPlane } from '@eaveline/plan';
import { group, type Item, northArrow, type Point, type Scale, scaleFor } from '../drawing/index.ts';
import {
  gap,
  headline,
  type Part,
  paragraph,
  picture,
  type Sheet,
  type SheetSize,
  stacked,
  table,
} from '../page/index.ts';
import { counted, figure, mm, withUnit } from './figures.ts';
import type { Pack } from './packContext.ts';
import { pagesOf, roomOf } from './pagesOf.ts';
import { type Ground, patchOf } from './placeLabel.ts';
import { seenFromAbove } from './planeGeometry.ts';
import type { PlanView } from './planView.ts';
import { roofItems } from './roofItems.ts';

/** Paper kept round the roof for sizes, mm. */
const MARGIN = 16;
const HEAD = 24;

interface Extent {
  readonly west: number;
  readonly south: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * The roof seen from above, north up, at the first of our scales that fits: A4 down to 1:125, else A3.
 * Nothing else on it is scaled: lengths up a slope look shorter than they are and are given on the sheets of planes.
 */
export function roofPlanPages(pack: Pack): Sheet[] {
  const { planes } = pack.plan.roof;
  if (planes.length === 0) return [];
  const extent = extentOf(planes);
  const rows = tableHeight(planes.length);
  const a4 = fitOn(pack, 'A4-portrait', extent, 170, rows);
  if (a4 !== undefined && a4 <= 125) {
    const view = { pack, extent, scale: a4 };
    return pagesOf(pack, kindOf('A4-portrait', a4), [
      ...headOf(pack),
      plan(view, 170),
      gap(3),
      planeTable(pack),
      gap(2),
      notes(pack),
    ]);
  }
  const widthMm = 225;
  const a3 = fitOn(pack, 'A3-landscape', extent, widthMm, 0) ?? 200;
  const beside: Part = ([x, y], wide, room) => {
    const drawn = plan({ pack, extent, scale: a3 }, widthMm)([x, y], widthMm, room);
    const side = stacked([planeTable(pack), gap(3), notes(pack)], [x + widthMm + 5, y], wide - widthMm - 5, room);
    return { items: [...drawn.items, ...side.items], heightMm: Math.max(drawn.heightMm, side.heightMm) };
  };
  return pagesOf(pack, kindOf('A3-landscape', a3), [...headOf(pack), beside]);
}

function kindOf(size: SheetSize, scale: Scale) {
  return { no: '03', title: 'Roof plan', size, scale: `1:${scale}` };
}

function tableHeight(planes: number): number {
  return 12 + 5.5 * planes + 24;
}

function fitOn(pack: Pack, size: SheetSize, extent: Extent, widthMm: number, below: number): Scale | undefined {
  const { heightMm } = roomOf(pack, { size, scale: 'any' });
  return scaleFor(extent, { widthMm: widthMm - 2 * MARGIN, heightMm: heightMm - HEAD - below - 2 * MARGIN });
}

function headOf({ plan }: Pack): Part[] {
  const { array, roof } = plan;
  const used = new Set(array.modules.map((module) => module.planeId)).size;
  const sentence = `${counted(array.modules.length, 'module')} on ${counted(used, 'plane')}, ${withUnit(array.stcW / 1000, 'kW', 2)}.`;
  const left = roof.planes.length - used;
  const quiet = `Seen from above, north up. Sizes in millimetres, true along the eaves.${left > 0 ? ` ${counted(left, 'plane')} left clear.` : ''}`;
  return [headline(sentence, quiet), gap(2)];
}

/** True size of all planes seen from above, in mm. */
function extentOf(planes: readonly RoofPlane[]): Extent {
  const points = planes.flatMap((plane) => plane.outline.map((uv) => seenFromAbove(plane, uv)));
  const { left, bottom, right, top } = patchOf(points);
  return { west: left, south: bottom, widthMm: 1000 * (right - left), heightMm: 1000 * (top - bottom) };
}

function plan({ pack, extent, scale }: { pack: Pack; extent: Extent; scale: Scale }, widthMm: number): Part {
  const [wide, high] = [extent.widthMm / scale, extent.heightMm / scale];
  return picture(high + 2 * MARGIN, ([x, y]): Item[] => {
    const origin: Point = [x + (widthMm - wide) / 2, y + MARGIN];
    const view: PlanView = {
      scale,
      onPaper: ([east, north]) => [
        origin[0] + (1000 * (east - extent.west)) / scale,
        origin[1] + (1000 * (north - extent.south)) / scale,
      ],
    };
    const edge = { left: x, bottom: y, right: x + widthMm, top: y + high + 2 * MARGIN };
    const arrow: Point = [edge.right - 2, edge.top - 9];
    const ground: Ground = { edge, taken: [patchOf([arrow], 9)] };
    const label = `Roof plan, 1:${scale}: ${pack.plan.roof.planes.map((plane) => plane.name).join(', ')}`;
    return [group('roof plan', [...roofItems(pack, view, ground), ...northArrow(arrow)], { role: 'figure', label })];
  });
}

function planeTable({ plan }: Pack): Part {
  return table({
    label: 'planes of the roof',
    columns: [
      { head: 'plane', share: 3.4, weight: 700 },
      { head: 'faces', share: 1.5, align: 'end' },
      { head: 'pitch', share: 1.5, align: 'end' },
      { head: 'modules', share: 1.8, align: 'end' },
      { head: 'kept free, mm: eave, ridge, sides', share: 3.6, align: 'end' },
      { head: 'sun, kWh/m² a year', share: 2.3, align: 'end' },
    ],
    rows: plan.roof.planes.map((plane) => ({
      of: plane.id,
      cells: [
        `${plane.letter}  ${plane.name}`,
        `${figure(plane.facingDeg, 0)}°`,
        `${figure(plane.pitchDeg, 1)}°`,
        figure(plan.array.modules.filter((module) => module.planeId === plane.id).length, 0),
        keptFree(plane),
        figure(plane.sun.annualKwhM2, 0),
      ],
    })),
  });
}

/** Setbacks of a plane by side: eave, ridge, left and right. */
export function keptFree(plane: RoofPlane): string {
  const of = (side: string): string => {
    const edge = plane.edges.find((one) => one.side === side);
    return edge === undefined ? 'none' : mm(edge.setbackM);
  };
  const sides = of('left') === of('right') ? of('left') : `${of('left')} / ${of('right')}`;
  return `${of('eave')}, ${of('ridge')}, ${sides}`;
}

function notes({ job, plan }: Pack): Part {
  const objects = Object.values(job.facts.site.objects).map(
    (thing) => `${thing.name}, ${withUnit(thing.heightM, 'm', 1)} high`,
  );
  const unknown = plan.roof.planes.filter((plane) => plane.raftersU === undefined).map((plane) => plane.name);
  const lines = [
    'Broken lines: the edge of what is kept free, inside each plane. Chain lines: kept free round a vent, flue or window.',
    'A module bears row and place from the left as seen from the eaves, and its line.',
    ...(objects.length > 0 ? [`Near the roof and not drawn: ${objects.join('; ')}.`] : []),
    ...(unknown.length > 0
      ? [`Rafters not known: ${unknown.join(', ')}. Feet there are nominal until they are found.`]
      : []),
  ];
  return paragraph(lines.join('\n'), { capMm: 2.1, ink: 'quiet' });
}
