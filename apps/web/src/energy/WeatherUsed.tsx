import type { Climate } from '@eaveline/plan';
import { sentence } from '../words/count.ts';
import { figure, percent } from '../words/figure.ts';
import styles from './WeatherUsed.module.css';

export interface WeatherUsedProps {
  readonly climate: Climate;
}

/** Which weather the year stands on: its places with how far off they are and how much each counts, how good, whose. */
export function WeatherUsed({ climate: { kind, places, quality, far, credit, remarks } }: WeatherUsedProps) {
  return (
    <div className={styles.weather}>
      <ul>
        {places.map(({ name, distanceKm, weight }) => (
          <li key={name}>
            <span>{name}</span>
            <span className="num">{figure(distanceKm, 0)} km</span>
            <span className="num">{percent(weight)}</span>
          </li>
        ))}
      </ul>
      <p>
        {far && <b>Farther off than this way of working carries. </b>}
        {sentence(kind)}. {sentence(quality)}. {credit}
      </p>
      {remarks.map((remark) => (
        <p key={remark}>{remark}</p>
      ))}
    </div>
  );
}
