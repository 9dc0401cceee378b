import type { LabelText } from './pack.ts';

/** Label texts where IEC 60364 is the base. */
export function labelsIecEu(wiring: string): readonly LabelText[] {
  return [
    {
      id: 'solar-present',
      text: 'PV SYSTEM INSTALLED',
      where: 'origin and consumer unit',
      clause: `${wiring} 712.514`,
      document: wiring,
      seen: 'memory',
      when: 'always',
    },
    {
      id: 'multiple-supplies',
      text: 'CAUTION: MULTIPLE SUPPLIES. ISOLATE ALL BEFORE WORK',
      where: 'origin, meter, consumer unit, isolators',
      clause: `${wiring} 514.15`,
      document: wiring,
      seen: 'memory',
      when: 'always',
    },
    {
      id: 'isolator-solar',
      text: 'ISOLATOR: SOLAR',
      where: 'at the isolator',
      clause: `${wiring} 537`,
      document: wiring,
      seen: 'memory',
      when: 'per trunk',
    },
    {
      id: 'battery-present',
      text: 'BATTERY STORAGE INSTALLED',
      where: 'origin and at the battery',
      clause: 'PAS 63100',
      document: 'PAS 63100',
      seen: 'memory',
      when: 'battery',
    },
    {
      id: 'island',
      text: 'CIRCUITS LIVE WITH THE SUPPLY OFF',
      where: 'backed-up board',
      clause: `${wiring} 551.4`,
      document: wiring,
      seen: 'memory',
      when: 'backup',
    },
    {
      id: 'shutdown',
      text: 'SHUTDOWN: battery, solar, main switch',
      where: 'consumer unit',
      clause: 'EN 62446-1',
      document: 'EN 62446-1',
      seen: 'memory',
      when: 'always',
    },
  ];
}
