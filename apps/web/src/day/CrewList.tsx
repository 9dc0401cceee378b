import type { Job } from '@eaveline/job';
import { PickField } from '../parts/PickField.tsx';
import fields from '../trunks/TrunkFields.module.css';

export interface CrewListProps {
  readonly crew: Job['choices']['crew'];
}

const ROLES = ['lead electrician', 'electrician', 'roof hand'].map((value) => ({ value, words: value }));

/** Who comes, and as what. */
export function CrewList({ crew }: CrewListProps) {
  const people = Object.entries(crew);
  if (people.length === 0) return <p className="quiet">Nobody is named yet.</p>;
  return (
    <div className={fields.fields}>
      {people.map(([id, { name }]) => (
        <PickField key={id} label={name} path={['choices', 'crew', id, 'role']} options={ROLES} />
      ))}
    </div>
  );
}
