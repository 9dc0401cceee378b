import { labelsAuNz } from './labelsAuNz.ts';
import { limit, PRACTICE } from './limit.ts';
import type { PackFigures, RulePack } from './pack.ts';
import { lacksAuNz, rulesAuNz, unsettledAuNz } from './rulesAuNz.ts';

const D1 = 'AS/NZS 4777.1';
const D2 = 'AS/NZS 4777.2';
const W = 'AS/NZS 3000';
const P = 'AS/NZS 5033';
const B = 'AS/NZS 5139';

/**
 * Australia and New Zealand. `public text`: the figure was seen in a regulator's, network's or trade body's public
 * summary of the clause, not in the standard itself.
 */
function auNz(variant: 'au' | 'nz'): PackFigures {
  return {
    id: 'au-nz',
    variant,
    words: {
      board: 'main switchboard',
      earth: 'earth',
      line: 'active',
      breaker: 'circuit breaker',
      residualDevice: 'RCD',
      network: variant === 'nz' ? 'lines company' : 'network (DNSP)',
      supply: 'point of supply',
      homeRun: 'array a.c. cable',
      changeover: 'changeover device',
      isolator: 'isolating switch',
    },
    wiring: 'iec',
    editions: {
      [D1]: '2024',
      [D2]: '2020 with A1 and A2',
      [W]: '2018 with amendments',
      'AS/NZS 3008.1.1': '2017',
      [P]: '2021',
      [B]: '2019',
      'AS/NZS 1170.2': '2021',
      'AS 60038': '2012',
      'Electricity (Safety) Regulations': '2010, as amended 2025',
      'incentive scheme': 'rules of the year of the certificates',
      'work safety law': 'of the state',
      'certificate law': 'of the state',
      'network rules': 'the letter of this site',
    },

    riseShare: limit(0.02, D1, 'AS/NZS 4777.1 cl 3.3.3', 'public text', 'Consumer mains included, at rated current.'),
    continuousFactor: limit(1, W, 'AS/NZS 3000 cl 2.5.3.1', 'memory'),
    breakerContinuousShare: limit(0.8, PRACTICE, 'grouped breakers in a hot board', 'practice'),
    cableMethod: 'iec',
    loop: {
      standard: 'AS/NZS 3000',
      limit: limit('mean tripping current', W, 'AS/NZS 3000 Table 8.1', 'memory'),
    },
    bus: { kind: 'sum of sources', limit: limit(1, W, 'AS/NZS 3000 Section 2, bars for all sources', 'memory') },
    lineDifferenceVA: limit(
      5000,
      D1,
      'AS/NZS 4777.1, imbalance between phases',
      'memory',
      'The 2024 multi-phase limits were not found.',
    ),
    tellOnlyVA: limit(
      variant === 'nz' ? 10_000 : 30_000,
      'network rules',
      variant === 'nz' ? 'Part 6, 10 kW or less' : 'basic connection, three-phase',
      'public text',
      'Each network has its own; the letter decides.',
    ),
    exportVAPerLine: limit(5000, 'network rules', 'export limit a phase without a study', 'public text'),
    supplyBand: limit(
      variant === 'nz' ? ([-0.1, 0.1] as const) : ([-0.06, 0.1] as const),
      variant === 'nz' ? 'Electricity (Safety) Regulations' : 'AS 60038',
      variant === 'nz' ? '230 V ± 10 % from 13 November 2025' : '230 V +10 −6 %',
      variant === 'nz' ? 'public text' : 'memory',
    ),

    setbacks: {
      eaveM: limit(0.2, 'AS/NZS 1170.2', 'AS/NZS 1170.2 App D, twice the gap under the module', 'public text'),
      ridgeM: limit(0.2, 'AS/NZS 1170.2', 'AS/NZS 1170.2 App D, twice the gap under the module', 'public text'),
      sideM: limit(0.2, 'AS/NZS 1170.2', 'AS/NZS 1170.2 App D, twice the gap under the module', 'public text'),
    },
    setbackGaps: limit(2, 'AS/NZS 1170.2', 'AS/NZS 1170.2 App D6, 2 s from every edge', 'public text'),
    gapUnderMm: limit([50, 300] as const, 'AS/NZS 1170.2', 'AS/NZS 1170.2 App D6, parallel arrays', 'public text'),
    dcAcRatio: limit(1.33, 'incentive scheme', 'array at most 133 % of the inverter for certificates', 'memory'),
    coldVoltage: limit('module coefficient at the record low', P, 'AS/NZS 5033 cl 4.2', 'memory'),
    lowVoltageDcV: limit(120, P, 'AS/NZS 5033 cl 5.4', 'public text'),

    wind: {
      method: 'AS/NZS 1170.2',
      limit: limit('0.9 G + Wu', 'AS/NZS 1170.2', 'AS/NZS 1170.0 cl 4.2.2 with 1170.2', 'memory'),
      footMargin: limit(1.25, PRACTICE, 'resistance over load on the worst foot', 'practice'),
    },

    batteryPlace: {
      sideMm: limit(600, B, 'AS/NZS 5139 cl 4.2', 'public text'),
      aboveMm: limit(900, B, 'AS/NZS 5139 cl 4.2', 'public text'),
      frontMm: limit(600, B, 'AS/NZS 5139 cl 4.2', 'public text'),
      forbidden: limit(['habitable room', 'bedroom', 'loft', 'under stairs'], B, 'AS/NZS 5139 cl 4.2.2', 'public text'),
    },
    backup: {
      runningShare: limit(0.9, PRACTICE, 'running at most 90 % of the rating', 'practice'),
      startShare: limit(1, 'equipment sheet', 'short-time rating of the battery', 'equipment sheet'),
      solarShare: limit(1.5, PRACTICE, 'solar on the backed-up side over the battery', 'practice'),
      neutral: limit('grid neutral stays', W, 'AS/NZS 3000, MEN kept at all times', 'public text'),
    },

    tests: {
      insulationMOhm: limit(1, W, 'AS/NZS 3000 cl 8.3.6', 'public text'),
      insulationTestV: limit(500, W, 'AS/NZS 3000 cl 8.3.6', 'memory'),
      mainEarthOhm: limit(0.5, W, 'AS/NZS 3000 cl 8.3.5', 'memory'),
      railBondOhm: limit(1, PRACTICE, 'rail to the earth bar', 'practice'),
      residualMs: limit(300, W, 'AS/NZS 3000 cl 8.3.10', 'memory'),
      coldLoopShare: limit(0.8, W, 'AS/NZS 3000 Table 8.2, measured cold', 'memory'),
      lossOfMainsS: limit(2, D2, 'AS/NZS 4777.2 cl 4.4', 'memory'),
      reconnectS: limit(60, D2, 'AS/NZS 4777.2 cl 4.7', 'memory'),
    },
    labels: labelsAuNz,
    documents: documents(variant),
  };
}

function documents(variant: 'au' | 'nz'): RulePack['documents'] {
  return variant === 'au'
    ? [
        {
          id: 'network-letter',
          name: 'Network letter with approval number',
          who: 'network',
          clause: 'connection agreement',
          seen: 'public text',
          first: 'network',
        },
        {
          id: 'electrical-certificate',
          name: 'Certificate of electrical safety of the state',
          who: 'licensed contractor',
          clause: 'state electrical safety law',
          seen: 'public text',
        },
        {
          id: 'rise-sum',
          name: 'Voltage-rise calculation, on request',
          who: 'licensed contractor',
          clause: 'AS/NZS 4777.1 cl 3.3.3',
          seen: 'public text',
        },
      ]
    : [
        {
          id: 'network-letter',
          name: 'Distributed generation approval',
          who: 'lines company',
          clause: 'Part 6 of the Code',
          seen: 'public text',
          first: 'network',
        },
        {
          id: 'electrical-certificate',
          name: 'Certificate of compliance and electrical safety certificate',
          who: 'registered worker',
          clause: 'Electricity (Safety) Regulations',
          seen: 'public text',
        },
        {
          id: 'inspection',
          name: "Inspector's record of inspection, high-risk work",
          who: 'inspector',
          clause: 'Electricity (Safety) Regulations',
          seen: 'public text',
        },
      ];
}

function packOf(variant: 'au' | 'nz'): RulePack {
  const figures = auNz(variant);
  return { ...figures, rules: rulesAuNz(figures), lacks: lacksAuNz(variant), unsettled: unsettledAuNz };
}

export const auPack: RulePack = packOf('au');
export const nzPack: RulePack = packOf('nz');
