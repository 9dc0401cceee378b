import { designSignature } from '@eaveline/job';
import type { Change, Finding, Mend } from '@eaveline/plan';
import { mendWords } from '../checks/mendWords.ts';
import { useJob } from '../job/JobContext.tsx';
import { Act } from '../parts/Act.tsx';
import { countWord, sentence } from '../words/count.ts';
import { withUnit } from '../words/figure.ts';
import { keepTogether } from '../words/keepTogether.ts';
import styles from './MendList.module.css';

export interface MendListProps {
  readonly finding: Finding;
  readonly onMend: (changes: readonly Change[], words: string) => void;
}

/** The ways out of a finding: a choice to change at a press, or an act for somebody on site. */
export function MendList({ finding, onMend }: MendListProps) {
  const { mends, unit } = finding;
  const take: MendListProps['onMend'] = (changes, words) => onMend(changes, mendWords(finding, words));
  const { job } = useJob();
  if (mends.length === 0) return null;
  const signature = designSignature(job);
  const title = mends.length === 1 ? 'A way to mend it' : `${sentence(countWord(mends.length))} ways to mend it`;
  const first = mends.find(({ changes }) => changes !== undefined);
  return (
    <section className={styles.mends}>
      <h3>{title}</h3>
      <ul>
        {mends.map((mend) => (
          <MendLine key={mend.words} mend={mend} unit={unit ?? ''} main={mend === first} onMend={take} />
        ))}
      </ul>
      {first !== undefined && signature?.of === 'this design' && (
        <p className="quiet small">
          {signature.name} signed this design on {signature.on}. A mend asks for a new signature.
        </p>
      )}
    </section>
  );
}

interface MendLineProps {
  readonly mend: Mend;
  readonly unit: string;
  readonly main: boolean;
  readonly onMend: MendListProps['onMend'];
}

function MendLine({ mend: { words, value, changes }, unit, main, onMend }: MendLineProps) {
  return (
    <li>
      {changes === undefined ? (
        <span className={styles.act}>{keepTogether(words)}</span>
      ) : (
        <Act look={main ? 'main' : 'edge'} onPress={() => onMend(changes, words)}>
          {keepTogether(words.replace(/\.$/, ''))}
        </Act>
      )}
      {value !== undefined && <span className="num">{withUnit(value, unit)}</span>}
    </li>
  );
}
