import { z } from 'zod';
import { textTable } from '../textTable.ts';
import type { Calc } from './calc.ts';

/** The part of JSON Schema that our shapes use. */
interface Shape {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly unit?: string;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly required?: readonly string[];
  readonly items?: Shape | boolean;
  readonly anyOf?: readonly Shape[];
  readonly oneOf?: readonly Shape[];
}

/** JSON Schema of what a quantity takes or gives. */
export function schemaOf(calc: Calc, side: 'input' | 'output') {
  return z.toJSONSchema(calc[side], { io: side === 'input' ? 'input' : 'output' });
}

const named = (values: readonly unknown[]) => values.map((value) => JSON.stringify(value)).join(' | ');

/** What may stand in a field that is one of a few values. */
function valuesOf(shape: Shape): string {
  if (shape.const !== undefined) return named([shape.const]);
  if (shape.enum) return named(shape.enum);
  const of = (shape.anyOf ?? shape.oneOf ?? []).flatMap((option) => (option.const === undefined ? [] : [option.const]));
  return of.length > 0 ? named(of) : '';
}

const inner = (shape: Shape, path: string): readonly (readonly [string, Shape])[] => {
  if (typeof shape.items === 'object' && shape.items.properties) return [[`${path}[].`, shape.items]];
  return shape.properties ? [[`${path}.`, shape]] : [];
};

function fieldRows(shape: Shape, prefix = ''): string[][] {
  return Object.entries(shape.properties ?? {}).flatMap(([name, field]) => {
    const what = [field.description, valuesOf(field)].filter((part) => part).join(': ');
    const left = shape.required?.includes(name) ? '' : 'may be left out';
    const row = [`  ${prefix}${name}`, field.unit ?? '', left, what];
    return [row, ...inner(field, `${prefix}${name}`).flatMap(([path, of]) => fieldRows(of, path))];
  });
}

function fieldTable(shape: Shape): string {
  const options = shape.anyOf ?? shape.oneOf;
  if (options) return options.map(fieldTable).join('\n  or\n');
  return textTable(['  field', 'unit', '', ''], fieldRows(shape));
}

/** Fields, units, source and an example of one quantity. */
export function calcHelp(calc: Calc): string {
  const side = (which: 'input' | 'output') => fieldTable(schemaOf(calc, which) as Shape);
  return [
    `Usage: eaveline calc ${calc.name} [FILE]`,
    '',
    `${calc.line}.`,
    'Reads one object, or a list of them, as JSON from FILE or from standard input; further fields are ignored.',
    '',
    `Takes\n${side('input')}`,
    '',
    `Gives\n${side('output')}`,
    '',
    `Source: ${calc.source}.`,
    '',
    `Example, to be typed into standard input:\n  ${JSON.stringify(calc.example)}`,
  ].join('\n');
}
