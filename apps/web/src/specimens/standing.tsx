import { Caution } from '../parts/Caution.tsx';
import { Mark } from '../parts/Mark.tsx';
import { MixedColours } from '../parts/MixedColours.tsx';
import { RuleGauge } from '../parts/RuleGauge.tsx';
import { StateWord } from '../parts/StateWord.tsx';
import { TallyMarks } from '../parts/TallyMarks.tsx';
import type { Specimen } from './specimen.ts';

/** How things stand: the worse, the more ink. */
export const standing: readonly Specimen[] = [
  {
    name: 'StateWord',
    group: 'State',
    says: 'Mark, word and colour, always the three together.',
    states: [
      { state: 'meeting', show: <StateWord state="meets" /> },
      { state: 'meeting, from memory', show: <StateWord state="meets" unconfirmed /> },
      { state: 'asking', show: <StateWord state="ask" /> },
      { state: 'failing', show: <StateWord state="fails" /> },
    ],
  },
  {
    name: 'Mark',
    group: 'State',
    says: 'An open tick, a ring, a solid block.',
    states: [
      { state: 'meeting', show: <Mark state="meets" size={22} /> },
      { state: 'asking', show: <Mark state="ask" size={22} /> },
      { state: 'failing', show: <Mark state="fails" size={22} /> },
    ],
  },
  {
    name: 'TallyMarks',
    group: 'State',
    says: 'How many fail and how many ask; nothing where all meets.',
    states: [
      { state: 'both', show: <TallyMarks tally={{ fails: 3, ask: 4 }} /> },
      { state: 'asking', show: <TallyMarks tally={{ fails: 0, ask: 1 }} /> },
      { state: 'meeting, in the Book', show: <TallyMarks tally={{ fails: 0, ask: 0 }} tick /> },
    ],
  },
  {
    name: 'Caution',
    group: 'State',
    says: 'Hazard and what to do, above the work it is for.',
    states: [
      {
        state: 'rest',
        show: <Caution words="Lock breaker A before you touch a drop. Prove the trunk dead at the roof box." />,
      },
    ],
  },
  {
    name: 'MixedColours',
    group: 'State',
    says: 'Above whatever shows the colours of a board’s wires, where two schemes meet in it.',
    states: [{ state: 'mixed', show: <MixedColours mixed /> }],
  },
  {
    name: 'RuleGauge',
    group: 'Figures',
    says: 'A value against a limit and a prediction, the same everywhere.',
    states: [
      {
        state: 'at most, meeting',
        show: (
          <RuleGauge
            unit="V"
            decimals={2}
            limit={{ value: 4.6, sense: 'at most' }}
            needle={{ value: 3.7, fails: false }}
          />
        ),
      },
      {
        state: 'at least, failing',
        show: <RuleGauge unit="mm" limit={{ value: 600, sense: 'at least' }} needle={{ value: 480, fails: true }} />,
      },
      {
        state: 'expected, with its band',
        show: (
          <RuleGauge
            unit="A"
            decimals={1}
            predicted={{ low: 8.4, middle: 9.4, high: 10.3 }}
            needle={{ value: 9.7, fails: false }}
          />
        ),
      },
      {
        state: 'lawful, not as drawn',
        show: (
          <RuleGauge
            unit="A"
            decimals={1}
            limit={{ value: 20, sense: 'at most' }}
            predicted={{ low: 13.9, middle: 14.6, high: 15.4 }}
            needle={{ value: 17.1, fails: false }}
          />
        ),
      },
      {
        state: 'offered by a mend',
        show: (
          <RuleGauge
            unit="V"
            decimals={2}
            limit={{ value: 4.6, sense: 'at most' }}
            needle={{ value: 5.32, fails: true }}
            offered={4.25}
          />
        ),
      },
      {
        state: 'empty: not read yet',
        show: <RuleGauge unit="A" decimals={1} predicted={{ low: 8.4, middle: 9.4, high: 10.3 }} />,
      },
    ],
  },
];
