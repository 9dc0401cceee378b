import { type Asked, asksOf, type ThingList } from '@eaveline/job';
import { useMemo } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { Caution } from '../parts/Caution.tsx';
import { Mark } from '../parts/Mark.tsx';
import { counted, listed, sentence } from '../words/count.ts';
import { AskField } from './AskField.tsx';
import { type Draft, thingOf } from './draft.ts';
import { draftDesk, FactDeskContext } from './factDesk.ts';
import { MeasuresLine } from './MeasuresLine.tsx';
import styles from './Survey.module.css';
import { surveyCautionsOf } from './surveyCautionsOf.ts';
import { WhoPart } from './WhoPart.tsx';

export interface DraftPartProps {
  readonly list: ThingList;
  readonly part: string;
  readonly draft: Draft;
  readonly onKeep: (draft: Draft) => string | undefined;
  readonly onLook: (path: string) => void;
  readonly refusal: string | undefined;
}

/** A thing that is begun: it waits on this device until everything is there that makes it whole. */
export function DraftPart({ list, part, draft, onKeep, onLook, refusal }: DraftPartProps) {
  const { job } = useJob();
  const at = `${list.at}.new`;
  const desk = useMemo(() => draftDesk(job, at, draft, onKeep), [job, at, draft, onKeep]);
  const asks = asksOf(list.questions, thingOf(draft), at, '', job);
  const missing = missingOf(asks, at, draft);
  return (
    <FactDeskContext value={desk}>
      <WhoPart />
      {surveyCautionsOf(job, part).map(({ head, body }) => (
        <Caution key={head} words={head} more={body} />
      ))}
      <div className={styles.asks}>
        {asks.map((asked) => (
          <AskField
            key={asked.path}
            asked={asked}
            needed={missing.includes(asked) ? `A ${list.one} is not whole without it.` : undefined}
            onLook={() => onLook(asked.path)}
          />
        ))}
      </div>
      {list.at === 'roof.planes' && <MeasuresLine plane={thingOf(draft)} />}
      <p className={styles.looked} role="status">
        {missing.length === 0
          ? `Whole. It goes into the job with “Put it in the job”; until then it is on this device only.`
          : `On this device only. ${sentence(counted(missing.length, 'answer'))} short of whole: ${listed(missing.map(({ ask }) => ask.charAt(0).toLowerCase() + ask.slice(1)))}.`}
      </p>
      {refusal !== undefined && (
        <p className={styles.refused} role="alert">
          <Mark state="fails" size={15} /> {refusal}
        </p>
      )}
    </FactDeskContext>
  );
}

/** Questions a thing cannot be kept without, and that have no answer yet. */
export function missingOf(asks: readonly Asked[], at: string, { facts }: Draft): Asked[] {
  return asks.filter(({ must, path }) => must === true && facts[path.slice(at.length + 1)] === undefined);
}
