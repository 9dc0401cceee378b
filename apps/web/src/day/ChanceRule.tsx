import type { DayPlan } from '@eaveline/plan';
import { useWidth } from '../drawing/useWidth.ts';
import { counted } from '../words/count.ts';
import { percent } from '../words/figure.ts';

export interface ChanceRuleProps {
  readonly chances: DayPlan['chanceByDays'];
  readonly days: number;
}

const ROW = 30;
const LEFT = 86;

/** For each number of days the chance that it is enough, with how sure that chance is. */
export function ChanceRule({ chances, days }: ChanceRuleProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const x = (chance: number) => LEFT + chance * (width - LEFT - 70);
  const foot = chances.length * ROW + 4;
  return (
    <div ref={ref}>
      <svg
        width={width}
        height={foot + 22}
        role="img"
        aria-label={chances.map((each) => `${counted(each.days, 'day')}: ${percent(each.chance)}`).join(', ')}
      >
        {chances.map(({ days: each, chance, interval: [low, high] }, i) => (
          <g key={each}>
            <text className={each === days ? 'bold' : ''} x="0" y={i * ROW + 20}>
              {counted(each, 'day')}
            </text>
            <rect
              className="pen25 on-deep"
              x={x(low)}
              y={i * ROW + 8}
              width={Math.max(x(high) - x(low), 2)}
              height="16"
            />
            <path className="pen50" d={`M${LEFT} ${i * ROW + 16}H${x(chance)}`} />
            <path className="on-ink" d={`M${x(chance)} ${i * ROW + 24}l-5-11h10Z`} />
            <text className={each === days ? 'bold' : ''} x={x(high) + 10} y={i * ROW + 20}>
              {percent(chance)}
            </text>
          </g>
        ))}
        <path className="pen50" d={`M${LEFT} 0V${foot}H${x(1)}`} />
        {[0, 0.25, 0.5, 0.75, 1].map((tick) => (
          <g key={tick}>
            <path className="pen25" d={`M${x(tick)} ${foot}v5`} />
            <text x={x(tick)} y={foot + 19} textAnchor="middle">
              {tick * 100}
              {tick === 1 ? ' %' : ''}
            </text>
          </g>
        ))}
      </svg>
    </div>
  );
}
