import { Link } from '@tanstack/react-router';
import { FindingsHere } from '../checks/FindingsHere.tsx';
import type { SheetProps } from '../desk/sheetView.ts';
import { SaveJobFile } from '../file/SaveJobFile.tsx';
import { sheetName } from '../frame/sheetNames.ts';
import { Mark } from '../parts/Mark.tsx';
import { Part } from '../parts/Part.tsx';
import { ConfirmLimits } from './ConfirmLimits.tsx';
import { limitsToConfirm } from './confirming.ts';
import styles from './HandoverSheet.module.css';
import { leftOut } from './leftOut.ts';
import { OpenFindings } from './OpenFindings.tsx';
import { openEnds } from './openEnds.ts';
import { openLines } from './openLines.ts';
import { SignDesign } from './SignDesign.tsx';

const PACK = [
  ['Cover', 'job, summary, what is open'],
  ['Roof plan', 'to scale, with a check bar of 100 mm'],
  ['Trunks', 'unrolled, with sizes'],
  ['Circuits', 'each with its working'],
  ['Kit and cuts', 'what to order, how the rails are cut'],
  ['Day', 'tasks, hold points, chance'],
  ['Tests', 'expected, limit, room to write'],
  ['Cautions', 'in a frame above the work they are for'],
] as const;

/** Sheet 12: what is still open before the job may be handed over, what the pack holds, who vouches for which limit. */
export function HandoverSheet({ plan, job, selected, onSelect }: SheetProps) {
  const lines = openLines(openEnds(plan, job));
  const limits = limitsToConfirm(plan.checks);
  const confirmed = job.choices.confirmations;
  return (
    <>
      <Part title="Open" count={lines.filter(({ open }) => open > 0).length} ruled>
        <ul className={styles.ends}>
          {lines.map(({ open, state, words, sheet }) => (
            <li key={words}>
              <Mark state={state} size={17} />
              <span className="out-of-sight">{state}: </span>
              {open > 0 ? <b>{words}</b> : <span>{words}</span>}
              {open > 0 && sheet !== undefined && (
                <Link to="/job/$id/$sheet" params={{ id: job.id, sheet }}>
                  {sheet} {sheetName(sheet)}
                </Link>
              )}
            </li>
          ))}
        </ul>
        <OpenFindings findings={plan.checks.findings} jobId={job.id} />
      </Part>
      <FindingsHere findings={plan.checks.findings} sheet="12" selected={selected} onSelect={onSelect} />
      <Part title="Sign the design" ruled>
        <SignDesign tally={plan.checks.tally} />
      </Part>
      <Part title="The pack" ruled>
        <p className={styles.files}>
          <a href={`/api/jobs/${encodeURIComponent(job.id)}/pack.pdf`} target="_blank" rel="noreferrer">
            Open the pack, PDF
          </a>
          <SaveJobFile job={job} />
        </p>
        <dl className={styles.pack}>
          {PACK.map(([what, holds]) => (
            <div key={what}>
              <dt>{what}</dt>
              <dd>{holds}</dd>
            </div>
          ))}
        </dl>
        <p className="quiet small">
          The server draws the pack from the job as it is kept there. The job file holds what was decided, measured and
          recorded; everything else is worked out from it again.
        </p>
      </Part>
      {(limits.length > 0 || Object.keys(confirmed).length > 0) && (
        <Part title="Limits from memory" count={limits.length} ruled>
          <ConfirmLimits limits={limits} confirmed={confirmed} />
        </Part>
      )}
      <Part title="Left out of the whole plan" ruled>
        <dl className={styles.out}>
          {leftOut(plan).map(({ stage, sheet, lines: out }) => (
            <div key={stage}>
              <dt>
                {stage} <span className="quiet">{sheet}</span>
              </dt>
              {out.map((words) => (
                <dd key={words}>{words}</dd>
              ))}
            </div>
          ))}
        </dl>
      </Part>
    </>
  );
}
