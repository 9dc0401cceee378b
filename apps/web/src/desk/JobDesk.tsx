import type { Job } from '@eaveline/job';
import type { Plan, SheetNo } from '@eaveline/plan';
import { useNavigate } from '@tanstack/react-router';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { mendWords } from '../checks/mendWords.ts';
import { AskWho } from '../frame/AskWho.tsx';
import desk from '../frame/Desk.module.css';
import { PhoneBar } from '../frame/PhoneBar.tsx';
import { PhoneHead } from '../frame/PhoneHead.tsx';
import { nextPaper } from '../frame/paper.ts';
import { Register } from '../frame/Register.tsx';
import { SHEETS, sheetName } from '../frame/sheetNames.ts';
import { useJob } from '../job/JobContext.tsx';
import { KeyList } from '../keys/KeyList.tsx';
import { useKeys } from '../keys/useKeys.ts';
import { goesOnTo } from '../pad/goesOnTo.ts';
import { Pad } from '../pad/Pad.tsx';
import { PadStrip } from '../pad/PadStrip.tsx';
import type { PlacedSubject } from '../pad/subject.ts';
import type { BegunPlan } from '../plan/begunPlan.ts';
import { planDesk } from '../plan/planDesk.ts';
import { useLate } from '../plan/useLate.ts';
import { allSubjects } from './allSubjects.ts';
import { useDesk } from './DeskContext.tsx';
import { nextFinding } from './nextFinding.ts';
import { Sheet } from './Sheet.tsx';
import { DRAWN_FROM, planFor, STALE_AFTER_MS } from './sheetStages.ts';
import { useAfterPaint } from './useAfterPaint.ts';
import { VIEWS } from './views.ts';

export interface JobDeskProps {
  /** Undefined on the phone's list of all sheets. */
  readonly sheet: SheetNo | undefined;
  /** Id of the subject selected. */
  readonly at: string | undefined;
}

interface Laid {
  readonly whole: Plan | undefined;
  readonly begun: BegunPlan | undefined;
  readonly planOf: Job | undefined;
}
const NOTHING_LAID: Laid = { whole: undefined, begun: undefined, planOf: undefined };

function subjectsOf({ whole: plan, begun, planOf }: Laid) {
  return planOf && allSubjects(VIEWS, (no) => planFor(no, { plan, begun }), planOf);
}

/** An open job on the desk: register, sheet and pad, and the keys that go between them. */
export function JobDesk({ sheet, at }: JobDeskProps) {
  const { session, open, said, say } = useDesk();
  const { mend: takeMend } = useJob();
  const { job, planOf } = open;
  const no = sheet ?? '01';
  const navigate = useNavigate();
  const [padOpen, setPadOpen] = useState(false);
  const [keysShown, setKeysShown] = useState(false);
  const stale = useLate(open.stale, STALE_AFTER_MS);

  const { plan: whole, begun } = open;
  const plan = planFor(no, open);
  // of the job the plan is of, and after the sheet: a figure that follows the hand does not wait for the pad
  const laid = useMemo(() => ({ whole, begun, planOf }), [whole, begun, planOf]);
  const behind = useAfterPaint(laid, NOTHING_LAID);
  const subjects = useMemo(() => subjectsOf(behind), [behind]);
  const here = subjects?.get(no) ?? [];
  const everywhere = useMemo(() => [...(subjects?.values() ?? [])].flat(), [subjects]);
  const first = plan === undefined ? undefined : VIEWS[no].first?.(plan);
  const stayedWith = useRef<{ readonly no: SheetNo; readonly id: string }>(undefined);
  const subject =
    here.find(({ id }) => id === at) ??
    // what was put first stays while the sheet is open, also where an edit mends it: fields and pad do not jump away
    here.find(({ id }) => stayedWith.current?.no === no && stayedWith.current.id === id) ??
    here.find(({ id }) => id === first) ??
    here.find(({ finding }) => finding !== undefined && finding.state !== 'meets') ??
    here[0];
  const firstId = at === undefined ? subject?.id : undefined;
  useEffect(() => {
    if (firstId !== undefined) stayedWith.current = { no, id: firstId };
  }, [no, firstId]);
  const next = useMemo(() => (subject === undefined ? [] : goesOnTo(subject, everywhere)), [subject, everywhere]);

  const { id } = job;
  const goTo = useCallback(
    (to: SheetNo, select?: string) =>
      void navigate({
        to: '/job/$id/$sheet',
        params: { id, sheet: to },
        search: select === undefined ? {} : { at: select },
        replace: to === no,
      }),
    [navigate, id, no],
  );
  const toBook = () => void navigate({ to: '/' });
  const showPad = () => {
    const focused = document.activeElement?.closest<HTMLElement>('[data-subject]')?.dataset.subject;
    if (focused !== undefined) goTo(no, focused);
    setPadOpen(true);
    document.getElementById('pad')?.focus();
  };
  const step = (by: 1 | -1) => {
    if (plan === undefined) return;
    const to = nextFinding(plan, no, at, by);
    if (to !== undefined) goTo(to.sheet, to.id);
  };
  const undo = () => say(session.undo());
  const redo = () => say(session.redo());
  const goBack = () => {
    if (padOpen) setPadOpen(false);
    else if (at !== undefined) goTo(no);
    else toBook();
  };
  const takeFirstMend = () => {
    const finding = subject?.finding;
    const mend = finding?.mends.find(({ changes }) => changes !== undefined);
    if (finding !== undefined && mend?.changes !== undefined) takeMend(mend.changes, mendWords(finding, mend.words));
  };

  const select = useCallback((at: string) => goTo(no, at), [goTo, no]);
  const go = useCallback((to: PlacedSubject) => goTo(to.sheet, to.id), [goTo]);
  const closePad = useCallback(() => setPadOpen(false), []);

  useKeys({
    ...Object.fromEntries(SHEETS.map((each) => [each.key, () => goTo(each.no)])),
    b: toBook,
    '/': () => void navigate({ to: '/', search: { find: true } }),
    w: showPad,
    n: () => step(1),
    p: () => step(-1),
    m: takeFirstMend,
    z: undo,
    'Shift z': redo,
    h: () => void navigate({ to: '/job/$id/history', params: { id: job.id } }),
    d: nextPaper,
    '?': () => setKeysShown(true),
    Escape: goBack,
  });

  useEffect(() => planDesk().lookAt(DRAWN_FROM[no]), [no]);
  useEffect(() => {
    document.title = `${no} ${sheetName(no)}, ${job.name} · Eaveline`;
  }, [no, job]);

  return (
    <div className={desk.desk} data-pad={padOpen ? 'open' : undefined}>
      <PhoneHead
        title={sheet === undefined ? 'Sheets' : `${no} ${sheetName(no)}`}
        aside={open.keeping.device.kind === 'refused' ? 'not kept' : job.name}
        backTo={sheet === undefined ? { to: '/' } : { to: '/job/$id', id: job.id }}
        undo={
          open.keeping.device.kind === 'refused' || open.undo === undefined
            ? undefined
            : { what: open.undo, onPress: undo }
        }
      />
      {sheet !== undefined && <AskWho job={job} changed={open.undo !== undefined} />}
      <Register current={no} open={sheet === undefined} onUndo={undo} onRedo={redo} onKeys={() => setKeysShown(true)} />
      <Sheet no={no} open={open} said={said} selected={subject?.id} listed={sheet === undefined} onSelect={select} />
      <PadStrip
        subject={sheet === undefined || at === undefined ? undefined : subject}
        onOpen={() => setPadOpen(true)}
      />
      <Pad subject={subject} next={next} stale={stale} onGo={go} onMend={takeMend} onClose={closePad} />
      <PhoneBar jobId={job.id} current={sheet} />
      {keysShown && <KeyList onClose={() => setKeysShown(false)} />}
    </div>
  );
}
