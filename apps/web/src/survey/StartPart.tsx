import { INSTRUMENTS, type Instrument } from '@eaveline/job';
import type { SurveyStanding } from '@eaveline/plan';
import { Link } from '@tanstack/react-router';
import { useDesk } from '../desk/DeskContext.tsx';
import { KeepingFoot } from '../frame/KeepingFoot.tsx';
import { useJob } from '../job/JobContext.tsx';
import { sayWhoIsHere, useWho } from '../job/whoIsHere.ts';
import { Part } from '../parts/Part.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import { useNarrow } from '../parts/useNarrow.ts';
import { ClosePart } from './ClosePart.tsx';
import { changedSince } from './changedSince.ts';
import { SavePhotos } from './SavePhotos.tsx';
import styles from './Survey.module.css';
import { seenWords } from './seenWords.ts';
import { sayInstrument, useBag } from './surveyor.ts';
import { openAt, openWords } from './surveyWords.ts';

export interface StartPartProps {
  readonly standing: SurveyStanding;
}

/** Before the first step: who is here, what is in the bag, and the walk with what is open at each place. */
export function StartPart({ standing }: StartPartProps) {
  const { job } = useJob();
  const who = useWho();
  const bag = useBag();
  const narrow = useNarrow();
  const changed = changedSince(job, standing);
  return (
    <>
      {changed.length > 0 && (
        <Part title="Changed since the survey closed" count={changed.length} ruled>
          <ul className={styles.rows}>
            {changed.map(({ what, path, step, seen }) => (
              <li key={path}>
                <Link to="/job/$id/survey/$step" params={{ id: job.id, step }}>
                  <b>{what}</b>
                  <span className="quiet">{seenWords(seen, job.facts.site.zone, new Date())}</span>
                </Link>
              </li>
            ))}
          </ul>
        </Part>
      )}
      <Part title="Who is here, with what" ruled>
        <TypedField
          label="Surveyed by"
          value={who}
          onType={sayWhoIsHere}
          placeholder="name"
          offered={Object.values(job.choices.crew).map(({ name }) => name)}
        />
        <details className={styles.bag}>
          <summary>
            Instruments in the bag: {Object.values(bag).filter((name) => name.trim() !== '').length} of{' '}
            {Object.keys(INSTRUMENTS).length} named
          </summary>
          {(Object.entries(INSTRUMENTS) as [Instrument, string][]).map(([kind, name]) => (
            <TypedField
              key={kind}
              label={name.charAt(0).toUpperCase() + name.slice(1)}
              value={bag[kind] ?? ''}
              onType={(words) => sayInstrument(kind, words)}
              placeholder="name and number"
            />
          ))}
        </details>
        <p className="quiet small">
          Remembered on this device and written with every reading. Each reading can name another.
        </p>
      </Part>
      {narrow ? <Walk standing={standing} /> : <ClosePart standing={standing} refusal={undefined} />}
      <p className={styles.listActs}>
        <Link className={styles.add} to="/job/$id/survey/$step" params={{ id: job.id, step: 'paper' }}>
          The same form on paper
        </Link>
        <SavePhotos />
      </p>
      {narrow && <Kept />}
    </>
  );
}

/** Where the survey is kept, the steps back and forth, the job as a file; on a desk that stands at the left already. */
function Kept() {
  const { session, say } = useDesk();
  return (
    <Part title="Where it is kept">
      <KeepingFoot onUndo={() => say(session.undo())} onRedo={() => say(session.redo())} />
    </Part>
  );
}

/** The walk with what is open at each place; on a desk it stands at the left already. */
function Walk({ standing }: StartPartProps) {
  const { job } = useJob();
  return (
    <Part title="The walk" ruled>
      <ol className={styles.rows}>
        {standing.steps
          .filter(({ thing }) => thing === undefined)
          .map((step) => (
            <li key={step.id}>
              <Link to="/job/$id/survey/$step" params={{ id: job.id, step: step.id }}>
                <b>{step.name}</b>
                <span className="quiet">{openWords(openWithin(standing, step))}</span>
              </Link>
            </li>
          ))}
        <li>
          <Link to="/job/$id/survey/$step" params={{ id: job.id, step: 'close' }}>
            <b>Close the survey</b>
            <span className="quiet">{openWords(standing.holes.length)}</span>
          </Link>
        </li>
      </ol>
    </Part>
  );
}

/** What is open at a step of the house, its things counted in. */
export function openWithin(standing: SurveyStanding, step: SurveyStanding['steps'][number]): number {
  const things = standing.steps.filter(
    ({ id, thing, part }) => id === step.id || (thing !== undefined && part === step.part && step.part !== 'attic'),
  );
  return things.reduce((sum, { id }) => sum + openAt(standing, id).length, 0);
}
