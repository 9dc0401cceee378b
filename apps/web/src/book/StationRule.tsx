import type { Job } from '@eaveline/job';
import { STATIONS } from './entry.ts';

export interface StationRuleProps {
  readonly state: Job['state'];
  readonly width?: number;
}

/** Where a job stands on its road of seven stations. */
export function StationRule({ state, width = 118 }: StationRuleProps) {
  const x = (station: number) => 1 + (station * (width - 2)) / (STATIONS.length - 1);
  const now = STATIONS.indexOf(state);
  return (
    <svg width={width} height="24" viewBox={`0 0 ${width} 24`} role="img" aria-label={state}>
      <path className="pen25" d={`M0 12H${width}`} />
      {STATIONS.map((station, i) => (
        <path key={station} className={i <= now ? 'pen50' : 'pen25'} d={i <= now ? `M${x(i)} 5V19` : `M${x(i)} 8V16`} />
      ))}
      <path d={`M1 12H${x(now)}`} stroke="var(--ink)" strokeWidth="4" />
      <circle className="on-ink" cx={x(now)} cy="12" r="4.4" />
    </svg>
  );
}
