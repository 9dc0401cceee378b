import { FindingFilter } from '../checks/FindingFilter.tsx';
import { FindingRow } from '../checks/FindingRow.tsx';
import { FindingsHere } from '../checks/FindingsHere.tsx';
import { EVERYTHING } from '../checks/filter.ts';
import { MeetsRow } from '../checks/MeetsRow.tsx';
import { findings } from './cases.ts';
import type { Specimen } from './specimen.ts';

const nothing = () => {};
const all = Object.values(findings);

/** Findings, beside the thing they concern and on sheet 08. */
export const findingParts: readonly Specimen[] = [
  {
    name: 'FindingRow',
    group: 'Findings',
    says: 'What was judged, how it stands, the gauge, the clause, what would mend it.',
    wide: true,
    states: [
      {
        state: 'failing, the one next act',
        show: (
          <ul>
            <FindingRow finding={findings.fails} selected={false} main onSelect={nothing} onMend={nothing} />
          </ul>
        ),
      },
      {
        state: 'asking, selected',
        show: (
          <ul>
            <FindingRow finding={findings.ask} selected main={false} onSelect={nothing} onMend={nothing} />
          </ul>
        ),
      },
    ],
  },
  {
    name: 'MeetsRow',
    group: 'Findings',
    says: 'What meets is quiet.',
    states: [
      {
        state: 'meeting',
        show: (
          <ul>
            <MeetsRow finding={findings.meets} selected={false} onSelect={nothing} />
          </ul>
        ),
      },
      {
        state: 'meeting, from memory, selected',
        show: (
          <ul>
            <MeetsRow finding={findings.unconfirmed} selected onSelect={nothing} />
          </ul>
        ),
      },
    ],
  },
  {
    name: 'FindingsHere',
    group: 'Findings',
    says: 'What is open beside the things of one sheet; nothing where all of it meets.',
    wide: true,
    states: [
      { state: 'two open', show: <FindingsHere findings={all} sheet="04" selected={undefined} onSelect={nothing} /> },
      { state: 'empty', show: <FindingsHere findings={[]} sheet="04" selected={undefined} onSelect={nothing} /> },
    ],
  },
  {
    name: 'FindingFilter',
    group: 'Findings',
    says: 'Which findings sheet 08 shows, by keyboard too.',
    wide: true,
    states: [{ state: 'everything', show: <FindingFilter findings={all} filter={EVERYTHING} onFilter={nothing} /> }],
  },
];
