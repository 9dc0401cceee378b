import { House } from '../frame/House.tsx';
import { Papers } from '../frame/Papers.tsx';
import register from '../frame/Register.module.css';
import type { Book } from './bookDesk.ts';
import { ARCHIVED, SHELVES, type Shelf, STATIONS } from './entry.ts';
import { keptWords } from './keptWords.ts';

export interface ShelvesProps {
  readonly book: Book;
  /** Name of the shelf picked; undefined for all. */
  readonly current: string | undefined;
  readonly onPick: (shelf: string | undefined) => void;
  readonly onKeys: () => void;
}

/** The register of the Book: its shelves, and the stations a job passes. */
export function Shelves({ book, current, onPick, onKeys }: ShelvesProps) {
  const { entries } = book;
  const on = ({ holds }: Shelf) => entries.filter(({ job }) => holds(job)).length;
  const archived = on(ARCHIVED);
  return (
    <nav className={register.register} aria-label="Shelves">
      <House inBook />
      <div className={register.job}>
        <b>The Book</b>
        <span>{keptWords(book)}</span>
      </div>
      <ol className={register.rows}>
        <li>
          <button
            type="button"
            aria-current={current === undefined ? 'true' : undefined}
            onClick={() => onPick(undefined)}
          >
            <span>All</span>
            <span className="small quiet">{entries.length - archived}</span>
          </button>
        </li>
        {[...SHELVES, ARCHIVED].map((shelf) => (
          <li key={shelf.name}>
            <button
              type="button"
              aria-current={current === shelf.name ? 'true' : undefined}
              onClick={() => onPick(shelf.name)}
            >
              <span>{shelf.name}</span>
              <span className="small quiet">{on(shelf)}</span>
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
