/** Choices: what was decided for this job. A mend may change these and nothing else. */
import { z } from 'zod';
import { lineSchema } from './facts.ts';
import {
  aboveZero,
  byId,
  civilDate,
  count,
  countOrNone,
  dropNumber,
  open,
  personName,
  placeInRow,
  placeM,
  share,
  signed,
  zeroOrMore,
} from './open.ts';
import { sheetSchema } from './sheets.ts';

/** One row of modules on a plane. Its modules name it; their number in it is their place. */
export const rowSchema = open({
  planeId: z.string(),
  /** Counted from the eaves. */
  row: count,
  orientation: z.enum(['portrait', 'landscape']),
  /** Lower left corner of the first module in the plane's own coordinates. */
  uM: placeM,
  vM: placeM,
  gapMm: z.number().min(0).max(1000),
  moduleSheet: z.string(),
  /** Distance of the two rails from the lower edge of the row; where left out, the middle of the clamp zones. */
  railsMm: z.array(aboveZero).length(2).optional(),
});

export const moduleSchema = open({
  rowId: z.string(),
  /** Counted from the left end of the row as seen from the eaves. */
  place: placeInRow,
  unitId: z.string(),
  /** Which input of its unit. */
  input: count.default(1),
});

export const unitSchema = open({
  sheet: z.string(),
  trunkId: z.string(),
  /** Counted from the first laid. */
  drop: dropNumber,
  /** Line of a single-phase unit on a three-phase trunk; else the trunk's own. */
  line: lineSchema.optional(),
});

/** How and where a cable runs: what its capacity hangs on. */
export const routeSchema = open({
  /** Reference method of IEC 60364-5-52, or `raceway` for the NEC table. */
  method: z.enum(['A1', 'A2', 'B1', 'B2', 'C', 'D1', 'E', 'raceway']),
  ambientC: z.number().min(-20).max(90),
  circuitsTogether: count.default(1),
  insulationMm: zeroOrMore.default(0),
  /** Raceway lying on a sunlit roof, height above it. */
  aboveRoofMm: zeroOrMore.optional(),
});

/** Where its breaker sits: in the board, or in the changeover ahead of the board's bars. The board, where left out. */
const landsOn = z.enum(['board', 'changeover']).optional();

export const trunkSchema = open({
  name: z.string().min(1),
  cableSheet: z.string(),
  /** One line: L1. Line to line: L1 and L2. Three-phase: all three. */
  lines: z.array(lineSchema).min(1).max(3),
  /** The drop whose joint the home run enters. */
  feedDrop: dropNumber,
  /**
   * Extra cable between two neighbouring drops: `afterDrop` n stands between n and n + 1.
   * It adds to the drop pitch: the span there is the pitch plus `lengthM`.
   */
  jumpers: byId(open({ afterDrop: dropNumber, lengthM: aboveZero, why: z.string().optional() })).default({}),
  /** Drops laid past the last unit and not used: capped. Gaps in the drop numbers are unused drops by themselves. */
  spareDrops: z.int().min(0).max(200).default(0),
  homeRun: open({
    cableSheet: z.string(),
    lengthM: aboveZero,
    route: routeSchema,
  }),
  breakerSheet: z.string(),
  boardId: z.string().optional(),
  landsOn,
});

export const batteryChoiceSchema = open({
  sheet: z.string(),
  /** Lines it feeds and is fed from. */
  lines: z.array(lineSchema).min(1),
  cableSheet: z.string(),
  lengthM: aboveZero,
  route: routeSchema,
  breakerSheet: z.string(),
  landsOn,
  place: open({ wallId: z.string(), leftMm: signed, bottomMm: zeroOrMore }).optional(),
  /** Barrier of non-combustible board behind it. */
  barrier: z.boolean().default(false),
  bollard: z.boolean().default(false),
});

export const backupSchema = open({
  changeoverSheet: z.string(),
  /** Whole house or a part board. */
  scope: z.enum(['whole', 'part']),
  lines: z.array(lineSchema).min(1),
  /** Circuits moved to the backed-up side. */
  circuits: z
    .record(
      z.string(),
      open({ moved: z.boolean(), residualDevice: z.boolean().optional(), shed: z.boolean().default(false) }),
    )
    .default({}),
  reserve: share.default(0.2),
  /** Trunks that stand on the backed-up side, by trunk id. */
  trunks: z.record(z.string(), z.boolean()).default({}),
  electrode: z.boolean().optional(),
});

export const personSchema = open({
  name: z.string(),
  role: z.enum(['lead electrician', 'electrician', 'roof hand']),
});

export const daySchema = open({
  date: civilDate.optional(),
  startsAt: z
    .string()
    .regex(/^\d\d:\d\d$/)
    .default('07:00'),
  hoursPerDay: z.number().min(1).max(14).default(8.5),
  /** Tasks done before the first day, keyed by the task's own id. */
  doneBefore: z.record(z.string(), z.boolean()).default({}),
});

/** A licensed person's word that a limit known from memory is right for an edition. */
export const confirmationSchema = open({
  rule: z.string(),
  edition: z.string(),
  by: personName,
  licence: z.string().optional(),
  on: civilDate,
});

export const choicesSchema = open({
  rules: open({
    pack: z.enum(['au-nz', 'iec-eu', 'us']),
    variant: z.enum(['au', 'nz', 'gb', 'ie', 'eu', 'us']),
    /** Edition in force, keyed by document: `AS/NZS 4777.1` → `2024`. */
    editions: z.record(z.string(), z.string()).default({}),
  }),
  equipment: byId(sheetSchema),
  rows: byId(rowSchema).default({}),
  modules: byId(moduleSchema).default({}),
  units: byId(unitSchema).default({}),
  trunks: byId(trunkSchema).default({}),
  batteries: byId(batteryChoiceSchema).default({}),
  backup: backupSchema.optional(),
  /** Equipment of one kind for the whole job, by sheet id. */
  mounting: open({
    railSheet: z.string(),
    midClampSheet: z.string(),
    endClampSheet: z.string(),
    fixingSheet: z.string(),
    spliceSheet: z.string().optional(),
    /** Rail past the last frame. */
    railPastMm: z.number().min(0).max(5000).default(50),
    /** Largest foot spacing asked for; feet land on the nearest rafter inside it. */
    footSpacingMm: z.number().min(300).max(20_000),
    /** Rail under the module. */
    gapUnderMm: aboveZero.default(100),
  }).optional(),
  /** Net pressure coefficients entered for this job from the edition's table or a report, where at hand. */
  wind: open({
    netUplift: open({ interior: signed, edge: signed, corner: signed }).optional(),
    netDown: aboveZero.optional(),
    source: z.string().optional(),
  }).default({}),
  parts: z.record(z.string(), z.string()).default({}),
  setbacks: open({ eaveM: zeroOrMore, ridgeM: zeroOrMore, sideM: zeroOrMore }).partial().default({}),
  /** What the export limit is set to: on each line where the network's limit is for a line, else in sum. */
  exportLimitSetVA: zeroOrMore.optional(),
  crew: byId(personSchema).default({}),
  day: daySchema.default({ startsAt: '07:00', hoursPerDay: 8.5, doneBefore: {} }),
  spares: open({ modules: countOrNone, units: countOrNone }).partial().default({}),
  labels: z.record(z.string(), z.boolean()).default({}),
  confirmations: byId(confirmationSchema).default({}),
});

export type RowChoice = z.infer<typeof rowSchema>;
export type ModuleChoice = z.infer<typeof moduleSchema>;
export type UnitChoice = z.infer<typeof unitSchema>;
export type Route = z.infer<typeof routeSchema>;
export type TrunkChoice = z.infer<typeof trunkSchema>;
export type BatteryChoice = z.infer<typeof batteryChoiceSchema>;
export type BackupChoice = z.infer<typeof backupSchema>;
export type Confirmation = z.infer<typeof confirmationSchema>;
export type Choices = z.infer<typeof choicesSchema>;
