import { factAt, type SurveyStep, seenAt } from '@eaveline/job';
import type { SurveyStanding } from '@eaveline/plan';
import { useNavigate } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { useJob } from '../job/JobContext.tsx';
import { Act } from '../parts/Act.tsx';
import { Caution } from '../parts/Caution.tsx';
import { Mark } from '../parts/Mark.tsx';
import { AskField } from './AskField.tsx';
import { FactDeskContext, jobDesk } from './factDesk.ts';
import { MeasuresLine } from './MeasuresLine.tsx';
import { PhotoField } from './PhotoField.tsx';
import { PhotoReason } from './PhotoReason.tsx';
import styles from './Survey.module.css';
import { neededBy, openAt } from './surveyWords.ts';
import { ThingListPart } from './ThingListPart.tsx';
import { WhoPart } from './WhoPart.tsx';

export interface StepPartProps {
  readonly step: SurveyStep;
  readonly standing: SurveyStanding;
  readonly onLook: (path: string) => void;
}

/** One place of the walk: caution, photograph, then the questions asked there. */
export function StepPart({ step, standing, onLook }: StepPartProps) {
  const { job, edit } = useJob();
  const desk = useMemo(() => jobDesk(job, edit), [job, edit]);
  const holes = openAt(standing, step.id);
  const needed = (path: string) => {
    const hole = holes.find(
      (each) =>
        each.path === path && (each.kind === 'fact' || each.kind === 'not seen' || each.kind === 'no instrument'),
    );
    if (hole?.kind === 'no instrument')
      return `No instrument is named: say with what under the answer. ${neededBy(hole)}`;
    return hole === undefined ? undefined : neededBy(hole);
  };
  // what may be photographed hangs on it
  const first = step.asks.find(({ path }) => path === step.photo?.after);
  return (
    <FactDeskContext value={desk}>
      <WhoPart />
      {step.cautions.map(({ head, body }) => (
        <Caution key={head} words={head} more={body} />
      ))}
      {first !== undefined && (
        <div className={styles.asks}>
          <AskField asked={first} needed={needed(first.path)} onLook={() => onLook(first.path)} />
        </div>
      )}
      {step.photo !== undefined && (
        <>
          <PhotoField key={step.id} {...step.photo} seen={seenAt(job, step.photo.of)} />
          <PhotoReason photo={step.photo} />
        </>
      )}
      <div className={styles.asks}>
        {step.asks
          .filter((asked) => asked !== first)
          .map((asked) => (
            <AskField key={asked.path} asked={asked} needed={needed(asked.path)} onLook={() => onLook(asked.path)} />
          ))}
      </div>
      {step.thing?.list.at === 'roof.planes' && (
        <MeasuresLine plane={factAt(job, step.thing.path) as Parameters<typeof MeasuresLine>[0]['plane']} />
      )}
      {step.lists.map((list) => (
        <div key={list.at} className={styles.lists}>
          <ThingListPart list={list} standing={standing} />
        </div>
      ))}
      {step.thing !== undefined && <TakeOut step={step} path={step.thing.path} />}
    </FactDeskContext>
  );
}

/** The way to take a thing out again, with everything that was said of it. */
function TakeOut({ step, path }: { readonly step: SurveyStep; readonly path: string }) {
  const { job, edit } = useJob();
  const navigate = useNavigate();
  const [said, setSaid] = useState<string>();
  function takeOut() {
    const told = Object.keys(job.facts.provenance).filter((key) => key === path || key.startsWith(`${path}.`));
    const changes = [
      { path: ['facts', ...path.split('.')], value: undefined },
      ...told.map((key) => ({ path: ['facts', 'provenance', key], value: undefined })),
    ];
    const refused = edit(changes, `${step.name} taken out`);
    setSaid(refused);
    if (refused === undefined)
      void navigate({ to: '/job/$id/survey/$step', params: { id: job.id, step: step.part }, replace: true });
  }
  return (
    <div className={styles.takeOut}>
      <Act look="plain" onPress={takeOut}>
        Take {step.name} out of the survey
      </Act>
      {said !== undefined && (
        <p className={styles.refused} role="alert">
          <Mark state="fails" size={15} /> {said}
        </p>
      )}
    </div>
  );
}
