import type { Choices, SupplyFacts, TrunkChoice } from '@eaveline/job';
import { addPhasors, type Phasors } from '@eaveline/physics';
import type { ArrayPlan } from '../array/types.ts';
import { type SheetOf, sheetOf, sheetsOfKind } from '../equipment.ts';
import { sourceV } from '../supply.ts';
import { given, type Working, worked } from '../working.ts';
import { dropReach } from './dropReach.ts';
import type { LaidDrop } from './layDrops.ts';
import { ohmPerMetre, SERVICE_C } from './ohmPerMetre.ts';
import { type RiseRoad, riseAlong } from './riseAlong.ts';
import { riseWorking } from './riseWorking.ts';
import type { Drop, TrunkPlan, TrunkSpan } from './types.ts';

export interface TrunkContext {
  readonly supply: SupplyFacts;
  readonly equipment: Choices['equipment'];
  readonly modules: Choices['modules'];
  readonly array: ArrayPlan;
  /** Modules of a unit. */
  readonly modulesOf: (unitId: string) => ArrayPlan['modules'];
  /** What all trunks and the solar already there push through the mains, and what the batteries add. */
  readonly mainsCurrent: Phasors;
  /** The solar already there, as surveyed. */
  readonly there: readonly Working[];
  readonly batteryCurrent?: Phasors;
}

/** Everything about one trunk. */
export function workTrunk(
  id: string,
  trunk: TrunkChoice,
  drops: readonly LaidDrop[],
  context: TrunkContext,
): TrunkPlan {
  const { supply, equipment } = context;
  const cable = sheetOf(equipment, trunk.cableSheet, 'trunk-cable');
  const trunkOhm = ohmPerMetre(cable.conductor, SERVICE_C.trunk, 'trunk');
  const homeRunOhm = ohmPerMetre(
    sheetOf(equipment, trunk.homeRun.cableSheet, 'cable').conductor,
    SERVICE_C.homeRun,
    'home run',
  );
  const { lengthM: mainsM, conductor: mainsConductor } = supply.mains;
  const mainsOhm = mainsConductor === undefined ? undefined : ohmPerMetre(mainsConductor, SERVICE_C.mains, 'mains');
  const mainsKnown = mainsM !== undefined && mainsOhm !== undefined;

  const road = (mainsCurrent: Phasors, lineOhmPerM = homeRunOhm.value): RiseRoad => ({
    system: supply.system,
    nominalV: supply.nominalV,
    trunkOhmPerM: trunkOhm.value,
    homeRun: { lengthM: trunk.homeRun.lengthM, lineOhmPerM },
    ...(mainsKnown ? { mains: { lengthM: mainsM, lineOhmPerM: mainsOhm.value } } : {}),
    mainsCurrent,
  });
  const here = road(context.mainsCurrent);
  const rise = riseAlong(drops, trunk.feedDrop, here);
  const first = drops.find((drop) => drop.sheet !== undefined)?.sheet;
  const unitA = first === undefined ? 0 : unitCurrentA(first, supply);
  const { there } = context;
  const ohms = { trunkOhm, homeRunOhm, ...(mainsOhm ? { mainsOhm } : {}) };
  const workingInput = { trunkId: id, trunk, drops, unitA, ...ohms, there };

  const withBattery =
    context.batteryCurrent === undefined ? undefined : addPhasors(context.mainsCurrent, context.batteryCurrent);
  const riseB = withBattery === undefined ? undefined : riseAlong(drops, trunk.feedDrop, road(withBattery));
  const terminalV = first === undefined ? supply.nominalV : sourceV(supply.system, supply.nominalV, first.connection);

  return {
    id,
    name: trunk.name,
    lines: trunk.lines,
    cableSheetId: trunk.cableSheet,
    drops: drawDrops(trunk, drops, rise.aboveBoardV, rise.aboveSupplyV, context),
    spans: rise.spans.map((span): TrunkSpan => {
      const lengthM = Math.abs((drops[span.toDrop - 1]?.atM ?? 0) - (drops[span.fromDrop - 1]?.atM ?? 0));
      return { ...span, lengthM, jumper: lengthM > cable.dropPitchMm / 1000 + 1e-9 };
    }),
    feedDrop: trunk.feedDrop,
    unitCount: drops.filter((drop) => drop.unitId !== undefined).length,
    unitA,
    currentA: rise.currentA,
    currentWorking: currentWorking(trunk.name, rise.currentA, drops, supply),
    ratedVA: drops.reduce((sum, drop) => sum + (drop.sheet?.ratedVA ?? 0), 0),
    ...cableLaid(trunk, drops, cable, context),
    caps: caps(trunk, drops),
    homeRun: {
      cableSheetId: trunk.homeRun.cableSheet,
      lengthM: trunk.homeRun.lengthM,
      ohmPerM: homeRunOhm.value,
      riseV: rise.homeRunV,
    },
    rise: {
      trunkV: rise.trunkV,
      homeRunV: rise.homeRunV,
      mainsV: rise.mainsV,
      totalV: rise.totalV,
      share: rise.totalV / terminalV,
    },
    terminalV,
    mainsKnown,
    farDrop: rise.far + 1,
    riseWorking: riseWorking({ ...workingInput, rise, road: here }),
    ...(riseB === undefined || withBattery === undefined
      ? {}
      : {
          riseWithBattery: {
            totalV: riseB.totalV,
            working: riseWorking({
              ...workingInput,
              rise: riseB,
              road: road(withBattery),
              also: 'with every battery giving too',
            }) satisfies Working,
          },
        }),
    feedOptions: drops.map(({ number }) => ({ drop: number, totalV: riseAlong(drops, number, here).totalV })),
    sizeOptions: homeRunSizes(trunk, equipment).map(({ id: cableSheetId, sheet }) => ({
      cableSheetId,
      totalV: riseAlong(
        drops,
        trunk.feedDrop,
        road(context.mainsCurrent, ohmPerMetre(sheet.conductor, SERVICE_C.homeRun, '').value),
      ).totalV,
    })),
  };
}

/** Rated current of one unit on one of its lines, A. */
function unitCurrentA(sheet: SheetOf<'unit'>, supply: SupplyFacts): number {
  const lines = sheet.connection === 'three-phase' ? 3 : 1;
  return sheet.ratedVA / lines / sourceV(supply.system, supply.nominalV, sheet.connection);
}

/** How the current of the busiest line comes about: each kind of unit on the trunk, how many, and what one gives. */
function currentWorking(name: string, currentA: number, drops: readonly LaidDrop[], supply: SupplyFacts): Working {
  const kinds = new Map<string, SheetOf<'unit'>[]>();
  for (const { sheet } of drops) if (sheet) kinds.set(sheet.name, [...(kinds.get(sheet.name) ?? []), sheet]);
  return worked(
    `Trunk ${name} at full export, its busiest line`,
    currentA,
    'A',
    'sum of its units on that line',
    "Kirchhoff's laws; each unit at its rating and nominal voltage",
    [...kinds].flatMap(([kind, [sheet, ...more]]) =>
      sheet === undefined
        ? []
        : [
            worked(
              `one ${kind} on a line of its own`,
              unitCurrentA(sheet, supply),
              'A',
              'I = S ÷ lines ÷ U',
              'unit sheet',
              [
                { name: 'rating', value: sheet.ratedVA, unit: 'VA', source: 'unit sheet' },
                given('nominal', supply.nominalV, 'V', 'facts.supply.nominalV'),
              ],
            ),
            { name: `${kind} on the trunk`, value: 1 + more.length, unit: '', source: 'the job' },
          ],
    ),
    { symbol: 'I_b' },
  );
}

/** Home-run cables at hand with as many cores as the one chosen, from thin to thick. */
function homeRunSizes(trunk: TrunkChoice, equipment: Choices['equipment']) {
  const { cores } = sheetOf(equipment, trunk.homeRun.cableSheet, 'cable');
  return sheetsOfKind(equipment, 'cable')
    .filter(({ sheet }) => sheet.cores === cores)
    .sort((a, b) => ohmOf(b.sheet) - ohmOf(a.sheet));
}

const ohmOf = (sheet: SheetOf<'cable'>) => ohmPerMetre(sheet.conductor, SERVICE_C.homeRun, '').value;

/** Ends to close: an end that the home run enters needs none. Unused drops are capped one by one. */
function caps(trunk: TrunkChoice, drops: readonly LaidDrop[]): TrunkPlan['caps'] {
  const idle = drops.filter((drop) => drop.unitId === undefined).length;
  const atAnEnd = trunk.feedDrop === 1 || trunk.feedDrop === drops.length;
  return { end: drops.length === 1 ? 0 : atAnEnd ? 1 : 2, drop: idle + trunk.spareDrops, feedJoints: 1 };
}

function cableLaid(
  trunk: TrunkChoice,
  drops: readonly LaidDrop[],
  cable: SheetOf<'trunk-cable'>,
  context: TrunkContext,
): Pick<TrunkPlan, 'cableM' | 'slackM'> {
  const jumperM = Object.values(trunk.jumpers).reduce((sum, jumper) => sum + jumper.lengthM, 0);
  const { apartMm, spanMm } = distances(drops, context);
  const slackMm = spanMm.reduce((sum, span, k) => sum + Math.max(0, span - (apartMm[k] ?? span)), 0);
  return {
    // the trunk is made up in whole pitches, one for each drop
    cableM: ((drops.length + trunk.spareDrops) * cable.dropPitchMm) / 1000 + jumperM,
    slackM: slackMm / 1000,
  };
}

/** Straight distance between the places of neighbouring units and the cable between their drops, mm. */
function distances(drops: readonly LaidDrop[], { modulesOf }: TrunkContext) {
  const place = new Map<string, readonly [number, number, number]>();
  for (const drop of drops) {
    const mine = drop.unitId === undefined ? [] : modulesOf(drop.unitId);
    if (drop.unitId === undefined || mine.length === 0) continue;
    const mean = (axis: 0 | 1 | 2) => mine.reduce((sum, module) => sum + module.centre3d[axis], 0) / mine.length;
    place.set(drop.unitId, [mean(0), mean(1), mean(2)]);
  }
  const used = drops.filter((drop) => drop.unitId !== undefined && place.has(drop.unitId));
  const apartMm: number[] = [];
  const spanMm: number[] = [];
  for (let k = 1; k < used.length; k++) {
    const a = place.get(used[k - 1]?.unitId ?? '');
    const b = place.get(used[k]?.unitId ?? '');
    if (a === undefined || b === undefined) continue;
    apartMm.push(1000 * Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]));
    spanMm.push(1000 * ((used[k]?.atM ?? 0) - (used[k - 1]?.atM ?? 0)));
  }
  return { used, apartMm, spanMm };
}

function drawDrops(
  trunk: TrunkChoice,
  drops: readonly LaidDrop[],
  aboveBoardV: readonly number[],
  aboveSupplyV: readonly number[],
  context: TrunkContext,
): Drop[] {
  const { used, apartMm, spanMm } = distances(drops, context);
  const needMm = dropReach(apartMm, spanMm);
  const reachOf = new Map(used.map((drop, k) => [drop.number, needMm[k] ?? 0]));
  const joint = drops[trunk.feedDrop - 1]?.atM ?? 0;
  return drops.map((drop, k): Drop => {
    const modules = drop.unitId === undefined ? [] : context.modulesOf(drop.unitId);
    const need = reachOf.get(drop.number);
    const along = alongRail(modules, context.array);
    return {
      name: `${trunk.name}${drop.number}`,
      number: drop.number,
      ...(drop.unitId === undefined ? {} : { unitId: drop.unitId }),
      moduleNames: modules.map((module) => module.name),
      ...(drop.line === undefined ? {} : { line: drop.line }),
      fromFeedM: Math.abs(drop.atM - joint),
      aboveBoardV: aboveBoardV[k] ?? 0,
      aboveSupplyV: aboveSupplyV[k] ?? 0,
      ...(along === undefined ? {} : { alongRailMm: along }),
      ...(need === undefined || drop.sheet === undefined
        ? {}
        : { reach: { needMm: need, haveMm: drop.sheet.dropReachMm } }),
    };
  });
}

/** Middle of the unit's modules from the left end of their lower rail, mm. */
function alongRail(modules: ArrayPlan['modules'], array: ArrayPlan): number | undefined {
  const first = modules[0];
  const rail = array.rails.find((candidate) => candidate.rowId === first?.rowId);
  if (first === undefined || rail === undefined) return undefined;
  const meanU = modules.reduce((sum, module) => sum + module.centre[0], 0) / modules.length;
  return 1000 * (meanU - rail.fromU);
}
