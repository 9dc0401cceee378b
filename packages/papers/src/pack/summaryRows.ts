import { apart, counted, figure, perCent, rangeOf, withUnit } from './figures.ts';
import type { Pack } from './packContext.ts';

/** A figure of the cover with what bounds it. */
export interface SummaryRow {
  readonly what: string;
  readonly value: string;
  /** Its range, or its limit, or what is missing to have one. */
  readonly bounds: string;
  readonly state?: 'fails';
}

/** The figures people ask for first, none without its range or limit. */
export function summaryRows(pack: Pack): SummaryRow[] {
  return [...arrayRows(pack), ...riseRows(pack), ...backupRows(pack), ...footRows(pack), ...dayRows(pack)];
}

function arrayRows({ plan }: Pack): SummaryRow[] {
  const { array, energy, trunks } = plan;
  const [low, high] = energy.rangeKwh;
  const units = trunks.trunks.reduce((sum, trunk) => sum + trunk.unitCount, 0);
  const atMost = energy.exportLimitLossAtMostKwh;
  return [
    {
      what: 'Array',
      value: withUnit(array.stcW / 1000, 'kW', 2),
      bounds: `${counted(array.modules.length, 'module')}, ${counted(units, 'unit')}; 25\u00a0°C, 1\u202f000\u00a0W/m²`,
    },
    {
      what: 'Energy in a year, a.c.',
      value: withUnit(energy.annualKwh / 1000, 'MWh', 1),
      bounds: `nine years in ten: ${rangeOf(low / 1000, high / 1000, 'MWh', 1)}`,
    },
    {
      what: 'Above the units’ own ceiling',
      value: withUnit(energy.clippedKwh, 'kWh', 0),
      bounds: `a year, ${perCent(energy.annualKwh > 0 ? energy.clippedKwh / energy.annualKwh : 0)} of the energy, already taken off`,
    },
    ...(atMost === undefined
      ? []
      : [
          {
            what: 'Lost to the export limit',
            value: `at most ${withUnit(atMost, 'kWh', 0)}`,
            bounds: 'a year, if the house used nothing',
          },
        ]),
  ];
}

function riseRows({ plan }: Pack): SummaryRow[] {
  const worst = [...plan.trunks.trunks].sort((a, b) => b.rise.share - a.rise.share)[0];
  if (worst === undefined) return [];
  const finding = plan.checks.findings.find((one) => one.rule === 'trunk-rise' && one.about.id === worst.id);
  const { totalV, share } = worst.rise;
  const fails = finding?.state === 'fails';
  const shown = finding?.limit === undefined ? undefined : apart(totalV, finding.limit, 2, fails);
  const limit = shown === undefined ? 'limit not judged' : `limit ${shown.limit}\u00a0V`;
  return [
    {
      what: `Voltage rise, trunk ${worst.name}`,
      value: shown === undefined ? withUnit(totalV, 'V', 2) : `${shown.value}\u00a0V`,
      bounds: `${limit}; ${figure(100 * share, 2)} % of nominal${worst.mainsKnown ? '' : ', mains not known'}`,
      ...(fails ? { state: 'fails' as const } : {}),
    },
  ];
}

function backupRows({ plan }: Pack): SummaryRow[] {
  const { backup } = plan;
  if (!backup.present) return [];
  const night = backup.night;
  const busiest = [...backup.byLine].sort((a, b) => b.runningVA / b.limitVA - a.runningVA / a.limitVA)[0];
  return [
    {
      what: 'Battery, usable',
      value: withUnit(backup.usableKwh, 'kWh', 1),
      bounds: `of it ${perCent(backup.reserve)} kept for an outage`,
    },
    ...(night === undefined
      ? [{ what: 'A night in an outage', value: 'not known', bounds: 'what the house uses at night is not known' }]
      : [
          {
            what: 'A night in an outage, no sun',
            value: withUnit(night.fullH, 'h', 1),
            bounds: `from full at ${withUnit(night.loadW, 'W', 0)}; from the reserve alone ${withUnit(night.reserveH, 'h', 1)}`,
          },
        ]),
    ...(busiest === undefined
      ? []
      : [
          {
            what: `Running in an outage, ${busiest.line}`,
            value: withUnit(busiest.runningVA, 'VA', 0),
            bounds: `limit ${withUnit(busiest.limitVA, 'VA', 0)}`,
            ...(busiest.runningVA > busiest.limitVA ? { state: 'fails' as const } : {}),
          },
        ]),
  ];
}

function footRows({ plan }: Pack): SummaryRow[] {
  const { worst, level } = plan.structure;
  if (worst === undefined) {
    return [
      {
        what: 'Uplift on the worst foot',
        value: 'not known',
        bounds: `waits for ${counted(plan.structure.missing.length, 'fact')}`,
      },
    ];
  }
  return [
    {
      what: 'Uplift on the worst foot',
      value: withUnit(worst.upliftN, 'N', 0),
      bounds: `${worst.capacityN === undefined ? 'resistance not known' : `holds ${withUnit(worst.capacityN, 'N', 0)}`}; ${level} load, ${worst.where}`,
    },
  ];
}

function dayRows({ plan }: Pack): SummaryRow[] {
  const { day } = plan;
  if (day.refusal !== undefined) return [{ what: 'Days on site', value: 'none', bounds: day.refusal }];
  const own = day.chanceByDays.find((one) => one.days === day.days);
  return [
    {
      what: 'Days on site',
      value: counted(day.days, 'day'),
      bounds:
        own === undefined
          ? `wanted chance ${perCent(day.wantedChance)}`
          : `chance ${perCent(own.chance)}, wanted ${perCent(day.wantedChance)}`,
    },
  ];
}
