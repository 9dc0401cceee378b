import styles from './Specimens.module.css';

/** Capital heights of ISO 3098 and the half steps between, as the tokens have them. */
const SIZES = [
  ['2.1 mm', 'zone', '1 154', 'zones, labels of boxes'],
  ['2.5 mm', '25', '1 154 mm', 'drawing, second line of a row'],
  ['3 mm', '30', 'home run', 'text on a desk'],
  ['3.5 mm', '35', 'Trunk A', 'heading; text on a phone'],
  ['4.2 mm', '42', '11 Tests', 'head of a phone'],
  ['5 mm', '50', '5.32 V', 'the sentence of a sheet'],
  ['7 mm', '70', '643', 'the answer of a pad'],
  ['10 mm', '100', '8.3', 'a reading on the roof'],
] as const;

/** Lettering by its size, and what each is for. */
export function Lettering() {
  return (
    <ul className={styles.sizes}>
      {SIZES.map(([height, token, sample, use]) => (
        <li key={token}>
          <span className="quiet">{height}</span>
          <b style={{ fontSize: `var(--letter-${token})`, lineHeight: 1.2 }}>{sample}</b>
          <span className="quiet">{use}</span>
        </li>
      ))}
    </ul>
  );
}

const PENS = [
  ['pen70', '0.7', 'frame, limit, cut edge'],
  ['pen50', '0.5', 'outline seen'],
  ['pen35', '0.35', 'edge seen, second order'],
  ['pen25', '0.25', 'dimension, leader'],
  ['pen18', '0.18', 'hatch, pad squares'],
  ['pen25 hidden-line', '0.25', 'hidden: 7, 3.5'],
  ['pen25 centre-line', '0.25', 'centre: 18, 3, 3, 3'],
  ['pen25 dotted-line', '0.25', 'drawn to, projected'],
] as const;

/** Lines of ISO 128 by their pen, and what each means on a drawing. */
export function Pens() {
  return (
    <ul className={styles.pens}>
      {PENS.map(([pen, width, use]) => (
        <li key={pen}>
          <svg width="110" height="10" aria-hidden="true">
            <path className={pen} d="M0 5H110" />
          </svg>
          <span>{width}</span>
          <span className="quiet">{use}</span>
        </li>
      ))}
    </ul>
  );
}

const GROUNDS = ['desk', 'film', 'pad', 'tint', 'tint-deep', 'marker-wash'] as const;
const INKS = ['ink', 'ink-quiet', 'ink-fails', 'ink-meets', 'ink-ask'] as const;

/** Every ink on every ground it may lie on. */
export function Inks() {
  return (
    <ul className={styles.grounds}>
      {GROUNDS.map((ground) => (
        <li key={ground} style={{ background: `var(--${ground})` }}>
          <b>{ground}</b>
          {INKS.filter((ink) => ground !== 'tint-deep' || ink === 'ink').map((ink) => (
            <span key={ink} style={{ color: `var(--${ink})` }}>
              {ink.replace('ink-', '')}
            </span>
          ))}
        </li>
      ))}
      <li className={styles.solid}>
        <b>on solid ink</b>
      </li>
      <li className={styles.solid} data-state="fails">
        <b>on red pencil</b>
      </li>
    </ul>
  );
}

const GAPS = ['xs', 's', 'm', 'l', 'xl', 'xxl'] as const;

/** Gaps, each a part or a number of the pad's square. */
export function Gaps() {
  return (
    <ul className={styles.gaps}>
      {GAPS.map((gap) => (
        <li key={gap}>
          <i style={{ width: `var(--gap-${gap})` }} />
          <span>{gap}</span>
        </li>
      ))}
    </ul>
  );
}
