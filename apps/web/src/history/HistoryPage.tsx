import { useNavigate } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { useDesk } from '../desk/DeskContext.tsx';
import desk from '../frame/Desk.module.css';
import { PhoneHead } from '../frame/PhoneHead.tsx';
import { nextPaper } from '../frame/paper.ts';
import { Register } from '../frame/Register.tsx';
import { SheetFrame } from '../frame/SheetFrame.tsx';
import { KeyList } from '../keys/KeyList.tsx';
import { useKeys } from '../keys/useKeys.ts';
import { counted, sentence } from '../words/count.ts';
import styles from './History.module.css';
import { StepPad } from './StepPad.tsx';
import { StepRow } from './StepRow.tsx';

/** So many steps are listed at first; a year of a job has more than anybody reads. */
const AT_FIRST = 100;

/** The history of a job: who changed what and when, and the way back to any moment. */
export function HistoryPage() {
  const { session, open, said, say } = useDesk();
  const { job } = open;
  const navigate = useNavigate();
  const [selected, setSelected] = useState<string>();
  const [shown, setShown] = useState(AT_FIRST);
  const [keysShown, setKeysShown] = useState(false);
  const steps = session.history();
  const newest = steps?.[0];
  const step = steps?.find(({ heads }) => heads.join() === selected);
  const toSheets = () => void navigate({ to: '/job/$id/$sheet', params: { id: job.id, sheet: '01' } });
  const undo = () => say(session.undo());
  const redo = () => say(session.redo());
  useKeys({
    b: () => void navigate({ to: '/' }),
    z: undo,
    'Shift z': redo,
    d: nextPaper,
    '?': () => setKeysShown(true),
    Escape: toSheets,
  });
  useEffect(() => {
    document.title = `History, ${job.name} · Eaveline`;
  }, [job.name]);

  const people = new Set(steps?.map(({ who }) => who).filter((who) => who !== ''));
  return (
    <div className={desk.desk}>
      <PhoneHead
        title="History"
        aside={open.keeping.device.kind === 'refused' ? 'not kept' : job.name}
        backTo={{ to: '/job/$id', id: job.id }}
        undo={
          open.keeping.device.kind === 'refused' || open.undo === undefined
            ? undefined
            : { what: open.undo, onPress: undo }
        }
      />
      <Register current={undefined} open={false} onUndo={undo} onRedo={redo} onKeys={() => setKeysShown(true)} />
      <SheetFrame
        no="00"
        head={{
          sentence:
            steps === undefined ? 'The history is being opened.' : `${sentence(counted(steps.length, 'step'))} so far.`,
          quiet: 'Nothing in it is ever taken out. Any moment can be looked at, and gone back to.',
        }}
        said={said}
        cells={[
          { what: 'job', says: job.name, strong: true },
          { what: 'sheet', says: 'History', strong: true },
          { what: 'people', says: people.size === 0 ? 'no names given' : [...people].join(', ') },
        ]}
      >
        <ol className={styles.rows}>
          {steps?.slice(0, shown).map((each) => (
            <StepRow
              key={each.heads.join()}
              step={each}
              newest={each === newest}
              selected={each === step}
              onSelect={() => setSelected(each.heads.join())}
            />
          ))}
        </ol>
        {steps !== undefined && steps.length > shown && (
          <button type="button" className={styles.more} onClick={() => setShown(steps.length)}>
            All {steps.length}
          </button>
        )}
        <div className={styles.onPhone}>{step !== undefined && <StepPad step={step} newest={step === newest} />}</div>
      </SheetFrame>
      <StepPad step={step} newest={step === newest} />
      {keysShown && <KeyList onClose={() => setKeysShown(false)} />}
    </div>
  );
}
