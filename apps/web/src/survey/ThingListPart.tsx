import { lookedFor, nameOf, seenAt, type ThingList, thingsAt } from '@eaveline/job';
import type { SurveyStanding } from '@eaveline/plan';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { whoIsHere } from '../job/whoIsHere.ts';
import { Act } from '../parts/Act.tsx';
import { Mark } from '../parts/Mark.tsx';
import { Part } from '../parts/Part.tsx';
import { keptDraft } from './draft.ts';
import { changesOf } from './factDesk.ts';
import styles from './Survey.module.css';
import { seenWords } from './seenWords.ts';
import { openAt, openWords } from './surveyWords.ts';

export interface ThingListPartProps {
  readonly list: ThingList;
  readonly standing: SurveyStanding;
}

/** Things of one sort: each with what is open of it, one more to add, or somebody's word that there is none. */
export function ThingListPart({ list, standing }: ThingListPartProps) {
  const { job, edit } = useJob();
  const [said, setSaid] = useState<string>();
  const things = Object.entries(thingsAt(job, list.at));
  const begun = keptDraft(job.id, list.at) !== undefined;
  const seen = seenAt(job, list.at);
  const title = list.many.charAt(0).toUpperCase() + list.many.slice(1);

  function none() {
    const by = whoIsHere();
    if (by === '') return setSaid('Nobody is named. That nothing is there stands with who looked.');
    const looked = { by, at: new Date().toISOString(), note: 'none' };
    setSaid(edit(changesOf({ facts: {}, seen: { [list.at]: looked } }), list.none ?? title));
  }
  return (
    <Part title={title} count={things.length} ruled>
      <ul className={styles.rows}>
        {things.map(([id, thing]) => (
          <li key={id}>
            <Link to="/job/$id/survey/$step" params={{ id: job.id, step: `${list.at}.${id}` }}>
              <b>{nameOf(thing, list)}</b>
              <span className="quiet">{openWords(openAt(standing, `${list.at}.${id}`).length)}</span>
            </Link>
          </li>
        ))}
      </ul>
      {things.length === 0 && seen !== undefined && (
        <p className={styles.looked}>
          <Mark state="meets" size={15} /> {list.none}. {seenWords(seen, job.facts.site.zone, new Date())}
        </p>
      )}
      {things.length === 0 && !lookedFor(job, list) && (
        <p className={styles.looked}>
          <Mark state="ask" size={15} /> Nobody has looked yet: {list.because}.
        </p>
      )}
      <p className={styles.listActs}>
        <Link className={styles.add} to="/job/$id/survey/$step" params={{ id: job.id, step: `${list.at}.new` }}>
          {begun ? `Go on with the ${list.one} that is begun` : `Add a ${list.one}`}
        </Link>
        {list.none !== undefined && things.length === 0 && seen === undefined && <Act onPress={none}>{list.none}</Act>}
      </p>
      {said !== undefined && (
        <p className={styles.refused} role="alert">
          <Mark state="fails" size={15} /> {said}
        </p>
      )}
    </Part>
  );
}
