import { type Conductor, conductorSizes } from '@eaveline/job';
import styles from './Ask.module.css';
import type { AskControlProps } from './askControl.ts';
import { useFactDesk } from './factDesk.ts';

/** Size and metal of a cable: the sizes the tables hold, by the region's own measure. */
export function ConductorAsk({ on, id }: AskControlProps) {
  const { job } = useFactDesk();
  const kept = on.value as Conductor | undefined;
  const sizes = conductorSizes(job.choices.rules.pack);
  const at = sizes.findIndex(({ size }) => ('awg' in size ? size.awg === kept?.awg : size.areaMm2 === kept?.areaMm2));
  const material = kept?.material ?? 'copper';
  const answer = (picked: number, metal: Conductor['material']) => {
    const size = sizes[picked]?.size;
    // a strand that nobody read is taken as stranded, as mains are
    on.answer(size && { strandClass: 2, ...kept, areaMm2: undefined, awg: undefined, ...size, material: metal });
  };
  return (
    <>
      <span className={styles.line}>
        <select
          aria-labelledby={`${id}-ask`}
          value={kept === undefined ? -1 : at}
          onChange={(event) => answer(Number(event.target.value), material)}
        >
          <option value={-1}>not read</option>
          {sizes.map(({ words }, k) => (
            <option key={words} value={k}>
              {words}
            </option>
          ))}
        </select>
        <svg width="10" height="10" viewBox="0 0 10 10" aria-hidden="true">
          <path className="pen35" d="M1 3l4 4 4-4" />
        </svg>
      </span>
      {kept !== undefined && (
        <div className={styles.options} role="radiogroup" aria-label="Metal">
          {(['copper', 'aluminium'] as const).map((metal) => (
            <label key={metal}>
              <input type="radio" name={id} checked={material === metal} onChange={() => answer(at, metal)} />
              <span>{metal}</span>
            </label>
          ))}
        </div>
      )}
    </>
  );
}
