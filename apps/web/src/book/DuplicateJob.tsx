import { type DuplicateFor, duplicateJob, idFrom, isRegionCode, type Job, regions } from '@eaveline/job';
import { useState } from 'react';
import { Act } from '../parts/Act.tsx';
import { Part } from '../parts/Part.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import styles from './BookPage.module.css';
import { ClockPick } from './ClockPick.tsx';
import { PlaceFields } from './PlaceFields.tsx';
import { clockNear } from './towns.ts';
import { NO_PLACE, readPlace } from './typedPlace.ts';
import { useTowns } from './useTowns.ts';

export interface DuplicateJobProps {
  readonly job: Job;
  readonly isTaken: (id: string) => boolean;
  readonly onMade: (job: Job) => void;
  readonly onLeave: () => void;
}

/** A job once more: for the same house, or its design as a pattern for another. */
export function DuplicateJob({ job, isTaken, onMade, onLeave }: DuplicateJobProps) {
  const [kind, setKind] = useState<DuplicateFor['kind']>('same house');
  const [name, setName] = useState(`${job.name}, again`);
  const [address, setAddress] = useState('');
  const [place, setPlace] = useState(NO_PLACE);
  const [zone, setZone] = useState<string>();
  const [tried, setTried] = useState(false);
  const read = readPlace(place);
  const towns = useTowns();
  const { variant } = job.choices.rules;
  const own = { name: 'this job', zones: [job.facts.site.zone] };
  const region = isRegionCode(variant) ? regions[variant] : own;
  const offered = clockNear(towns, 'latitudeDeg' in read ? read : undefined, region);
  const clock = zone ?? offered.zone;
  const called = (kind === 'same house' ? name : address).trim();
  const site = 'latitudeDeg' in read && clock !== undefined ? { address: called, ...read, zone: clock } : undefined;

  const copyFor: DuplicateFor | undefined =
    kind === 'same house' ? { kind } : site === undefined ? undefined : { kind, site };
  // what comes along hangs on what it is for, not on where the other house stands
  const shown = duplicateJob(job, {
    id: job.id,
    name: job.name,
    copyFor: kind === 'same house' ? { kind } : { kind, site: job.facts.site },
  });

  const make = () => {
    setTried(true);
    if (called === '' || copyFor === undefined) return;
    onMade(duplicateJob(job, { id: idFrom(called, isTaken), name: called, copyFor }).job);
  };

  return (
    <Part title={`Duplicate ${job.name}`} ruled>
      <fieldset className={styles.choice}>
        <legend>For</legend>
        {(['same house', 'another house'] as const).map((each) => (
          <label key={each}>
            <input type="radio" name="duplicate-for" checked={kind === each} onChange={() => setKind(each)} />
            {each === 'same house' ? 'the same house' : 'another house'}
          </label>
        ))}
      </fieldset>
      <div className={styles.form}>
        {kind === 'same house' ? (
          <TypedField
            label="Name"
            value={name}
            onType={setName}
            refusal={tried && called === '' ? 'A job has a name.' : undefined}
            onEnter={make}
          />
        ) : (
          <>
            <TypedField
              label="Where"
              value={address}
              onType={setAddress}
              placeholder="address"
              refusal={tried && called === '' ? 'Type the address: the job is called by it.' : undefined}
            />
            <PlaceFields
              place={place}
              onType={setPlace}
              towns={towns}
              onTown={() => setZone(undefined)}
              wrong={tried ? read : undefined}
            />
            <ClockPick
              zones={region.zones}
              clock={clock}
              words={zone === undefined ? offered.words : undefined}
              tried={tried}
              onPick={setZone}
            />
          </>
        )}
      </div>
      <p className="small">
        <b>Left behind:</b> {shown.emptied.join('; ')}.
      </p>
      {shown.pattern.length > 0 && (
        <p className="small">
          <b>Taken as a pattern, not measured there:</b> {shown.pattern.join('; ')}. The checks ask for the rest.
        </p>
      )}
      {shown.pattern.length === 0 && (
        <p className="small">
          <b>Comes along:</b> every fact of the house with who measured it, and every choice.
        </p>
      )}
      <div className={styles.bar}>
        <Act look="main" onPress={make}>
          Make the duplicate
        </Act>
        <Act look="plain" onPress={onLeave}>
          Not now
        </Act>
      </div>
    </Part>
  );
}
