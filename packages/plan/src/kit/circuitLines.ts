import { sheetOf } from '../equipment.ts';
import { linesOf } from '../supply.ts';
import { given } from '../working.ts';
import { countBy } from './arrayLines.ts';
import type { KitInput } from './kitInput.ts';
import { kitLine, PRACTICE, part, partFor } from './kitLine.ts';
import type { KitLine } from './types.ts';

/** Cut-offs and bends beyond the measured way: common practice, no source. */
const CABLE_WASTE = 0.1;

/** Home-run and battery cables, by sheet. */
export function cableLines({ view, board }: KitInput): KitLine[] {
  return [...countBy(board.circuits.map(({ cableSheetId }) => cableSheetId)).keys()].flatMap((sheetId) => {
    const own = board.circuits.filter((circuit) => circuit.cableSheetId === sheetId);
    const lengthM = own.reduce((sum, circuit) => sum + circuit.lengthM, 0);
    return kitLine({
      id: `cable:${sheetId}`,
      sheetId,
      name: sheetOf(view.equipment, sheetId, 'cable').name,
      group: 'cables',
      count: Math.ceil(lengthM * (1 + CABLE_WASTE) - 1e-9),
      unit: 'm',
      formula: 'sum of the ways + 10 %, rounded up',
      source: PRACTICE,
      inputs: own.map(({ name, lengthM: way, kind, of }) =>
        given(
          kind === 'trunk' ? `${name}, home run` : name,
          way,
          'm',
          kind === 'trunk' ? `choices.trunks.${of}.homeRun.lengthM` : `choices.batteries.${of}.lengthM`,
        ),
      ),
    });
  });
}

/** Breakers, isolators, surge device, meters and current transformers. */
export function boardLines({ view, board, trunks }: KitInput): KitLine[] {
  const breakers = [...countBy(board.circuits.map(({ breakerSheetId }) => breakerSheetId))];
  const sources = board.circuits.length;
  const units = Object.keys(view.units).length;
  const lines = linesOf(view.system);
  return [
    ...breakers.flatMap(([sheetId, count]) =>
      kitLine({
        id: `breaker:${sheetId}`,
        sheetId,
        name: sheetOf(view.equipment, sheetId, 'breaker').name,
        group: 'board',
        count,
        formula: 'one a source circuit',
        inputs: board.circuits.filter((c) => c.breakerSheetId === sheetId).map(({ name }) => part(name, 1)),
      }),
    ),
    ...residualLines(view),
    ...kitLine({
      id: 'isolator',
      ...partFor('isolator', view),
      group: 'board',
      count: sources,
      formula: 'one a trunk and one a battery',
      source: PRACTICE,
      inputs: [part('trunks', trunks.trunks.length), part('batteries', sources - trunks.trunks.length)],
    }),
    ...kitLine({
      id: 'surge-device',
      ...partFor('surge-device', view),
      group: 'board',
      count: view.board.surgeDevice === false ? 1 : 0,
      formula: 'one where the board has none',
      inputs: [given('surge device in the board', 'no', '', 'facts.board.surgeDevice', 'survey')],
    }),
    ...kitLine({
      id: 'meter',
      ...partFor('meter', view),
      group: 'board',
      count: units > 0 ? 1 : 0,
      formula: 'one for the solar',
      source: PRACTICE,
    }),
    ...kitLine({
      id: 'gateway',
      ...partFor('gateway', view),
      group: 'board',
      count: units > 0 ? 1 : 0,
      formula: 'one for all units',
      source: PRACTICE,
    }),
    ...kitLine({
      id: 'current-transformer',
      ...partFor('current-transformer', view),
      group: 'board',
      count: sources > 0 ? lines.length : 0,
      formula: 'one on each line of the supply',
      source: PRACTICE,
      inputs: lines.map((line) => part(line, 1)),
    }),
  ];
}

/** Residual devices for moved circuits that get one and have none today, by the rating of the circuit. */
function residualLines({ backup, circuits }: KitInput['view']): KitLine[] {
  const wanted = Object.entries(backup?.circuits ?? {}).filter(
    ([id, { moved, residualDevice }]) => moved && residualDevice === true && circuits[id]?.residualDevice !== true,
  );
  const name = (id: string) => {
    const ratedA = circuits[id]?.breakerA;
    return ratedA === undefined ? 'residual breaker, rating of its circuit' : `residual breaker, ${ratedA} A`;
  };
  return [...countBy(wanted.map(([id]) => name(id)))].flatMap(([what, count]) =>
    kitLine({
      id: `residual:${what}`,
      name: what,
      group: 'board',
      count,
      formula: 'one for each moved circuit that has none',
      inputs: wanted
        .filter(([id]) => name(id) === what)
        .map(([id]) => given(circuits[id]?.name ?? id, 1, '', `choices.backup.circuits.${id}.residualDevice`)),
    }),
  );
}

/** Batteries, changeover, and what goes about them. */
export function batteryLines({ view }: KitInput): KitLine[] {
  const { batteries, backup, equipment } = view;
  const all = Object.entries(batteries);
  const guard = (key: 'barrier' | 'bollard', name: string): KitLine[] => {
    const own = all.filter(([, battery]) => battery[key]);
    return kitLine({
      id: key,
      name,
      group: 'battery',
      count: own.length,
      formula: 'one for each battery that has one',
      inputs: own.map(([id]) => given(id, 1, '', `choices.batteries.${id}.${key}`)),
    });
  };
  return [
    ...[...countBy(all.map(([, { sheet }]) => sheet))].flatMap(([sheetId, count]) =>
      kitLine({
        id: `battery:${sheetId}`,
        sheetId,
        name: sheetOf(equipment, sheetId, 'battery').name,
        group: 'battery',
        count,
        formula: 'placed',
      }),
    ),
    ...(backup
      ? kitLine({
          id: 'changeover',
          sheetId: backup.changeoverSheet,
          name: sheetOf(equipment, backup.changeoverSheet, 'changeover').name,
          group: 'battery',
          count: 1,
          formula: 'one',
        })
      : []),
    ...kitLine({
      id: 'electrode',
      name: 'earth electrode with clamp and box',
      group: 'battery',
      count: backup?.electrode === true && view.board.electrode !== true ? 1 : 0,
      formula: 'one where the backup asks for its own and none stands there',
      inputs: [given('own electrode', 'yes', '', 'choices.backup.electrode')],
    }),
    ...guard('barrier', 'non-combustible board behind a battery'),
    ...guard('bollard', 'vehicle guard'),
  ];
}
