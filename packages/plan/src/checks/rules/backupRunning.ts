import type { Mend } from '../../finding.ts';
import type { Line } from '../../trunks/types.ts';
import { abouts } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { isWithin, rule } from '../rule.ts';
import { against } from '../units.ts';

/** Backup running: does what stays on leave the battery its room, on each line? Mended by shedding the least that is enough. */
export const backupRunning = rule({
  id: 'backup-running',
  sheet: '06',
  stops: true,
  question: 'Can the battery carry all that stays on?',
  judge: (context, limit) =>
    context.backup.byLine.map(({ line, runningVA, limitVA, working }) => {
      const { shown, ...measured } = against(runningVA, 'at most', limitVA, 'VA');
      const meets = isWithin(runningVA, limitVA, 'at most');
      return {
        about: abouts.backup(line, `Backup, ${line}`),
        ...measured,
        title: `${shown.value} stay on on ${line}. The battery carries ${shown.limit} of it for hours.`,
        detail: `${Math.round(100 * limit.value)} % of its rating.`,
        working,
        // more than the rating itself is no matter of practice
        ...(limit.value > 0 && runningVA > limitVA / limit.value ? { seen: 'equipment sheet' as const } : {}),
        mends: meets ? [] : shedMends(context, line, runningVA - limitVA),
      };
    }),
});

/** The smallest circuit that alone brings the line inside, taking first those that need not stay on. */
function shedMends({ backup, facts }: CheckContext, line: Line, overVA: number): readonly Mend[] {
  const onLine = backup.circuits
    .filter(({ fed, shed, lines }) => fed && !shed && lines.includes(line))
    .map((circuit) => ({
      ...circuit,
      va: circuit.runW / circuit.lines.length,
      must: facts.loads.circuits[circuit.id]?.wanted === 'must stay on',
    }))
    .sort((a, b) => Number(a.must) - Number(b.must) || a.va - b.va);
  const enough = onLine.find(({ va }) => va >= overVA);
  if (enough === undefined) return [{ words: 'No single circuit is enough: shed several, or take a larger battery.' }];
  const runningVA = onLine.reduce((sum, { va }) => sum + va, 0);
  return [
    {
      words: `Shed ${enough.name} when the grid is gone.`,
      value: runningVA - enough.va,
      changes: [{ path: ['choices', 'backup', 'circuits', enough.id, 'shed'], value: true }],
    },
  ];
}
