import { useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { sayWhoIsHere, useWho } from '../job/whoIsHere.ts';
import { TypedField } from '../parts/TypedField.tsx';

/** Asks who is here, on every step, until somebody has said. */
export function WhoPart() {
  const { job } = useJob();
  const who = useWho();
  const [asked] = useState(who === '');
  if (!asked) return null;
  return (
    <TypedField
      label="Surveyed by"
      value={who}
      onType={sayWhoIsHere}
      placeholder="name, kept with every fact"
      offered={Object.values(job.choices.crew).map(({ name }) => name)}
    />
  );
}
