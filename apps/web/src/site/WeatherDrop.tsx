import type { Climate } from '@eaveline/plan';
import { useEffect, useId, useState, useSyncExternalStore } from 'react';
import { useJobSession } from '../desk/SessionContext.tsx';
import act from '../parts/Act.module.css';
import { Act } from '../parts/Act.tsx';
import { Mark } from '../parts/Mark.tsx';
import { figure, percent } from '../words/figure.ts';
import styles from './WeatherDrop.module.css';

export interface WeatherDropProps {
  readonly climate: Climate;
}

/** Which weather the plan stands on, and the place where a file of one's own is dropped for this session. */
export function WeatherDrop({ climate }: WeatherDropProps) {
  const session = useJobSession();
  const id = useId();
  const [over, setOver] = useState(false);
  const state = useSyncExternalStore(session.subscribe, session.state, session.state);
  const weather = state.kind === 'open' ? state.weather : undefined;
  const [reading, setReading] = useState<string>();

  // a file dropped beside the mark must not take the page away
  useEffect(() => {
    const stay = (event: DragEvent) => event.preventDefault();
    addEventListener('dragover', stay);
    addEventListener('drop', stay);
    return () => {
      removeEventListener('dragover', stay);
      removeEventListener('drop', stay);
    };
  }, []);

  async function take(file: File | undefined) {
    if (file === undefined) return;
    setReading(file.name);
    await session.readWeather(file.name, new Uint8Array(await file.arrayBuffer()));
    setReading(undefined);
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is the second way in; the file field below is the first
    <div
      className={styles.drop}
      data-over={over || undefined}
      onDragOver={() => setOver(true)}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        setOver(false);
        void take(event.dataTransfer.files[0]);
      }}
    >
      <ul>
        {climate.places.map(({ name, distanceKm, weight }) => (
          <li key={name}>
            {name}, {figure(distanceKm, 0)} km off{climate.places.length > 1 && `, counts ${percent(weight)}`}
          </li>
        ))}
      </ul>
      {climate.remarks.map((remark) => (
        <p key={remark} className="quiet small">
          {remark}
        </p>
      ))}
      <p className="quiet small">{climate.credit}</p>
      <p className={styles.pick}>
        <label htmlFor={id}>
          {reading === undefined ? 'Drop a year of weather here, or pick it:' : `${reading} is being read.`}
        </label>
        <input
          id={id}
          className="out-of-sight"
          type="file"
          accept=".epw,.csv,.json,.txt"
          onChange={(event) => void take(event.target.files?.[0])}
        />
        <label className={act.act} htmlFor={id}>
          Pick a file
        </label>
      </p>
      {weather !== undefined && (
        <div role="status">
          <p>
            <Mark state={weather.place === undefined ? 'fails' : 'meets'} size={15} />{' '}
            {weather.place === undefined
              ? `${weather.fileName} cannot be used. The plan stays on the weather before.`
              : `${weather.fileName}, ${weather.place}: used until this page is closed. The job does not keep it.`}
          </p>
          {weather.remarks.map((remark) => (
            <p key={remark} className="quiet small">
              {remark}
            </p>
          ))}
          {weather.place !== undefined && <Act onPress={() => void session.dropWeather()}>Back to monthly normals</Act>}
        </div>
      )}
    </div>
  );
}
