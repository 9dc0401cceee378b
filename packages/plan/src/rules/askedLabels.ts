import type { LabelSays, LabelText, RulePack } from './pack.ts';

/** A label the trade asks for in a region, whatever its words there. */
export interface AskedLabel {
  readonly says: LabelSays;
  /** `the shutdown procedure`: what it tells whoever reads it. */
  readonly what: string;
  readonly when: LabelText['when'];
}

const everywhere: readonly AskedLabel[] = [
  { says: 'solar present', what: 'that there is solar', when: 'always' },
  { says: 'battery present', what: 'that there is a battery', when: 'battery' },
  { says: 'shutdown', what: 'the shutdown procedure', when: 'always' },
  { says: 'multiple supplies', what: 'that several supplies meet here', when: 'always' },
  { says: 'multiple mode', what: 'what stays live with the supply off', when: 'backup' },
  { says: 'solar switch', what: 'which switch is the solar’s', when: 'per trunk' },
  { says: 'battery switch', what: 'which switch is the battery’s', when: 'battery' },
  { says: 'alternative supply', what: 'which switches are backed up', when: 'backup' },
  { says: 'both sides live', what: 'that both sides of the switch are live when open', when: 'per source' },
  { says: 'no unplugging', what: 'not to unplug under load', when: 'per trunk' },
  { says: 'cable route', what: 'which cable is the array’s', when: 'per trunk' },
  { says: 'battery data', what: 'the volts, amperes and chemistry of the battery', when: 'battery' },
  { says: 'settings', what: 'the grid profile and the export limit', when: 'always' },
  { says: 'directory', what: 'what each way of the board feeds', when: 'always' },
];

/**
 * The labels asked for by region, kept apart from their texts: a text that drops out of a region's list is missed.
 * What is asked by one region only stands with it.
 *
 * Common practice of the trade by region, gathered from the standards that the texts name.
 */
export const askedLabels: Readonly<Record<RulePack['id'], readonly AskedLabel[]>> = {
  'au-nz': everywhere,
  'iec-eu': [...everywhere, { says: 'test dates', what: 'when it was tested, and by whom', when: 'always' }],
  us: [
    ...everywhere,
    { says: 'do not relocate', what: 'that the source’s breaker stays at its place', when: 'per source' },
    { says: 'emergency phone', what: 'whom to call', when: 'always' },
  ],
};
