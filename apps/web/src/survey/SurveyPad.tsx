import type { Asked } from '@eaveline/job';
import { type Plan, wantedFacts } from '@eaveline/plan';
import { useMemo } from 'react';
import { useJob } from '../job/JobContext.tsx';
import pad from '../pad/Pad.module.css';
import { StateWord } from '../parts/StateWord.tsx';
import { ruleWords } from '../words/ruleWords.ts';
import styles from './Survey.module.css';

export interface SurveyPadProps {
  readonly asked: Asked | undefined;
  readonly plan: Plan | undefined;
}

/** Beside the form: what the question is for, which rules need it, and how each of them stands now. */
export function SurveyPad({ asked, plan }: SurveyPadProps) {
  const { job } = useJob();
  const wanted = useMemo(() => wantedFacts(job), [job]);
  const rules = wanted.find(({ at }) => at === `facts.${asked?.path}`)?.rules ?? [];
  return (
    <aside className={pad.pad} aria-label="What it is for" id="pad" tabIndex={-1}>
      <div className={pad.boxes}>
        <div>
          <small>question</small>
          <b>{asked?.ask ?? 'none selected'}</b>
        </div>
        <div>
          <small>rules</small>
          <b>{asked === undefined ? '' : rules.length}</b>
        </div>
      </div>
      <div className={pad.sum}>
        {asked === undefined && <p className="quiet">Go into a question: what it is for is written here.</p>}
        {asked !== undefined && (
          <>
            <p>{`${asked.because.charAt(0).toUpperCase()}${asked.because.slice(1)}.`}</p>
            {rules.length === 0 && <p className="quiet">No rule waits for it.</p>}
            {rules.map((rule) => {
              const findings = plan?.checks.findings.filter((finding) => finding.rule === rule) ?? [];
              return (
                <section key={rule} className={styles.padRule}>
                  <h2>{ruleWords(rule)}</h2>
                  {findings.length === 0 && <p className="quiet">Nothing to judge yet.</p>}
                  {findings.slice(0, 4).map(({ id, state, title, unconfirmed }) => (
                    <p key={id}>
                      <StateWord state={state} unconfirmed={unconfirmed} /> {title}
                    </p>
                  ))}
                  {findings.length > 4 && <p className="quiet">And {findings.length - 4} more.</p>}
                </section>
              );
            })}
          </>
        )}
      </div>
    </aside>
  );
}
