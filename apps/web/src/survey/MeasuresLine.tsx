import { measuresOf, type PlaneFacts } from '@eaveline/job';
import { measuresMayDiffer } from '@eaveline/plan';
import { useJob } from '../job/JobContext.tsx';
import { Mark } from '../parts/Mark.tsx';
import { figure } from '../words/figure.ts';
import styles from './Survey.module.css';
import { apartWords } from './surveyWords.ts';

export interface MeasuresLineProps {
  readonly plane: Parameters<typeof measuresOf>[0] & Pick<Partial<PlaneFacts>, 'name'>;
}

/** Two measures of one length beside each other: they close, or one of them is wrong. */
export function MeasuresLine({ plane }: MeasuresLineProps) {
  const { job } = useJob();
  const letPass = measuresMayDiffer(job);
  const mm = (metres: number) => figure(Math.round(metres * 1000), 0);
  return (
    <ul className={styles.measures}>
      {measuresOf(plane).map((measures) => {
        const closes = measures.apart <= letPass;
        return (
          <li key={measures.what} data-state={closes ? 'meets' : 'fails'}>
            <Mark state={closes ? 'meets' : 'fails'} size={16} />
            <span role={closes ? undefined : 'alert'}>
              <b>{measures.what === 'slope' ? 'Slope, by tape and by plan' : 'Ridge and eave'}</b>{' '}
              <span>
                {closes
                  ? `${mm(measures.firstM)} and ${mm(measures.secondM)} mm: ${figure(100 * measures.apart, 1)} in 100 apart. They close.`
                  : apartWords(measures)}
              </span>
            </span>
          </li>
        );
      })}
    </ul>
  );
}
