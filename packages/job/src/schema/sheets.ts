/** Equipment sheets: what a maker's data sheet says of one thing, embedded in the job by value. */
import { AWG_SIZES, IEC_60228_SIZES_MM2, IEC_CAPACITY_SIZES_MM2 } from '@eaveline/physics';
import { z } from 'zod';
import { aboveZero, count, open, SMALLEST, share, spacingMm, zeroOrMore } from './open.ts';

const named = {
  name: z.string().min(1),
  /** True where the figures are made up for a demo: papers then say so. */
  invented: z.boolean().optional(),
  /** Where the figures were read: maker's sheet and issue, or a site test. */
  source: z.string().optional(),
  note: z.string().optional(),
};

/** Conductor of a cable: metric area or American gauge, never both. */
export const conductorSchema = open({
  material: z.enum(['copper', 'aluminium']),
  areaMm2: aboveZero.optional(),
  awg: z.string().optional(),
  /** IEC 60228 class: 1 solid, 2 stranded, 5 flexible. */
  strandClass: z.union([z.literal(1), z.literal(2), z.literal(5)]).default(2),
})
  .refine((c) => (c.areaMm2 === undefined) !== (c.awg === undefined), {
    message: 'give areaMm2 or awg, and not both',
  })
  .refine((c) => c.areaMm2 === undefined || (IEC_CAPACITY_SIZES_MM2 as readonly number[]).includes(c.areaMm2), {
    path: ['areaMm2'],
    message: `a standard size: ${IEC_CAPACITY_SIZES_MM2.join(', ')} mm²`,
  })
  .refine((c) => c.awg === undefined || (AWG_SIZES as readonly string[]).includes(c.awg), {
    path: ['awg'],
    message: `a standard gauge: ${AWG_SIZES.join(', ')}`,
  })
  .refine((c) => c.material === 'copper' || c.strandClass !== 5, {
    path: ['strandClass'],
    message: 'class 1 or 2: IEC 60228 gives no flexible aluminium',
  });

export const moduleSheetSchema = open({
  ...named,
  kind: z.literal('module'),
  lengthMm: z.number().min(100).max(5000),
  widthMm: z.number().min(100).max(5000),
  thicknessMm: aboveZero,
  massKg: aboveZero,
  cellsInSeries: count,
  pmpW: z.number().min(1).max(5000),
  vocV: aboveZero,
  iscA: aboveZero,
  vmpV: aboveZero,
  impA: aboveZero,
  vocPctPerK: z.number().min(-2).max(-SMALLEST),
  iscPctPerK: z.number().min(-2).max(2),
  pmpPctPerK: z.number().min(-2).max(-SMALLEST),
  noctC: z.number().min(30).max(70),
  /** Clamps are allowed between these shares of the long side, measured from each end. */
  clampZoneFrom: share,
  clampZoneTo: share,
  leadMm: aboveZero,
  /** Loads the module was tested for in this clamp zone, factor 1.5 already taken off. */
  upliftPa: aboveZero.optional(),
  downPa: aboveZero.optional(),
});

export const unitSheetSchema = open({
  ...named,
  kind: z.literal('unit'),
  ratedVA: aboveZero,
  /** Modules on one unit. */
  inputs: count,
  /** How it sits on the supply: line to neutral, line to line, or on all three lines. */
  connection: z.enum(['line-neutral', 'line-line', 'three-phase']),
  /** Between its own terminals; line to neutral where it is three-phase. */
  nominalV: aboveZero,
  trackingLowV: aboveZero,
  trackingHighV: aboveZero,
  startV: aboveZero,
  maxDcV: aboveZero,
  maxIscA: aboveZero,
  efficiency: share,
  standingLeakageMA: zeroOrMore,
  massKg: aboveZero,
  /** Length of its bracket along the rail. */
  bracketMm: aboveZero,
  /** Reach of its lead to a drop, bends taken off. */
  dropReachMm: aboveZero,
  /** Most units on one trunk by the maker's sheet, where given. */
  maxPerTrunk: count.optional(),
  reconnectS: aboveZero.optional(),
  outputTorqueNm: aboveZero.optional(),
});

export const trunkCableSheetSchema = open({
  ...named,
  kind: z.literal('trunk-cable'),
  dropPitchMm: spacingMm,
  lines: z.union([z.literal(1), z.literal(2), z.literal(3)]),
  conductor: conductorSchema,
  insulationC: z.number().min(60).max(120),
  ratedA: aboveZero,
  ratedV: aboveZero,
});

export const batterySheetSchema = open({
  ...named,
  kind: z.literal('battery'),
  usableKwh: aboveZero,
  continuousVA: aboveZero,
  peakVA: aboveZero,
  peakS: aboveZero,
  roundTrip: share,
  massKg: aboveZero,
  widthMm: aboveZero,
  heightMm: aboveZero,
  depthMm: aboveZero,
  /** Most solar, in a.c. VA, it can hold back on the backed-up side, as a share of its continuous rating. */
  solarShareMax: aboveZero.optional(),
  chemistry: z.string().optional(),
  faultA: aboveZero.optional(),
});

export const changeoverSheetSchema = open({
  ...named,
  kind: z.literal('changeover'),
  ratedA: aboveZero,
  supply: z.enum(['single-phase', 'split-phase', 'three-phase']),
  /** Lines it can keep alive. */
  backupLines: z.union([z.literal(1), z.literal(2), z.literal(3)]),
  transferS: aboveZero,
  /** True where it joins neutral and earth in island; false where the grid's neutral stays through. */
  bondRelay: z.boolean(),
  widthMm: aboveZero,
  heightMm: aboveZero,
});

export const railSheetSchema = open({
  ...named,
  kind: z.literal('rail'),
  stockMm: z.number().min(500).max(20_000),
  massKgPerM: aboveZero,
  secondMomentCm4: aboveZero,
  sectionModulusCm3: aboveZero,
  elasticGPa: aboveZero,
  /** Bending stress allowed at the level of a design load. */
  designStressMPa: aboveZero,
  expansionPerK: aboveZero,
  /** Longest run without an expansion break, where the maker gives one. */
  longestRunMm: aboveZero.optional(),
});

export const clampSheetSchema = open({
  ...named,
  kind: z.literal('clamp'),
  place: z.enum(['mid', 'end']),
  /** Gap a mid clamp keeps between modules, or what an end clamp adds past the last frame. */
  gapMm: aboveZero,
  torqueNm: aboveZero,
  bonding: z.boolean(),
});

export const fixingSheetSchema = open({
  ...named,
  kind: z.literal('fixing'),
  suits: z.array(z.enum(['concrete-tile', 'clay-tile', 'slate', 'asphalt-shingle', 'metal-sheet'])).min(1),
  /** Resistance against uplift of one fixing in this roof, where the sheet or a site test gives it. */
  upliftN: aboveZero.optional(),
  /** What kind of figure `upliftN` is: a load of another level may not be set against it. */
  upliftLevel: z.enum(['characteristic', 'design', 'allowable']).optional(),
  upliftBasis: z.enum(['sheet', 'site test']).optional(),
  screws: count,
  torqueNm: aboveZero.optional(),
});

export const cableSheetSchema = open({
  ...named,
  kind: z.literal('cable'),
  conductor: conductorSchema.refine((c) => c.material === 'copper', {
    path: ['material'],
    message: 'copper: the capacity tables at hand have no aluminium',
  }),
  /** Protective conductor, where smaller than the line. */
  earthMm2: aboveZero
    .refine((mm2) => (IEC_60228_SIZES_MM2 as readonly number[]).includes(mm2), {
      message: `a standard size: ${IEC_60228_SIZES_MM2.join(', ')} mm²`,
    })
    .optional(),
  earthAwg: z
    .string()
    .refine((awg) => (AWG_SIZES as readonly string[]).includes(awg), {
      message: `a standard gauge: ${AWG_SIZES.join(', ')}`,
    })
    .optional(),
  cores: count,
  insulation: z.enum(['PVC', 'XLPE']),
  insulationC: z.number().min(60).max(120),
  sunlight: z.boolean(),
  outsideMm: aboveZero.optional(),
});

export const breakerSheetSchema = open({
  ...named,
  kind: z.literal('breaker'),
  ratedA: aboveZero,
  curve: z.enum(['B', 'C', 'D', 'US']),
  poles: count,
  breakingKA: aboveZero,
  /** Share of its rating it may carry without end; 1 where made for continuous duty. */
  continuousShare: share,
  /** True where current may flow either way through it. */
  bothWays: z.boolean(),
  terminalTorqueNm: aboveZero.optional(),
  residualMA: aboveZero.optional(),
  residualType: z.enum(['AC', 'A', 'F', 'B']).optional(),
});

export const partSheetSchema = open({
  ...named,
  kind: z.literal('part'),
  /** What the kit counts it for. */
  use: z.enum([
    'feed-joint',
    'drop-cap',
    'end-cap',
    'drop-release-tool',
    'splice',
    'bonding-jumper',
    'earth-lug',
    'roof-box',
    'isolator',
    'surge-device',
    'meter',
    'gateway',
    'current-transformer',
    'cable-clip',
    'tie-wire',
  ]),
  lengthMm: aboveZero.optional(),
  torqueNm: aboveZero.optional(),
});

/** Any equipment sheet, told apart by `kind`. */
export const sheetSchema = z.discriminatedUnion('kind', [
  moduleSheetSchema,
  unitSheetSchema,
  trunkCableSheetSchema,
  batterySheetSchema,
  changeoverSheetSchema,
  railSheetSchema,
  clampSheetSchema,
  fixingSheetSchema,
  cableSheetSchema,
  breakerSheetSchema,
  partSheetSchema,
]);

export type Conductor = z.infer<typeof conductorSchema>;
export type ModuleSheet = z.infer<typeof moduleSheetSchema>;
export type UnitSheet = z.infer<typeof unitSheetSchema>;
export type TrunkCableSheet = z.infer<typeof trunkCableSheetSchema>;
export type BatterySheet = z.infer<typeof batterySheetSchema>;
export type ChangeoverSheet = z.infer<typeof changeoverSheetSchema>;
export type RailSheet = z.infer<typeof railSheetSchema>;
export type ClampSheet = z.infer<typeof clampSheetSchema>;
export type FixingSheet = z.infer<typeof fixingSheetSchema>;
export type CableSheet = z.infer<typeof cableSheetSchema>;
export type BreakerSheet = z.infer<typeof breakerSheetSchema>;
export type PartSheet = z.infer<typeof partSheetSchema>;
export type Sheet = z.infer<typeof sheetSchema>;
export type SheetKind = Sheet['kind'];
