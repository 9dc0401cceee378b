import styles from './Ledger.module.css';

export interface LedgerLine {
  readonly what: string;
  readonly factor?: string;
  readonly value: string;
}

export interface LedgerProps {
  readonly lines: readonly LedgerLine[];
  readonly total: LedgerLine;
  readonly label: string;
}

/** A sum as it is written on paper: what, factor, running value; one rule above the total, a double one below. */
export function Ledger({ lines, total, label }: LedgerProps) {
  return (
    <table className={styles.ledger} aria-label={label}>
      <tbody>
        {lines.map(({ what, factor, value }) => (
          <tr key={what}>
            <th scope="row">{what}</th>
            <td className={styles.factor}>{factor}</td>
            <td className="num">{value}</td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">{total.what}</th>
          <td className={styles.factor}>{total.factor}</td>
          <td className="num">{total.value}</td>
        </tr>
      </tfoot>
    </table>
  );
}
