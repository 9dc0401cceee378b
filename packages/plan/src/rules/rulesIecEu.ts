import { limit } from './limit.ts';
import type { PackFigures, RulePack } from './pack.ts';
import { besideOthers, practiceRules } from './practiceRules.ts';
import type { RuleBook } from './ruleLimits.ts';

type Variant = 'gb' | 'ie' | 'eu';

const WIND = 'EN 1991-1-4';
const PAS = 'PAS 63100';

/** Rules of the United Kingdom, Ireland and, as far as one text can, the European Union. */
export function rulesIecEu(figures: PackFigures, variant: Variant, wiring: string, network: string): RuleBook {
  const gb = variant === 'gb';
  const maker = gb ? 'data sheet; BS 7671 134.1.1' : `data sheet; ${wiring}, maker’s instructions`;
  return {
    ...practiceRules(figures),
    'supply-voltage': figures.supplyBand,
    'wind-exposed': limit('an engineer for hills and cliffs', WIND, 'EN 1991-1-4 4.3.3, orography', 'memory'),
    asbestos: limit(2000, 'asbestos regulations', 'asbestos regulations, built before 2000', 'memory'),
    'cold-voltage': limit('d.c. maximum of the unit', wiring, `${wiring} 712.512, data sheet`, 'equipment sheet'),
    'hot-voltage': limit('tracking range of the unit', 'data sheet', maker, 'equipment sheet'),
    'short-circuit-current': limit(1.25, wiring, `${wiring} 712, 1.25 · Isc`, 'memory'),
    'low-voltage-dc': limit(120, wiring, `${wiring} 414, d.c. extra-low voltage`, 'memory'),
    setbacks: limit('200 mm at every edge', 'common practice', 'edge kept clear, trade press', 'public text'),
    'clamp-zone': limit('zone of the module sheet', 'data sheet', maker, 'equipment sheet'),
    'gap-under': figures.gapUnderMm,
    ...(gb
      ? { 'proud-of-roof': limit(200, 'GPDO', 'permitted development, 200 mm proud of the roof plane', 'memory') }
      : {}),
    'units-per-trunk': limit('breaker, trunk and sheet', 'data sheet', maker, 'equipment sheet'),
    'trunk-rise': figures.riseShare,
    'trunk-rise-with-battery': { ...figures.riseShare, clause: `${figures.riseShare.clause}, battery giving too` },
    'drop-reach': limit('lead of the unit', 'data sheet', maker, 'equipment sheet'),
    'rail-expansion': limit('longest run of the rail', 'data sheet', maker, 'equipment sheet'),
    'breaker-rating': figures.continuousFactor,
    'breaker-continuous': besideOthers,
    'cable-capacity': limit('In ≤ Iz', wiring, `${wiring} 433.1.1, Appendix 4 or IEC 60364-5-52`, 'memory'),
    'fault-loop': limit('0.95 · U₀ over the tripping current', wiring, `${wiring} Table 41.3`, 'memory'),
    'breaking-capacity': limit('prospective current', wiring, `${wiring} 434.5.1`, 'memory'),
    bus: figures.bus.limit,
    'free-ways': limit('ways free', wiring, `${wiring}, room in the board`, 'practice'),
    ...(figures.lineDifferenceVA === undefined
      ? {}
      : {
          'line-difference': {
            ...figures.lineDifferenceVA,
            value: { va: figures.lineDifferenceVA.value, older: false },
          },
        }),
    'standing-leakage': limit(0.3, wiring, `${wiring} 531.3.2, 30 % of the residual rating`, 'memory'),
    'breaker-both-ways': limit(
      'current either way',
      wiring,
      gb ? 'trade notice March 2024; BS 7671 530.3' : `${wiring} 530.3`,
      gb ? 'public text' : 'memory',
    ),
    surge: limit(
      'a type 2 device, or the customer’s written no',
      wiring,
      `${wiring} 443.4.1`,
      gb ? 'public text' : 'memory',
    ),
    'wiring-colours': limit(gb ? ['iec', 'gb-older'] : ['iec'], wiring, `${wiring} 514.3`, 'memory'),
    'board-backing': limit(2000, 'asbestos regulations', 'asbestos regulations, built before 2000', 'memory'),
    'battery-place': figures.batteryPlace.forbidden,
    'battery-clearance': {
      ...figures.batteryPlace.sideMm,
      value: {
        sideMm: figures.batteryPlace.sideMm.value,
        aboveMm: figures.batteryPlace.aboveMm.value,
        from: ['door', 'window', 'vent'],
      },
    },
    'battery-barrier': limit('non-combustible wall or board', PAS, 'PAS 63100, wall behind', 'memory'),
    'battery-vehicles': limit('a bollard where cars pass', 'common practice', 'guarded from vehicles', 'practice'),
    ...(gb
      ? {
          'battery-size': limit(
            { outside: 80, garage: 80, shed: 80, 'utility room': 80 },
            PAS,
            'PAS 63100, at most 80 kWh',
            'public text',
            'Summaries name outbuildings; the other places are not settled.',
          ),
        }
      : {}),
    'backup-residual-device': limit(
      'a residual device on every circuit that can be islanded',
      wiring,
      `${wiring} 411.3.3, 551.4`,
      'memory',
    ),
    'backup-neutral': limit('own neutral traced', wiring, `${wiring} 314.4`, 'memory'),
    'island-earthing': figures.backup.neutral,
    'changeover-rating': limit('rated for what it carries', wiring, `data sheet; ${wiring} 551.6`, 'memory'),
    ...threshold(variant, network),
    'export-limit': gb
      ? limit(3680, network, 'EREC G98, 16 A a phase', 'public text')
      : limit(0, network, 'the network’s letter', 'network letter'),
    'network-approval': limit(
      'number of the answer',
      network,
      gb
        ? 'EREC G98 form B or G99 consent'
        : variant === 'ie'
          ? 'NC6 before fitting'
          : 'EN 50549-1, operator’s consent',
      variant === 'eu' ? 'memory' : 'public text',
    ),
    labels: limit('every label the design needs', wiring, `${wiring} 514, 712.514`, 'memory'),
    documents: limit('signed before handover', wiring, `${wiring} Part 6, EN 62446-1`, 'memory'),
  };
}

function threshold(variant: Variant, network: string): RuleBook {
  if (variant === 'eu') return {};
  const words = { below: 'tell within 28 days', above: 'ask first' };
  return variant === 'gb'
    ? {
        'network-threshold': limit(
          { onePhase: 16, threePhase: 16, unit: 'A', ...words },
          network,
          'EREC G98, 16 A a phase in sum',
          'public text',
          'Some networks count any battery that can back up as more. Ask.',
        ),
      }
    : {
        'network-threshold': limit(
          { onePhase: 25, threePhase: 16, unit: 'A', below: 'tell before fitting', above: 'ask first' },
          network,
          'NC6, 25 A single-phase, 16 A three-phase',
          'public text',
        ),
      };
}

/** Rules that stand elsewhere and not here, and why. */
export function lacksIecEu(variant: Variant): RulePack['lacks'] {
  const lacks: RulePack['lacks'][number][] = [
    { rule: 'dc-ac-ratio', why: 'No cap on the array by its inverter was found.' },
    { rule: 'roof-path', why: 'No clear path from eave to ridge is asked for.' },
  ];
  if (variant !== 'eu')
    lacks.push({ rule: 'line-difference', why: 'No limit between lines was found; the limit is on each line.' });
  if (variant !== 'gb') {
    lacks.push({ rule: 'proud-of-roof', why: 'Planning height of modules goes by country: not read.' });
    lacks.push({ rule: 'battery-size', why: 'No sum in kWh was found for this country.' });
  }
  if (variant === 'eu')
    lacks.push({ rule: 'network-threshold', why: 'Each operator has its own: the national pack decides.' });
  return lacks;
}

export function unsettledIecEu(variant: Variant): RulePack['unsettled'] {
  return variant === 'gb'
    ? [
        'BS 7671 A4:2026 and the earlier text stand side by side until 15 October 2026: the licensed person picks the edition by place.',
        'The chapter and battery clauses of A4 were not read.',
        'Outdoor distances of PAS 63100 are from memory.',
        'Whether backup alone moves a job from G98 to G99 goes by network.',
      ]
    : [
        'National annexes and operators decide; the figures here are the common base.',
        'Battery distances are borrowed from PAS 63100 as practice.',
      ];
}
