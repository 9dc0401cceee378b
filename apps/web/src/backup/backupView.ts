import type { Plan } from '@eaveline/plan';
import type { SheetView } from '../desk/sheetView.ts';
import { type Subject, workingSubjects } from '../pad/subject.ts';
import { BackupSheet } from './BackupSheet.tsx';
import { headOfBackup } from './headOfBackup.ts';

function backupSubjects({ backup }: Plan): Subject[] {
  return [
    ...backup.byLine.map(({ line, working }) => ({ id: `line:${line}`, name: `Running on ${line}`, working })),
    ...backup.starts.map(({ circuitId, name, working }) => ({
      id: `start:${circuitId}`,
      name: `${name}, start`,
      working,
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
  subjects: backupSubjects,
  leavesOut: ({ backup }) => backup.leavesOut,
  shows: 'lines, starts, a night',
  Body: BackupSheet,
};
