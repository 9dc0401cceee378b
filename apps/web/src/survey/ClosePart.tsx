import type { SurveyHole, SurveyStanding } from '@eaveline/plan';
import { Link } from '@tanstack/react-router';
import { useJob } from '../job/JobContext.tsx';
import { Mark } from '../parts/Mark.tsx';
import { Part } from '../parts/Part.tsx';
import { ruleWords } from '../words/ruleWords.ts';
import styles from './Survey.module.css';
import { apartWords, neededBy, openAt } from './surveyWords.ts';

export interface ClosePartProps {
  readonly standing: SurveyStanding;
  /** Why it was not closed just now. */
  readonly refusal: string | undefined;
}

/** The end of the walk: every hole with the rules that need it, what was closed without a value, what others bring. */
export function ClosePart({ standing, refusal }: ClosePartProps) {
  const { job } = useJob();
  const { holes, notMeasured, later } = standing;
  return (
    <>
      {refusal !== undefined && (
        <p className={styles.refused} role="alert">
          <Mark state="fails" size={16} /> {refusal}
        </p>
      )}
      {standing.steps
        .map((step) => ({ step, open: openAt(standing, step.id) }))
        .filter(({ open }) => open.length > 0)
        .map(({ step, open }) => (
          <Part key={step.id} title={step.name} count={open.length} ruled>
            <ul className={styles.rows}>
              {open.map((hole) => (
                <li key={`${hole.kind} ${hole.path} ${hole.measures?.what ?? ''}`}>
                  <Link to="/job/$id/survey/$step" params={{ id: job.id, step: step.id }}>
                    <span>
                      <Mark state="ask" size={15} /> <b>{hole.what}</b>
                      <span className={styles.below}>{holeWords(hole)}</span>
                    </span>
                  </Link>
                </li>
              ))}
            </ul>
          </Part>
        ))}
      {holes.length === 0 && <p>Every fact this job has a use for is there, or says why it is not.</p>}
      {notMeasured.length > 0 && (
        <Part title="Closed without a value" count={notMeasured.length} ruled>
          <ul className={styles.plain}>
            {notMeasured.map(({ path, what, why, by, rules }) => (
              <li key={path}>
                <b>{what}</b>
                <span className={styles.below}>
                  {why}, {by}. {rules.length === 0 ? '' : `${rules.map(ruleWords).join(', ')}: still asks.`}
                </span>
              </li>
            ))}
          </ul>
        </Part>
      )}
      {later.length > 0 && (
        <Part title="Comes later" count={later.length} ruled>
          <ul className={styles.plain}>
            {later.map(({ what, from }) => (
              <li key={what}>
                <b>{what}</b> <span className="quiet">{from}</span>
              </li>
            ))}
          </ul>
        </Part>
      )}
    </>
  );
}

function holeWords(hole: SurveyHole): string {
  if (hole.measures !== undefined) return `${apartWords(hole.measures)} ${neededBy(hole)}`;
  const need = neededBy(hole);
  if (hole.kind === 'no instrument') return `No instrument is named. ${need}`;
  return hole.kind === 'not seen' ? `The region’s usual stands there; nobody has looked. ${need}` : need;
}
