import type { Choices, SupplyFacts } from '@eaveline/job';
import type { ArrayPlan } from '../array/types.ts';
import type { BoardPlan, SourceCircuit } from '../board/types.ts';
import { sheetOf } from '../equipment.ts';
import type { RulePack } from '../rules/pack.ts';
import type { TrunkPlan, TrunksPlan } from '../trunks/types.ts';
import { given, worked } from '../working.ts';
import { band, limitOf, predicted, type RowDraft } from './row.ts';

export interface DeadInput {
  readonly pack: RulePack;
  readonly supply: SupplyFacts;
  readonly equipment: Choices['equipment'];
  readonly array: ArrayPlan;
  readonly trunks: TrunksPlan;
  readonly board: BoardPlan;
  readonly units: Choices['units'];
}

/** Ohms a bonded joint adds. Common practice, no source. */
const JOINT_OHM = 0.02;
/** A low-ohm meter's own doubt with its leads nulled. Common practice, no source. */
const METER_OHM = 0.05;
const DEAD = 'Isolate every source, lock, prove dead: battery, solar, main.';

/** What is measured before anything is live: earth, conductors, insulation, caps, polarity, torque, module voltage. */
export function deadTests(input: DeadInput): RowDraft[] {
  const { trunks, board } = input;
  const circuitOf = (trunk: TrunkPlan) => board.circuits.find(({ id }) => id === `trunk:${trunk.id}`);
  return [
    ...railBonds(input),
    ...trunks.trunks.flatMap((trunk) => {
      const circuit = circuitOf(trunk);
      return circuit === undefined
        ? []
        : [conductors(trunk, circuit), insulation(trunk, input), caps(trunk), polarity(trunk)];
    }),
    ...board.circuits.filter(({ kind }) => kind === 'battery').map((circuit) => batteryEarth(circuit, input)),
    torque(input),
    ...moduleVoltage(input),
    ...electrode(input),
  ];
}

/** One row a rail: the earth conductor of the trunk it carries, and the bonds on the way. */
function railBonds({ array, trunks, board, units, pack }: DeadInput): RowDraft[] {
  return array.rails.flatMap((rail) => {
    const unitIds = array.modules.filter(({ rowId }) => rowId === rail.rowId).map(({ unitId }) => unitId);
    const trunkId = unitIds.map((id) => units[id]?.trunkId).find((id) => id !== undefined);
    const circuit = board.circuits.find(({ id }) => id === `trunk:${trunkId}`);
    const trunk = trunks.trunks.find(({ id }) => id === trunkId);
    if (circuit === undefined || trunk === undefined) return [];
    const bonds = 2;
    const working = worked(
      `Earth bar to ${rail.name}`,
      Number(circuit.earthColdOhm.value) + bonds * JOINT_OHM,
      'Ω',
      `earth of the home run + ${bonds} joints of ${JOINT_OHM} Ω`,
      'IEC 60228 or NEC Chapter 9; joints: common practice, no source',
      [circuit.earthColdOhm, { name: 'joint', value: JOINT_OHM, unit: 'Ω', source: 'common practice, no source' }],
      { decimals: 2 },
    );
    return [
      {
        id: `bond:${rail.id}`,
        name: 'Earth continuity',
        point: `board to ${rail.name}, far end`,
        instrument: 'low-ohm meter, 200 mA or more, leads nulled',
        conditions: [DEAD],
        predicted: predicted(working, 'Ω', band(Number(working.value), 0, METER_OHM)),
        limit: limitOf(pack.tests.railBondOhm, 'Ω', 'at most'),
        suspects: [
          'Bond jumper left out at a splice or an expansion gap.',
          'Anodising under a bonding washer.',
          'Lug not crimped.',
        ],
      },
    ];
  });
}

function conductors(trunk: TrunkPlan, circuit: SourceCircuit): RowDraft {
  const own = circuit.conductorsColdOhm;
  const beyond = circuit.beyondColdOhm;
  const value = Number(own.value) + Number(beyond.value);
  const working = worked(
    `Trunk ${trunk.name}, line and earth linked at the far end`,
    value,
    'Ω',
    'home run + trunk, cold',
    'IEC 60228 or NEC Chapter 9, at 20 °C',
    [own, beyond],
    { decimals: 3 },
  );
  return {
    id: `r1r2:${trunk.id}`,
    name: 'Line and earth, linked',
    point: `board, trunk ${trunk.name} linked at drop ${farthest(trunk)}`,
    instrument: 'low-ohm meter, leads nulled',
    conditions: [DEAD, 'Cable cold. Write its temperature: copper gains 0.4 % a degree.'],
    predicted: predicted(working, 'Ω', band(value, 0.1, METER_OHM)),
    suspects: ['Length not as drawn.', 'Loose joint in the roof box.', 'Another size of cable.'],
  };
}

function farthest(trunk: TrunkPlan): string {
  return [...trunk.drops].sort((a, b) => b.fromFeedM - a.fromFeedM)[0]?.name ?? '';
}

function insulation(trunk: TrunkPlan, { pack }: DeadInput): RowDraft {
  const { insulationMOhm, insulationTestV } = pack.tests;
  return {
    id: `ir:${trunk.id}`,
    name: 'Insulation',
    point: `trunk ${trunk.name}: lines and neutral together to earth`,
    instrument: `insulation tester, ${insulationTestV.value} V`,
    conditions: [DEAD, 'Units unplugged, or 250 V where they stay on. Surge device out.'],
    wanted: 'More than 200 MΩ on new cable. Under 20 MΩ, look for the reason.',
    limit: limitOf(insulationMOhm, 'MΩ', 'at least'),
    suspects: ['End cap or drop cap missing.', 'Water in a plug.', 'Cut sheath. Unplug by halves.'],
  };
}

function caps(trunk: TrunkPlan): RowDraft {
  const total = trunk.caps.end + trunk.caps.drop;
  const working = worked(`Caps on trunk ${trunk.name}`, total, '', 'open ends + unused drops', 'the drawing', [
    { name: 'end caps', value: trunk.caps.end, unit: '', source: 'open ends of the trunk' },
    { name: 'drop caps', value: trunk.caps.drop, unit: '', source: 'unused drops' },
  ]);
  return {
    id: `caps:${trunk.id}`,
    name: 'Caps counted',
    point: `trunk ${trunk.name}`,
    instrument: 'eye, torch, photograph of each',
    conditions: ['Before modules cover it.'],
    predicted: predicted(working, '', [total, total]),
    suspects: ['A cap was left off. Fit it, photograph it.'],
    hold: 'H5',
  };
}

function polarity(trunk: TrunkPlan): RowDraft {
  return {
    id: `polarity:${trunk.id}`,
    name: 'Polarity and right circuit',
    point: `trunk ${trunk.name}, ${trunk.lines.join(' ')}`,
    instrument: 'continuity',
    conditions: [DEAD],
    wanted: `Lands on ${trunk.lines.join(', ')} as drawn, neutral and earth in their own bars.`,
    suspects: ['Cores crossed in the roof box.', 'Wrong way in the board.'],
  };
}

function batteryEarth(circuit: SourceCircuit, { pack }: DeadInput): RowDraft {
  const working = circuit.earthColdOhm;
  return {
    id: `bond:${circuit.id}`,
    name: 'Earth continuity',
    point: `board to the case of ${circuit.name}`,
    instrument: 'low-ohm meter, 200 mA or more, leads nulled',
    conditions: [DEAD],
    predicted: predicted(working, 'Ω', band(Number(working.value), 0, METER_OHM)),
    limit: limitOf(pack.tests.mainEarthOhm, 'Ω', 'at most'),
    suspects: ['Paint under the lug.', 'Earth not landed.'],
  };
}

function torque({ equipment, board }: DeadInput): RowDraft {
  const terminals = board.circuits.map(({ breakerSheetId, name }) => {
    const { terminalTorqueNm } = sheetOf(equipment, breakerSheetId, 'breaker');
    return `${name} ${terminalTorqueNm === undefined ? 'by its sheet' : `${terminalTorqueNm} N·m`}`;
  });
  const clamps = Object.values(equipment).flatMap((sheet) =>
    sheet.kind === 'clamp' ? [`${sheet.place} clamps ${sheet.torqueNm} N·m`] : [],
  );
  return {
    id: 'torque',
    name: 'Torque',
    point: 'every power terminal, one clamp in ten',
    instrument: 'torque tool, in calibration',
    conditions: ['Witness mark after each.'],
    wanted: [...terminals, ...new Set(clamps)].join('; '),
    suspects: ['One loose: do all of that kind again.'],
  };
}

/** Open-circuit voltage of a module before it is plugged, at 25 °C and full sun, with the way to the day at hand. */
function moduleVoltage({ array, equipment }: DeadInput): RowDraft[] {
  return [...new Set(array.modules.map(({ sheetId }) => sheetId))].map((id) => {
    const sheet = sheetOf(equipment, id, 'module');
    const at = `choices.equipment.${id}`;
    const cellC = 45;
    const value = sheet.vocV * (1 + (sheet.vocPctPerK / 100) * (cellC - 25));
    const working = worked(
      `${sheet.name}, open circuit at ${cellC} °C`,
      value,
      'V',
      'V_oc · (1 + β · (T − 25))',
      'IEC 60891, linear in temperature',
      [
        given('open circuit at 25 °C', sheet.vocV, 'V', `${at}.vocV`, 'equipment sheet'),
        given('β', sheet.vocPctPerK, '%/K', `${at}.vocPctPerK`, 'equipment sheet'),
        { name: 'cell', symbol: 'T', value: cellC, unit: '°C', source: 'a sunny day; write the one of the day' },
      ],
      { decimals: 1 },
    );
    return {
      id: `voc:${id}`,
      name: 'Module voltage before plugging',
      point: `sample of ${sheet.name}, and any in doubt`,
      instrument: 'd.c. meter, thermometer, irradiance',
      conditions: [
        `Change by ${((sheet.vocV * sheet.vocPctPerK) / 100).toFixed(3)} V a degree.`,
        'About 2.7 % lower for each halving of the sun.',
      ],
      predicted: predicted(working, 'V', band(value, 0.03)),
      suspects: ['One third low: a bypass section or shade.', 'Reject it and write its serial.'],
      caution: 'Live in light. Never open a plug under load.',
    };
  });
}

function electrode({ supply, pack }: DeadInput): RowDraft[] {
  if (supply.earthing !== 'TT' && pack.backup.neutral.value !== 'bond relay and own electrode') return [];
  return [
    {
      id: 'electrode',
      name: 'Earth electrode',
      point: 'electrode, disconnected',
      instrument: 'earth tester, three stakes or clamp',
      conditions: [DEAD],
      wanted: 'Read it and write the soil.',
      limit: {
        value: 200,
        unit: 'Ω',
        sense: 'at most',
        clause: 'BS 7671 411.5.3, for a stable rod',
        seen: 'memory',
      },
      suspects: ['Deeper rod, or a second one.'],
    },
  ];
}
