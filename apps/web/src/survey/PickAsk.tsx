import type { Answer } from '@eaveline/job';
import { usualAnswer } from '@eaveline/plan';
import { Caution } from '../parts/Caution.tsx';
import styles from './Ask.module.css';
import type { AskControlProps } from './askControl.ts';
import { useFactDesk } from './factDesk.ts';

interface Option {
  readonly value: string | boolean;
  readonly words: string;
  readonly caution?: string;
}

/** One of a few, each a row under the thumb. What is hazardous to have picked says so at once. */
export function PickAsk({ asked, on, id }: AskControlProps) {
  const { job } = useFactDesk();
  const options = optionsOf(asked.answer, job.facts.roof.planes);
  const picked = options.find(({ value }) => value === on.value);
  const usual = on.value === undefined ? usualAnswer(job, asked.path) : undefined;
  if (options.length === 0) return <p className={styles.said}>There is no plane yet: enter the roof first.</p>;
  return (
    <>
      <div className={styles.options} role="radiogroup" aria-labelledby={`${id}-ask`}>
        {options.map(({ value, words }) => (
          <label key={words}>
            <input
              type="radio"
              name={id}
              checked={value === on.value}
              onChange={() => on.answer(value)}
              // picked again it is taken back: a slip of the thumb has a way out
              onClick={() => {
                if (value === on.value && on.standing !== 'assumed') on.answer(undefined);
              }}
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
      {usual !== undefined && (
        <p className={styles.said}>
          Usual here: {options.find(({ value }) => value === usual)?.words}. Nobody has looked yet.
        </p>
      )}
      {picked?.caution !== undefined && <Caution words={picked.caution} />}
    </>
  );
}

function optionsOf(answer: Answer, planes: Readonly<Record<string, { readonly name: string }>>): readonly Option[] {
  switch (answer.kind) {
    case 'pick':
      return answer.options;
    case 'yes-no':
      return [
        { value: true, words: answer.yes, ...(answer.caution === undefined ? {} : { caution: answer.caution }) },
        { value: false, words: answer.no },
      ];
    case 'plane':
      return Object.entries(planes).map(([id, { name }]) => ({ value: id, words: name }));
    default:
      throw new Error(`A ${answer.kind} is not picked from options`);
  }
}
