import type { Asked } from '@eaveline/job';
import type { SurveyStanding } from '@eaveline/plan';
import { useNavigate } from '@tanstack/react-router';
import { type ReactNode, useEffect, useState } from 'react';
import { useDesk } from '../desk/DeskContext.tsx';
import desk from '../frame/Desk.module.css';
import type { Head } from '../frame/head.ts';
import { nextPaper } from '../frame/paper.ts';
import { SheetFrame } from '../frame/SheetFrame.tsx';
import { KeyList } from '../keys/KeyList.tsx';
import { useKeys } from '../keys/useKeys.ts';
import { useNarrow } from '../parts/useNarrow.ts';
import { SurveyActs, type SurveyActsProps } from './SurveyActs.tsx';
import { SurveyHead } from './SurveyHead.tsx';
import { SurveyPad } from './SurveyPad.tsx';
import { SurveyRegister } from './SurveyRegister.tsx';
import { openWords } from './surveyWords.ts';

export interface SurveyFrameProps {
  readonly standing: SurveyStanding;
  /** Id of the step, as the address has it. */
  readonly current: string | undefined;
  readonly title: string;
  readonly head: Head;
  /** Beside the title on a phone: what is open here. */
  readonly open: number;
  readonly acts: SurveyActsProps;
  readonly asked?: Asked | undefined;
  readonly children: ReactNode;
}

/** Every page of the survey: on a desk the walk, the form and the pad; on a phone the form and two answers. */
export function SurveyFrame({ standing, current, title, head, open, acts, asked, children }: SurveyFrameProps) {
  const { session, open: opened, said, say } = useDesk();
  const { job, plan } = opened;
  const navigate = useNavigate();
  const narrow = useNarrow();
  const [keysShown, setKeysShown] = useState(false);
  const undo = () => say(session.undo());
  const redo = () => say(session.redo());
  useKeys({
    b: () => void navigate({ to: '/' }),
    z: undo,
    'Shift z': redo,
    d: nextPaper,
    n: acts.right.onPress,
    '?': () => setKeysShown(true),
    Escape: acts.left.onPress,
  });
  useEffect(() => {
    document.title = `Survey, ${title}, ${job.name} · Eaveline`;
    document.getElementById('sheet')?.scrollTo({ top: 0 });
  }, [title, job.name]);

  return (
    <div className={desk.desk}>
      <SurveyHead
        title={title}
        aside={opened.keeping.device.kind === 'refused' ? 'not kept' : openWords(open)}
        onBack={acts.left.onPress}
        onUndo={opened.undo === undefined ? undefined : undo}
      />
      <SurveyRegister
        standing={standing}
        current={current}
        onUndo={undo}
        onRedo={redo}
        onKeys={() => setKeysShown(true)}
      />
      <SheetFrame
        no="01"
        head={head}
        said={said}
        notice="Readings are taken by whoever may take them. Local codes and the licensed person decide."
        cells={[
          { what: 'job', says: job.name, strong: true },
          { what: 'sheet', says: title === 'Survey' ? title : `Survey: ${title}`, strong: true },
          { what: 'open on the whole walk', says: String(standing.holes.length) },
          { what: 'state', says: job.state },
        ]}
      >
        {children}
        {!narrow && <SurveyActs {...acts} />}
      </SheetFrame>
      <SurveyPad asked={asked} plan={plan} />
      {narrow && <SurveyActs {...acts} />}
      {keysShown && <KeyList onClose={() => setKeysShown(false)} />}
    </div>
  );
}
