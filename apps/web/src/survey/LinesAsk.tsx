import type { Job } from '@eaveline/job';
import styles from './Ask.module.css';
import type { AskControlProps } from './askControl.ts';
import { useFactDesk } from './factDesk.ts';

/** Lines a supply has. */
const LINES = {
  'single-phase': ['L1'],
  'split-phase': ['L1', 'L2'],
  'three-phase': ['L1', 'L2', 'L3'],
} as const satisfies Record<Job['facts']['supply']['system'], readonly string[]>;

/** The lines a thing stands on: one or more, each ticked by its letters. */
export function LinesAsk({ on, id }: AskControlProps) {
  const { job } = useFactDesk();
  const has: readonly string[] = LINES[job.facts.supply.system];
  const ticked: readonly string[] = Array.isArray(on.value) ? on.value : [];
  const toggle = (line: string) => {
    const next = has.filter((each) => (each === line ? !ticked.includes(line) : ticked.includes(each)));
    on.answer(next.length === 0 ? undefined : next);
  };
  return (
    <fieldset className={styles.options} aria-labelledby={`${id}-ask`}>
      {has.map((line) => (
        <label key={line}>
          <input type="checkbox" checked={ticked.includes(line)} onChange={() => toggle(line)} />
          <span>{line}</span>
        </label>
      ))}
    </fieldset>
  );
}
