import { useId } from 'react';
import { figure } from '../words/figure.ts';
import { gaugeScale, gaugeTicks } from './gaugeScale.ts';

export interface RuleGaugeProps {
  readonly unit: string;
  readonly width?: number;
  readonly limit?: { readonly value: number; readonly sense: 'at most' | 'at least' };
  readonly predicted?: { readonly low: number; readonly middle: number; readonly high: number };
  /** What is judged, or was read. */
  readonly needle?: { readonly value: number; readonly fails: boolean };
  /** What a mend would make of it. */
  readonly offered?: number;
  readonly decimals?: number;
  /** Letter the ends of the scale as well. */
  readonly ends?: boolean;
}

const BASE = 26;
const HEIGHT = 52;

/** The rule: a value against a limit and a prediction, the same everywhere. The words beside it say it again. */
export function RuleGauge({
  unit,
  width = 160,
  limit,
  predicted,
  needle,
  offered,
  decimals,
  ends = false,
}: RuleGaugeProps) {
  const hatch = useId();
  const values = [limit?.value, predicted?.low, predicted?.high, needle?.value, offered].filter((v) => v !== undefined);
  const scale = gaugeScale(values);
  const x = (value: number) => ((value - scale.from) / (scale.to - scale.from)) * width;
  const said = (value: number) => (decimals === undefined ? figure(value) : figure(value, decimals));
  const keepIn = (at: number, half = 22) => Math.min(Math.max(at, half), width - half);
  const closed = limit && (limit.sense === 'at most' ? [x(limit.value), width] : [0, x(limit.value)]);
  const below = limit
    ? { at: x(limit.value), text: `${said(limit.value)} ${unit}` }
    : predicted && { at: x(predicted.middle), text: `${said(predicted.middle)} ${unit}` };
  return (
    <svg width={width} height={HEIGHT} viewBox={`0 0 ${width} ${HEIGHT}`} aria-hidden="true">
      <defs>
        <pattern id={hatch} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V5" stroke="var(--ink-fails)" strokeWidth="1.5" />
        </pattern>
      </defs>
      {closed && closed[0] !== undefined && closed[1] !== undefined && (
        <rect
          x={closed[0]}
          y={BASE - 9}
          width={Math.max(closed[1] - closed[0], 0)}
          height="9"
          fill={`url(#${hatch})`}
        />
      )}
      {predicted && (
        <>
          <rect
            className="pen25 on-deep"
            x={x(predicted.low)}
            y={BASE - 14}
            width={Math.max(x(predicted.high) - x(predicted.low), 2)}
            height="14"
          />
          <path className="pen50" d={`M${x(predicted.middle)} ${BASE}v-6`} />
        </>
      )}
      <path className="pen50" d={`M0 ${BASE}H${width}`} />
      {gaugeTicks(scale).map((tick) => (
        <path key={tick} className="pen25" d={`M${x(tick)} ${BASE}v5`} />
      ))}
      {limit && <path className="pen70 in-fails" d={`M${x(limit.value)} ${BASE - 13}v17`} />}
      {offered !== undefined && <path className="pen25 on-marker" d={`M${x(offered)} ${BASE}l-5-11h10Z`} />}
      {needle && (
        <>
          <path className={needle.fails ? 'on-fails' : 'on-ink'} d={`M${x(needle.value)} ${BASE}l-5-11h10Z`} />
          <text className={needle.fails ? 'bold fa' : 'bold'} x={keepIn(x(needle.value))} y="11" textAnchor="middle">
            {said(needle.value)}
          </text>
        </>
      )}
      {below && (
        <text className="qt" x={keepIn(below.at, 30)} y={BASE + 19} textAnchor="middle">
          {below.text}
        </text>
      )}
      {ends && !below && (
        <text className="qt" x={width} y={BASE + 19} textAnchor="end">
          {`${said(scale.to)} ${unit}`}
        </text>
      )}
    </svg>
  );
}
