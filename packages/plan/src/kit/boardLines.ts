import type { BoardFacts, Choices, SupplyFacts } from '@eaveline/job';
import type { BoardPlan } from '../board/types.ts';
import { sheetOf } from '../equipment.ts';
import { linesOf } from '../supply.ts';
import { counted, type Equipment, part, tallied, tallyOf } from './line.ts';
import type { KitLine } from './types.ts';

/** Cable by size with one metre in ten to spare, and a clip for every 0.3 m. Common practice, no source. */
const CABLE_OVER = 1.1;
const CLIP_EVERY_M = 0.3;

/** Home runs and battery cables, by size. */
export function cableLines(board: BoardPlan, equipment: Equipment): KitLine[] {
  const ids = tallyOf(board.circuits.map(({ cableSheetId }) => cableSheetId));
  const totalM = board.circuits.reduce((sum, { lengthM }) => sum + lengthM, 0);
  const clips = Math.ceil(totalM / CLIP_EVERY_M - 1e-9);
  return [
    ...ids.map(([id]) => {
      const circuits = board.circuits.filter(({ cableSheetId }) => cableSheetId === id);
      const lengthM = circuits.reduce((sum, circuit) => sum + circuit.lengthM, 0);
      return counted(
        `cable:${id}`,
        'cables',
        sheetOf(equipment, id, 'cable').name,
        Math.ceil(lengthM * CABLE_OVER - 1e-9),
        'm',
        'sum of the runs and one in ten more',
        circuits.map((circuit) =>
          tallied(
            circuit.name,
            circuit.lengthM,
            'm',
            'the job',
            `choices.${circuit.kind === 'trunk' ? `trunks.${circuit.of}.homeRun` : `batteries.${circuit.of}`}.lengthM`,
          ),
        ),
        id,
        'the job; 10 % more is common practice, no source',
      );
    }),
    ...part(
      equipment,
      'cable-clip',
      'cables',
      clips,
      `one every ${CLIP_EVERY_M} m`,
      [tallied('runs', totalM, 'm')],
      'common practice, no source',
    ),
  ];
}

/** Breakers and what else goes into or beside the board. */
export function boardLines(
  board: BoardPlan,
  facts: { readonly board: BoardFacts; readonly supply: SupplyFacts },
  equipment: Equipment,
): KitLine[] {
  const lines = linesOf(facts.supply.system).length;
  const trunks = board.circuits.filter(({ kind }) => kind === 'trunk').length;
  return [
    ...tallyOf(board.circuits.map(({ breakerSheetId }) => breakerSheetId)).map(([id, n]) =>
      counted(
        `breaker:${id}`,
        'board',
        sheetOf(equipment, id, 'breaker').name,
        n,
        'pieces',
        'one a source circuit',
        [tallied('circuits', n)],
        id,
      ),
    ),
    ...part(
      equipment,
      'isolator',
      'board',
      trunks > 0 ? 1 : 0,
      'one for the solar supply',
      [tallied('trunks', trunks)],
      'common practice, no source',
    ),
    ...part(
      equipment,
      'surge-device',
      'board',
      facts.board.surgeDevice === true ? 0 : 1,
      'one where the board has none',
      [
        tallied(
          'in the board',
          facts.board.surgeDevice === undefined ? 'not looked at' : facts.board.surgeDevice ? 'yes' : 'no',
          '',
          'survey',
          'facts.board.surgeDevice',
        ),
      ],
    ),
    ...part(equipment, 'meter', 'board', 1, 'one for the job', [], 'common practice, no source'),
    ...part(equipment, 'gateway', 'board', 1, 'one for the job', [], 'common practice, no source'),
    ...part(equipment, 'current-transformer', 'board', lines, 'one a line of the supply', [
      tallied('lines', lines, '', 'facts.supply.system'),
    ]),
  ];
}

/** Batteries and the changeover. */
export function batteryLines(choices: Pick<Choices, 'batteries' | 'backup'>, equipment: Equipment): KitLine[] {
  const batteries = tallyOf(Object.values(choices.batteries).map(({ sheet }) => sheet)).map(([id, n]) =>
    counted(
      `battery:${id}`,
      'battery',
      sheetOf(equipment, id, 'battery').name,
      n,
      'pieces',
      'as chosen',
      [tallied('chosen', n)],
      id,
    ),
  );
  const { backup } = choices;
  if (backup === undefined) return batteries;
  const sheet = sheetOf(equipment, backup.changeoverSheet, 'changeover');
  return [
    ...batteries,
    counted('changeover', 'battery', sheet.name, 1, 'pieces', 'as chosen', [], backup.changeoverSheet),
  ];
}
