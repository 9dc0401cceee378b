/** Facts: what was found or measured at the place. Nothing here is decided, nothing is worked out. */
import { z } from 'zod';
import {
  aboveZero,
  byId,
  civilDate,
  count,
  countOrNone,
  edgeM,
  instant,
  open,
  placeM,
  share,
  signed,
  spacingMm,
  zeroOrMore,
} from './open.ts';
import { conductorSchema } from './sheets.ts';

export const lineSchema = z.enum(['L1', 'L2', 'L3']);

/** Who found a fact, when, with what. Kept beside the facts, keyed by the fact's path in them with dots, `supply.loopOhm`. */
export const provenanceSchema = open({
  by: z.string(),
  at: instant,
  with: z.string().optional(),
  photo: z.string().optional(),
  note: z.string().optional(),
  /** Why it could not be measured; the fact itself then stays away, and who needs it goes on asking. */
  notMeasured: z.string().min(1).optional(),
});

/** Who closed the survey, and when. Facts may change after; what changed later shows by its own hour. */
export const surveyClosedSchema = open({ by: z.string().min(1), at: instant });

/** What the customer asked for, in the words of the visit. */
export const wishesFactsSchema = open({
  backup: z.enum(['whole house', 'some circuits', 'none']).optional(),
  note: z.string().optional(),
});

const zones = new Map<string, boolean>();

/** Does this platform know a civil clock of that name? Asked of it once: a job is read whole at each edit. */
function isZone(name: string): boolean {
  const known = zones.get(name) ?? asksForZone(name);
  zones.set(name, known);
  return known;
}

function asksForZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return /^[A-Za-z]/.test(name);
  } catch {
    return false;
  }
}

export const siteFactsSchema = open({
  address: z.string().min(1),
  latitudeDeg: z.number().min(-90).max(90),
  longitudeDeg: z.number().min(-180).max(180),
  elevationM: z.number().min(-430).max(6000).optional(),
  /** IANA name of the civil clock, `Europe/London`. */
  zone: z.string().refine(isZone, { message: 'an IANA name such as Europe/London' }),
  /** Lowest and highest air temperature on record at the place, from the survey; never a mean, never a typical year. */
  recordLowC: z.number().min(-70).max(30).optional(),
  recordHighC: z.number().min(0).max(60).optional(),
  recordSource: z.string().optional(),
  horizon: z
    .array(open({ azimuthDeg: z.number().min(0).max(360), elevationDeg: z.number().min(0).max(90) }))
    .default([]),
  /** Trees, chimneys of neighbours, poles: seen from the house's own origin. */
  objects: byId(
    open({
      kind: z.enum(['tree', 'building', 'pole']),
      name: z.string(),
      eastM: placeM,
      northM: placeM,
      baseM: placeM.default(0),
      heightM: aboveZero,
      widthM: aboveZero,
      /** Share of light that passes; 0 is solid. */
      transmission: share.default(0),
    }),
  ).default({}),
  wind: open({
    /** Wind region or basic speed as the region's map gives it. */
    region: z.string().optional(),
    basicSpeedMS: aboveZero.optional(),
    terrain: z.string().optional(),
    /** Mean roof height above ground. */
    roofHeightM: aboveZero.optional(),
    /** True where a hill, escarpment, lee zone or the coast raises the wind: an engineer's question. */
    exposed: z.boolean().optional(),
  }).default({}),
  snow: open({ groundKPa: z.number().min(0).max(50).optional() }).default({}),
  yearBuilt: z.int().min(1000).max(2200).optional(),
});

export const networkFactsSchema = open({
  name: z.string().optional(),
  /** Most the network lets out, as it says it: on each line, or in sum. */
  exportLimitVAPerLine: zeroOrMore.optional(),
  exportLimitVATotal: zeroOrMore.optional(),
  approvalNumber: z.string().optional(),
  approvalDate: civilDate.optional(),
  approvedVA: aboveZero.optional(),
  profile: z.string().optional(),
  meterNumber: z.string().optional(),
});

export const supplyFactsSchema = open({
  system: z.enum(['single-phase', 'split-phase', 'three-phase']),
  /** Line to neutral: 230, or 120 in a split-phase house. */
  nominalV: z.number().min(80).max(500),
  earthing: z.enum(['MEN', 'TN-C-S', 'TN-S', 'TT', 'US-grounded']),
  /** Service fuse, main breaker of the network's side, or main switch where that is what limits. */
  serviceA: aboveZero,
  /** Loop impedance line to earth at the board, measured with the supply only. */
  loopOhm: aboveZero.optional(),
  /** Where no measurement could be made: the network's declared greatest. */
  declaredLoopOhm: aboveZero.optional(),
  prospectiveA: aboveZero.optional(),
  measuredV: open({ L1: aboveZero.optional(), L2: aboveZero.optional(), L3: aboveZero.optional() }).default({}),
  /** Point of supply to the board. */
  mains: open({ lengthM: aboveZero.optional(), conductor: conductorSchema.optional() }).default({}),
  electrodeOhm: aboveZero.optional(),
  rotation: z.enum(['L1-L2-L3', 'L1-L3-L2']).optional(),
});

export const boardFactsSchema = open({
  name: z.string().default('board'),
  /** What the bars may carry. */
  busA: aboveZero.optional(),
  mainSwitchA: aboveZero.optional(),
  breakingKA: aboveZero.optional(),
  freeWays: countOrNone.optional(),
  /** Sum of all breakers in it but the main. */
  breakerSumA: zeroOrMore.optional(),
  /** Colours of the conductors of this board, as seen. */
  wiring: z.enum(['iec', 'au-nz', 'gb-older', 'us-120-240', 'us-120-208']).optional(),
  wiringMixed: z.boolean().default(false),
  backing: z.enum(['metal', 'plastic', 'timber', 'asbestos', 'unknown']).optional(),
  ambientC: z.number().min(-20).max(70).optional(),
  surgeDevice: z.boolean().optional(),
  residualType: z.enum(['AC', 'A', 'F', 'B']).optional(),
  electrode: z.boolean().optional(),
});

const edgeKind = z.enum(['eave', 'ridge', 'hip', 'valley', 'verge', 'wall']);

/**
 * A roof plane in its own slope coordinates: u metres to the right along the eave as seen from in front of it,
 * v metres up the slope from the eave. The ridge runs from `ridgeFromM` to `ridgeToM` in u at v = slope length.
 */
export const planeFactsSchema = open({
  name: z.string().min(1),
  facingDeg: z.number().min(0).max(360),
  pitchDeg: z.number().min(0).max(75),
  eaveLengthM: edgeM,
  slopeLengthM: edgeM,
  /** Plan width from eave to ridge, the second measure that has to agree with the slope length and pitch. */
  planWidthM: aboveZero.optional(),
  ridgeFromM: placeM,
  ridgeToM: placeM,
  /** Left end of the eave from the house's origin: east, north, and height above ground. */
  eaveLeft: open({ eastM: placeM, northM: placeM, heightM: zeroOrMore }),
  edges: open({ eave: edgeKind.default('eave'), ridge: edgeKind.default('ridge'), left: edgeKind, right: edgeKind }),
  covering: z.enum(['concrete-tile', 'clay-tile', 'slate', 'asphalt-shingle', 'metal-sheet']),
  fragile: z.boolean().optional(),
  asbestos: z.enum(['yes', 'no', 'unknown']).optional(),
  rafters: open({
    /** Middle of the first rafter from the left end of the eave. */
    firstMm: zeroOrMore.optional(),
    spacingMm: spacingMm.optional(),
    widthMm: aboveZero.optional(),
    depthMm: aboveZero.optional(),
  }).default({}),
  battenMm: aboveZero.optional(),
  /** Where feet hold: rafters run up the slope, battens or purlins along it. */
  atticC: z.number().min(0).max(90).optional(),
});

export const obstructionFactsSchema = open({
  planeId: z.string(),
  kind: z.enum(['vent', 'flue', 'skylight', 'chimney', 'aerial', 'hatch']),
  name: z.string().optional(),
  /** Middle of it, in the plane's own coordinates. */
  uM: placeM,
  vM: placeM,
  widthM: aboveZero,
  depthM: aboveZero,
  heightM: zeroOrMore,
  /** Kept free all round. */
  clearM: zeroOrMore,
});

export const circuitFactsSchema = open({
  name: z.string().min(1),
  /** The lines it stands on. */
  lines: z.array(lineSchema).min(1),
  /** 240 V between legs on a split-phase board. */
  lineToLine: z.boolean().default(false),
  runW: zeroOrMore,
  /** Mean over a night in which the house is asleep or awake as usual. */
  nightW: zeroOrMore.default(0),
  breakerA: aboveZero.optional(),
  wanted: z.enum(['must stay on', 'would be good', 'no']),
  residualDevice: z.boolean().optional(),
  /** Whose neutral it uses, where that was traced. */
  neutralTraced: z.boolean().optional(),
  motor: open({
    kind: z.enum(['pump', 'compressor', 'fan', 'inverter-driven']),
    voltage: aboveZero,
    /** Locked-rotor current from the plate. */
    lockedRotorA: aboveZero.optional(),
    codeLetter: z.string().length(1).optional(),
    horsepower: aboveZero.optional(),
    startS: aboveZero.optional(),
    softStarter: open({ timesFullLoad: aboveZero }).optional(),
    fullLoadA: aboveZero.optional(),
  }).optional(),
});

export const wallFactsSchema = open({
  name: z.string(),
  lengthMm: aboveZero,
  heightMm: aboveZero,
  place: z.enum(['outside', 'garage', 'utility room', 'shed', 'habitable room', 'bedroom', 'loft', 'under stairs']),
  /** What is behind it and what it is made of. */
  habitableBehind: z.boolean().optional(),
  combustible: z.boolean().optional(),
  vehicles: z.boolean().optional(),
  /** Middle of the day in the sun. */
  sun: z.boolean().optional(),
  items: byId(
    open({
      kind: z.enum([
        'window',
        'door',
        'vent',
        'gas meter',
        'water heater',
        'air conditioner',
        'switchboard',
        'appliance',
      ]),
      name: z.string(),
      leftMm: signed,
      bottomMm: zeroOrMore,
      widthMm: aboveZero,
      heightMm: aboveZero,
      /** Opens into a room people live or sleep in. */
      habitable: z.boolean().default(true),
    }),
  ).default({}),
});

/** What already stands at the place and carries current. */
export const existingFactsSchema = open({
  kind: z.enum(['solar', 'generator inlet', 'car charger', 'controlled load', 'second board']),
  name: z.string(),
  ratedA: zeroOrMore,
  lines: z.array(lineSchema).min(1),
  lengthM: aboveZero.optional(),
  conductor: conductorSchema.optional(),
  /** True where it stands on an element of the meter of its own: its use is counted apart from the house. */
  meterElement: z.boolean().optional(),
  /** True where a changeover keeps it from ever feeding together with the network. */
  changeover: z.boolean().optional(),
});

export const factsSchema = open({
  site: siteFactsSchema,
  network: networkFactsSchema.default({}),
  supply: supplyFactsSchema,
  board: boardFactsSchema,
  roof: open({
    planes: byId(planeFactsSchema),
    obstructions: byId(obstructionFactsSchema).default({}),
    storeys: count.optional(),
  }),
  loads: open({
    annualKwh: aboveZero.optional(),
    /** 24 shares of a mean day, by hour of the local clock; they sum to one. */
    dayShape: z.array(zeroOrMore).length(24).optional(),
    circuits: byId(circuitFactsSchema).default({}),
  }).default({ circuits: {} }),
  walls: byId(wallFactsSchema).default({}),
  existing: byId(existingFactsSchema).default({}),
  access: open({
    scaffoldNeeded: z.boolean().optional(),
    carryM: zeroOrMore.optional(),
    note: z.string().optional(),
  }).default({}),
  wishes: wishesFactsSchema.optional(),
  provenance: z.record(z.string(), provenanceSchema).default({}),
  surveyClosed: surveyClosedSchema.optional(),
});

export type LineName = z.infer<typeof lineSchema>;
export type SiteFacts = z.infer<typeof siteFactsSchema>;
export type NetworkFacts = z.infer<typeof networkFactsSchema>;
export type SupplyFacts = z.infer<typeof supplyFactsSchema>;
export type BoardFacts = z.infer<typeof boardFactsSchema>;
export type PlaneFacts = z.infer<typeof planeFactsSchema>;
export type ObstructionFacts = z.infer<typeof obstructionFactsSchema>;
export type CircuitFacts = z.infer<typeof circuitFactsSchema>;
export type WallFacts = z.infer<typeof wallFactsSchema>;
export type ExistingFacts = z.infer<typeof existingFactsSchema>;
export type Provenance = z.infer<typeof provenanceSchema>;
export type Facts = z.infer<typeof factsSchema>;
