import type { LabelText } from './pack.ts';

/** Label texts for the United States. */
export const labelsUs: readonly LabelText[] = [
  {
    id: 'rapid-shutdown',
    text: 'SOLAR PV SYSTEM EQUIPPED WITH RAPID SHUTDOWN',
    where: 'at the service, with roof diagram',
    clause: 'NEC 690.56(C)',
    document: 'NEC',
    seen: 'public text',
    when: 'always',
  },
  {
    id: 'multiple-supplies',
    text: 'CAUTION: MULTIPLE SOURCES OF POWER',
    where: 'each service equipment and disconnect',
    clause: 'NEC 705.10',
    document: 'NEC',
    seen: 'public text',
    when: 'always',
  },
  {
    id: 'do-not-relocate',
    text: 'WARNING: DO NOT RELOCATE THIS OVERCURRENT DEVICE',
    where: 'at the source breaker',
    clause: 'NEC 705.12(B)',
    document: 'NEC',
    seen: 'public text',
    when: 'per source',
  },
  {
    id: 'solar-disconnect',
    text: 'PV SYSTEM DISCONNECT',
    where: 'at the disconnect, with volts and amperes',
    clause: 'NEC 690.13(B)',
    document: 'NEC',
    seen: 'public text',
    when: 'per trunk',
  },
  {
    id: 'battery-disconnect',
    text: 'ENERGY STORAGE SYSTEM DISCONNECT',
    where: 'at the battery',
    clause: 'NEC 706.15',
    document: 'NEC',
    seen: 'public text',
    when: 'battery',
  },
  {
    id: 'backup',
    text: 'OPTIONAL STANDBY SYSTEM',
    where: 'service equipment',
    clause: 'NEC 702.7',
    document: 'NEC',
    seen: 'memory',
    when: 'backup',
  },
];
