import type { LabelText } from './pack.ts';

const D1 = 'AS/NZS 4777.1';

/** Label texts for Australia and New Zealand. The wording of an edition is read again before it is engraved. */
export const labelsAuNz: readonly LabelText[] = [
  {
    id: 'solar-present',
    text: 'SOLAR PV AC',
    where: 'meter box and main switchboard',
    clause: 'AS/NZS 5033 cl 5.4',
    document: 'AS/NZS 5033',
    seen: 'public text',
    when: 'always',
  },
  {
    id: 'battery-present',
    text: 'BATTERY ES',
    where: 'meter box and main switchboard',
    clause: 'AS/NZS 5139 cl 7',
    document: 'AS/NZS 5139',
    seen: 'memory',
    when: 'battery',
  },
  {
    id: 'shutdown',
    text: 'SHUTDOWN PROCEDURE: battery a.c., solar a.c., main switch',
    where: 'beside what is operated',
    clause: 'AS/NZS 4777.1 cl 6.2',
    document: D1,
    seen: 'public text',
    when: 'always',
  },
  {
    id: 'multiple-supplies',
    text: 'WARNING: MULTIPLE SUPPLIES. ISOLATE ALL SUPPLIES BEFORE WORK',
    where: 'every board with two sources or more',
    clause: 'AS/NZS 4777.1 cl 6.3',
    document: D1,
    seen: 'public text',
    when: 'always',
  },
  {
    id: 'multiple-mode',
    text: 'WARNING: ACTIVE AND NEUTRAL MAY BE LIVE WITH THE MAIN SWITCH OFF',
    where: 'main and each backed-up switchboard',
    clause: 'AS/NZS 4777.1 cl 6.8',
    document: D1,
    seen: 'public text',
    when: 'backup',
  },
  {
    id: 'main-switch-solar',
    text: 'MAIN SWITCH (SOLAR SUPPLY)',
    where: 'at the switch',
    clause: 'AS/NZS 3000 cl 2.3.3.5',
    document: 'AS/NZS 3000',
    seen: 'public text',
    when: 'per trunk',
  },
  {
    id: 'main-switch-battery',
    text: 'MAIN SWITCH (BATTERY SUPPLY)',
    where: 'at the switch',
    clause: 'AS/NZS 3000 cl 2.3.3.5',
    document: 'AS/NZS 3000',
    seen: 'public text',
    when: 'battery',
  },
  {
    id: 'alternative-supply',
    text: 'ALTERNATIVE SUPPLY',
    where: 'round the switches of the backed-up side',
    clause: 'AS/NZS 3000 cl 2.10.5.2',
    document: 'AS/NZS 3000',
    seen: 'public text',
    when: 'backup',
  },
];
