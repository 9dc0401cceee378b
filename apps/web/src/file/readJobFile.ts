import { type Job, type JobRemark, LONGEST_TEXT, parseJob } from '@eaveline/job';

import { otherKind, WANTED } from './otherKind.ts';

/** A job file as it was read: the job, or nothing of it; and everything that was noticed. */
export interface FileRead {
  readonly fileName: string;
  readonly job: Job | undefined;
  readonly remarks: readonly JobRemark[];
}

/** The part of a File that is used. */
export type FileLike = Pick<File, 'name' | 'size' | 'text'>;

/** UTF-8 takes at most four bytes a letter: what is longer need not be read to be too long. */
const LONGEST_BYTES = 4 * LONGEST_TEXT;

/** Reads a file as a job file, whatever it is; it never takes half of one. */
export async function readJobFile(file: FileLike): Promise<FileRead> {
  const { name: fileName, size } = file;
  const refused = (found: string, wanted: string, mend: string): FileRead => ({
    fileName,
    job: undefined,
    remarks: [{ severity: 'stop', file: fileName, at: '', found, wanted, mend }],
  });
  if (size > LONGEST_BYTES)
    return refused(
      `${Math.round(size / 1e6)} MB`,
      `at most ${LONGEST_BYTES / 1e6} MB`,
      'This is no job, or something was pasted into it. Photographs stay beside the job, not in it.',
    );
  let text: string;
  try {
    text = await file.text();
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    return refused(
      `a file that could not be read: ${words}`,
      'a file',
      'Is it still there? A folder is opened file by file.',
    );
  }
  const kind = otherKind(fileName, text);
  if (kind !== undefined) return refused(kind, WANTED, 'It is left as it is.');
  const { job, remarks } = parseJob(text, fileName);
  return { fileName, job, remarks };
}
