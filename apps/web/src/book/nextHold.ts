import type { Job } from '@eaveline/job';
import type { DayTask, Plan } from '@eaveline/plan';
import { failsReading } from '../tests/standing.ts';

/** The next point of a job at which nobody goes on until somebody has looked. */
export interface NextHold {
  /** `H5`. */
  readonly name: string;
  /** `dead tests of the trunk before modules cover it, trunk A`. */
  readonly words: string;
  readonly taskId: string;
}

type Parts = Pick<Plan, 'day' | 'tests' | 'array'>;
type Held = DayTask & { readonly hold: string };

/**
 * The next hold point of a job: the first in the order of the day that nothing on record lets pass.
 *
 * One is passed where its task was done before the first day, where somebody signed `hold:` and the task's id, where
 * its own tests are read and none of them fails, where every unit of its plane is scanned, and where a later hold
 * point that waits for it is passed. Undefined in a job whose survey is
 * still walked, that has no module yet, that is tested or handed over, and where all are passed.
 */
export function nextHold({ day, tests, array }: Parts, { state, records, choices }: Job): NextHold | undefined {
  if (state === 'survey' || state === 'tested' || state === 'handed over') return undefined;
  if (array.modules.length === 0) return undefined;
  const begins = ({ day: on = 0, startH = 0 }: DayTask) => on * 100 + startH;
  const held = day.tasks.filter((task): task is Held => task.hold !== undefined).sort((a, b) => begins(a) - begins(b));
  const gone = new Set(Object.values(records.signatures).flatMap(({ supersedes }) => supersedes ?? []));
  const signed = new Set(Object.entries(records.signatures).flatMap(([id, { of }]) => (gone.has(id) ? [] : [of])));
  const scanned = new Set(Object.values(records.serials).map(({ of }) => of));

  const onRecord = (task: Held): boolean => {
    if (task.doneBefore || signed.has(`hold:${task.id}`)) return true;
    const [kind, part] = task.id.split(':');
    if (kind === 'units') {
      const units = array.modules.flatMap(({ planeId, unitId }) => (planeId === part ? [unitId] : []));
      return units.length > 0 && units.every((id) => choices.units[id] === undefined || scanned.has(id));
    }
    const rows = tests.rows.filter((row) =>
      kind === 'deadAll'
        ? row.sheet === 'dead'
        : row.hold === nameOf(task.hold) && (part === undefined || row.id.endsWith(`:${part}`)),
    );
    return rows.length > 0 && rows.every((row) => row.reading !== undefined && !failsReading(row));
  };

  const passed = new Set<string>();
  const byId = new Map(day.tasks.map((task) => [task.id, task]));
  const pass = (id: string) => {
    if (passed.has(id)) return;
    passed.add(id);
    for (const before of byId.get(id)?.after ?? []) pass(before);
  };
  for (const task of held) if (onRecord(task)) pass(task.id);
  const next = held.find(({ id }) => !passed.has(id));
  return next && { name: nameOf(next.hold), words: wordsOf(next), taskId: next.id };
}

function nameOf(hold: string): string {
  return /^H\d+/.exec(hold)?.[0] ?? hold;
}

/** What has to be seen; where the words only say before what, the task itself stands first. */
function wordsOf({ id, name, hold }: Held): string {
  const what = hold.replace(/^H\d+ /, '');
  const [head = name] = name.split(/[,:]/);
  const said = what.startsWith('before') || what.startsWith('no ') ? `${head.toLowerCase()}, ${what}` : what;
  const part = id.includes(':') ? name.split(', ').at(-1) : undefined;
  return part === undefined ? said : `${said}, ${part}`;
}
