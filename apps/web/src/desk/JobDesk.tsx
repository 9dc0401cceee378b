import type { Change, SheetNo } from '@eaveline/plan';
import { useNavigate } from '@tanstack/react-router';
import { useCallback, useEffect, useMemo, useState } from 'react';
import desk from '../frame/Desk.module.css';
import { PhoneBar } from '../frame/PhoneBar.tsx';
import { PhoneHead } from '../frame/PhoneHead.tsx';
import { nextPaper } from '../frame/paper.ts';
import { Register } from '../frame/Register.tsx';
import { SHEETS, sheetName } from '../frame/sheetNames.ts';
import { JobContext, type JobOnDesk } from '../job/JobContext.tsx';
import type { JobSession, OpenJob } from '../job/jobSession.ts';
import { KeyList } from '../keys/KeyList.tsx';
import { useKeys } from '../keys/useKeys.ts';
import { goesOnTo } from '../pad/goesOnTo.ts';
import { Pad } from '../pad/Pad.tsx';
import { PadStrip } from '../pad/PadStrip.tsx';
import type { PlacedSubject } from '../pad/subject.ts';
import { allSubjects } from './allSubjects.ts';
import { nextFinding } from './nextFinding.ts';
import { SessionContext } from './SessionContext.tsx';
import { Sheet } from './Sheet.tsx';
import { VIEWS } from './views.ts';

export interface JobDeskProps {
  readonly session: JobSession;
  readonly open: OpenJob;
  /** Undefined on the phone's list of all sheets. */
  readonly sheet: SheetNo | undefined;
  /** Id of the subject selected. */
  readonly at: string | undefined;
}

/** An open job on the desk: register, sheet and pad, and the keys that go between them. */
export function JobDesk({ session, open, sheet, at }: JobDeskProps) {
  const { job, plan } = open;
  const no = sheet ?? '01';
  const navigate = useNavigate();
  const [padOpen, setPadOpen] = useState(false);
  const [said, setSaid] = useState<string>();
  const [keysShown, setKeysShown] = useState(false);

  const subjects = useMemo(() => (plan === undefined ? undefined : allSubjects(VIEWS, plan, job)), [plan, job]);
  const here = subjects?.get(no) ?? [];
  const everywhere = useMemo(() => [...(subjects?.values() ?? [])].flat(), [subjects]);
  const first = plan === undefined ? undefined : VIEWS[no].first?.(plan);
  const subject =
    here.find(({ id }) => id === at) ??
    here.find(({ id }) => id === first) ??
    here.find(({ finding }) => finding !== undefined && finding.state !== 'meets') ??
    here[0];
  const next = useMemo(() => (subject === undefined ? [] : goesOnTo(subject, everywhere)), [subject, everywhere]);

  const goTo = (to: SheetNo, select?: string) =>
    void navigate({
      to: '/job/$id/$sheet',
      params: { id: job.id, sheet: to },
      search: select === undefined ? {} : { at: select },
      replace: to === no,
    });
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
  const undo = () => {
    if (open.undo !== undefined) setSaid(`Taken back: ${open.undo}`);
    session.undo();
  };
  const goBack = () => {
    if (padOpen) setPadOpen(false);
    else if (at !== undefined) goTo(no);
    else toBook();
  };
  const takeMend = useCallback(
    (changes: readonly Change[], words: string) => {
      const refusal = session.edit(changes, words);
      setSaid(refusal === undefined ? `${words.replace(/\.$/, '')}: done. Z takes it back.` : `Not taken. ${refusal}`);
    },
    [session],
  );
  const takeFirstMend = () => {
    const mend = subject?.finding?.mends.find(({ changes }) => changes !== undefined);
    if (mend?.changes !== undefined) takeMend(mend.changes, mend.words);
  };

  useKeys({
    ...Object.fromEntries(SHEETS.map((each) => [each.key, () => goTo(each.no)])),
    b: toBook,
    '/': () => void navigate({ to: '/', search: { find: true } }),
    w: showPad,
    n: () => step(1),
    p: () => step(-1),
    m: takeFirstMend,
    z: undo,
    d: nextPaper,
    '?': () => setKeysShown(true),
    Escape: goBack,
  });

  useEffect(() => {
    document.title = `${no} ${sheetName(no)}, ${job.name} · Eaveline`;
    document.documentElement.dataset.wiring = job.facts.board.wiring ?? defaultWiring(job.choices.rules.pack);
  }, [no, job]);

  const onDesk = useMemo<JobOnDesk>(() => ({ job, edit: session.edit, mend: takeMend }), [job, session, takeMend]);
  const select = (to: PlacedSubject) => goTo(to.sheet, to.id);
  return (
    <JobContext value={onDesk}>
      <SessionContext value={session}>
        <div className={desk.desk} data-pad={padOpen ? 'open' : undefined}>
          <PhoneHead
            title={sheet === undefined ? 'Sheets' : `${no} ${sheetName(no)}`}
            aside={open.keeping.kind === 'waiting' || open.keeping.kind === 'two versions' ? 'not saved' : job.name}
            backTo={sheet === undefined ? { to: '/' } : { to: '/job/$id', id: job.id }}
          />
          <Register
            job={job}
            findings={plan?.checks.findings ?? []}
            current={no}
            keeping={open.keeping}
            undo={open.undo}
            open={sheet === undefined}
            onUndo={undo}
            onKeepMine={() => void session.keepMine()}
            onTakeTheirs={() => void session.takeTheirs()}
            onSaveNow={() => void session.saveNow()}
            onKeys={() => setKeysShown(true)}
          />
          <Sheet
            no={no}
            open={open}
            said={said}
            selected={subject?.id}
            listed={sheet === undefined}
            onSelect={(id) => goTo(no, id)}
          />
          <PadStrip
            subject={sheet === undefined || at === undefined ? undefined : subject}
            onOpen={() => setPadOpen(true)}
          />
          <Pad
            subject={subject}
            next={next}
            stale={open.stale}
            onGo={select}
            onMend={takeMend}
            onClose={() => setPadOpen(false)}
          />
          <PhoneBar jobId={job.id} current={sheet} />
          {keysShown && <KeyList onClose={() => setKeysShown(false)} />}
        </div>
      </SessionContext>
    </JobContext>
  );
}

/** Where the survey does not say: the region's current practice. */
function defaultWiring(pack: 'au-nz' | 'iec-eu' | 'us'): string {
  return { 'au-nz': 'au-nz', 'iec-eu': 'iec', us: 'us-120-240' }[pack];
}
