import type { SheetNo } from '@eaveline/plan';
import { memo } from 'react';
import { SheetFrame } from '../frame/SheetFrame.tsx';
import { sheetName } from '../frame/sheetNames.ts';
import { PastStrip } from '../history/PastStrip.tsx';
import type { OpenJob } from '../job/jobSession.ts';
import { Act } from '../parts/Act.tsx';
import { useLate } from '../plan/useLate.ts';
import { Drawn } from './Drawn.tsx';
import { headWithFails } from './headWithFails.ts';
import { planFor, STALE_AFTER_MS, staleOn } from './sheetStages.ts';
import type { SheetProps } from './sheetView.ts';
import { titleCells } from './titleCells.ts';
import { VIEWS } from './views.ts';
import { WorkState } from './WorkState.tsx';

export interface SheetPartProps {
  readonly no: SheetNo;
  readonly open: OpenJob;
  /** What became of the last mend. */
  readonly said: string | undefined;
  readonly selected: string | undefined;
  /** True where a phone shows the list of sheets in its place. */
  readonly listed: boolean;
  readonly onSelect: (id: string) => void;
}

/** Drawn anew only where what it draws has changed: that an edit was kept, or sent, changes nothing on it. */
const Body = memo(function Body({ no, ...props }: SheetProps & { readonly no: SheetNo }) {
  const view = VIEWS[no];
  return <view.Body {...props} />;
});

/** The sheet of an open job: drawn from its plan, or saying plainly what it waits for. */
export function Sheet({ no, open, said, selected, listed, onSelect }: SheetPartProps) {
  const { job, notWorkedOut } = open;
  const plan = planFor(no, open);
  const stale = useLate(staleOn(no, open), STALE_AFTER_MS);
  const before = useLate(open.stale, STALE_AFTER_MS);
  if (listed && matchMedia('(max-width: 760px)').matches) {
    // the register is the page; it is named for whoever hears it read
    return (
      <main className="out-of-sight">
        <h1>The sheets of {job.name}</h1>
      </main>
    );
  }
  const view = VIEWS[no];
  const cells = titleCells(no, view.shows, { ...open, stale: before });
  const notice = job.invented
    ? 'Invented job, not for construction. Local codes and the licensed person decide.'
    : 'Local codes and the licensed person decide.';

  if (notWorkedOut !== undefined) {
    return (
      <SheetFrame no={no} cells={cells} head={{ sentence: 'This plan could not be worked out. The job is safe.' }}>
        <p>It stands as it is kept; take the last change back, or copy the note for us.</p>
        <p className="quiet">{notWorkedOut}</p>
        <Act onPress={() => void navigator.clipboard.writeText(`${sheetName(no)}, ${job.id}: ${notWorkedOut}`)}>
          Copy the note
        </Act>
      </SheetFrame>
    );
  }
  if (plan === undefined) {
    const head = {
      sentence: `${job.name} is on the desk.`,
      quiet: 'Its figures are being worked out, from the year of weather down.',
    };
    return (
      <SheetFrame no={no} cells={cells} head={head}>
        <WorkState />
      </SheetFrame>
    );
  }
  return (
    <SheetFrame
      no={no}
      cells={cells}
      head={headWithFails(no, view.head(plan, job), plan.checks.findings)}
      notice={notice}
      leavesOut={view.leavesOut(plan)}
      stale={stale}
      busy={open.stale}
      said={said}
    >
      <PastStrip />
      <WorkState />
      <Drawn key={no} what={`${no}, ${job.id}`}>
        <Body no={no} plan={plan} job={job} selected={selected} onSelect={onSelect} />
      </Drawn>
    </SheetFrame>
  );
}
