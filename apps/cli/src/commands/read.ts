import { basename } from 'node:path';
import type { Outcome } from '../io.ts';
import type { Register } from '../program.ts';
import { type FileReport, reportFile } from '../reading/fileReport.ts';
import type { ReportRemark } from '../reading/held.ts';

/** Where in the file, and what kind of remark. */
function remarkText({ severity, line, field, found, wanted, done, mend }: ReportRemark): string {
  const where = [line === undefined ? '' : `line ${line}`, field ?? ''].filter((part) => part !== '').join(', ');
  const words = [found, wanted, done, mend].filter((part) => part).join(' ');
  return `${severity.padEnd(4)}  ${where === '' ? '' : `${where}: `}${words}`;
}

/** Kinds of remark that occurred more often than they are listed. */
function moreOf({ remarks, counts }: FileReport): string[] {
  return Object.entries(counts).flatMap(([code, count]) => {
    const listed = remarks.filter((remark) => remark.code === code).length;
    return listed > 0 && count > listed ? [`      and ${count - listed} more of the kind ${code}`] : [];
  });
}

const END = ['Usable as it is.', 'Usable; look at the remarks.', 'Not usable.'] as const;

/** The report in words. */
export function reportText(name: string, report: FileReport): string {
  const { what, why, facts, remarks, assumptions, verdict } = report;
  const wide = Math.max(...facts.map(([label]) => label.length), 0);
  const section = (title: string, lines: readonly string[]) => (lines.length === 0 ? [] : ['', title, ...lines]);
  return [
    `${name}: ${what}. ${why}`,
    ...facts.map(([label, value]) => `  ${label.padEnd(wide)}  ${value}`),
    ...section('Remarks', [...remarks.map(remarkText), ...moreOf(report)]),
    ...section(
      'Taken for granted',
      assumptions.map(({ says }) => says),
    ),
    '',
    END[verdict],
  ].join('\n');
}

/** What a file is, what it holds and every problem found; verdict 0 usable, 1 usable with remarks, 2 not usable. */
export function readOutcome(file: Uint8Array, path: string, { json = false } = {}): Outcome {
  const name = basename(path);
  const report = reportFile(file, name);
  const { facts: _, ...data } = report;
  const text = json ? JSON.stringify({ file: name, ...data }, null, 2) : reportText(name, report);
  return { text, verdict: report.verdict };
}

const EXIT_CODES = `
Exit code: 0 usable as it is (notes at most), 1 usable, but something was left out or is doubtful
(a remark says drop or warn), 2 not usable (a remark says stop), not readable yet, or no such file.`;

/** `eaveline read FILE`: the answer goes to standard output also when the file is not usable. */
export const registerRead: Register = (program, io) => {
  program
    .command('read')
    .description('say what a file is, what it holds and every problem found in it')
    .argument('<file>', 'weather of any known kind, or a job')
    .option('--json', 'the same as data')
    .addHelpText('after', EXIT_CODES)
    .action(async (path: string, options: { json?: boolean }) => {
      const { text, verdict } = readOutcome(await io.readBytes(path), path, options);
      io.print(text);
      io.answer({ text: '', verdict });
    });
};
