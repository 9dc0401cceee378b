import { linesOf } from '../supply.ts';
import { given } from '../working.ts';
import type { GeneratingInput } from './generatingInput.ts';
import { limitOf, predicted, type RowDraft } from './row.ts';
import { trunkCurrentRow, trunkRiseRow } from './trunkReadings.ts';

/** What is measured with the units running. */
export function generatingTests(input: GeneratingInput): RowDraft[] {
  return [
    unitCount(input),
    ...input.trunks.trunks.flatMap((trunk) => [trunkCurrentRow(trunk, input), trunkRiseRow(trunk, input)]),
    ...gridRows(input),
    ...currentTransformers(input),
    balance(),
    ...exportRow(input),
    {
      id: 'thermal',
      name: 'Thermal scan',
      point: 'every joint of board, roof box and battery',
      instrument: 'thermal camera',
      conditions: ['Half an hour above 70 % of full power.'],
      wanted: 'No joint 15 K over its like. Stop at 40 K.',
      suspects: ['Torque again, all of that kind.'],
    },
  ];
}

function unitCount({ units, pack }: GeneratingInput): RowDraft {
  const n = Object.keys(units).length;
  return {
    id: 'units-reporting',
    name: 'Units reporting',
    point: 'gateway',
    instrument: 'gateway',
    conditions: [`Within ${2 * pack.tests.reconnectS.value} s of power-up.`],
    predicted: predicted({ name: 'Units in the job', value: n, unit: '', source: 'the job' }, '', [n, n]),
    suspects: ['Drop not clicked.', 'D.c. plug not home.', 'No signal.', 'Dead unit.'],
  };
}

function gridRows({ pack }: GeneratingInput): RowDraft[] {
  return [
    {
      id: 'profile',
      name: 'Grid profile read back',
      point: 'gateway',
      instrument: 'gateway',
      conditions: ['Before anything exports, and again after any firmware.'],
      wanted: 'The profile the network letter names, letter for letter.',
      suspects: ['Set it, read it again, keep a screenshot.'],
      hold: 'H7',
    },
    {
      id: 'loss-of-mains',
      name: 'Loss of mains',
      point: 'solar main switch, then grid main',
      instrument: 'stopwatch',
      conditions: ['At full sun where that can be.'],
      wanted: 'Every unit stops.',
      limit: limitOf(pack.tests.lossOfMainsS, 's', 'at most'),
      suspects: ['Wrong profile. Do not leave it live.'],
    },
    {
      id: 'reconnect',
      name: 'Reconnection',
      point: 'gateway',
      instrument: 'stopwatch',
      conditions: ['Grid back after the test above.'],
      wanted: 'Not sooner than the limit.',
      limit: limitOf(pack.tests.reconnectS, 's', 'at least'),
      suspects: ['Wrong profile.'],
    },
  ];
}

/** A known load on one line at a time: the import of that line, and of no other, has to move by it. */
function currentTransformers({ supply }: GeneratingInput): RowDraft[] {
  return linesOf(supply.system).map((line) => ({
    id: `ct:${line}`,
    name: 'Current transformer, sign and line',
    point: line,
    instrument: 'a kettle of measured power, about 2 kW',
    conditions: ['Solar and battery off.'],
    wanted: `Import on ${line} grows by the kettle within 5 %, on no other line.`,
    suspects: ['Turned round: import falls.', 'On another line: falls by half.', 'Not closed, or two cables in it.'],
  }));
}

function balance(): RowDraft {
  return {
    id: 'balance',
    name: 'Energy balance',
    point: 'gateway',
    instrument: 'gateway',
    conditions: ['Everything running.'],
    wanted: 'Grid + solar + battery − load within 3 % or 50 W of nothing.',
    suspects: ['Scale of a current transformer.', 'A load ahead of it.'],
  };
}

function exportRow({ exportLimit }: GeneratingInput): RowDraft[] {
  if (exportLimit === undefined) return [];
  const { va, perLine, at } = exportLimit;
  return [
    {
      id: 'export-limit',
      name: 'Export limit holds',
      point: perLine ? 'each line at the meter' : 'meter, all lines',
      instrument: 'meter and a second clamp',
      conditions: ['Full sun, loads off. Then unplug the meter: it has to fall back.'],
      predicted: predicted(given('limit', va, 'VA', at), 'VA', [0, va]),
      limit: { value: va, unit: 'VA', sense: 'at most', clause: 'network letter', seen: 'network letter' },
      suspects: ['Meter not heard.', 'Limit not set.', 'Current transformer turned round.'],
    },
  ];
}
