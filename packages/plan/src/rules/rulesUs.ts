import { limit } from './limit.ts';
import type { PackFigures, RulePack } from './pack.ts';
import { practiceRules } from './practiceRules.ts';
import type { RuleBook } from './ruleLimits.ts';

const NEC = 'NEC';
const NFPA = 'NFPA 855 and IRC R328';
const MAKER = 'data sheet; NEC 110.3(B)';

/** Rules of the United States. */
export function rulesUs(figures: PackFigures): RuleBook {
  return {
    ...practiceRules(figures),
    'supply-voltage': figures.supplyBand,
    'wind-exposed': limit('an engineer for hills and special regions', 'ASCE 7', 'ASCE 7 26.5, 26.8', 'memory'),
    asbestos: limit(1990, 'OSHA 1926.1101', 'OSHA 1926.1101', 'memory'),
    'cold-voltage': limit('d.c. maximum of the unit', NEC, 'NEC 690.7(A), data sheet', 'equipment sheet'),
    'hot-voltage': limit('tracking range of the unit', 'data sheet', MAKER, 'equipment sheet'),
    'short-circuit-current': limit(1.25, NEC, 'NEC 690.8(A)', 'memory'),
    'low-voltage-dc': limit(
      80,
      NEC,
      'NEC 690.12(B)(2), inside the array',
      'public text',
      'A unit a module meets it once a.c. is cut.',
    ),
    setbacks: limit('18 in at the ridge, 36 in above a third of the roof', 'IRC R324', 'IRC R324.6', 'public text'),
    'roof-path': limit(0.914, 'IRC R324', 'IRC R324.6.1, 36 in path', 'public text', 'Officials may waive.'),
    'clamp-zone': limit('zone of the module sheet', 'data sheet', MAKER, 'equipment sheet'),
    'gap-under': figures.gapUnderMm,
    'units-per-trunk': limit('breaker, trunk and sheet', 'data sheet', MAKER, 'equipment sheet'),
    'trunk-rise': figures.riseShare,
    'trunk-rise-with-battery': { ...figures.riseShare, clause: `${figures.riseShare.clause}; battery giving too` },
    'drop-reach': limit('lead of the unit', 'data sheet', MAKER, 'equipment sheet'),
    'rail-expansion': limit('longest run of the rail', 'data sheet', MAKER, 'equipment sheet'),
    'breaker-rating': figures.continuousFactor,
    'cable-capacity': limit('In ≤ ampacity', NEC, 'NEC 240.4, 310.15, 110.14(C)', 'memory'),
    'breaking-capacity': limit('available fault current', NEC, 'NEC 110.9', 'public text'),
    bus: figures.bus.limit,
    'free-ways': limit('spaces free', NEC, 'NEC 408.36, listing of the panel', 'memory'),
    'standing-leakage': limit(1 / 3, 'common practice', 'a third of the ground-fault setting', 'practice'),
    'breaker-both-ways': limit('current either way', NEC, 'NEC 705.30(D), back-fed', 'memory'),
    'wiring-colours': limit(['us-120-240', 'us-120-208'], NEC, 'NEC 200.6, 250.119', 'memory'),
    'board-backing': limit(1990, 'OSHA 1926.1101', 'OSHA 1926.1101', 'memory'),
    'battery-place': figures.batteryPlace.forbidden,
    'battery-clearance': limit(
      {
        sideMm: figures.batteryPlace.sideMm.value,
        aboveMm: figures.batteryPlace.aboveMm.value,
        from: ['door', 'window'],
        betweenMm: 914,
      },
      NFPA,
      'IRC R328, 3 ft from doors and windows and between units',
      'public text',
      'A listing by fire test may allow less between units.',
    ),
    'battery-vehicles': limit('protection from vehicles', NFPA, 'IRC R328, vehicle impact', 'public text'),
    'battery-barrier': limit('finished or ⅝ in gypsum board', NFPA, 'IRC R328.4', 'public text'),
    'battery-size': limit(
      { 'utility room': 40, shed: 80, garage: 80, outside: 80 },
      NFPA,
      'IRC R328.5, by place',
      'public text',
      'Each unit at most 20 kWh.',
    ),
    'backup-residual-device': limit('GFCI where the circuit has one', NEC, 'NEC 210.8', 'memory'),
    'backup-neutral': limit('own neutral traced', NEC, 'NEC 200.4', 'memory'),
    'island-earthing': figures.backup.neutral,
    'changeover-rating': limit('rated for the full transferred load', NEC, 'NEC 702.4', 'public text'),
    'export-limit': limit(0, 'utility tariff', 'the utility’s letter', 'network letter'),
    'network-approval': limit('interconnection agreement', 'utility tariff', 'utility tariff', 'public text'),
    labels: limit('every label the design needs', NEC, 'NEC 690.13, 690.56, 705.10, 706', 'public text'),
    documents: limit('signed before permission to operate', 'utility tariff', 'permit, utility tariff', 'public text'),
  };
}

/** Rules that stand elsewhere and not here, and why. */
export const lacksUs: RulePack['lacks'] = [
  { rule: 'dc-ac-ratio', why: 'No cap on the array by its inverter was found.' },
  { rule: 'proud-of-roof', why: 'The gap under the module limits it.' },
  { rule: 'breaker-continuous', why: 'The 125 % rule already leaves a fifth of the breaker free.' },
  { rule: 'fault-loop', why: 'The code sets no loop table; available fault current is judged instead.' },
  { rule: 'line-difference', why: 'No limit in VA between legs was found.' },
  { rule: 'surge', why: 'Asked for at a new or replaced service only (NEC 230.67), which this job does not say.' },
  { rule: 'network-threshold', why: 'Every interconnection is applied for.' },
];

export const unsettledUs: RulePack['unsettled'] = [
  'The edition of every code goes by place: the licensed person picks it in the job.',
  'Numbers of NEC articles move between editions.',
  'Rapid shutdown outside the array, the disconnects and the working space are seen on site, not from the design.',
];
