import { NumberField } from '../parts/NumberField.tsx';
import { PersonField } from '../parts/PersonField.tsx';
import { PickField } from '../parts/PickField.tsx';
import { QuantityInput } from '../parts/QuantityInput.tsx';
import { TickField } from '../parts/TickField.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import { UnitKeys } from '../parts/UnitKeys.tsx';
import type { Specimen } from './specimen.ts';

const nothing = () => {};
const homeRun = ['choices', 'trunks', 'a', 'homeRun', 'lengthM'];
const crew = ['Nia', 'Ode'];
const line = { unit: 'm', optional: false, shown: '31', placeholder: 'not measured', describedBy: 'line-said' };
const draft = (text: string | undefined) => ({ text, type: nothing, take: nothing, putBack: nothing });
/** It stands under a label, as in every field: by itself it has no name. */
const onLine = (id: string, text: string | undefined, refused: boolean) => (
  // biome-ignore lint/a11y/noLabelWithoutControl: its control is the line within; an id would stand three times on this page
  <label>
    Home run <QuantityInput {...line} id={id} draft={draft(text)} refused={refused} />
  </label>
);
const answers = (take: string) => ({ take, onTake: nothing, onPutBack: nothing });
const keys = { letters: false, onText: nothing, onLetters: nothing };

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
    name: 'QuantityInput',
    group: 'Filling in',
    says: 'The line a quantity is typed on: a draft until Enter, or until it is left.',
    states: [
      { state: 'rest', show: onLine('line-rest', undefined, false) },
      { state: 'typed', show: onLine('line-typed', '12 ft', false) },
      { state: 'refused', show: onLine('line-refused', '12 furlongs', true) },
    ],
  },
  {
    name: 'UnitKeys',
    group: 'Filling in',
    says: 'Over the digits of a phone: units, minus, letters, and the two answers.',
    states: [
      { state: 'rest', show: <UnitKeys {...keys} unit="m" text="31" /> },
      { state: 'typed', show: <UnitKeys {...keys} unit="m" text="12 ft " answers={answers('Take 3.6576 m')} /> },
      { state: 'below nought', show: <UnitKeys {...keys} unit="°C" text="4" answers={answers('Take 4 °C')} /> },
      { state: 'letters', show: <UnitKeys {...keys} unit="mm²" text="6" letters /> },
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
