import type { Change } from '@eaveline/plan';
import { useEffect, useMemo, useState } from 'react';
import { PAPERS, type Paper } from '../frame/paper.ts';
import { SheetFrame } from '../frame/SheetFrame.tsx';
import { changeJob, refusalWords } from '../job/changeJob.ts';
import { JobContext, type JobOnDesk } from '../job/JobContext.tsx';
import { Part } from '../parts/Part.tsx';
import { sentence } from '../words/count.ts';
import { SPECIMENS } from './all.ts';
import { job as invented } from './cases.ts';
import { GlyphProof } from './GlyphProof.tsx';
import { Gaps, Inks, Lettering, Pens } from './Lettering.tsx';
import styles from './Specimens.module.css';
import type { Specimen } from './specimen.ts';

const GROUPS = [...new Set(SPECIMENS.map(({ group }) => group))];
const SAID: Readonly<Record<Paper, string>> = {
  day: 'the desk and the van',
  dark: 'the garage, the loft, the evening',
  roof: 'full sun and gloves',
};

/** Every component in every state, on the three papers side by side; printed, on the fourth. */
export function SpecimensPage() {
  const [job, setJob] = useState(invented);
  useEffect(() => {
    document.title = 'Specimens · Eaveline';
    document.documentElement.dataset.wiring = 'iec';
  }, []);
  const onDesk = useMemo<JobOnDesk>(() => {
    const edit = (changes: readonly Change[]) => {
      const changed = changeJob(job, changes);
      if ('refusal' in changed) return refusalWords(changed.refusal);
      setJob(changed.job);
      return undefined;
    };
    return { job, edit, mend: edit };
  }, [job]);
  const states = SPECIMENS.reduce((sum, each) => sum + each.states.length, 0);
  return (
    <JobContext value={onDesk}>
      <div className={styles.page}>
        <SheetFrame
          no="00"
          head={{
            sentence: 'Every part, in every state, on every paper.',
            quiet: 'Figures are invented. What is typed here is kept nowhere. Print this page for the fourth paper.',
          }}
          cells={[
            { what: 'sheet', says: '00 Specimens', strong: true },
            { what: 'parts', says: String(SPECIMENS.length) },
            { what: 'states', says: String(states) },
          ]}
        >
          <Part title="Papers, inks, pens, lettering, gaps" ruled>
            <OnPapers>
              <Inks />
              <Pens />
              <Lettering />
              <Gaps />
            </OnPapers>
          </Part>
          {GROUPS.map((group) => (
            <div key={group} data-group={group}>
              <Part title={group} ruled>
                {SPECIMENS.filter((each) => each.group === group).map((each) => (
                  <OneSpecimen key={each.name} specimen={each} />
                ))}
              </Part>
            </div>
          ))}
          <Part title="Proof of the letters" ruled>
            <GlyphProof />
          </Part>
        </SheetFrame>
      </div>
    </JobContext>
  );
}

/** The same on each paper, side by side. */
function OnPapers({ children }: { readonly children: React.ReactNode }) {
  return (
    <div className={styles.papers}>
      {PAPERS.map((paper) => (
        <div key={paper} className={styles.paper} data-paper={paper}>
          <p className={styles.which}>
            <b>{sentence(paper)}</b> {SAID[paper]}
          </p>
          {children}
        </div>
      ))}
    </div>
  );
}

function OneSpecimen({ specimen: { name, says, states, wide = false } }: { readonly specimen: Specimen }) {
  const shown = (
    <dl className={styles.states}>
      {states.map(({ state, show, touch }) => (
        <div key={state}>
          <dt>{state}</dt>
          <dd data-touch={touch}>{show}</dd>
        </div>
      ))}
    </dl>
  );
  return (
    <section className={styles.specimen} data-specimen={name} data-wide={wide || undefined}>
      <h3>{name}</h3>
      <p className="quiet">{says}</p>
      {name === 'Pad' ? <div className={styles.alone}>{shown}</div> : <OnPapers>{shown}</OnPapers>}
    </section>
  );
}
