import { sheetOf } from '../equipment.ts';
import { given } from '../working.ts';
import { KERF_MM } from './cutRails.ts';
import type { KitInput } from './kitInput.ts';
import { kitLine, PRACTICE, part, partFor } from './kitLine.ts';
import type { SplitRails } from './splitRails.ts';
import type { KitLine, KitPlan } from './types.ts';

/** Fixings beyond the feet drawn: one in twenty, rounded up. */
const FIXING_SPARE = 0.05;

/** Rails, what joins them, what holds them and what holds the modules. */
export function mountingLines(input: KitInput, split: SplitRails, cutting: KitPlan['cutting']): KitLine[] {
  const { view, array } = input;
  const { mounting, equipment } = view;
  if (mounting === undefined || array.rails.length === 0) return [];
  const rail = sheetOf(equipment, mounting.railSheet, 'rail');
  const splice = partFor('splice', view, mounting.spliceSheet);
  const jumper = partFor('bonding-jumper', view);
  const lug = partFor('earth-lug', view);
  const joints = [part('splices', split.splices.length), part('expansion breaks', split.breaks.length)];
  return [
    ...kitLine({
      id: 'rail',
      sheetId: mounting.railSheet,
      name: `${rail.name}, ${rail.stockMm} mm`,
      group: 'mounting',
      count: cutting.bars,
      unit: 'lengths',
      formula: cutting.proven ? 'bars of the cut list; no fewer can do' : 'bars of the cut list',
      source: cutting.method,
      inputs: [
        part('pieces', split.pieces.length),
        part('rail in all', split.pieces.reduce((sum, { lengthMm }) => sum + lengthMm, 0) / 1000, 'm'),
        part('saw cut', KERF_MM, 'mm', PRACTICE),
        part('no fewer than', cutting.lowerBound),
      ],
    }),
    ...kitLine({
      id: 'splice',
      ...splice,
      group: 'mounting',
      count: split.splices.length,
      formula: 'one at each joint of two pieces',
    }),
    ...kitLine({
      id: 'bonding-jumper',
      ...jumper,
      group: 'mounting',
      count: split.splices.length + split.breaks.length,
      formula: 'one over each splice and each expansion break',
      inputs: joints,
    }),
    ...kitLine({
      id: 'earth-lug',
      ...lug,
      group: 'mounting',
      count: array.rails.length,
      formula: 'one a rail; jumpers carry it on over splices and breaks',
      inputs: [part('rails', array.rails.length)],
    }),
    ...clampLines(input, mounting, split),
    ...fixingLines(input, mounting),
  ];
}

type Mounting = NonNullable<KitInput['view']['mounting']>;

/** 2 rails · (n − 1) mid clamps and 4 end clamps a row without gaps; at an expansion break two end clamps for a mid. */
function clampLines({ view, array }: KitInput, mounting: Mounting, { breaks }: SplitRails): KitLine[] {
  const perRow = (kind: 'mid' | 'end') =>
    array.rows.map((row) => {
      const clamps = array.rails.filter(({ rowId }) => rowId === row.id).flatMap((rail) => rail.clamps);
      return part(`row ${row.name}`, clamps.filter((clamp) => clamp.kind === kind).length);
    });
  const total = (kind: 'mid' | 'end') => perRow(kind).reduce((sum, { value }) => sum + Number(value), 0);
  const atBreaks = (each: number) =>
    breaks.length === 0
      ? []
      : [part('at expansion breaks', each * breaks.length, '', 'two end clamps for a mid clamp')];
  const name = (id: string) => sheetOf(view.equipment, id, 'clamp').name;
  return [
    ...kitLine({
      id: 'mid-clamp',
      sheetId: mounting.midClampSheet,
      name: name(mounting.midClampSheet),
      group: 'mounting',
      count: total('mid') - breaks.length,
      formula: '2 rails · (modules − 1) in each unbroken row',
      inputs: [...perRow('mid'), ...atBreaks(-1)],
    }),
    ...kitLine({
      id: 'end-clamp',
      sheetId: mounting.endClampSheet,
      name: name(mounting.endClampSheet),
      group: 'mounting',
      count: total('end') + 2 * breaks.length,
      formula: '4 in each unbroken row',
      inputs: [...perRow('end'), ...atBreaks(2)],
    }),
  ];
}

function fixingLines({ view, array }: KitInput, mounting: Mounting): KitLine[] {
  const sheet = sheetOf(view.equipment, mounting.fixingSheet, 'fixing');
  const feet = array.rails.reduce((sum, rail) => sum + rail.feet.length, 0);
  const fixings = Math.ceil(feet * (1 + FIXING_SPARE) - 1e-9);
  const screwsEach = given(
    'screws each',
    sheet.screws,
    '',
    `choices.equipment.${mounting.fixingSheet}.screws`,
    'equipment sheet',
  );
  return [
    ...kitLine({
      id: 'fixing',
      sheetId: mounting.fixingSheet,
      name: sheet.name,
      group: 'mounting',
      count: fixings,
      formula: 'feet + 5 %, rounded up',
      source: PRACTICE,
      inputs: [part('feet', feet)],
    }),
    ...kitLine({
      id: 'fixing-screw',
      name: `screw for ${sheet.name}`,
      group: 'mounting',
      count: fixings * sheet.screws,
      formula: 'fixings · screws each',
      inputs: [part('fixings', fixings), screwsEach],
    }),
  ];
}
