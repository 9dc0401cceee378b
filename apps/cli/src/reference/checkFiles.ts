import { camelKey, camelKeys } from '../camelKeys.ts';
import { constantPowerTrunk } from './constantPowerTrunk.ts';
import { mapCheck } from './electricalKinds.ts';
import { asked, idOf, isJson, type Json, type ReferenceShape, rowsIn } from './shape.ts';
import type { Tally } from './tally.ts';
import type { Tolerance } from './tolerance.ts';

/** Figures that are to be met as printed: verdicts, ratings, table values. */
export const AS_PRINTED: Tolerance = { sameRel: 1e-6 };

function toleranceOfCheck(check: Json): Tolerance {
  const { tolerance_relative: rel, tolerance_absolute_a: abs } = check;
  if (typeof rel === 'number') return { sameRel: rel };
  return typeof abs === 'number' ? { sameAbs: abs } : AS_PRINTED;
}

/** Every expected field of a check against the same field of an answer. */
export function tryExpected(
  calc: string,
  id: string,
  expected: Json,
  result: Json | string,
  allowed: Tolerance,
  tally: Tally,
): void {
  for (const [field, want] of Object.entries(expected)) {
    const quantity = `${calc} ${camelKey(field)}`;
    if (typeof result === 'string') tally.noAnswer(quantity, id, result);
    else tally.group(quantity, id, result[camelKey(field)], camelKeys(want), allowed);
  }
}

function tryCheck(check: Json, id: string, where: string, tally: Tally): void {
  const inputs = isJson(check.inputs) ? check.inputs : {};
  const expected = isJson(check.expected) ? check.expected : {};
  const mapped = mapCheck(check, inputs);
  if (mapped === undefined) {
    tally.skip(String(check.kind ?? check.standard ?? 'a check without a kind'), where, 'not yet worked out');
    return;
  }
  const allowed = toleranceOfCheck(check);
  tryExpected(mapped.calc, id, expected, asked(mapped.calc, mapped.row), allowed, tally);
  const exact = check.exact_constant_power;
  if (isJson(exact)) tryConstantPower(inputs, exact, id, allowed, tally);
}

/** The same trunk at constant power, by the load flow. */
function tryConstantPower(inputs: Json, exact: Json, id: string, allowed: Tolerance, tally: Tally): void {
  const result = asked('power-flow', constantPowerTrunk(inputs));
  const highest = typeof result === 'string' ? undefined : (result.highestModuleInverter as Json);
  const pairs = [
    ['power-flow trunk terminalV', exact.highest_terminal_v, highest?.terminalV],
    ['power-flow trunk risePercentOfSourceV', exact.rise_percent, highest?.risePercentOfSourceV],
  ] as const;
  for (const [quantity, want, got] of pairs) {
    if (typeof want !== 'number') continue;
    if (typeof result === 'string') tally.noAnswer(quantity, id, result);
    else tally.figure(quantity, id, got, want, allowed);
  }
}

const checksIn = ({ checks, examples }: Json) =>
  [...rowsIn(checks), ...rowsIn(examples)].filter((check) => isJson(check.inputs) && isJson(check.expected));

/** conductor, ampacity, voltage, protection and commissioning files: lists of checks. */
export const checkShape: ReferenceShape = {
  about: 'electrical checks',
  knows: (document) => checksIn(document).length > 0,
  run({ name, document }, tally) {
    checksIn(document).forEach((check, at) => void tryCheck(check, idOf(check, at), name, tally));
  },
};
