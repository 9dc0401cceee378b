import { NumberField } from '../parts/NumberField.tsx';
import { PersonField } from '../parts/PersonField.tsx';
import { PickField } from '../parts/PickField.tsx';
import { TickField } from '../parts/TickField.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import type { Specimen } from './specimen.ts';

const nothing = () => {};
const homeRun = ['choices', 'trunks', 'a', 'homeRun', 'lengthM'];
const crew = ['Nia', 'Ode'];

/** Fields, each with the way out of what it refuses beside it. */
export const filling: readonly Specimen[] = [
  {
    name: 'NumberField',
    group: 'Filling in',
    says: 'A number of the job, typed in place; an empty one says what waits for it.',
    states: [
      {
        state: 'rest',
        show: <NumberField label="Home run" path={homeRun} unit="m" note="taped by Nia, 2 May 09:12" />,
      },
      { state: 'focus', touch: 'focus', show: <NumberField label="Home run" path={homeRun} unit="m" /> },
      {
        state: 'missing fact',
        show: <NumberField label="Loop, Ze" path={['facts', 'supply', 'notThere']} unit="Ω" optional waiting={4} />,
      },
      {
        state: 'empty, nothing waits',
        show: <NumberField label="Slope" path={['facts', 'none']} unit="mm" optional />,
      },
    ],
  },
  {
    name: 'TypedField',
    group: 'Filling in',
    says: 'Typed first, kept by an act beside it.',
    states: [
      {
        state: 'empty',
        show: <TypedField label="Reading" value="" onType={nothing} unit="A" placeholder="not read" />,
      },
      { state: 'typed', show: <TypedField label="Reading" value="8.3" onType={nothing} unit="A" /> },
      { state: 'focus', touch: 'focus', show: <TypedField label="Reading" value="8.3" onType={nothing} unit="A" /> },
      {
        state: 'refused',
        show: (
          <TypedField
            label="Rafters"
            value="6"
            onType={nothing}
            unit="mm"
            refusal="6 mm is less than a rafter is wide. Did you mean 600?"
          />
        ),
      },
    ],
  },
  {
    name: 'PickField',
    group: 'Filling in',
    says: 'One of a few in the job.',
    states: [
      {
        state: 'picked',
        show: (
          <PickField
            label="Phases"
            path={['facts', 'supply', 'system']}
            options={[
              { value: 'single-phase', words: 'one' },
              { value: 'three-phase', words: 'three' },
            ]}
          />
        ),
      },
      {
        state: 'missing fact',
        show: (
          <PickField
            label="Backing"
            path={['facts', 'none']}
            none="not looked at"
            options={[{ value: 'metal', words: 'metal' }]}
          />
        ),
      },
    ],
  },
  {
    name: 'PersonField',
    group: 'Filling in',
    says: 'Who: one of the crew.',
    states: [
      { state: 'nobody yet', show: <PersonField label="By" value="" people={crew} onPick={nothing} /> },
      { state: 'picked', show: <PersonField label="By" value="Nia" people={crew} onPick={nothing} /> },
      {
        state: 'refused',
        show: (
          <PersonField
            label="By"
            value=""
            people={crew}
            onPick={nothing}
            refusal="Nobody is named. A reading stands with who took it."
          />
        ),
      },
    ],
  },
  {
    name: 'TickField',
    group: 'Filling in',
    says: 'Yes or no.',
    states: [
      { state: 'ticked', show: <TickField label="invented job" path={['invented']} /> },
      { state: 'open', show: <TickField label="cap seated" path={['facts', 'none']} /> },
      { state: 'focus', touch: 'focus', show: <TickField label="cap seated" path={['facts', 'none']} /> },
    ],
  },
];
