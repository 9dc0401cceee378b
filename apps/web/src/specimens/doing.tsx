import { Act } from '../parts/Act.tsx';
import { NotYet } from '../parts/NotYet.tsx';
import { PickFrom } from '../parts/PickFrom.tsx';
import { PickOne } from '../parts/PickOne.tsx';
import type { Specimen } from './specimen.ts';

const nothing = () => {};
const phases = [
  { value: 'one', words: 'one' },
  { value: 'split', words: 'split' },
  { value: 'three', words: 'three' },
] as const;

/** What is pressed and picked. */
export const doing: readonly Specimen[] = [
  {
    name: 'Act',
    group: 'Doing and choosing',
    says: 'Something that can be done. One a screen stands in marker.',
    states: [
      {
        state: 'the one next act',
        show: (
          <Act look="main" onPress={nothing}>
            Feed it at the fifth drop
          </Act>
        ),
      },
      { state: 'rest', show: <Act onPress={nothing}>Not now</Act> },
      { state: 'focus', touch: 'focus', show: <Act onPress={nothing}>Where the keys are</Act> },
      { state: 'pressed', touch: 'pressed', show: <Act onPress={nothing}>Not now</Act> },
      {
        state: 'plain',
        show: (
          <Act look="plain" onPress={nothing}>
            page 04.2
          </Act>
        ),
      },
    ],
  },
  {
    name: 'NotYet',
    group: 'Doing and choosing',
    says: 'What cannot be done yet says when; there is no dead button.',
    states: [{ state: 'left out', show: <NotYet what="Order the kit" when="after the three mends" /> }],
  },
  {
    name: 'PickOne',
    group: 'Doing and choosing',
    says: 'One of a few, side by side: Tab reaches it, arrows walk it.',
    states: [
      { state: 'picked', show: <PickOne label="Phases" options={phases} value="three" onPick={nothing} /> },
      {
        state: 'focus',
        touch: 'focus',
        show: <PickOne label="Phases" options={phases} value="one" onPick={nothing} />,
      },
    ],
  },
  {
    name: 'PickFrom',
    group: 'Doing and choosing',
    says: 'One of many, from a list.',
    states: [
      {
        state: 'nothing picked',
        show: (
          <PickFrom
            label="On"
            none="every sheet"
            value=""
            options={[{ value: '04', words: '04 Trunks' }]}
            onPick={nothing}
          />
        ),
      },
      {
        state: 'picked, focus',
        touch: 'focus',
        show: (
          <PickFrom
            label="On"
            none="every sheet"
            value="04"
            options={[{ value: '04', words: '04 Trunks' }]}
            onPick={nothing}
          />
        ),
      },
    ],
  },
];
