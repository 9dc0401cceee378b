import styles from './BookPage.module.css';
import { PlainPick } from './PlainPick.tsx';

export interface ClockPickProps {
  readonly zones: readonly string[];
  /** Undefined where it is yet to be picked. */
  readonly clock: string | undefined;
  /** Whose clock it is, or why it has to be picked. */
  readonly words: string | undefined;
  /** True once the job was to be made. */
  readonly tried: boolean;
  readonly onPick: (zone: string) => void;
}

/** The civil clock of a place. */
export function ClockPick({ zones, clock, words, tried, onPick }: ClockPickProps) {
  return (
    <div>
      <PlainPick
        label="Clock"
        value={clock ?? ''}
        options={[
          ...(clock === undefined ? [{ value: '', words: 'pick one' }] : []),
          ...zones.map((value) => ({ value, words: value.replaceAll('_', ' ') })),
        ]}
        onPick={onPick}
      />
      {words !== undefined && <p className="quiet small">{words}</p>}
      {tried && clock === undefined && (
        <p data-state="fails" className={styles.refused}>
          Pick the clock of the place: the hours of sun and tariff are counted by it.
        </p>
      )}
    </div>
  );
}
