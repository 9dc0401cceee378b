import { House } from '../frame/House.tsx';
import { Papers } from '../frame/Papers.tsx';
import register from '../frame/Register.module.css';
import { counted, sentence } from '../words/count.ts';
import { type BookEntry, SHELVES, STATIONS } from './entry.ts';

export interface ShelvesProps {
  readonly entries: readonly BookEntry[];
  /** Name of the shelf picked; undefined for all. */
  readonly current: string | undefined;
  readonly onPick: (shelf: string | undefined) => void;
  readonly onKeys: () => void;
}

/** The register of the Book: its shelves, and the stations a job passes. */
export function Shelves({ entries, current, onPick, onKeys }: ShelvesProps) {
  const on = (states: readonly string[]) => entries.filter(({ job }) => states.includes(job.state)).length;
  return (
    <nav className={register.register} aria-label="Shelves">
      <House inBook />
      <div className={register.job}>
        <b>The Book</b>
        <span>{sentence(counted(entries.length, 'job'))}, kept on this computer</span>
        <span />
      </div>
      <ol className={register.rows}>
        <li>
          <button
            type="button"
            aria-current={current === undefined ? 'true' : undefined}
            onClick={() => onPick(undefined)}
          >
            <span>All</span>
            <span className="small quiet">{entries.length}</span>
          </button>
        </li>
        {SHELVES.map(({ name, states }) => (
          <li key={name}>
            <button type="button" aria-current={current === name ? 'true' : undefined} onClick={() => onPick(name)}>
              <span>{name}</span>
              <span className="small quiet">{on(states)}</span>
            </button>
          </li>
        ))}
      </ol>
      <p className="small quiet" style={{ marginTop: 'var(--gap-l)' }}>
        Where a job stands
      </p>
      <svg
        width="200"
        height={STATIONS.length * 19 + 6}
        style={{ marginTop: 'var(--gap-xs)', flex: 'none' }}
        aria-hidden="true"
      >
        <path className="pen25" d={`M8 8V${8 + (STATIONS.length - 1) * 19}`} />
        {STATIONS.map((station, i) => (
          <g key={station}>
            <path className="pen35" d={`M1 ${8 + i * 19}h14`} />
            <text className="qt" x="24" y={12.5 + i * 19}>
              {station}
            </text>
          </g>
        ))}
      </svg>
      <div className={register.foot}>
        <Papers onKeys={onKeys} />
      </div>
    </nav>
  );
}
