import type { SurveyStep } from '@eaveline/job';

/** Where what is asked at a place of the walk ends up, by the step of the house it belongs to. */
const BY_STEP: Readonly<Record<string, string>> = {
  arrival: 'sheet 10, the day',
  network: 'the form to the network',
  board: 'sheet 05, the board',
  live: 'sheet 11, where readings are held against these',
  walls: 'sheet 06, where the battery hangs',
  existing: 'sheet 05, the bars of the board',
  roof: 'sheet 02, the planes',
  attic: 'sheet 03, the feet on the rafters',
  things: 'sheet 03, where modules may lie',
  around: 'sheet 07, the shadows',
  loads: 'sheet 06, what the battery carries',
  wishes: 'sheet 06, what stays on',
  records: 'sheet 01, the place',
};

/** Facts that end up elsewhere than the rest of their step, by the end of their path. */
const BY_FACT: readonly (readonly [end: string, words: string])[] = [
  ['access.scaffoldNeeded', 'the crew’s step “Edge protection, anchors, hoist”, sheet 10'],
  ['supply.system', 'sheet 05, every current in it'],
  ['supply.nominalV', 'sheet 05, every current in it'],
  ['supply.serviceA', 'sheet 05, the bars of the board'],
  ['supply.mains.lengthM', 'sheet 04, the rise'],
  ['supply.mains.conductor', 'sheet 04, the rise'],
  ['supply.earthing', 'sheet 05, the fault loop'],
  ['supply.rotation', 'sheet 11, the row “Phase rotation”'],
  ['network.profile', 'the crew’s step “Power up, profile”, sheet 10'],
  ['board.wiringMixed', 'the caution beside the colours of sheets 04 and 05'],
  ['fragile', 'paper 10.C, the cautions'],
  ['atticC', 'sheet 04, the air round the home run'],
  ['rafters.widthMm', 'the crew’s step “Set out, find rafters”, sheet 10'],
  ['loads.annualKwh', 'sheet 07, what the house uses by the hour'],
  ['loads.dayShape', 'sheet 07, what the house uses by the hour'],
];

/**
 * The sheet, paper or step that needs what is asked at this path, where no rule does.
 *
 * @throws {Error} at a step nobody has named a place for: a survey step of ours that was forgotten here.
 */
export function goesInto({ part }: Pick<SurveyStep, 'part'>, path: string): string {
  const own = BY_FACT.find(([end]) => path === end || path.endsWith(`.${end}`))?.[1];
  const words = own ?? BY_STEP[part];
  if (words === undefined) throw new Error(`nobody has said where the survey step '${part}' goes`);
  return words;
}
