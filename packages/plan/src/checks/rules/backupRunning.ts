import type { Mend } from '../../finding.ts';
import { abouts } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Running: does the battery carry what is kept alive, line by line, with room to spare? */
export const backupRunning = rule({
  id: 'backup-running',
  sheet: '06',
  stops: false,
  question: 'Does the battery carry what is kept alive?',
  judge(context, limit) {
    return context.backup.byLine.map((line): Judged => {
      const limitVA = limit.value * line.ratedVA;
      const shown = showWithin(line.runningVA / 1000, limitVA / 1000, 'at most', 2);
      return {
        about: abouts.backup(line.line, `Backup on ${line.line}`),
        title: `Backup on ${line.line} runs ${shown.value} kVA. ${shown.limit} kVA is the most.`,
        detail: `${Math.round(100 * limit.value)} % of the battery’s ${(line.ratedVA / 1000).toFixed(1)} kVA.`,
        value: line.runningVA / 1000,
        limit: limitVA / 1000,
        unit: 'kVA',
        sense: 'at most',
        working: line.working,
        // above the rating itself the battery lets go: that is no matter of practice
        ...(line.runningVA > line.ratedVA ? { seen: 'equipment sheet' as const } : {}),
        mends: [leaveOut(context, line.line, line.runningVA, limitVA)],
      };
    });
  },
});

/** The smallest circuit that brings the line inside when it is left off the backup. */
function leaveOut({ backup }: CheckContext, line: string, runningVA: number, limitVA: number): Mend {
  const circuit = backup.circuits
    .filter((each) => each.moved && !each.shed && each.lines.some((own) => own === line))
    .map((each) => ({ ...each, leftVA: runningVA - each.runW / each.lines.length }))
    .filter((each) => isWithin(each.leftVA, limitVA, 'at most'))
    .sort((a, b) => b.leftVA - a.leftVA)[0];
  return circuit === undefined
    ? { words: 'Leave two circuits off the backup, or take a larger battery.' }
    : {
        words: `Leave ${circuit.name} off the backup.`,
        value: circuit.leftVA / 1000,
        changes: [{ path: ['choices', 'backup', 'circuits', circuit.id, 'moved'], value: false }],
      };
}
