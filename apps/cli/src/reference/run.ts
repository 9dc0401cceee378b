import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import process from 'node:process';
import { finderIn, readReferenceFiles } from './files.ts';
import { runReference } from './runReference.ts';

const DEFAULT_DIR = '../shared/reference';

/** npm runs a script in the folder of the package; a path that was typed is meant from where it was typed. */
function folderTyped(typed: string | undefined): string {
  return typed === undefined ? resolve(DEFAULT_DIR) : resolve(process.env.INIT_CWD ?? '.', typed);
}

const args = process.argv.slice(2);
const json = args.includes('--json');
const dir = folderTyped(args.find((arg) => !arg.startsWith('--')));
const unknownFlag = args.find((arg) => arg.startsWith('--') && arg !== '--json');

if (unknownFlag !== undefined || !existsSync(dir)) {
  const why = unknownFlag === undefined ? `There is no folder ${dir}.` : `There is no option ${unknownFlag}.`;
  process.stderr.write(`${why} Usage: npm run reference -- [DIR] [--json]\n`);
  process.exitCode = 2;
} else {
  const { files, unread } = readReferenceFiles(dir);
  const { text, verdict } = runReference(files, finderIn(dir), { json }, unread);
  process.stdout.write(`${text}\n`);
  process.exitCode = verdict;
}
