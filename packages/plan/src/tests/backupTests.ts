import type { Choices, SupplyFacts } from '@eaveline/job';
import type { BackupPlan, MotorStart } from '../backup/types.ts';
import { sheetOf } from '../equipment.ts';
import type { RulePack } from '../rules/pack.ts';
import { given, worked } from '../working.ts';
import { band, limitOf, predicted, type RowDraft } from './row.ts';

export interface BackupInput {
  readonly pack: RulePack;
  readonly supply: SupplyFacts;
  readonly equipment: Choices['equipment'];
  readonly batteries: Choices['batteries'];
  readonly choice: Choices['backup'];
  readonly backup: BackupPlan;
}

const AT_THE_BOARD = 'House live with the main open. One person at the board, phones on.';

/** What is tried with the battery on and the grid open. Empty where there is no battery. */
export function backupTests(input: BackupInput): RowDraft[] {
  return [
    ...Object.entries(input.batteries).map(([id, battery]) => fullPower(id, battery.sheet, input)),
    ...island(input),
  ];
}

function fullPower(id: string, sheetId: string, { equipment }: BackupInput): RowDraft {
  const sheet = sheetOf(equipment, sheetId, 'battery');
  const working = given(
    `${sheet.name}, continuous`,
    sheet.continuousVA,
    'VA',
    `choices.equipment.${sheetId}.continuousVA`,
    'equipment sheet',
  );
  return {
    id: `battery-power:${id}`,
    name: 'Charge and discharge at full',
    point: sheet.name,
    instrument: 'clamp and gateway',
    conditions: ['Write which way the sign goes.'],
    predicted: predicted(working, 'VA', band(sheet.continuousVA, 0.05)),
    suspects: ['Current transformer on another line.', 'A limit is set.'],
  };
}

function island(input: BackupInput): RowDraft[] {
  const { choice, equipment, backup, pack, supply } = input;
  if (choice === undefined || !backup.present) return [];
  const changeover = sheetOf(equipment, choice.changeoverSheet, 'changeover');
  const moved = backup.circuits.filter((circuit) => circuit.moved);
  return [
    {
      id: 'transfer',
      name: 'Grid main opened, light load',
      point: 'backed-up side',
      instrument: 'meter with a recorder',
      conditions: [`${supply.nominalV} V within 2 % after it.`],
      wanted: 'The backed-up circuits come back.',
      limit: {
        value: changeover.transferS,
        unit: 's',
        sense: 'at most',
        clause: `${changeover.name} sheet`,
        seen: 'equipment sheet',
      },
      suspects: ['Wiring of the changeover.', 'Neutral-earth relay.'],
      caution: AT_THE_BOARD,
      hold: 'H8',
    },
    {
      id: 'neutral-earth-island',
      name: 'Neutral to earth in island',
      point: 'backed-up board',
      instrument: 'voltmeter',
      conditions: [AT_THE_BOARD],
      wanted: `Under 2 V. ${pack.backup.neutral.value}.`,
      suspects: ['Stop. The neutral is not earthed: residual devices are blind.'],
    },
    ...moved
      .filter(({ id }) => choice.circuits[id]?.residualDevice !== false)
      .map(({ id, name }) => residualInIsland(id, name, pack)),
    ...backup.starts.map((start) => startRow(start, input)),
    {
      id: 'rejection',
      name: 'Solar in island, a load dropped',
      point: 'backed-up side, battery at 95 %',
      instrument: 'meter with a recorder',
      conditions: ['Drop about 2 kW.'],
      wanted: 'Frequency rises, solar falls back, nothing trips.',
      suspects: ['Too much solar on the backed-up side.', 'Profile of the units.'],
    },
    {
      id: 'reserve',
      name: 'Reserve and restart',
      point: 'battery',
      instrument: 'gateway',
      conditions: [],
      wanted: `Stops at ${(100 * backup.reserve).toFixed(0)} %. Starts again with the sun.`,
      suspects: ['Reserve not set.', 'No start from dark: see its sheet.'],
    },
    {
      id: 'grid-returns',
      name: 'Grid returns',
      point: 'changeover',
      instrument: 'stopwatch',
      conditions: [],
      wanted: 'Waits its time, comes together, lights stay on or blink as its sheet says.',
      limit: limitOf(pack.tests.reconnectS, 's', 'at least'),
      suspects: ['Profile.', 'Contactor.'],
    },
  ];
}

function residualInIsland(id: string, name: string, pack: RulePack): RowDraft {
  return {
    id: `residual-island:${id}`,
    name: 'Residual device in island',
    point: name,
    instrument: 'residual-device tester',
    conditions: [AT_THE_BOARD],
    wanted: 'Trips as on the grid.',
    limit: limitOf(pack.tests.residualMs, 'ms', 'at most'),
    suspects: ['Neutral-earth bond missing.'],
  };
}

/** The start of a motor on the battery: peak current as the plate predicts it, against what the battery gives. */
function startRow(start: MotorStart, { supply }: BackupInput): RowDraft {
  // between the two legs of a split-phase board there is twice the volts, so half the amperes
  const volts = supply.system === 'split-phase' && start.lines.length === 2 ? 2 * supply.nominalV : supply.nominalV;
  const peak = start.withRestVA;
  const value = peak === undefined ? undefined : peak / volts;
  return {
    id: `start:${start.circuitId}`,
    name: 'Motor start in island',
    point: start.name,
    instrument: 'clamp that holds the peak',
    conditions: [AT_THE_BOARD, 'Everything else on that is meant to be on.'],
    ...(value === undefined
      ? { wanted: 'The plate gives no starting current. Try it and write the peak.' }
      : {
          predicted: predicted(
            worked(
              'Peak with the rest running',
              value,
              'A',
              'S ÷ U',
              'locked rotor from the plate, good to 15 %',
              [start.working],
              { decimals: 1 },
            ),
            'A',
            band(value, 0.2),
          ),
        }),
    limit: {
      value: start.availableVA / volts,
      unit: 'A',
      sense: 'at most',
      clause: 'short-time rating of the battery',
      seen: 'equipment sheet',
    },
    suspects: ['Soft starter.', 'Shed something first.', 'Leave it off the backup.'],
  };
}
