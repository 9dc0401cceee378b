import type { Job } from '@eaveline/job';
import type { TrunkPlan } from '@eaveline/plan';
import { NumberField } from '../parts/NumberField.tsx';
import { PickField } from '../parts/PickField.tsx';
import { figure } from '../words/figure.ts';
import styles from './TrunkFields.module.css';

export interface TrunkFieldsProps {
  readonly trunk: TrunkPlan;
  readonly job: Job;
  /** Called when one of its fields is gone into. */
  readonly onEnter: () => void;
}

/** What was chosen for one trunk: where it is fed, with what, how far, behind which breaker. */
export function TrunkFields({ trunk, job, onEnter }: TrunkFieldsProps) {
  const at = (...rest: string[]) => ['choices', 'trunks', trunk.id, ...rest];
  const sheets = Object.entries(job.choices.equipment);
  const rise = new Map(trunk.sizeOptions.map(({ cableSheetId, totalV }) => [cableSheetId, totalV]));
  const feeds = trunk.feedOptions.map(({ drop, totalV }) => ({
    value: drop,
    words: `drop ${drop}: rises ${figure(totalV, 2)} V`,
  }));
  const cables = sheets
    .filter(([, sheet]) => sheet.kind === 'cable')
    .map(([value, { name }]) => {
      const totalV = rise.get(value);
      return { value, words: totalV === undefined ? name : `${name}: ${figure(totalV, 2)} V` };
    });
  const breakers = sheets
    .filter(([, sheet]) => sheet.kind === 'breaker')
    .map(([value, { name }]) => ({ value, words: name }));
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: nothing is pressed here; the trunk in hand stays the one shown
    <div className={styles.fields} onFocus={onEnter}>
      <PickField label="Fed at" path={at('feedDrop')} options={feeds} />
      <NumberField label="Home run" path={at('homeRun', 'lengthM')} unit="m" />
      <div className={styles.wide}>
        <PickField label="Home run in" path={at('homeRun', 'cableSheet')} options={cables} />
      </div>
      <PickField label="Breaker" path={at('breakerSheet')} options={breakers} />
    </div>
  );
}
