import type { RefusalFacts } from '@eaveline/physics';
import type { z } from 'zod';

/** Why a row has no answer: which field, what stood there, what was wanted, the way out. */
export interface CalcProblem {
  readonly code: RefusalFacts['code'] | 'wrong-type' | 'unreadable';
  readonly at: string;
  readonly got: unknown;
  readonly want: string;
  readonly mend: string;
}

type Issue = z.core.$ZodIssue;

/** `segments[3].lengthM`; `row` for the row as a whole. */
function pathText(path: readonly PropertyKey[]): string {
  const text = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${String(step)}`)).join('');
  return text.replace(/^\./, '') || 'row';
}

function valueAt(row: unknown, path: readonly PropertyKey[]): unknown {
  let value = row;
  for (const step of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}

const listed = (values: readonly unknown[]) => values.map(String).join(', ');

const TYPE_WORDS: Readonly<Record<string, string>> = {
  number: 'a number',
  string: 'a text',
  boolean: 'true or false',
  array: 'a list',
  tuple: 'a list',
  object: 'a group of fields',
  record: 'a group of fields',
};

function wanted(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return TYPE_WORDS[issue.expected] ?? issue.expected;
    case 'invalid_value':
      return issue.values.length === 1 ? listed(issue.values) : `one of ${listed(issue.values)}`;
    case 'invalid_union':
      return 'options' in issue && Array.isArray(issue.options) ? `one of ${listed(issue.options)}` : issue.message;
    case 'too_small':
    case 'too_big': {
      const limit = issue.code === 'too_small' ? `at least ${issue.minimum}` : `at most ${issue.maximum}`;
      return issue.origin === 'array' ? `${limit} in the list` : limit;
    }
    default:
      return issue.message;
  }
}

/** JSON has no word for these; their names are better than null. */
const jsonable = (got: unknown) =>
  got === undefined ? null : typeof got === 'number' && !Number.isFinite(got) ? String(got) : got;

/**
 * Where a row fits none of several shapes: what is amiss with the one it comes nearest to, by count of faults.
 */
export function nearestIssues(issue: Issue): readonly Issue[] {
  if (issue.code !== 'invalid_union' || issue.errors.length === 0) return [issue];
  const [nearest = []] = [...issue.errors].sort((a, b) => a.length - b.length);
  return nearest.flatMap((inner) => nearestIssues({ ...inner, path: [...issue.path, ...inner.path] }));
}

/** A shape that does not fit, in the same words and fields as a refusal. */
export function problemOfIssue(issue: Issue, row: unknown, name: string): CalcProblem {
  const got = valueAt(row, issue.path);
  const missing = got === undefined;
  const ofNames = issue.code === 'invalid_value' || issue.code === 'invalid_union';
  return {
    code: missing
      ? 'missing'
      : ofNames
        ? 'unknown-name'
        : issue.code === 'invalid_type'
          ? 'wrong-type'
          : 'outside-range',
    at: pathText(issue.path),
    got: jsonable(got),
    want: wanted(issue),
    mend: `${missing ? 'Give it' : 'Mend it'}: eaveline calc ${name} --help names the fields and their units.`,
  };
}

/**
 * What the physics refused, with its fields called as this command calls them.
 *
 * @param names  from the physics' names to the command's: `latitudeDeg` → `lat`.
 */
export function problemOfRefusal(facts: RefusalFacts, names: Readonly<Record<string, string>>): CalcProblem {
  const at = facts.at.replace(/^\w+/, (head) => names[head] ?? head);
  return { code: facts.code, at, got: jsonable(facts.got), want: facts.want, mend: facts.mend };
}
