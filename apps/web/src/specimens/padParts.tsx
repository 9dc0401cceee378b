import { ByHand, CopyWorking } from '../pad/CopyWorking.tsx';
import { copyText } from '../pad/copyText.ts';
import { FindingVerdict } from '../pad/FindingVerdict.tsx';
import { MendList } from '../pad/MendList.tsx';
import { Pad } from '../pad/Pad.tsx';
import { PadStrip } from '../pad/PadStrip.tsx';
import { WorkingSteps } from '../pad/WorkingSteps.tsx';
import { WorkingSum } from '../pad/WorkingSum.tsx';
import { findings, rise, subjects } from './cases.ts';
import type { Specimen } from './specimen.ts';

const nothing = () => {};
const copied = copyText(subjects.figure, { job: 'Kestrel Rise', page: '04.2', invented: true });

/** The pad: how a figure is known. */
export const padParts: readonly Specimen[] = [
  {
    name: 'WorkingSum',
    group: 'The pad',
    says: 'Steps, formula, the figures put in, what it comes to, source.',
    states: [{ state: 'rest', show: <WorkingSum working={rise} /> }],
  },
  {
    name: 'WorkingSteps',
    group: 'The pad',
    says: 'The figures a figure was made of; one made of others opens.',
    states: [{ state: 'rest, the second opens', show: <WorkingSteps inputs={rise.inputs ?? []} /> }],
  },
  {
    name: 'FindingVerdict',
    group: 'The pad',
    says: 'How a rule judged it, by which clause and edition, and how that is known.',
    states: [
      { state: 'failing', show: <FindingVerdict finding={findings.fails} /> },
      { state: 'asking', show: <FindingVerdict finding={findings.ask} /> },
      { state: 'meeting', show: <FindingVerdict finding={findings.meets} /> },
      { state: 'meeting, from memory', show: <FindingVerdict finding={findings.unconfirmed} /> },
    ],
  },
  {
    name: 'MendList',
    group: 'The pad',
    says: 'Ways out: a choice changed at a press, or an act for somebody on site.',
    states: [
      { state: 'a choice, and an act', show: <MendList finding={findings.fails} onMend={nothing} /> },
      { state: 'an act only', show: <MendList finding={findings.ask} onMend={nothing} /> },
    ],
  },
  {
    name: 'CopyWorking',
    group: 'The pad',
    says: 'The working as text for a letter.',
    states: [{ state: 'rest', show: <CopyWorking subject={subjects.figure} /> }],
  },
  {
    name: 'ByHand',
    group: 'The pad',
    says: 'Where the clipboard refuses, the text itself.',
    states: [{ state: 'refused', show: <ByHand text={copied} take={false} /> }],
  },
  {
    name: 'PadStrip',
    group: 'The pad',
    says: 'Where the pad lies over the sheet: the way to it. Shown below 1100 px.',
    states: [{ state: 'rest', show: <PadStrip subject={subjects.figure} onOpen={nothing} /> }],
  },
  {
    name: 'Pad',
    group: 'The pad',
    says: 'Squared paper: every working is written here, nothing else is. On the paper that is laid.',
    wide: true,
    states: [
      {
        state: 'stale',
        show: (
          <Pad
            subject={subjects.judged}
            next={[subjects.figure]}
            stale
            onGo={nothing}
            onMend={nothing}
            onClose={nothing}
          />
        ),
      },
    ],
  },
];
