import { Refusal } from '@eaveline/physics';
import type { z } from 'zod';
import { type CalcProblem, nearestIssues, problemOfIssue, problemOfRefusal } from './problem.ts';

/** Files that rows name, by the path as it stands in the row. */
export type NamedFiles = ReadonlyMap<string, Uint8Array>;

type Row = Readonly<Record<string, unknown>>;

/** One quantity as it is written down: shapes, sum and the words around it. */
export interface CalcSpec<Input extends z.ZodType, Output extends z.ZodType> {
  /** As typed after `eaveline calc`. */
  readonly name: string;
  /** What it works out, in one line. */
  readonly line: string;
  /** The published source, or how it is known. */
  readonly source: string;
  readonly input: Input;
  readonly output: Output;
  /** A row that has an answer; the help shows it. */
  readonly example: z.input<Input>;
  /** The physics' names for fields that are called otherwise here. */
  readonly names?: Readonly<Record<string, string>>;
  /** Groups of a row that are taken as if their fields stood in the row itself. */
  readonly flatten?: readonly string[];
  /** Fields for which null has a meaning of its own; elsewhere it stands for a field left out. */
  readonly nullMeans?: readonly string[];
  /** Paths of the files a row names. */
  readonly files?: (row: Row) => readonly string[];
  readonly run: (row: z.output<Input>, files: NamedFiles) => z.input<Output>;
  /** The sum in lines: formula, figures put in, result. */
  readonly working: (row: z.output<Input>, result: z.input<Output>) => readonly string[];
}

export type CalcAnswer =
  | { readonly result: Record<string, unknown>; readonly working: readonly string[] }
  | { readonly problems: readonly [CalcProblem, ...CalcProblem[]] };

/** A quantity that answers rows of any shape: with a result, or with everything that is wrong with the row. */
export interface Calc {
  readonly name: string;
  readonly line: string;
  readonly source: string;
  readonly input: z.ZodType;
  readonly output: z.ZodType;
  readonly example: unknown;
  filesOf(row: unknown): readonly string[];
  answer(row: unknown, files?: NamedFiles): CalcAnswer;
}

const isRow = (row: unknown): row is Row => typeof row === 'object' && row !== null && !Array.isArray(row);

/** Groups opened, nulls left out. A field of the row itself counts before one of its groups. */
function prepared(row: Row, flatten: readonly string[], nullMeans: readonly string[]): Row {
  const groups = flatten.map((name) => row[name]).filter(isRow);
  const merged = Object.assign({}, ...groups, row) as Row;
  return Object.fromEntries(Object.entries(merged).filter(([key, value]) => value !== null || nullMeans.includes(key)));
}

/** A result as JSON has it: what is not known is null. */
function settled(value: unknown): unknown {
  if (value === undefined) return null;
  if (Array.isArray(value)) return value.map(settled);
  if (!isRow(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, settled(inner)]));
}

/** Closes a spec into a quantity that takes rows as they come. */
export function defineCalc<Input extends z.ZodType, Output extends z.ZodType>(spec: CalcSpec<Input, Output>): Calc {
  const { name, line, source, input, output, example, names = {}, flatten = [], nullMeans = [] } = spec;
  return {
    name,
    line,
    source,
    input,
    output,
    example,
    filesOf: (row) => (isRow(row) && spec.files ? spec.files(row) : []),
    answer(given, files = new Map()) {
      if (!isRow(given)) {
        const mend = `Put the fields in braces: eaveline calc ${name} --help shows a row.`;
        return { problems: [{ code: 'wrong-type', at: 'row', got: given ?? null, want: 'an object', mend }] };
      }
      const row = prepared(given, flatten, nullMeans);
      const read = input.safeParse(row);
      if (!read.success) {
        const [first, ...more] = read.error.issues
          .flatMap(nearestIssues)
          .map((issue) => problemOfIssue(issue, row, name));
        if (first === undefined) throw new Error(`${name}: a shape refused a row and said nothing`);
        return { problems: [first, ...more] };
      }
      try {
        const result = spec.run(read.data, files);
        return { result: settled(result) as Record<string, unknown>, working: spec.working(read.data, result) };
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        return { problems: [problemOfRefusal(error.facts, names)] };
      }
    },
  };
}
