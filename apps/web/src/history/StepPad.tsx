import { useNavigate } from '@tanstack/react-router';
import { useDesk } from '../desk/DeskContext.tsx';
import type { HistoryStep } from '../job/history.ts';
import pad from '../pad/Pad.module.css';
import { Act } from '../parts/Act.tsx';
import styles from './History.module.css';
import { placeWords, thereWords } from './placeWords.ts';
import { when } from './when.ts';

export interface StepPadProps {
  readonly step: HistoryStep | undefined;
  readonly newest: boolean;
}

/** More places than this are told by their number: a day's work pasted in is no reading matter. */
const MOST_TOLD = 40;

/** What one step changed, place by place, and the ways back to it. */
export function StepPad({ step, newest }: StepPadProps) {
  const { session, open, say } = useDesk();
  const navigate = useNavigate();
  if (step === undefined) {
    return (
      <aside className={pad.pad} aria-label="What the step changed" id="pad">
        <div className={pad.sum}>
          <p className="quiet">Select a step: what it changed is written here.</p>
        </div>
      </aside>
    );
  }
  const edits = session.editsOf(step).filter(({ path }) => path.length > 0);
  const toSheets = () => void navigate({ to: '/job/$id/$sheet', params: { id: open.job.id, sheet: '01' } });
  const look = () => {
    session.look(step);
    toSheets();
  };
  const goBack = () => {
    const refusal = session.goBackTo(step);
    say(
      refusal === undefined
        ? `The job is again as it was ${when(step.at, new Date())}. Z takes that back.`
        : `Not gone back. ${refusal}`,
    );
    if (refusal === undefined) toSheets();
  };
  return (
    <aside className={pad.pad} aria-label="What the step changed" id="pad" tabIndex={-1}>
      <div className={pad.boxes}>
        <div>
          <small>{step.who === '' ? 'step' : step.who}</small>
          <b>{step.what}</b>
        </div>
        <div>
          <small>when</small>
          <b>{when(step.at, new Date())}</b>
        </div>
      </div>
      <div className={pad.sum}>
        {edits.length === 0 && <p>The state this history begins with.</p>}
        <dl className={styles.edits}>
          {edits.slice(0, MOST_TOLD).map(({ path, before, after }) => (
            <div key={path.join('.')}>
              <dt>{placeWords(open.job, path)}</dt>
              <dd>
                {before === undefined
                  ? `Added: ${thereWords(open.job, path, after)}`
                  : after === undefined
                    ? `Taken away, was ${thereWords(open.job, path, before)}`
                    : `${thereWords(open.job, path, after)}, was ${thereWords(open.job, path, before)}`}
              </dd>
            </div>
          ))}
        </dl>
        {edits.length > MOST_TOLD && <p>And {edits.length - MOST_TOLD} more places.</p>}
        <p className={styles.ways}>
          {newest ? (
            <span className="quiet">The job stands so now.</span>
          ) : (
            <>
              <Act onPress={look}>See the sheets as they were then</Act>
              <Act onPress={goBack}>Go back to this</Act>
            </>
          )}
        </p>
        {!newest && (
          <p className="quiet">Going back is a step like any other: nothing after it is lost, and records stay.</p>
        )}
      </div>
    </aside>
  );
}
