import type { BatteryChoice, Choices, SupplyFacts } from '@eaveline/job';
import { type BreakerCurve, loopLimitOhm } from '@eaveline/physics';
import { type SheetOf, sheetOf, sheetsOfKind } from '../equipment.ts';
import type { RulePack } from '../rules/pack.ts';
import { sourceV } from '../supply.ts';
import { ohmPerMetre, sizeName } from '../trunks/ohmPerMetre.ts';
import type { Line, TrunkPlan } from '../trunks/types.ts';
import { given, type Working, worked } from '../working.ts';
import { circuitCapacity, type Loaded } from './circuitCapacity.ts';
import type { SourceCircuit } from './types.ts';

export interface CircuitContext {
  readonly supply: SupplyFacts;
  readonly equipment: Choices['equipment'];
  readonly pack: RulePack;
}

interface Run {
  readonly id: string;
  readonly kind: SourceCircuit['kind'];
  readonly of: string;
  readonly name: string;
  readonly lines: readonly Line[];
  readonly designA: number;
  readonly designWorking: Working;
  readonly breakerSheetId: string;
  readonly cableSheetId: string;
  readonly lengthM: number;
  readonly route: BatteryChoice['route'];
  /** Job path of the run: where its cable, length and route are chosen. */
  readonly at: string;
  /** What lies beyond the run, cold, line and earth together, Ω. */
  readonly beyondOhm: Working;
}

/** The circuit of a trunk: its home run, with the trunk itself beyond it for the fault loop. */
export function trunkCircuit(
  trunk: TrunkPlan,
  choice: Choices['trunks'][string],
  context: CircuitContext,
): SourceCircuit {
  const cable = sheetOf(context.equipment, trunk.cableSheetId, 'trunk-cable');
  const longestArmM = Math.max(0, ...trunk.drops.map((drop) => drop.fromFeedM));
  const perM = ohmPerMetre(cable.conductor, 20, 'trunk');
  return circuit(
    {
      id: `trunk:${trunk.id}`,
      kind: 'trunk',
      of: trunk.id,
      name: `Trunk ${trunk.name}`,
      lines: trunk.lines,
      designA: trunk.currentA,
      designWorking: trunk.currentWorking,
      breakerSheetId: choice.breakerSheet,
      cableSheetId: choice.homeRun.cableSheet,
      lengthM: choice.homeRun.lengthM,
      route: choice.homeRun.route,
      at: `choices.trunks.${trunk.id}.homeRun`,
      beyondOhm: worked(
        'Trunk to its far end, there and back',
        2 * perM.value * longestArmM,
        'Ω',
        '2 · r · L',
        'IEC 60228',
        [perM, { name: 'longest arm', value: longestArmM, unit: 'm', source: 'drop pitch and jumpers' }],
      ),
    },
    context,
  );
}

/** The circuit of a battery at its continuous rating. */
export function batteryCircuit(id: string, battery: BatteryChoice, context: CircuitContext): SourceCircuit {
  const sheet = sheetOf(context.equipment, battery.sheet, 'battery');
  const lineToLine = context.supply.system === 'split-phase' && battery.lines.length === 2;
  const volts = sourceV(context.supply.system, context.supply.nominalV, lineToLine ? 'line-line' : 'line-neutral');
  const designA = sheet.continuousVA / volts / (lineToLine ? 1 : battery.lines.length);
  return circuit(
    {
      id: `battery:${id}`,
      kind: 'battery',
      of: id,
      name: sheet.name,
      lines: battery.lines,
      designA,
      designWorking: worked(
        `${sheet.name} at its continuous rating`,
        designA,
        'A',
        lineToLine ? 'I = S ÷ U between its lines' : 'I = S ÷ lines ÷ U',
        'battery sheet',
        [
          given('continuous rating', sheet.continuousVA, 'VA', `choices.equipment.${battery.sheet}.continuousVA`),
          given('lines', battery.lines.length, '', `choices.batteries.${id}.lines`),
          { name: 'volts between its terminals', value: volts, unit: 'V', source: 'the supply' },
        ],
        { symbol: 'I_b' },
      ),
      breakerSheetId: battery.breakerSheet,
      cableSheetId: battery.cableSheet,
      lengthM: battery.lengthM,
      route: battery.route,
      at: `choices.batteries.${id}`,
      beyondOhm: { name: 'nothing beyond it', value: 0, unit: 'Ω', source: 'the job' },
    },
    context,
  );
}

function circuit(run: Run, context: CircuitContext): SourceCircuit {
  const { equipment } = context;
  const cable = sheetOf(equipment, run.cableSheetId, 'cable');
  const breaker = sheetOf(equipment, run.breakerSheetId, 'breaker');
  const loaded: Loaded = run.lines.length === 3 ? 3 : 2;
  const capacity = circuitCapacity(cable, run.route, loaded, run.at);
  const conductors = conductorsCold(run, cable);
  const loop = faultLoopOf(run, cable, breaker, conductors, context);
  return {
    id: run.id,
    kind: run.kind,
    of: run.of,
    name: run.name,
    lines: run.lines,
    designA: run.designA,
    designWorking: run.designWorking,
    breakerSheetId: run.breakerSheetId,
    breakerA: breaker.ratedA,
    cableSheetId: run.cableSheetId,
    lengthM: run.lengthM,
    capacity,
    sizes: sizesTried(run, cable, breaker.ratedA, loaded, equipment),
    ...(loop === undefined ? {} : { loop }),
    conductorsColdOhm: conductors,
    beyondColdOhm: run.beyondOhm,
    earthColdOhm: earthCold(run, cable),
    breakingKA: breaker.breakingKA,
  };
}

/** Every cable at hand with as many cores, thin to thick, and whether its capacity reaches the breaker. */
function sizesTried(
  run: Run,
  chosen: SheetOf<'cable'>,
  breakerA: number,
  loaded: Loaded,
  equipment: Choices['equipment'],
): SourceCircuit['sizes'] {
  return sheetsOfKind(equipment, 'cable')
    .filter(
      ({ sheet }) =>
        sheet.cores === chosen.cores && (sheet.conductor.awg === undefined) === (chosen.conductor.awg === undefined),
    )
    .map(({ id, sheet }) => ({ id, sheet, capacityA: circuitCapacity(sheet, run.route, loaded, run.at).capacityA }))
    .sort((a, b) => a.capacityA - b.capacityA)
    .map(({ id, sheet, capacityA }) => {
      const meets = capacityA >= Math.max(run.designA, breakerA);
      const why = meets
        ? `${sizeName(sheet.conductor)} carries ${capacityA.toFixed(1)} A where it runs.`
        : `${sizeName(sheet.conductor)} carries ${capacityA.toFixed(1)} A where it runs; the breaker lets ${breakerA} A through.`;
      return { cableSheetId: id, capacityA, meets, why };
    });
}

/** Conductors hot over cold: 1.20 for 70 °C PVC in a cable, 1.28 for 90 °C. BS 7671 Appendix 3 (from memory). */
const HOT_OVER_COLD = { PVC: 1.2, XLPE: 1.28 } as const;

function faultLoopOf(
  run: Run,
  cable: SheetOf<'cable'>,
  breaker: SheetOf<'breaker'>,
  own: Working,
  { supply, pack }: CircuitContext,
): SourceCircuit['loop'] {
  const outsideOhm = supply.loopOhm ?? supply.declaredLoopOhm;
  if (outsideOhm === undefined) return undefined;
  const outside = given(
    supply.loopOhm === undefined ? 'Loop of the supply, declared' : 'Loop of the supply, measured',
    outsideOhm,
    'Ω',
    supply.loopOhm === undefined ? 'facts.supply.declaredLoopOhm' : 'facts.supply.loopOhm',
    'survey',
  );
  const ownOhm = Number(own.value);
  const coldOhm = outsideOhm + ownOhm + Number(run.beyondOhm.value);
  const hot = HOT_OVER_COLD[cable.insulation];
  const ohm = outsideOhm + hot * (ownOhm + Number(run.beyondOhm.value));
  const limitOhm =
    pack.loop === undefined || breaker.curve === 'US'
      ? undefined
      : loopLimitOhm(pack.loop.standard, { curve: breaker.curve satisfies BreakerCurve, ratingA: breaker.ratedA });
  return {
    ohm,
    coldOhm,
    ...(limitOhm === undefined ? {} : { limitOhm }),
    working: worked(
      `Loop at the far end of ${run.name}`,
      ohm,
      'Ω',
      `Z_s = Z_e + ${hot.toFixed(2)} · (R₁ + R₂ + what lies beyond)`,
      'BS 7671 Appendix 3, hot over cold from memory',
      [outside, own, run.beyondOhm],
      { symbol: 'Z_s', decimals: 3 },
    ),
  };
}

/** Line and earth conductor of the run, cold. */
function conductorsCold(run: Run, cable: SheetOf<'cable'>): Working {
  const line = ohmPerMetre(cable.conductor, 20, 'line');
  const earth = ohmPerMetre(earthOf(cable), 20, 'earth');
  return worked(
    `${run.name}, line and earth`,
    (line.value + earth.value) * run.lengthM,
    'Ω',
    '(r₁ + r₂) · L',
    'IEC 60228 or NEC Chapter 9, at 20 °C',
    [line, earth, given('length, one way', run.lengthM, 'm', `${run.at}.lengthM`)],
    { symbol: 'R₁ + R₂', decimals: 3 },
  );
}

/** Earth conductor of the run, cold. */
function earthCold(run: Run, cable: SheetOf<'cable'>): Working {
  const earth = ohmPerMetre(earthOf(cable), 20, 'earth');
  return worked(
    `${run.name}, earth`,
    earth.value * run.lengthM,
    'Ω',
    'r₂ · L',
    'IEC 60228 or NEC Chapter 9, at 20 °C',
    [earth, given('length, one way', run.lengthM, 'm', `${run.at}.lengthM`)],
    { decimals: 3 },
  );
}

function earthOf(cable: SheetOf<'cable'>): SheetOf<'cable'>['conductor'] {
  if (cable.earthMm2 !== undefined) return { material: 'copper', areaMm2: cable.earthMm2, strandClass: 2 };
  if (cable.earthAwg !== undefined) return { material: 'copper', awg: cable.earthAwg, strandClass: 2 };
  return cable.conductor;
}
