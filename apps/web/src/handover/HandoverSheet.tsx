import type { Finding } from '@eaveline/plan';
import type { SheetProps } from '../desk/sheetView.ts';
import { Mark } from '../parts/Mark.tsx';
import { Part } from '../parts/Part.tsx';
import table from '../parts/Table.module.css';
import { counted, sentence } from '../words/count.ts';
import styles from './HandoverSheet.module.css';
import { openEnds } from './openEnds.ts';

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

/** Sheet 12: what the pack holds, and what is still open before it may be handed over. */
export function HandoverSheet({ plan, job }: SheetProps) {
  const ends = openEnds(plan, job);
  const lines: readonly {
    readonly open: number;
    readonly state: Finding['state'];
    readonly words: string;
    readonly done: string;
  }[] = [
    {
      open: ends.stopping,
      state: 'fails',
      words: `${sentence(counted(ends.stopping, 'check'))} ${ends.stopping === 1 ? 'stops' : 'stop'} the job: sheet 08.`,
      done: 'No check stops the job.',
    },
    {
      open: ends.asking,
      state: 'ask',
      words: `${sentence(counted(ends.asking, 'question'))} wait for an answer: sheet 08.`,
      done: 'No question is open.',
    },
    {
      open: ends.facts,
      state: 'ask',
      words: `${sentence(counted(ends.facts, 'fact'))} of the survey missing: sheet 01.`,
      done: 'The survey is whole.',
    },
    {
      open: ends.testsPast,
      state: 'fails',
      words: `${sentence(counted(ends.testsPast, 'reading'))} past the limit: sheet 11.`,
      done: 'No reading is past its limit.',
    },
    {
      open: ends.testsUnread,
      state: 'ask',
      words: `${sentence(counted(ends.testsUnread, 'test'))} not read: sheet 11.`,
      done: 'Every test is read.',
    },
    {
      open: ends.unitsUnscanned,
      state: 'ask',
      words: `${sentence(counted(ends.unitsUnscanned, 'unit'))} without a serial on record.`,
      done: 'Every unit has its serial on record.',
    },
    {
      open: ends.unconfirmed.length,
      state: 'ask',
      words: `${sentence(counted(ends.unconfirmed.length, 'limit'))} from memory, confirmed by nobody: listed below.`,
      done: 'Every limit is confirmed.',
    },
    { open: ends.signed ? 0 : 1, state: 'ask', words: 'Nobody has signed.', done: 'Signed.' },
  ];
  return (
    <>
      <Part title="Open" ruled>
        <ul className={styles.ends}>
          {lines.map(({ open, state, words, done }) => (
            <li key={done}>
              <Mark state={open > 0 ? state : 'meets'} size={17} />
              <span>{open > 0 ? <b>{words}</b> : done}</span>
            </li>
          ))}
        </ul>
      </Part>
      <Part
        title="The pack"
        ruled
        aside={<a href={`/api/jobs/${encodeURIComponent(job.id)}/pack.pdf`}>Open the pack, PDF</a>}
      >
        <table className={table.table}>
          <tbody>
            {PACK.map(([what, holds]) => (
              <tr key={what}>
                <th scope="row">
                  <b>{what}</b>
                </th>
                <td>{holds}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p className="quiet small">The pack is drawn by the server from the job as it is kept there.</p>
      </Part>
      {ends.unconfirmed.length > 0 && (
        <Part
          title="Limits nobody has confirmed"
          count={ends.unconfirmed.length}
          ruled
          aside="From memory: read them before you rely on them."
        >
          <table className={table.table}>
            <tbody>
              {ends.unconfirmed.map(({ rule, clause, edition }) => (
                <tr key={`${rule}-${clause}`}>
                  <th scope="row">{sentence(rule.replace(/-/g, ' '))}</th>
                  <td className="small">{clause}</td>
                  <td className={`num ${table.spare}`}>{edition}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </Part>
      )}
    </>
  );
}
