import styles from './TitleBlock.module.css';

export interface TitleCell {
  readonly what: string;
  readonly says: string;
  readonly strong?: boolean;
  /** Cells that go first where there is little room. */
  readonly spare?: boolean;
}

export interface TitleBlockProps {
  readonly cells: readonly TitleCell[];
}

/** The title block at the foot of a sheet: it takes the place of a header bar. */
export function TitleBlock({ cells }: TitleBlockProps) {
  return (
    <footer className={styles.title}>
      {cells.map(({ what, says, strong, spare }) => (
        <div key={what} data-spare={spare || undefined}>
          <small>{what}</small>
          {strong ? <b>{says}</b> : <span>{says}</span>}
        </div>
      ))}
    </footer>
  );
}
