import { type Asked, asksOf, type Job, type SurveyStep, type ThingList, thingsAt } from '@eaveline/job';
import { type SurveyStanding, surveyStanding } from '@eaveline/plan';
import { useNavigate } from '@tanstack/react-router';
import { lazy, Suspense, useMemo, useState } from 'react';
import { Lost } from '../desk/Lost.tsx';
import { useJob } from '../job/JobContext.tsx';
import { whoIsHere } from '../job/whoIsHere.ts';
import { counted, sentence } from '../words/count.ts';
import { ClosePart } from './ClosePart.tsx';
import { closingOf } from './closingOf.ts';
import { DraftPart, missingOf } from './DraftPart.tsx';
import { dropDraft, freshId, thingOf, useDraft } from './draft.ts';
import { changesOf } from './factDesk.ts';
import { goesOnAt, placeOf } from './places.ts';
import { StartPart } from './StartPart.tsx';
import { StepPart } from './StepPart.tsx';
import { SurveyFrame } from './SurveyFrame.tsx';
import { hourAt } from './seenWords.ts';
import { headOfSurvey, openAt, refusalToClose } from './surveyWords.ts';

const PaperForm = lazy(() => import('./PaperForm.tsx').then((room) => ({ default: room.PaperForm })));

export interface SurveyPageProps {
  /** Last part of the address; undefined before the first step. */
  readonly address: string | undefined;
}

/** The survey of the job on the desk, at one place of the walk. */
export function SurveyPage({ address }: SurveyPageProps) {
  const { job } = useJob();
  const standing = useMemo(() => surveyStanding(job), [job]);
  const place = placeOf(address, standing);
  const own = { standing, job };
  switch (place.kind) {
    case 'start':
      return <Start {...own} />;
    case 'step':
      return <Step key={place.step.id} {...own} step={place.step} after={place.after} />;
    case 'draft':
      return <DraftOf key={place.list.at} {...own} list={place.list} on={place.on} />;
    case 'close':
      return <Close {...own} />;
    case 'paper':
      return <Paper {...own} />;
    case 'lost':
      return <Lost />;
  }
}

interface Own {
  readonly standing: SurveyStanding;
  readonly job: Job;
}

/** Goes to a place of the survey; without one, before its first step. */
function useGo(job: Job): (step?: string) => void {
  const navigate = useNavigate();
  return (step) =>
    void (step === undefined
      ? navigate({ to: '/job/$id/survey', params: { id: job.id } })
      : navigate({ to: '/job/$id/survey/$step', params: { id: job.id, step } }));
}

function closedWords({ facts: { surveyClosed, site } }: Job): { by: string; at: string } | undefined {
  return surveyClosed && { by: surveyClosed.by, at: hourAt(surveyClosed.at, site.zone, new Date()) };
}

function Start({ standing, job }: Own) {
  const go = useGo(job);
  const navigate = useNavigate();
  const next = goesOnAt(standing);
  return (
    <SurveyFrame
      standing={standing}
      current={undefined}
      title="Survey"
      head={headOfSurvey(job.name, standing.holes.length, closedWords(job))}
      open={standing.holes.length}
      acts={{
        left: { words: 'To the sheets', onPress: () => void navigate({ to: '/job/$id', params: { id: job.id } }) },
        right: { words: `Go on: ${next.name}`, onPress: () => go(next.id) },
      }}
    >
      <StartPart standing={standing} />
    </SurveyFrame>
  );
}

function Step({
  standing,
  job,
  step,
  after,
}: Own & { readonly step: SurveyStep; readonly after: SurveyStep | undefined }) {
  const go = useGo(job);
  const [path, setPath] = useState<string>();
  const open = openAt(standing, step.id).length;
  return (
    <SurveyFrame
      standing={standing}
      current={step.id}
      title={step.name}
      head={{
        sentence: open === 0 ? `${step.name}: nothing open.` : `${step.name}: ${counted(open, 'thing')} open.`,
      }}
      open={open}
      acts={{
        left: { words: 'The walk', onPress: () => go() },
        right: { words: `Next: ${after?.name ?? 'close the survey'}`, onPress: () => go(after?.id ?? 'close') },
      }}
      asked={step.asks.find((each) => each.path === path)}
    >
      <StepPart step={step} standing={standing} onLook={setPath} />
    </SurveyFrame>
  );
}

function DraftOf({ standing, job, list, on }: Own & { readonly list: ThingList; readonly on: SurveyStep }) {
  const { edit } = useJob();
  const go = useGo(job);
  const [path, setPath] = useState<string>();
  const [refusal, setRefusal] = useState<string>();
  const [draft, keep] = useDraft(job.id, list.at);
  const at = `${list.at}.new`;
  const asks: readonly Asked[] = asksOf(list.questions, thingOf(draft), at, '', job);

  function put() {
    const missing = missingOf(asks, at, draft);
    if (missing.length > 0)
      return setRefusal(`Not yet: ${counted(missing.length, 'answer')} short. The first: ${missing[0]?.ask}.`);
    const thing = thingOf(draft);
    const name = String(thing.name ?? thing.kind ?? list.one);
    const id = freshId(name, Object.keys(thingsAt(job, list.at)));
    const seen = Object.fromEntries(Object.entries(draft.seen).map(([of, by]) => [`${list.at}.${id}.${of}`, by]));
    const refused = edit(changesOf({ facts: { [`${list.at}.${id}`]: thing }, seen }), `${name} is in the survey`);
    setRefusal(refused);
    if (refused !== undefined) return;
    dropDraft(job.id, list.at);
    go(`${list.at}.${id}`);
  }
  return (
    <SurveyFrame
      standing={standing}
      current={on.id}
      title={`A ${list.one}`}
      head={{
        sentence: sentence(`a ${list.one} that is not in the job yet.`),
        quiet: 'It can be left half measured: it waits on this device.',
      }}
      open={missingOf(asks, at, draft).length}
      acts={{
        left: { words: 'Leave it begun', onPress: () => go(on.id) },
        right: { words: 'Put it in the job', onPress: put },
      }}
      asked={asks.find((each) => each.path === path)}
    >
      <DraftPart list={list} part={on.part} draft={draft} onKeep={keep} onLook={setPath} refusal={refusal} />
    </SurveyFrame>
  );
}

function Close({ standing, job }: Own) {
  const { edit } = useJob();
  const go = useGo(job);
  const [refusal, setRefusal] = useState<string>();
  const closed = closedWords(job);
  function close() {
    if (standing.holes.length > 0) return setRefusal(refusalToClose(standing.holes));
    const by = whoIsHere();
    if (by === '') return setRefusal('Not closed. Nobody is named: say at the head of the walk who is here.');
    const refused = edit(closingOf(job, by, new Date()), 'The survey is closed');
    setRefusal(refused);
    if (refused === undefined) go();
  }
  return (
    <SurveyFrame
      standing={standing}
      current="close"
      title="Close"
      head={headOfSurvey(job.name, standing.holes.length, closed)}
      open={standing.holes.length}
      acts={{
        left: { words: 'The walk', onPress: () => go() },
        right: { words: closed === undefined ? 'Close the survey' : 'Close it again', onPress: close },
      }}
    >
      <ClosePart standing={standing} refusal={refusal} />
    </SurveyFrame>
  );
}

function Paper({ standing, job }: Own) {
  const go = useGo(job);
  return (
    <SurveyFrame
      standing={standing}
      current="paper"
      title="On paper"
      head={{
        sentence: 'The same questions on paper, in the same order.',
        quiet: 'A4, drawn on this device: it prints without signal.',
      }}
      open={standing.holes.length}
      acts={{
        left: { words: 'The walk', onPress: () => go() },
        right: { words: 'Print', onPress: () => print() },
      }}
    >
      <Suspense fallback={<p>The form is being drawn.</p>}>
        <PaperForm job={job} />
      </Suspense>
    </SurveyFrame>
  );
}
