import styles from './Caution.module.css';

export interface CautionProps {
  readonly words: string;
  /** What more to do, below it. */
  readonly more?: string;
}

/** A caution in its frame: hazard and what to do. It stands above the work it is for. */
export function Caution({ words, more }: CautionProps) {
  return (
    <p className={styles.caution}>
      <svg width="24" height="22" viewBox="0 0 20 18" aria-hidden="true">
        <path className="pen50" d="M10 1.5 19 17H1Z" />
        <path className="pen50" d="M10 7v5m0 1.6v2" />
      </svg>
      <span>
        <span className="out-of-sight">Caution: </span>
        <b>{words}</b>
        {more !== undefined && <> {more}</>}
      </span>
    </p>
  );
}
