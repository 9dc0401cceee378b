import type { Plan } from '@eaveline/plan';
import { loadSubjects } from '../board/boardView.ts';
import type { SheetView } from '../desk/sheetView.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { BackupSheet } from './BackupSheet.tsx';
import { headOfBackup } from './headOfBackup.ts';

function backupSubjects({ backup, checks }: Plan): Subject[] {
  const judged = (circuitId: string) => {
    const finding = checks.findings.find(({ rule, about }) => rule === 'backup-start' && about.id === circuitId);
    return finding === undefined ? {} : { finding };
  };
  return [
    ...backup.byLine.map(({ line, working }) => ({ id: `line:${line}`, name: `Running on ${line}`, working })),
    ...backup.starts.map(({ circuitId, name, working }) => ({
      id: `start:${circuitId}`,
      name: `${name}, start`,
      working,
      ...judged(circuitId),
    })),
    ...(backup.night === undefined
      ? []
      : [{ id: 'night', name: 'A night without sun', working: backup.night.working }]),
    ...workingSubjects('backup', backup.workings),
  ];
}

/** Sheet 06. */
export const backupView: SheetView = {
  head: headOfBackup,
  subjects: (plan, job) => [...backupSubjects(plan), ...loadSubjects(job)],
  first: ({ backup, checks }) => {
    const worst = backup.starts.find(({ circuitId }) =>
      checks.findings.some(
        ({ rule, about, state }) => rule === 'backup-start' && about.id === circuitId && state !== 'meets',
      ),
    );
    return worst === undefined ? 'night' : `start:${worst.circuitId}`;
  },
  leavesOut: ({ backup }) => backup.leavesOut,
  shows: 'lines, starts, a night',
  Body: BackupSheet,
};
