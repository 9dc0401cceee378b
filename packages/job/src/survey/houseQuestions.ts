import type { Job } from '../schema/job.ts';
import { answers, type Question } from './question.ts';

const { number, text, yesNo } = answers;

/** On arrival: what is seen before anything is opened. */
export const arrivalQuestions: readonly Question<Job['facts']>[] = [
  {
    at: 'site.yearBuilt',
    ask: 'Year the house was built',
    how: 'Ask; a stone over the door or the meter’s first bill is as good.',
    answer: number(''),
    because: 'old coverings and old boards may hold asbestos',
  },
  {
    at: 'roof.storeys',
    ask: 'Storeys under the roof',
    answer: number(''),
    because: 'ladder, scaffold and how modules come up',
  },
  {
    at: 'access.scaffoldNeeded',
    ask: 'Scaffold',
    how: 'Edge protection counts: look at the side the ladder stands on.',
    answer: yesNo('needed', 'not needed'),
    because: 'the day is planned and priced with it',
  },
  {
    at: 'access.carryM',
    ask: 'Carry from the van to the ladder foot',
    answer: number('m'),
    with: 'tape',
    because: 'eighteen modules are carried that far',
  },
  {
    at: 'access.note',
    ask: 'What the crew has to know on arrival',
    how: 'Parking, gate, dog, school run, signal at the board and on the roof.',
    answer: text,
    because: 'the day’s plan opens with it',
  },
];

/** Street and meter: what the network has put there. */
export const networkQuestions: readonly Question<Job['facts']>[] = [
  {
    at: 'network.meterNumber',
    ask: 'Meter number',
    how: 'As it stands on the meter, all of it.',
    answer: text,
    because: 'every form to the network asks for it',
  },
  {
    at: 'network.name',
    ask: 'Network',
    how: 'On the meter, the pole or the bill.',
    answer: text,
    because: 'the form goes to it',
  },
  {
    at: 'supply.system',
    ask: 'Phases',
    how: 'Count the tails at the meter.',
    answer: answers.pick(['single-phase', 'one'], ['split-phase', 'split'], ['three-phase', 'three']),
    because: 'every current and every voltage hangs on it',
    must: true,
    assumed: true,
  },
  {
    at: 'supply.nominalV',
    ask: 'Nominal voltage, line to neutral',
    answer: number('V'),
    because: 'every current hangs on it',
    must: true,
    assumed: true,
  },
  {
    at: 'supply.serviceA',
    ask: 'Service fuse or breaker',
    how: 'Read on the carrier. Seals stay whole.',
    answer: number('A'),
    because: 'it feeds the bars together with the sources',
    must: true,
    assumed: true,
  },
  {
    at: 'supply.mains.lengthM',
    ask: 'Mains, point of supply to board, one way',
    how: 'Along the cable, not across the yard.',
    answer: number('m'),
    with: 'tape',
    because: 'voltage rises along it',
  },
  {
    at: 'supply.mains.conductor',
    ask: 'Mains, size and metal',
    how: 'Read on the sheath, or gauge a strand.',
    answer: answers.conductor,
    because: 'voltage rises along it',
  },
  {
    at: 'network.exportLimitVAPerLine',
    ask: 'Export limit, each line',
    answer: number('VA'),
    because: 'the network’s letter says it',
    later: 'the network’s letter',
    or: 'network.exportLimitVATotal',
  },
  {
    at: 'network.exportLimitVATotal',
    ask: 'Export limit, all lines together',
    answer: number('VA'),
    because: 'some networks say it in sum',
    later: 'the network’s letter',
  },
  {
    at: 'network.approvedVA',
    ask: 'Approved by the network',
    answer: number('VA'),
    because: 'what is fitted stays inside it',
    later: 'the network’s letter',
  },
  {
    at: 'network.approvalNumber',
    ask: 'Number of the approval',
    answer: text,
    because: 'it stands on the pack and the notice',
    later: 'the network’s letter',
  },
  {
    at: 'network.approvalDate',
    ask: 'Date of the approval',
    answer: answers.date,
    because: 'an approval runs out',
    later: 'the network’s letter',
  },
  {
    at: 'network.profile',
    ask: 'Grid profile',
    answer: text,
    because: 'it is set and read back before anything exports',
    later: 'the network’s letter',
  },
];

/** What the customer wants, in their words. */
export const wishQuestions: readonly Question<Job['facts']>[] = [
  {
    at: 'wishes.backup',
    ask: 'What stays on in an outage',
    how: 'Promise nothing here: the board and the motors decide.',
    answer: answers.pick('whole house', 'some circuits', ['none', 'nothing, no backup']),
    because: 'battery and changeover are chosen for it',
  },
  {
    at: 'wishes.note',
    ask: 'In the customer’s own words',
    how: 'Why they want it, what they fear, when it has to be done.',
    answer: text,
    because: 'the quarrel afterwards is about this',
  },
];

/** What is looked up rather than seen at the house. */
export const recordQuestions: readonly Question<Job['facts']>[] = [
  {
    at: 'site.recordLowC',
    ask: 'Lowest temperature on record',
    how: 'Of the nearest station; never a mean.',
    answer: number('°C'),
    because: 'modules stand highest in volts on the coldest dawn',
  },
  {
    at: 'site.recordHighC',
    ask: 'Highest temperature on record',
    answer: number('°C'),
    because: 'modules stand lowest in volts on the hottest noon',
  },
  {
    at: 'site.recordSource',
    ask: 'Station and years of the records',
    answer: text,
    because: 'a record without a station is hearsay',
  },
  {
    at: 'site.wind.basicSpeedMS',
    ask: 'Wind speed of the region',
    how: 'From the map of the standard in force.',
    answer: number('m/s'),
    because: 'every foot is held against it',
  },
  {
    at: 'site.wind.region',
    ask: 'Wind region',
    how: 'As the map names it.',
    answer: text,
    because: 'the paper for the inspector names it',
  },
  {
    at: 'site.wind.terrain',
    ask: 'Terrain category',
    how: 'Look half a kilometre up wind: open, scattered houses, suburb, town.',
    answer: text,
    because: 'the same wind is weaker behind houses',
  },
  {
    at: 'site.wind.exposed',
    ask: 'Hill, escarpment, lee of a range, or coast',
    answer: yesNo('yes, an engineer is asked', 'no'),
    because: 'the plain sum does not hold there',
  },
  {
    at: 'site.wind.roofHeightM',
    ask: 'Mean height of the roof above ground',
    how: 'Half way between eave and ridge.',
    answer: number('m'),
    with: 'tape',
    because: 'wind grows with height',
  },
  {
    at: 'site.snow.groundKPa',
    ask: 'Snow on the ground',
    how: 'From the map; leave it where it never lies.',
    answer: number('kPa'),
    because: 'rails and feet carry it',
  },
  {
    at: 'site.elevationM',
    ask: 'Height above the sea',
    answer: number('m'),
    because: 'the weather is brought to it',
  },
];
