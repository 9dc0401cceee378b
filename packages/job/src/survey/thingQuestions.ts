import type { CircuitFacts, ExistingFacts, WallFacts } from '../schema/facts.ts';
import { answers, type Question } from './question.ts';

const { number, yesNo } = answers;

/** A wall that could take a battery. */
export const wallQuestions: readonly Question<WallFacts>[] = [
  { at: 'name', ask: 'Name of the wall', answer: answers.text, because: 'findings name it', must: true },
  {
    at: 'place',
    ask: 'Where it is',
    answer: answers.pick(
      'outside',
      'garage',
      'utility room',
      'shed',
      'habitable room',
      'bedroom',
      'loft',
      'under stairs',
    ),
    because: 'some places take no battery',
    must: true,
  },
  {
    at: 'lengthMm',
    ask: 'Length',
    answer: number('mm'),
    with: 'tape',
    because: 'the battery stands on it',
    must: true,
  },
  {
    at: 'heightMm',
    ask: 'Height',
    answer: number('mm'),
    with: 'tape',
    because: 'the battery stands on it',
    must: true,
  },
  {
    at: 'habitableBehind',
    ask: 'A room people live or sleep in behind it',
    how: 'Walk round and look.',
    answer: yesNo(),
    because: 'a barrier may be wanted',
  },
  {
    at: 'combustible',
    ask: 'Does it burn?',
    how: 'Timber cladding, foam and old panel do.',
    answer: yesNo('yes', 'no: brick, block, concrete'),
    because: 'a board behind the battery may be wanted',
  },
  { at: 'vehicles', ask: 'Can a vehicle reach it?', answer: yesNo(), because: 'a bollard may be wanted' },
  { at: 'sun', ask: 'In the sun at midday', answer: yesNo(), because: 'a hot battery gives less and ages' },
];

/** Openings and appliances near the battery's place, seen from in front of the wall. */
export const wallItemQuestions: readonly Question<WallFacts['items'][string]>[] = [
  {
    at: 'kind',
    ask: 'What it is',
    answer: answers.pick(
      'window',
      'door',
      'vent',
      'gas meter',
      'water heater',
      'air conditioner',
      'switchboard',
      'appliance',
    ),
    because: 'each has its own distance',
    must: true,
  },
  { at: 'name', ask: 'Name', answer: answers.text, because: 'findings name it', must: true },
  {
    at: 'leftMm',
    ask: 'Its left edge, from the left end of the wall',
    answer: number('mm'),
    with: 'tape',
    because: 'distance to the battery',
    must: true,
  },
  {
    at: 'bottomMm',
    ask: 'Its lower edge above the floor',
    answer: number('mm'),
    with: 'tape',
    because: 'distance to the battery',
    must: true,
  },
  { at: 'widthMm', ask: 'Width', answer: number('mm'), with: 'tape', because: 'distance to the battery', must: true },
  { at: 'heightMm', ask: 'Height', answer: number('mm'), with: 'tape', because: 'distance to the battery', must: true },
  {
    at: 'habitable',
    ask: 'Opens into a room people live or sleep in',
    answer: yesNo(),
    because: 'some distances are for these only',
  },
];

/** Solar, generator inlet, car charger, controlled load, second board. */
export const existingQuestions: readonly Question<ExistingFacts>[] = [
  {
    at: 'kind',
    ask: 'What it is',
    answer: answers.pick('solar', 'generator inlet', 'car charger', 'controlled load', 'second board'),
    because: 'sources are summed with what is fitted; loads are in none of these sums',
    must: true,
  },
  {
    at: 'name',
    ask: 'Name',
    answer: answers.text,
    because: 'it is listed by it, and a sum names its sources',
    must: true,
  },
  {
    at: 'ratedA',
    ask: 'Current at its rating, each line',
    how: 'Off the plate. Solar: its inverter’s output. A second board: its feed. A load that stays on in an outage is entered among the circuits too.',
    answer: number('A'),
    because:
      'solar is summed on the bars, along the mains and in what can go out; a generator on the bars; a load’s figure is on record, in no sum',
    must: true,
  },
  {
    at: 'lines',
    ask: 'Lines it stands on',
    answer: answers.lines,
    because: 'solar counts in the balance of the lines; a load does not',
    must: true,
  },
  {
    at: 'meterElement',
    ask: 'On an element of the meter of its own',
    how: 'A second register, a ripple relay, a time switch of the network.',
    answer: yesNo('yes, its own', 'no, the house’s'),
    because: 'the export limit set on the system does not see solar counted apart; of a load it is on record only',
    when: ({ kind }) => kind === 'controlled load' || kind === 'car charger' || kind === 'solar',
  },
  {
    at: 'changeover',
    ask: 'A changeover keeps it from the network',
    how: 'Interlock or switch: it can never feed together with the street.',
    answer: yesNo('yes', 'no, or not found'),
    because: 'without one the bars could carry both at once',
    when: ({ kind }) => kind === 'generator inlet',
  },
  {
    at: 'lengthM',
    ask: 'Cable from the board',
    answer: number('m'),
    with: 'tape',
    because: 'on record, should a trunk land at its end; no rise is reckoned along it',
  },
  {
    at: 'conductor',
    ask: 'Cable, size and metal',
    answer: answers.conductor,
    because: 'on record, should a trunk land at its end; no rise is reckoned along it',
  },
];

const hasMotor = ({ motor }: CircuitFacts) => motor !== undefined;

/** A circuit of the board and what hangs on it. */
export const circuitQuestions: readonly Question<CircuitFacts>[] = [
  { at: 'name', ask: 'Name of the circuit', answer: answers.text, because: 'the customer knows it so', must: true },
  {
    at: 'wanted',
    ask: 'In an outage',
    answer: answers.pick('must stay on', 'would be good', 'no'),
    because: 'backup is sized by it',
    must: true,
  },
  {
    at: 'lines',
    ask: 'Lines it stands on',
    answer: answers.lines,
    because: 'each line of a backup has its own limit',
    must: true,
  },
  {
    at: 'runW',
    ask: 'Running',
    how: 'Off the plate.',
    answer: number('W'),
    because: 'the battery carries the sum',
    must: true,
  },
  { at: 'nightW', ask: 'Mean over a night', answer: number('W'), because: 'hours of dark the battery lasts' },
  { at: 'breakerA', ask: 'Its breaker', answer: number('A'), because: 'it moves with the circuit' },
  {
    at: 'residualDevice',
    ask: 'Behind a residual device',
    answer: yesNo(),
    because: 'an island trips no breaker, only this',
  },
  {
    at: 'neutralTraced',
    ask: 'Its own neutral, traced',
    how: 'Lift it and look what goes dark.',
    answer: yesNo('traced, its own', 'not traced'),
    because: 'a borrowed neutral is live when the other side is off',
  },
  {
    at: 'motor.kind',
    ask: 'A motor on it',
    how: 'Leave it where there is none.',
    answer: answers.pick('pump', 'compressor', 'fan', ['inverter-driven', 'inverter-driven: no start peak']),
    because: 'its start is the battery’s hardest moment',
    brings: ({ facts }) => ({ 'motor.voltage': facts.supply.nominalV }),
    group: 'motor',
  },
  {
    at: 'motor.voltage',
    ask: 'Motor, voltage on the plate',
    answer: number('V'),
    because: 'its start in VA',
    when: hasMotor,
    must: true,
    assumed: true,
  },
  {
    at: 'motor.lockedRotorA',
    ask: 'Motor, locked-rotor current',
    how: 'LRA on the plate; a recording clamp at a start is better.',
    answer: number('A'),
    because: 'its start in VA',
    when: (circuit) => hasMotor(circuit) && circuit.motor?.kind !== 'inverter-driven',
    or: 'motor.codeLetter',
  },
  {
    at: 'motor.fullLoadA',
    ask: 'Motor, full-load current',
    answer: number('A'),
    because: 'six times it, where nothing else is known',
    when: hasMotor,
  },
  {
    at: 'motor.codeLetter',
    ask: 'Motor, code letter',
    answer: answers.text,
    because: 'kVA for each horsepower at the start',
    when: hasMotor,
  },
  {
    at: 'motor.horsepower',
    ask: 'Motor, horsepower',
    answer: number('hp'),
    because: 'with the code letter',
    when: hasMotor,
  },
];

/** The house's use as a whole. */
export const loadQuestions: readonly Question<never>[] = [
  {
    at: 'loads.annualKwh',
    ask: 'Use in a year',
    how: 'Off twelve months of bills.',
    answer: number('kWh'),
    because: 'what the sun and the battery save',
  },
  {
    at: 'loads.dayShape',
    ask: 'Use by the hour',
    how: 'Ask the customer to sign for the meter’s file.',
    answer: answers.brought,
    because: 'when the battery fills and empties',
    later: 'the meter’s file',
  },
];
