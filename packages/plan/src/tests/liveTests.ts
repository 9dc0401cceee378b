import type { Choices, SupplyFacts } from '@eaveline/job';
import { prospectiveCurrentA } from '@eaveline/physics';
import type { BoardPlan, SourceCircuit } from '../board/types.ts';
import { sheetOf } from '../equipment.ts';
import type { RulePack } from '../rules/pack.ts';
import { linesOf } from '../supply.ts';
import { given, worked } from '../working.ts';
import { band, limitOf, predicted, type RowDraft } from './row.ts';

export interface LiveInput {
  readonly pack: RulePack;
  readonly supply: SupplyFacts;
  readonly equipment: Choices['equipment'];
  readonly board: BoardPlan;
}

/** What is measured with the supply on and the sun still off. */
export function liveTests(input: LiveInput): RowDraft[] {
  const { board, supply } = input;
  return [
    ...supplyVolts(input),
    ...(supply.system === 'three-phase' ? [rotation(supply)] : []),
    ...board.circuits.flatMap((circuit) => loopRow(circuit, input)),
    ...prospective(input),
    ...board.circuits.flatMap((circuit) => residual(circuit, input)),
    neutralToEarth(),
  ];
}

function supplyVolts({ supply, pack }: LiveInput): RowDraft[] {
  const [low, high] = pack.supplyBand.value;
  return linesOf(supply.system).map((line) => {
    const surveyed = supply.measuredV[line];
    const at = `facts.supply.measuredV.${line}`;
    return {
      id: `supply:${line}`,
      name: 'Supply voltage',
      point: `${line} to neutral at the board`,
      instrument: 'true r.m.s. meter',
      conditions: [
        'Same hour as the survey where that can be.',
        `At least ${(supply.nominalV * (1 + low)).toFixed(0)} V as well.`,
      ],
      ...(surveyed === undefined
        ? {
            wanted: `Inside ${(supply.nominalV * (1 + low)).toFixed(0)} to ${(supply.nominalV * (1 + high)).toFixed(0)} V.`,
          }
        : { predicted: predicted(given(`${line}, surveyed`, surveyed, 'V', at, 'survey'), 'V', band(surveyed, 0.02)) }),
      limit: limitOf({ ...pack.supplyBand, value: 0 }, 'V', 'at most', supply.nominalV * (1 + high)),
      suspects: ['High with the sun off: the street. Log a week, then the network.'],
    };
  });
}

function rotation(supply: SupplyFacts): RowDraft {
  return {
    id: 'rotation',
    name: 'Phase rotation',
    point: 'board',
    instrument: 'rotation meter',
    conditions: ['Before and after.'],
    wanted: supply.rotation ?? 'As surveyed. The survey has no rotation: read it before anything is moved.',
    suspects: ['Two lines swapped.'],
  };
}

function loopRow(circuit: SourceCircuit, { pack }: LiveInput): RowDraft[] {
  const { loop } = circuit;
  if (loop === undefined) return [];
  const share = pack.tests.coldLoopShare;
  const working = worked(
    `Loop at the far end of ${circuit.name}, cold`,
    loop.coldOhm,
    'Ω',
    'Z_e + R₁ + R₂ + what lies beyond, at 20 °C',
    'IEC 60364-6, measured cold',
    loop.working.inputs ?? [],
    { symbol: 'Z_s', decimals: 2 },
  );
  return [
    {
      id: `loop:${circuit.id}`,
      name: 'Fault loop',
      point: `far end of ${circuit.name}`,
      instrument: 'loop tester, no-trip where a residual device stands',
      conditions: ['Supply only, no source running.'],
      predicted: predicted(working, 'Ω', band(loop.coldOhm, 0, 0.1)),
      ...(loop.limitOhm === undefined ? {} : { limit: limitOf(share, 'Ω', 'at most', share.value * loop.limitOhm) }),
      suspects: ['Loose joint.', 'Thinner earth than drawn.', 'Disconnection then rests on a residual device.'],
    },
  ];
}

function prospective({ board, supply }: LiveInput): RowDraft[] {
  if (supply.loopOhm === undefined) return [];
  const least = Math.min(...board.circuits.map(({ breakingKA }) => breakingKA));
  const value = prospectiveCurrentA(supply.nominalV, supply.loopOhm) / 1000;
  const working = worked(
    'Prospective current, line to earth',
    value,
    'kA',
    'U ÷ Z_e',
    'IEC 60364-6',
    [
      given('nominal', supply.nominalV, 'V', 'facts.supply.nominalV'),
      given('loop', supply.loopOhm, 'Ω', 'facts.supply.loopOhm', 'survey'),
    ],
    { symbol: 'I_pf', decimals: 2 },
  );
  return [
    {
      id: 'prospective',
      name: 'Prospective current',
      point: 'board',
      instrument: 'loop tester',
      conditions: ['Line to neutral and line to earth; the larger counts. Three-phase: about double.'],
      predicted: predicted(working, 'kA', band(value, 0.25)),
      ...(Number.isFinite(least)
        ? {
            limit: {
              value: least,
              unit: 'kA',
              sense: 'at most' as const,
              clause: 'breaking capacity of the weakest breaker',
              seen: 'equipment sheet',
            },
          }
        : {}),
      suspects: ['Above the breakers: back-up fuse or another board.'],
    },
  ];
}

function residual(circuit: SourceCircuit, { equipment, pack }: LiveInput): RowDraft[] {
  const breaker = sheetOf(equipment, circuit.breakerSheetId, 'breaker');
  if (breaker.residualMA === undefined) return [];
  return [
    {
      id: `residual:${circuit.id}`,
      name: 'Residual device, half, once and button',
      point: circuit.name,
      instrument: `residual-device tester, type ${breaker.residualType ?? 'of the device'}, both half-waves`,
      conditions: ['Write each time.'],
      wanted: `${breaker.residualMA} mA: no trip at half, a trip at once its rating.`,
      limit: limitOf(pack.tests.residualMs, 'ms', 'at most'),
      suspects: ['Standing leakage.', 'Device fed the wrong way round.', 'Replace it.'],
    },
  ];
}

function neutralToEarth(): RowDraft {
  return {
    id: 'neutral-earth',
    name: 'Neutral to earth',
    point: 'board',
    instrument: 'voltmeter',
    conditions: ['Usual load on.'],
    wanted: 'Under 2 V. Above 5 V, look at the neutral joint before going on.',
    suspects: ['Neutral joint loose. Neutral first on, last off.'],
  };
}
