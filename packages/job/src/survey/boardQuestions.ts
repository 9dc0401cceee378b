import type { Job } from '../schema/job.ts';
import { mixedColours } from './mixedColours.ts';
import { answers, type Question } from './question.ts';

const { number, yesNo } = answers;
const hasLine =
  (line: 'L2' | 'L3') =>
  (_: unknown, { facts }: Job) =>
    facts.supply.system === 'three-phase' || (line === 'L2' && facts.supply.system === 'split-phase');
const ASBESTOS = 'Leave the cover on. A sample first; only a licensed remover drills, cuts or lifts it.';

/** Schemes with their letters: a colour never stands without its letters. */
const WIRING = answers.pick(
  ['iec', 'L1 brown, L2 black, L3 grey, N blue'],
  ['au-nz', 'L1 red, L2 white, L3 blue, N black'],
  ['gb-older', 'L1 red, L2 yellow, L3 blue, N black'],
  ['us-120-240', 'L1 black, L2 red, N white'],
  ['us-120-208', 'L1 black, L2 red, L3 blue, N white'],
);

/** The board with its cover off: the backing first, for it decides whether the cover comes off at all. */
export const boardQuestions: readonly Question<Job['facts']>[] = [
  {
    at: 'board.backing',
    ask: 'Is the backing asbestos?',
    how: 'Until a sample says no, treat it as yes.',
    answer: answers.pick(
      'metal',
      'plastic',
      'timber',
      ['unknown', 'nobody is sure: a sample is sent', ASBESTOS],
      ['asbestos', 'yes, asbestos', ASBESTOS],
    ),
    because: 'drilling it sets fibres free',
  },
  { at: 'board.name', ask: 'Name of the board', answer: answers.text, because: 'as the house calls it' },
  {
    at: 'supply.earthing',
    ask: 'Earthing',
    how: 'Follow the earth from the bar to where it ends.',
    answer: answers.pick('MEN', 'TN-C-S', 'TN-S', 'TT', ['US-grounded', 'grounded at the service']),
    because: 'fault loop and island hang on it',
    must: true,
    assumed: true,
  },
  {
    at: 'board.electrode',
    ask: 'Earth electrode at the board',
    answer: yesNo('there is one', 'none found'),
    because: 'an island may not lean on the network’s earth everywhere',
  },
  {
    at: 'board.mainSwitchA',
    ask: 'Main switch or breaker',
    answer: number('A'),
    because: 'it feeds the bars',
  },
  {
    at: 'board.busA',
    ask: 'Rating of the bars',
    how: 'On the maker’s plate inside, not on the main.',
    answer: number('A'),
    because: 'they carry network and sources together',
  },
  {
    at: 'board.breakingKA',
    ask: 'Breaking capacity of the devices',
    how: 'The figure in the box on a breaker, 6000 is 6 kA. The smallest counts.',
    answer: number('kA'),
    because: 'they have to break the fault the street can give',
  },
  {
    at: 'board.breakerSumA',
    ask: 'Sum of all breakers but the main',
    answer: number('A'),
    because: 'one way to judge the bars',
  },
  { at: 'board.freeWays', ask: 'Free ways', answer: number(''), because: 'new breakers stand there' },
  {
    at: 'board.residualType',
    ask: 'Residual devices, type',
    answer: answers.pick('AC', 'A', 'F', 'B'),
    because: 'an inverter may blind the wrong type',
  },
  {
    at: 'board.surgeDevice',
    ask: 'Surge device',
    answer: yesNo('there is one', 'none'),
    because: 'the trunk lies out under the sky',
  },
  {
    at: 'board.wiring',
    ask: 'Colours of this board',
    how: 'Look at this board; the region only says what is likely.',
    answer: WIRING,
    because: 'black is neutral in one scheme and live in another',
  },
  {
    at: 'board.wiringMixed',
    ask: 'Two schemes in one board',
    how: 'Where one joins the other, prove every conductor and go by the letters.',
    answer: yesNo('yes, mixed', 'no, one scheme', `${mixedColours.head} ${mixedColours.body}`),
    because: 'a colour then says nothing',
    assumed: true,
  },
  {
    at: 'board.ambientC',
    ask: 'Hottest it gets round the board',
    how: 'In the sun on an afternoon, if it stands outside.',
    answer: number('°C'),
    with: 'thermometer',
    because: 'breakers side by side carry less in the heat',
  },
];

/** Measured at the live board, at this hour. */
export const liveQuestions: readonly Question<Job['facts']>[] = [
  {
    at: 'supply.measuredV.L1',
    ask: 'L1 to neutral, now',
    how: 'Neutral to earth beside it: near nothing, or stop.',
    answer: number('V'),
    with: 'voltmeter',
    because: 'what is left before the inverters let go',
  },
  {
    at: 'supply.measuredV.L2',
    ask: 'L2 to neutral, now',
    answer: number('V'),
    with: 'voltmeter',
    because: 'lines of one street differ',
    when: hasLine('L2'),
  },
  {
    at: 'supply.measuredV.L3',
    ask: 'L3 to neutral, now',
    answer: number('V'),
    with: 'voltmeter',
    because: 'lines of one street differ',
    when: hasLine('L3'),
  },
  {
    at: 'supply.loopOhm',
    ask: 'Loop impedance, line to earth',
    how: 'At the board, supply only. The highest line counts.',
    answer: number('Ω'),
    with: 'loopTester',
    because: 'a breaker trips in time only where the loop is low',
    or: 'supply.declaredLoopOhm',
  },
  {
    at: 'supply.declaredLoopOhm',
    ask: 'Or: the network’s declared greatest',
    how: 'Only where no loop could be measured.',
    answer: number('Ω'),
    because: 'it stands in for the measured loop',
    when: (_, { facts }) => facts.supply.loopOhm === undefined,
  },
  {
    at: 'supply.prospectiveA',
    ask: 'Prospective fault current, the greatest',
    how: 'Line to neutral and line to earth; with three lines also between them. 1.2 kA is 1200 A.',
    answer: number('A'),
    with: 'loopTester',
    because: 'every device has to break it',
  },
  {
    at: 'supply.rotation',
    ask: 'Phase rotation',
    answer: answers.pick('L1-L2-L3', 'L1-L3-L2'),
    with: 'rotationTester',
    because: 'motors turn the same way afterwards',
    when: (_, { facts }) => facts.supply.system === 'three-phase',
  },
  {
    at: 'supply.electrodeOhm',
    ask: 'Resistance of the earth electrode',
    answer: number('Ω'),
    with: 'earthTester',
    because: 'with TT the whole fault runs through it',
    when: (_, { facts }) => facts.supply.earthing === 'TT',
  },
];
