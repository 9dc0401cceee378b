import styles from './Zones.module.css';

const COLUMNS = ['1', '2', '3', '4', '5', '6', '7', '8'];
const ROWS = ['A', 'B', 'C', 'D', 'E', 'F'];

/** The zones round a sheet's frame, ISO 5457: people and findings name a place by them. */
export function Zones() {
  return (
    <div className={styles.zones} aria-hidden="true">
      {(['top', 'foot'] as const).map((side) => (
        <div key={side} className={styles[side]}>
          {COLUMNS.map((column) => (
            <span key={column}>{column}</span>
          ))}
        </div>
      ))}
      {(['left', 'right'] as const).map((side) => (
        <div key={side} className={styles[side]}>
          {ROWS.map((row) => (
            <span key={row}>{row}</span>
          ))}
        </div>
      ))}
    </div>
  );
}
