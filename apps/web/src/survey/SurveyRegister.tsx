import type { SurveyStanding } from '@eaveline/plan';
import { Link } from '@tanstack/react-router';
import { useDesk } from '../desk/DeskContext.tsx';
import { House } from '../frame/House.tsx';
import { jobLines } from '../frame/jobLines.ts';
import { KeepingFoot } from '../frame/KeepingFoot.tsx';
import { Papers } from '../frame/Papers.tsx';
import register from '../frame/Register.module.css';
import { openWithin } from './StartPart.tsx';
import styles from './Survey.module.css';

export interface SurveyRegisterProps {
  readonly standing: SurveyStanding;
  /** Id of the step shown; undefined before the first. */
  readonly current: string | undefined;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
  readonly onKeys: () => void;
}

/** On a desk: the walk at the left, with what is open at each place. */
export function SurveyRegister({ standing, current, onUndo, onRedo, onKeys }: SurveyRegisterProps) {
  const {
    open: { job },
  } = useDesk();
  const [first, second] = jobLines(job);
  const shown = standing.steps.find(({ id }) => id === current);
  const here = shown?.thing === undefined ? current : shown.part;
  const steps = standing.steps.filter(({ thing }) => thing === undefined);
  return (
    <nav className={register.register} aria-label="The walk">
      <House inBook={false} />
      <div className={register.job}>
        <Link to="/job/$id/$sheet" params={{ id: job.id, sheet: '01' }}>
          <b>{job.name}</b>
        </Link>
        <span>{first}</span>
        <span>{second}</span>
      </div>
      <ol className={`${register.rows} ${styles.walk}`}>
        {[
          { id: undefined, name: 'Before the first step', open: 0 },
          ...steps.map((step) => ({ id: step.id, name: step.name, open: openWithin(standing, step) })),
          { id: 'close', name: 'Close the survey', open: standing.holes.length },
        ].map(({ id, name, open }) => (
          <li key={name}>
            {id === undefined ? (
              <Link to="/job/$id/survey" params={{ id: job.id }} activeOptions={{ exact: true }}>
                {name}
              </Link>
            ) : (
              <Link
                to="/job/$id/survey/$step"
                params={{ id: job.id, step: id }}
                aria-current={id === here ? 'page' : undefined}
              >
                <span>{name}</span>
                {open > 0 && (
                  <span className="num">
                    {open}
                    <span className="out-of-sight"> open</span>
                  </span>
                )}
              </Link>
            )}
          </li>
        ))}
      </ol>
      <div className={register.foot}>
        <KeepingFoot onUndo={onUndo} onRedo={onRedo} />
        <Papers onKeys={onKeys} />
      </div>
    </nav>
  );
}
