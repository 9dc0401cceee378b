import type { TestRow } from '@eaveline/plan';
import { RuleGauge } from '../parts/RuleGauge.tsx';

export interface TestGaugeProps {
  readonly row: TestRow;
  readonly width: number;
}

/** The rule of a test: what is expected as a band, the limit with its closed side, the reading as a needle. */
export function TestGauge({ row: { predicted, limit, reading }, width }: TestGaugeProps) {
  const unit = predicted?.unit ?? limit?.unit;
  if (unit === undefined) return null;
  return (
    <RuleGauge
      unit={unit}
      width={width}
      {...(predicted === undefined
        ? {}
        : { predicted: { low: predicted.low, middle: predicted.value, high: predicted.high } })}
      {...(limit === undefined || limit.unit !== unit ? {} : { limit: { value: limit.value, sense: limit.sense } })}
      {...(reading === undefined || reading.unit !== unit
        ? {}
        : { needle: { value: reading.value, fails: reading.inLimit === false } })}
    />
  );
}
