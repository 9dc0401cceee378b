import type { TestRow } from '@eaveline/plan';
import { decimalsFor, figure, withUnit } from '../words/figure.ts';

export interface TestExpectsProps {
  readonly row: TestRow;
}

/** What the design expects of a test, or what has to be seen; the lawful limit apart from it, with its clause. */
export function TestExpects({ row: { predicted, wanted, limit } }: TestExpectsProps) {
  const decimals = predicted && (Number.isInteger(predicted.value) ? 0 : decimalsFor(predicted.high));
  return (
    <>
      {predicted && (
        <p>
          expected {withUnit(predicted.value, predicted.unit, decimals)}
          {predicted.high > predicted.low && (
            <span className="quiet">
              , {figure(Math.max(predicted.low, 0), decimals)} to {figure(predicted.high, decimals)}
            </span>
          )}
        </p>
      )}
      {wanted !== undefined && <p>{wanted}</p>}
      {limit && (
        <p className="quiet">
          {limit.sense} {withUnit(limit.value, limit.unit)}; {limit.clause}
        </p>
      )}
    </>
  );
}
