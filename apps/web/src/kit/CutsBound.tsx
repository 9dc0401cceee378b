import type { KitPlan } from '@eaveline/plan';
import { RuleGauge } from '../parts/RuleGauge.tsx';
import { percent } from '../words/figure.ts';
import styles from './CutsBound.module.css';
import { boundWords } from './headOfKit.ts';

export interface CutsBoundProps {
  readonly cutting: KitPlan['cutting'];
}

/** How many bars it takes, on the rule beside the bound no cutting can beat. */
export function CutsBound({ cutting }: CutsBoundProps) {
  const { bars, lowerBound, wasteShare, kerfMm } = cutting;
  return (
    <div className={styles.bound}>
      <RuleGauge
        unit="bars"
        width={200}
        decimals={0}
        limit={{ value: lowerBound, sense: 'at least' }}
        needle={{ value: bars, fails: false }}
      />
      <p>
        {boundWords(cutting)} {percent(wasteShare, 1)} is left over or sawdust; the saw takes {kerfMm} mm a cut.
      </p>
    </div>
  );
}
