import { dirname, isAbsolute, join } from 'node:path';
import type { Calc, CalcAnswer, NamedFiles } from '../calc/calc.ts';
import { calcHelp, schemaOf } from '../calc/help.ts';
import { calcNamed, calcs } from '../calc/registry.ts';
import type { Io, Outcome } from '../io.ts';
import { nearestName } from '../nearestName.ts';
import type { Register } from '../program.ts';
import { textTable } from '../textTable.ts';

export interface CalcOptions {
  readonly working?: boolean;
}

/** What one row comes to in the output: its result, or its error with the further faults of the row beside it. */
function printed(answer: CalcAnswer, withWorking: boolean): Record<string, unknown> {
  if ('result' in answer) return withWorking ? { ...answer.result, working: answer.working } : answer.result;
  const [error, ...more] = answer.problems;
  return more.length === 0 ? { error } : { error, more };
}

/**
 * Answers the rows of a JSON text, in order: an object for an object, a list for a list.
 *
 * Verdict 0 when every row was answered, 1 when some row has an error, 2 when the text is no JSON of rows.
 */
export function calcOutcome(calc: Calc, rows: Rows, files: NamedFiles, options: CalcOptions = {}): Outcome {
  const answers = rows.list.map((row) => calc.answer(row, files));
  const lines = answers.map((answer) => printed(answer, options.working === true));
  const text = rows.single
    ? JSON.stringify(lines[0], null, 2)
    : `[${lines.map((line) => `\n${JSON.stringify(line)}`).join(',')}\n]`;
  return { text, verdict: answers.some((answer) => 'problems' in answer) ? 1 : 0 };
}

/** Rows as they were given: alone, or in a list. */
export interface Rows {
  readonly list: readonly unknown[];
  readonly single: boolean;
}

/** Deeper groups than any quantity takes: they would run the printing of an answer out of its stack. */
const MOST_LEVELS = 64;

function deeperThan(levels: number, value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return levels === 0 || Object.values(value).some((each) => deeperThan(levels - 1, each));
}

/** Reads the rows, or says in one line why there are none. */
export function rowsOf(text: string, where: string): Rows | string {
  const body = text.replace(/^\uFEFF/, '');
  if (body.trim() === '') return `${where} is empty. Give one JSON object, or a list of them.`;
  try {
    const value: unknown = JSON.parse(body);
    if (deeperThan(MOST_LEVELS, value))
      return `${where} nests groups deeper than ${MOST_LEVELS} levels. No quantity does.`;
    if (Array.isArray(value)) return { list: value, single: false };
    if (typeof value === 'object' && value !== null) return { list: [value], single: true };
    return `${where} holds ${JSON.stringify(value).slice(0, 40)}. Give one JSON object, or a list of them.`;
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return `${where} is not JSON: ${error.message}.`;
  }
}

/** `eaveline calc --list`: a line each, or as JSON with the schemas of what they take and give. */
export function calcList(asJson: boolean): string {
  if (!asJson)
    return textTable(
      ['name', 'what it works out'],
      calcs.map(({ name, line }) => [name, line]),
    );
  const schemas = calcs.map((calc) => ({
    name: calc.name,
    line: calc.line,
    source: calc.source,
    example: calc.example,
    input: schemaOf(calc, 'input'),
    output: schemaOf(calc, 'output'),
  }));
  return JSON.stringify(schemas, null, 2);
}

/** A name that is not known, with the one that was probably meant. */
export function unknownCalc(name: string): Outcome {
  const near = nearestName(
    name,
    calcs.map((calc) => calc.name),
  );
  const meant = near === undefined ? '' : ` Did you mean ${near}?`;
  return { text: `There is no quantity "${name}".${meant} eaveline calc --list names them all.`, verdict: 2 };
}

/** Opens the files that rows name, from here or from the folder of the rows; one that cannot be opened is left out. */
async function openNamed(calc: Calc, rows: Rows, folder: string, io: Io): Promise<NamedFiles> {
  const files = new Map<string, Uint8Array>();
  for (const path of new Set(rows.list.flatMap((row) => calc.filesOf(row)))) {
    for (const place of isAbsolute(path) ? [path] : [path, join(folder, path)]) {
      const bytes = await io.readBytes(place).catch(() => undefined);
      if (bytes === undefined) continue;
      files.set(path, bytes);
      break;
    }
  }
  return files;
}

interface Typed extends CalcOptions {
  readonly list?: boolean;
  readonly json?: boolean;
  readonly help?: boolean;
}

async function answerRows(calc: Calc, file: string | undefined, options: CalcOptions, io: Io): Promise<Outcome> {
  const fromStdin = file === undefined || file === '-';
  const rows = rowsOf(fromStdin ? await io.readStdin() : await io.readText(file), fromStdin ? 'Standard input' : file);
  if (typeof rows === 'string') return { text: rows, verdict: 2 };
  const files = await openNamed(calc, rows, fromStdin ? '.' : dirname(file), io);
  return calcOutcome(calc, rows, files, options);
}

/** `eaveline calc NAME [FILE]`: the product's formulas one at a time. */
export const registerCalc: Register = (program, io) => {
  const command = program
    .command('calc')
    .description('work out one quantity from JSON rows; --list names them')
    .argument('[name]', 'quantity')
    .argument('[file]', 'JSON object or list of objects (default: standard input)')
    .option('--working', 'add the derivation to every result')
    .option('--list', 'name every quantity')
    .option('--json', 'with --list: JSON Schemas of input and output')
    // of the command, or of the quantity where one is named
    .helpOption(false)
    .option('-h, --help', 'print fields, units and source of a quantity');
  command.action(async (name: string | undefined, file: string | undefined, typed: Typed) => {
    if (typed.list) return io.answer({ text: calcList(typed.json === true), verdict: 0 });
    const calc = name === undefined ? undefined : calcNamed(name);
    if (typed.help && name === undefined) return io.answer({ text: command.helpInformation(), verdict: 0 });
    if (name === undefined) return io.answer({ text: `${command.helpInformation()}\nName a quantity.`, verdict: 2 });
    if (calc === undefined) return io.answer(unknownCalc(name));
    if (typed.help) return io.answer({ text: calcHelp(calc), verdict: 0 });
    return io.answer(await answerRows(calc, file, typed, io));
  });
};
