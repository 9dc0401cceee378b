import { labelsIecEu } from './labelsIecEu.ts';
import { limit, PRACTICE } from './limit.ts';
import type { PackFigures, RulePack } from './pack.ts';
import { lacksIecEu, rulesIecEu, unsettledIecEu } from './rulesIecEu.ts';

type Variant = 'gb' | 'ie' | 'eu';

const WIRING: Record<Variant, string> = { gb: 'BS 7671', ie: 'I.S. 10101', eu: 'HD 60364' };
const NETWORK: Record<Variant, string> = { gb: 'EREC G98 and G99', ie: 'ESB Networks NC6', eu: 'EN 50549-1' };

/** United Kingdom, Ireland and, as far as one text can, the European Union. National annexes decide in the end. */
function iecEu(variant: Variant): PackFigures {
  const wiring = WIRING[variant];
  const network = NETWORK[variant];
  return {
    id: 'iec-eu',
    variant,
    words: {
      board: variant === 'eu' ? 'distribution board' : 'consumer unit',
      earth: 'earth',
      line: 'line',
      breaker: 'circuit-breaker',
      residualDevice: 'RCD',
      network: variant === 'gb' ? 'DNO' : 'DSO',
      supply: variant === 'gb' ? 'cut-out' : 'origin',
      homeRun: 'a.c. feed',
      changeover: 'island isolator',
      isolator: 'isolator',
    },
    wiring: 'iec',
    editions: {
      'BS 7671': '2018 with A4:2026',
      'I.S. 10101': '2020 with amendments',
      'HD 60364': 'national edition in force',
      'EREC G98 and G99': '2024 issues',
      'ESB Networks NC6': 'current form',
      'EN 50549-1': '2019 with national settings',
      'PAS 63100': '2024',
      GPDO: '2015 as amended',
      'EN 50160': '2010',
      'installation guide': '2012',
      'asbestos regulations': 'national law in force',
      'EN 1991-1-4': 'with the national annex',
      'IEC 60364-6': '2016',
    },

    riseShare: limit(
      variant === 'gb' ? 0.01 : 0.03,
      variant === 'gb' ? 'installation guide' : wiring,
      variant === 'gb' ? 'guide value for generation, at most 1 %' : 'HD 60364-8-82, advice',
      'memory',
      'Advice of guides, not a clause that forbids.',
    ),
    continuousFactor: limit(1, wiring, `${wiring} 433.1.1`, 'memory'),
    breakerContinuousShare: limit(0.8, PRACTICE, 'grouped breakers, IEC 60898 guides', 'practice'),
    cableMethod: 'iec',
    loop: {
      standard: 'BS 7671',
      limit: limit('0.95 U0 over five, ten, twenty times the rating', wiring, 'BS 7671 Table 41.3', 'memory'),
    },
    bus: { kind: 'sum of sources', limit: limit(1, wiring, `${wiring} 551.7`, 'memory') },
    ...(variant === 'eu'
      ? { lineDifferenceVA: limit(4600, network, 'VDE-AR-N 4105, single-phase difference', 'memory') }
      : {}),
    ...tellOnly(variant, network),
    supplyBand: limit(
      variant === 'eu' ? ([-0.1, 0.1] as const) : variant === 'gb' ? ([-0.06, 0.1] as const) : ([-0.1, 0.1] as const),
      'EN 50160',
      variant === 'gb' ? 'ESQCR, 230 V +10 −6 %' : 'EN 50160, 230 V ± 10 %',
      'memory',
    ),

    setbacks: {
      eaveM: limit(0.2, PRACTICE, 'edge kept clear, run-off into the gutter', 'public text'),
      ridgeM: limit(0.2, PRACTICE, 'edge kept clear; nothing above the ridge', 'public text'),
      sideM: limit(0.2, PRACTICE, 'edge kept clear', 'public text'),
    },
    gapUnderMm: limit(
      [50, 300] as const,
      'EN 1991-1-4',
      'EN 1991-1-4 with national guidance, array parallel to the roof',
      'memory',
    ),
    coldVoltage: limit('module coefficient at the record low', wiring, `${wiring} 712.414`, 'memory'),

    wind: {
      method: 'EN 1991-1-4',
      limit: limit('0.9 G + 1.5 W', 'EN 1991-1-4', 'EN 1990 with EN 1991-1-4', 'memory'),
      footMargin: limit(1.25, PRACTICE, 'resistance over load on the worst foot', 'practice'),
    },

    batteryPlace: {
      sideMm: limit(
        1000,
        'PAS 63100',
        'PAS 63100, openings outdoors',
        'memory',
        'Outdoor distances are not settled in public notes.',
      ),
      aboveMm: limit(1000, 'PAS 63100', 'PAS 63100, openings outdoors', 'memory'),
      frontMm: limit(600, PRACTICE, 'room to work in front', 'practice'),
      forbidden: limit(
        ['bedroom', 'loft', 'under stairs'],
        'PAS 63100',
        'PAS 63100, places not allowed',
        variant === 'gb' ? 'public text' : 'practice',
      ),
    },
    ...(variant === 'gb' ? { batteryKwhMost: limit(80, 'PAS 63100', 'PAS 63100, outbuilding', 'public text') } : {}),
    backup: {
      runningShare: limit(0.9, PRACTICE, 'running at most 90 % of the rating', 'practice'),
      startShare: limit(1, 'equipment sheet', 'short-time rating of the battery', 'equipment sheet'),
      solarShare: limit(2, PRACTICE, 'guides give one to two times the battery', 'practice'),
      neutral: limit(
        'bond relay and own electrode',
        wiring,
        `${wiring} 551.4.3.2.1`,
        variant === 'gb' ? 'public text' : 'memory',
      ),
    },

    tests: {
      insulationMOhm: limit(
        1,
        'IEC 60364-6',
        variant === 'gb' ? 'BS 7671 Table 64' : 'IEC 60364-6 Table 6.1',
        variant === 'gb' ? 'public text' : 'memory',
      ),
      insulationTestV: limit(500, 'IEC 60364-6', 'IEC 60364-6 Table 6.1', 'memory'),
      mainEarthOhm: limit(0.5, PRACTICE, 'main earth by guide', 'practice'),
      railBondOhm: limit(1, PRACTICE, 'rail to the earth bar', 'practice'),
      residualMs: limit(
        300,
        wiring,
        variant === 'gb' ? 'BS 7671 643.7, at once its rating' : 'IEC 61008-1 Table 1',
        variant === 'gb' ? 'public text' : 'memory',
      ),
      coldLoopShare: limit(0.8, wiring, 'BS 7671 Appendix 3, measured cold', 'public text'),
      lossOfMainsS: limit(
        variant === 'gb' ? 0.5 : 2,
        network,
        variant === 'gb' ? 'EREC G98 loss of mains' : 'EN 62116',
        'memory',
      ),
      reconnectS: limit(
        variant === 'gb' ? 20 : 60,
        network,
        variant === 'gb' ? 'EREC G98' : 'EN 50549-1 cl 4.10',
        'memory',
      ),
    },
    labels: labelsIecEu(wiring),
    documents: documents(variant),
  };
}

function tellOnly(variant: Variant, network: string): Pick<RulePack, 'tellOnlyA' | 'tellOnlyVA'> {
  if (variant === 'gb') {
    return {
      tellOnlyA: limit(
        16,
        network,
        'EREC G98, 16 A a phase in sum',
        'public text',
        'Some networks count any battery that can back up. Ask.',
      ),
    };
  }
  if (variant === 'ie') {
    return {
      tellOnlyA: limit(25, network, 'NC6, 25 A single-phase, 16 A three-phase', 'public text', 'Tell before fitting.'),
    };
  }
  return { tellOnlyVA: limit(800, network, 'RfG 2016/631, from 0.8 kW', 'memory') };
}

function documents(variant: Variant): RulePack['documents'] {
  if (variant === 'gb') {
    return [
      {
        id: 'network-notice',
        name: 'Form to the DNO within 28 days, or consent before',
        who: 'installer',
        clause: 'EREC G98, G99',
        seen: 'public text',
        first: 'network',
      },
      {
        id: 'electrical-certificate',
        name: 'Electrical installation certificate with schedules',
        who: 'competent person',
        clause: 'BS 7671 Part 6',
        seen: 'public text',
      },
      {
        id: 'building-notice',
        name: 'Building Regulations notice',
        who: 'scheme or control',
        clause: 'Part P',
        seen: 'memory',
        first: 'permission',
      },
    ];
  }
  return [
    {
      id: 'network-notice',
      name: variant === 'ie' ? 'NC6 before fitting' : 'Form with single-line and unit certificate',
      who: 'installer',
      clause: variant === 'ie' ? 'ESB Networks NC6' : 'EN 50549-1',
      seen: 'public text',
      first: 'network',
    },
    {
      id: 'electrical-certificate',
      name: 'Completion certificate',
      who: 'registered contractor',
      clause: 'national rules',
      seen: 'public text',
    },
    { id: 'handover', name: 'Test report to EN 62446-1', who: 'installer', clause: 'EN 62446-1', seen: 'memory' },
  ];
}

function packOf(variant: Variant): RulePack {
  const figures = iecEu(variant);
  return {
    ...figures,
    rules: rulesIecEu(figures, variant, WIRING[variant], NETWORK[variant]),
    lacks: lacksIecEu(variant),
    unsettled: unsettledIecEu(variant),
  };
}

export const gbPack: RulePack = packOf('gb');
export const iePack: RulePack = packOf('ie');
export const euPack: RulePack = packOf('eu');
