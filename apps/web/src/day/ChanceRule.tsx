import type { DayPlan } from '@eaveline/plan';
import { useId } from 'react';
import { Hatch } from '../drawing/Hatch.tsx';
import { useWidth } from '../drawing/useWidth.ts';
import { counted } from '../words/count.ts';
import { percent } from '../words/figure.ts';
import { hundredths } from './hundredths.ts';

export interface ChanceRuleProps {
  readonly day: Pick<DayPlan, 'chanceByDays' | 'days' | 'wantedChance'>;
}

const ROW = 30;
const TOP = 4;
const LEFT = 86;
const RIGHT = 62;

/** Each number of days on the rule: its chance as a needle with how sure it is, the side below the wanted chance closed. */
export function ChanceRule({ day: { chanceByDays, days, wantedChance } }: ChanceRuleProps) {
  const { ref, width } = useWidth<HTMLDivElement>();
  const hatch = useId();
  const x = (chance: number) => LEFT + chance * (width - LEFT - RIGHT);
  const foot = TOP + chanceByDays.length * ROW;
  const said = chanceByDays
    .map((each) => `${counted(each.days, 'day')}: ${percent(hundredths(each.chance) / 100)}`)
    .join(', ');
  return (
    <div ref={ref}>
      <svg
        width={width}
        height={foot + 24}
        role="img"
        aria-label={`Chance by days, at least ${percent(wantedChance)} wanted: ${said}`}
      >
        <defs>
          <Hatch id={hatch} />
        </defs>
        {chanceByDays.map(({ days: each, chance, interval: [low, high] }, i) => {
          const y = TOP + i * ROW + 22;
          const bold = each === days ? 'bold' : '';
          return (
            <g key={each}>
              <text className={bold} x="0" y={y - 2}>
                {counted(each, 'day')}
              </text>
              <rect x={LEFT} y={y - 7} width={x(wantedChance) - LEFT} height="7" fill={`url(#${hatch})`} />
              <path className="pen25" d={`M${LEFT} ${y}H${x(1)}`} />
              <rect className="pen25 on-deep" x={x(low)} y={y - 13} width={Math.max(x(high) - x(low), 2)} height="13" />
              <path className={chance < wantedChance ? 'on-fails' : 'on-ink'} d={`M${x(chance)} ${y}l-5-11h10Z`} />
              <text className={bold} x={x(1) + 12} y={y - 2}>
                {percent(hundredths(chance) / 100)}
              </text>
            </g>
          );
        })}
        <path className="pen70 in-fails" d={`M${x(wantedChance)} ${TOP}V${foot}`} />
        <path className="pen50" d={`M${LEFT} ${foot}H${x(1)}`} />
        <text x={LEFT} y={foot + 18}>
          0
        </text>
        <text x={x(wantedChance)} y={foot + 18} textAnchor="middle">
          {`${percent(wantedChance)} wanted`}
        </text>
      </svg>
    </div>
  );
}
