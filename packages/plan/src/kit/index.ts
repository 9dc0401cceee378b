import type { Job } from '@eaveline/job';
import { EXPANSION_GAP_MM } from '../array/railRuns.ts';
import { sheetOf } from '../equipment.ts';
import type { Stage } from '../stage.ts';
import { type Working, worked } from '../working.ts';
import { arrayLines } from './arrayLines.ts';
import { batteryLines, boardLines, cableLines } from './circuitLines.ts';
import { cutRails } from './cutRails.ts';
import type { KitInput, KitView } from './kitInput.ts';
import { part } from './kitLine.ts';
import { labelLines, labelsOf } from './labelLines.ts';
import { mountingLines } from './mountingLines.ts';
import { LEAST_PIECE_MM, type SplitRails, STAGGER_MM, splitRails } from './splitRails.ts';
import { trunkLines } from './trunkLines.ts';
import type { KitPlan } from './types.ts';

/** Everything that has to be in the van, counted by rule, and the cut list of the rails. */
export const kitStage: Stage<'kit', 'array' | 'trunks' | 'board', KitView> = {
  name: 'kit',
  before: ['array', 'trunks', 'board'],
  view: ({ facts, choices }: Job): KitView => ({
    system: facts.supply.system,
    board: {
      ...(facts.board.surgeDevice === undefined ? {} : { surgeDevice: facts.board.surgeDevice }),
      ...(facts.board.electrode === undefined ? {} : { electrode: facts.board.electrode }),
    },
    circuits: facts.loads.circuits,
    units: choices.units,
    trunks: choices.trunks,
    batteries: choices.batteries,
    ...(choices.backup && { backup: choices.backup }),
    ...(choices.mounting && { mounting: choices.mounting }),
    equipment: choices.equipment,
    parts: choices.parts,
    spares: choices.spares,
    labels: choices.labels,
    rules: choices.rules,
  }),

  run(view, { array, trunks, board }): KitPlan {
    const input: KitInput = { view, array, trunks, board };
    const { split, stockMm } = splitAll(input);
    const { cuts, cutting } = cutRails(split.pieces, stockMm);
    const labels = labelsOf(input);
    return {
      lines: [
        ...arrayLines(input),
        ...mountingLines(input, split, cutting),
        ...trunkLines(input),
        ...cableLines(input),
        ...boardLines(input),
        ...batteryLines(input),
        ...labelLines(input, labels),
      ],
      cuts,
      cutting,
      splices: split.splices,
      breaks: split.breaks,
      labels,
      workings: cutting.bars === 0 ? [] : [wasteWorking(cutting, stockMm)],
      leavesOut: leavesOut(input, split),
    };
  },
};

const NONE: SplitRails = { pieces: [], splices: [], breaks: [], tooLong: [] };

const railSheetOf = ({ view }: KitInput) =>
  view.mounting === undefined ? undefined : sheetOf(view.equipment, view.mounting.railSheet, 'rail');

function splitAll(input: KitInput): { readonly split: SplitRails; readonly stockMm: number } {
  const sheet = railSheetOf(input);
  if (sheet === undefined) return { split: NONE, stockMm: 0 };
  return { split: splitRails(input.array.rails, sheet), stockMm: sheet.stockMm };
}

function wasteWorking({ wasteShare, bars, lowerBound, method }: KitPlan['cutting'], stockMm: number): Working {
  return worked('Rail cut to waste', wasteShare, '', '1 − pieces ÷ (bars · stock)', method, [
    part('bars', bars),
    part('no fewer than', lowerBound),
    part('stock', stockMm, 'mm', 'equipment sheet'),
  ]);
}

function leavesOut(input: KitInput, { splices, breaks, tooLong }: SplitRails): string[] {
  const { view, array } = input;
  const sheet = railSheetOf(input);
  const marked = splices.filter(({ clear }) => !clear).length;
  const nominal = array.rails.filter(({ onRafters }) => !onRafters).map(({ name }) => name);
  return [
    'Conduit, glands, tray, flashing, sealant and screws for boxes are not counted.',
    'Earth conductor from rail to rail, and tails between board, changeover and meter, are not measured.',
    'Scaffold, anchors, edge protection, ladders and test gear are not in the kit.',
    'An extension of a trunk comes with its own joints.',
    'Labels count in sets: one for every place named.',
    'Isolators and roof boxes are counted. Their ratings are not matched to the circuits.',
    `Pieces of rail are at least ${LEAST_PIECE_MM} mm, and neighbouring splices ${STAGGER_MM} mm apart: common practice, no source. They are not chosen for what wastes least.`,
    ...(breaks.length === 0
      ? []
      : [
          `At an expansion break the rail has a gap of ${EXPANSION_GAP_MM} mm and two end clamps stand for the mid clamp: the row has to be that much longer there. The layout does not show it yet.`,
        ]),
    ...(marked === 0
      ? []
      : [`${marked} splices stand near the middle of a span or beside another: the feet leave no better place.`]),
    ...(nominal.length === 0
      ? []
      : [`Rafters are not known under ${nominal.join(', ')}: their fixings and splices go by nominal feet.`]),
    ...(sheet !== undefined && sheet.longestRunMm === undefined
      ? [`The sheet of ${sheet.name} gives no longest run: its rails are counted without expansion breaks.`]
      : []),
    ...tooLong.map((name) => `Rail ${name} is longer than its sheet allows and has no gap to break in.`),
    ...(view.board.surgeDevice === undefined
      ? ['Whether the board has a surge device is not known: none is counted.']
      : []),
    ...(view.mounting === undefined ? ['No rails and fixings are chosen: none are counted.'] : []),
  ];
}
