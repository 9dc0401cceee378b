import { apartM } from '../roof/planeGeometry.ts';
import type { ModuleChoice, RowChoice, UnitChoice } from '../schema/choices.ts';
import type { LineName, PlaneFacts } from '../schema/facts.ts';
import type { ModuleSheet } from '../schema/sheets.ts';
import { moduleCentre } from './layRows.ts';

/** Slack added to the straight way between two rows: common practice, no source. */
const SLACK_M = 0.3;

/** A module's place, written `north-1:5`: row id, then place. */
export type PlaceName = `${string}:${number}`;

export interface TrunkLaying {
  readonly trunkId: string;
  readonly unitSheet: string;
  readonly dropPitchM: number;
  readonly planes: Readonly<Record<string, PlaneFacts>>;
  readonly rows: Readonly<Record<string, RowChoice>>;
  readonly module: ModuleSheet;
  /** Modules in the order of the drops, those of one unit together. */
  readonly along: readonly PlaceName[];
  /** Modules to a unit. */
  readonly perUnit?: number;
  /** Lines of the units in turn, where single-phase units stand on a three-phase trunk. */
  readonly lineOf?: (drop: number) => LineName;
}

export interface LaidTrunk {
  readonly units: Record<string, UnitChoice>;
  readonly modules: Record<string, ModuleChoice>;
  readonly jumpers: Record<string, { afterDrop: number; lengthM: number; why: string }>;
}

/**
 * Units, modules and jumpers of one trunk, in the order its drops are laid.
 *
 * Where the trunk leaves one row for another, the way between the two units is the straight distance plus 0.30 m;
 * in a row it is the straight distance. Rounded up to 50 mm; the jumper is what that way needs beyond one drop pitch.
 */
export function layTrunk(laying: TrunkLaying): LaidTrunk {
  const { along, perUnit = 1, trunkId, unitSheet } = laying;
  const laid: LaidTrunk = { units: {}, modules: {}, jumpers: {} };
  for (let first = 0, drop = 1; first < along.length; first += perUnit, drop++) {
    const group = along.slice(first, first + perUnit);
    const unitId = `u-${moduleId(group[0] as PlaceName)}`;
    const line = laying.lineOf?.(drop);
    laid.units[unitId] = { sheet: unitSheet, trunkId, drop, ...(line && { line }) };
    group.forEach((name, k) => {
      const [rowId, place] = splitPlace(name);
      laid.modules[moduleId(name)] = { rowId, place, unitId, input: k + 1 };
    });
    const jumper = first === 0 ? undefined : jumperBefore(laying, first, drop);
    if (jumper) laid.jumpers[`after-${drop - 1}`] = jumper;
  }
  return laid;
}

function jumperBefore(laying: TrunkLaying, first: number, drop: number) {
  const { along, perUnit = 1, dropPitchM } = laying;
  const from = splitPlace(along[first - perUnit] as PlaceName);
  const to = splitPlace(along[first] as PlaceName);
  const slackM = from[0] === to[0] ? 0 : SLACK_M;
  const straightM = apartM(centre(laying, from), centre(laying, to));
  if (slackM === 0 && straightM <= dropPitchM) return undefined;
  const wayM = Math.ceil((straightM + slackM) * 20 - 1e-9) / 20;
  const lengthM = Math.round((wayM - dropPitchM) * 100) / 100;
  return lengthM > 0
    ? { afterDrop: drop - 1, lengthM, why: slackM === 0 ? `along ${to[0]}` : `from ${from[0]} to ${to[0]}` }
    : undefined;
}

function centre({ rows, planes, module }: TrunkLaying, [rowId, place]: readonly [string, number]) {
  const row = rows[rowId];
  const plane = row && planes[row.planeId];
  if (!row || !plane) throw new Error(`demo row ${rowId} has no plane`);
  return moduleCentre(row, module, place, plane);
}

function splitPlace(name: PlaceName): [rowId: string, place: number] {
  const at = name.lastIndexOf(':');
  return [name.slice(0, at), Number(name.slice(at + 1))];
}

/** `north-1:5` is the module `north-1-5`. */
function moduleId(name: PlaceName): string {
  return name.replace(':', '-');
}

/** Places of one row from one to another, either way round. */
export function places(rowId: string, from: number, to: number): PlaceName[] {
  const step = from <= to ? 1 : -1;
  const all: PlaceName[] = [];
  for (let place = from; place !== to + step; place += step) all.push(`${rowId}:${place}`);
  return all;
}
