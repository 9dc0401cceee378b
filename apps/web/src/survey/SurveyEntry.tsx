import type { Job } from '@eaveline/job';
import { surveyStanding } from '@eaveline/plan';
import { Link } from '@tanstack/react-router';
import { useMemo } from 'react';
import { changedSince } from './changedSince.ts';
import styles from './SurveyEntry.module.css';
import { entryWords } from './surveyWords.ts';

export interface SurveyEntryProps {
  readonly job: Job;
}

/** The way into the survey: how much of it is open, or who closed it and what changed since. */
export function SurveyEntry({ job }: SurveyEntryProps) {
  const words = useMemo(() => {
    const standing = surveyStanding(job);
    return entryWords(standing.holes.length, job.facts.surveyClosed?.by, changedSince(job, standing).length);
  }, [job]);
  return (
    <p className={styles.entry} data-main={job.state === 'survey' || undefined}>
      <Link to="/job/$id/survey" params={{ id: job.id }}>
        {words}
      </Link>
    </p>
  );
}
