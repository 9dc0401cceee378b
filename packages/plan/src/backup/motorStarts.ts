import type { CircuitFacts } from '@eaveline/job';
import { lockedRotor, motorStart } from '@eaveline/physics';
import { given, type Working, worked } from '../working.ts';
import type { LineRating } from './lineRatings.ts';
import { roomFor } from './roomFor.ts';
import { startMends } from './startMends.ts';
import type { BackedCircuit, MotorStart } from './types.ts';

export interface StartInput {
  readonly facts: Readonly<Record<string, CircuitFacts>>;
  /** Circuits that run in island. */
  readonly running: readonly BackedCircuit[];
  readonly ratings: readonly LineRating[];
}

type Motor = NonNullable<CircuitFacts['motor']>;
/** Demand of a motor at rest. */
interface Demand {
  readonly startVA: number;
  readonly working: Working;
  readonly softened: boolean;
}

/** The start of every motor with everything else running, hardest first. */
export function motorStarts(input: StartInput): MotorStart[] {
  const starts = input.running.flatMap((circuit) => {
    const motor = input.facts[circuit.id]?.motor;
    return motor === undefined ? [] : [startOf(circuit, motor, input)];
  });
  return starts.sort((a, b) => hardness(b) - hardness(a));
}

const K_BANDS = 'From 0.8 it starts, below 0.4 it will not, between it has to be tried.';

const hardness = ({ startVA, withRestVA, availableVA }: MotorStart) =>
  startVA === undefined ? -1 : (withRestVA ?? 0) / Math.max(availableVA, 1e-9);

function startOf(circuit: BackedCircuit, motor: Motor, { running, ratings }: StartInput): MotorStart {
  const { availableVA, restVA, line } = roomFor(circuit, running, ratings);
  const leftVA = Math.max(0, availableVA - restVA);
  const { id: circuitId, name, lines } = circuit;
  const available = availableWorking(circuit, line, ratings, availableVA);
  const rest = worked('the rest', restVA, 'VA', 'everything else that runs in island', 'facts.loads.circuits', []);
  const common = { circuitId, name, lines, availableVA, leftVA, availableWorking: available };
  const left = leftWorking(circuit, line, available, rest, leftVA);
  const at = `facts.loads.circuits.${circuitId}.motor`;
  if (motor.kind === 'inverter-driven') {
    const working = worked(
      `${name}, start`,
      'no start peak',
      '',
      'an inverter-driven machine runs up within its running power',
      'common practice, no source',
      [given('kind', motor.kind, '', `${at}.kind`), left],
    );
    return { ...common, verdict: 'no start peak', working, mends: [] };
  }
  const demand = demandOf(circuit, motor, at);
  if (demand === undefined) {
    const working = worked(
      `${name}, start`,
      'plate missing',
      '',
      'locked-rotor current, or code letter and horsepower, from the plate',
      'running watts say nothing about a start',
      [left],
    );
    return { ...common, verdict: 'plate missing', working, mends: [] };
  }
  const { startVA } = demand;
  // as shares of what there is: volts stand on both sides of k, and a rest that takes all leaves nothing
  const mostVA = Math.max(availableVA, 1e-9);
  const judged = motorStart({
    lockedRotorA: startVA / mostVA,
    sourceLimitA: 1,
    baseLoadA: Math.min(1, restVA / mostVA),
  });
  // a softened start has less torque: enough for a pump, and for others nobody can say from a plate
  const doubtful = demand.softened && motor.kind !== 'pump' && judged.verdict === 'starts';
  const verdict = doubtful ? 'ask' : judged.verdict;
  const withRestVA = startVA + restVA;
  const withRestWorking = worked(
    `${name} starting, the rest running`,
    withRestVA,
    'VA',
    'start + the rest',
    'plates and the circuits that run',
    [demand.working, rest],
    { decimals: 0, note: `It is left k = ${judged.k.toFixed(2)} of what it draws. ${K_BANDS}` },
  );
  const start = { ...common, startVA, withRestVA, withRestWorking, k: judged.k };
  const working = worked(
    `${name}, current left over locked-rotor current`,
    judged.k,
    '',
    `k = what is left ÷ start. ${K_BANDS}`,
    'simulation of random motors on a source of limited current; no published rule',
    [demand.working, left],
    { symbol: 'k', decimals: 2 },
  );
  const mends =
    verdict === 'starts' && withRestVA <= availableVA
      ? []
      : startMends(circuit, startVA, demand.softened, running, ratings);
  return { ...start, verdict, working, mends };
}

function demandOf(circuit: BackedCircuit, motor: Motor, at: string): Demand | undefined {
  const { lockedRotorA, codeLetter, horsepower, softStarter, fullLoadA, voltage } = motor;
  const phases = circuit.lines.length === 3 ? 3 : 1;
  const volts = given('volts of the plate', voltage, 'V', `${at}.voltage`, 'plate');
  const root = phases === 3 ? Math.sqrt(3) : 1;
  if (softStarter !== undefined && fullLoadA !== undefined) {
    const startVA = root * voltage * fullLoadA * softStarter.timesFullLoad;
    const working = worked(
      `${circuit.name}, start behind its soft starter`,
      startVA,
      'VA',
      phases === 3 ? 'S = √3 · U · s · I' : 'S = U · s · I',
      'plate and soft starter',
      [
        volts,
        given('full-load current', fullLoadA, 'A', `${at}.fullLoadA`, 'plate'),
        given('soft starter, times full load', softStarter.timesFullLoad, '', `${at}.softStarter.timesFullLoad`),
      ],
    );
    return { startVA, working, softened: true };
  }
  const byLetter = CODE_LETTERS.test(codeLetter ?? '') && horsepower !== undefined;
  if (lockedRotorA === undefined && !byLetter) return undefined;
  const rotor = lockedRotor({
    ratedV: voltage,
    phases,
    ...(lockedRotorA === undefined ? {} : { lockedRotorA }),
    ...(codeLetter === undefined ? {} : { codeLetter }),
    ...(horsepower === undefined ? {} : { horsepower }),
  });
  const byPlate = rotor.by === 'nameplate';
  const working = worked(
    `${circuit.name}, rotor at rest`,
    1000 * rotor.startKva,
    'VA',
    byPlate ? (phases === 3 ? 'S = √3 · U · I' : 'S = U · I') : 'upper end of the code letter, kVA a horsepower',
    byPlate ? 'plate' : 'NEC 430.7(B)',
    byPlate
      ? [volts, given('locked-rotor current', rotor.lockedRotorA, 'A', `${at}.lockedRotorA`, 'plate')]
      : [
          given('code letter', codeLetter ?? '', '', `${at}.codeLetter`, 'plate'),
          given('horsepower', horsepower ?? 0, 'hp', `${at}.horsepower`, 'plate'),
        ],
    softStarter === undefined
      ? {}
      : { note: 'Its soft starter does not count: the full-load current it multiplies is missing.' },
  );
  return { startVA: 1000 * rotor.startKva, working, softened: false };
}

/** Letters of the table; I, O and Q were left out of it so that nobody misreads them. V has no upper end. */
const CODE_LETTERS = /^[A-HJ-NPR-U]$/i;

/** What the batteries give it for seconds: all of its lines by the scarcest of them. */
function availableWorking(
  { lines }: BackedCircuit,
  line: string,
  ratings: readonly LineRating[],
  availableVA: number,
): Working {
  const batteries = ratings.find((rating) => rating.line === line)?.batteries ?? [];
  return worked(
    'short-time rating',
    availableVA,
    'VA',
    lines.length === 1
      ? 'sum of the batteries on that line'
      : `${lines.length} · sum of the batteries on its scarcest line, ${line}`,
    'equipment sheets',
    batteries.map(({ sheet, sheetId }) =>
      given(sheet.name, sheet.peakVA, 'VA', `choices.equipment.${sheetId}.peakVA`, 'equipment sheet'),
    ),
  );
}

function leftWorking(
  { lines }: BackedCircuit,
  line: string,
  available: Working,
  rest: Working,
  leftVA: number,
): Working {
  return worked(
    `Left for it on ${lines.join(' and ')}`,
    leftVA,
    'VA',
    lines.length === 1 ? 'short-time rating − the rest' : `short-time rating − the rest, by its scarcest line, ${line}`,
    'equipment sheets and the circuits that run',
    [available, rest],
  );
}
