import { cleanJob, idFrom, type Job, type RegionCode, regions, remarkLine } from '@eaveline/job';
import { useState } from 'react';
import { Act } from '../parts/Act.tsx';
import { Part } from '../parts/Part.tsx';
import { TypedField } from '../parts/TypedField.tsx';
import styles from './BookPage.module.css';
import { ClockPick } from './ClockPick.tsx';
import { PlaceFields } from './PlaceFields.tsx';
import { PlainPick } from './PlainPick.tsx';
import { clockNear } from './towns.ts';
import { NO_PLACE, readPlace } from './typedPlace.ts';
import { useTowns } from './useTowns.ts';

const SYSTEM_WORDS = { 'single-phase': 'one', 'split-phase': 'split', 'three-phase': 'three' } as const;

export interface NewJobProps {
  /** Region of the last job, offered first. */
  readonly region: RegionCode;
  readonly firm: string | undefined;
  readonly isTaken: (id: string) => boolean;
  readonly onMade: (job: Job) => void;
  readonly onLeave: () => void;
}

/** A clean sheet: one address, a place, a region. The survey finds the rest. */
export function NewJob({ region: first, firm, isTaken, onMade, onLeave }: NewJobProps) {
  const [address, setAddress] = useState('');
  const [customer, setCustomer] = useState('');
  const [place, setPlace] = useState(NO_PLACE);
  const [code, setCode] = useState(first);
  const [system, setSystem] = useState<string>();
  const [zone, setZone] = useState<string>();
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<readonly string[]>([]);
  const region = regions[code];
  const supply = region.supplies.find((each) => each.system === system) ?? region.supplies[0];
  const read = readPlace(place);
  const towns = useTowns();
  const offered = clockNear(towns, 'latitudeDeg' in read ? read : undefined, region);
  const picked = region.zones.find((each) => each === zone);
  const clock = picked ?? offered.zone;

  const begin = () => {
    setTried(true);
    const name = address.trim();
    if (name === '' || !('latitudeDeg' in read) || clock === undefined) return;
    const made = cleanJob({
      ...read,
      name,
      id: idFrom(name, isTaken),
      region: code,
      system: supply.system,
      zone: clock,
      firm,
      customer: customer.trim() === '' ? undefined : customer.trim(),
    });
    if ('job' in made) onMade(made.job);
    else setRefused(made.remarks.map(remarkLine));
  };

  return (
    <Part title="A clean sheet. One address, three measures." ruled>
      <div className={styles.form}>
        <TypedField
          label="Where"
          value={address}
          onType={setAddress}
          placeholder="address"
          refusal={tried && address.trim() === '' ? 'Type the address: the job is called by it.' : undefined}
          onEnter={begin}
        />
        <TypedField label="Customer" value={customer} onType={setCustomer} placeholder="not known yet" />
        <PlainPick
          label="Rules"
          value={code}
          options={Object.entries(regions).map(([value, { name }]) => ({ value, words: name }))}
          onPick={(value) => setCode(value as RegionCode)}
        />
        <PlaceFields
          place={place}
          onType={setPlace}
          towns={towns}
          onTown={(town) => {
            setZone(undefined); // a town picked brings its own
            if (town.region !== undefined) setCode(town.region);
          }}
          wrong={tried ? read : undefined}
        />
        <PlainPick
          label="Phases"
          value={supply.system}
          options={region.supplies.map((each) => ({ value: each.system, words: SYSTEM_WORDS[each.system] }))}
          onPick={setSystem}
        />
        <ClockPick
          zones={region.zones}
          clock={clock}
          words={picked === undefined ? offered.words : undefined}
          tried={tried}
          onPick={setZone}
        />
      </div>
      <p className="quiet small">
        Until the survey says otherwise: {region.nominalV} V, {region.earthing}, {supply.serviceA} A. The three measures
        are the survey’s: eaves, side and pitch.
      </p>
      {refused.map((line) => (
        <p key={line} data-state="fails" className={styles.refused}>
          {line}
        </p>
      ))}
      <div className={styles.bar}>
        <Act look="main" onPress={begin}>
          Begin the survey
        </Act>
        <Act look="plain" onPress={onLeave}>
          Not now
        </Act>
      </div>
    </Part>
  );
}
