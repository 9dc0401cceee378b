import type { AwgSize } from '@eaveline/physics';
import { gaugeNumber, gaugeSize } from './gauge.ts';
import { plainSigns } from './plainSigns.ts';
import { type QuantityRefusal, readQuantity } from './readQuantity.ts';

/** Size of a conductor as it stands on the cable: metric area or American gauge, never one made of the other. */
export type ReadConductorSize =
  | { readonly kind: 'empty' }
  | { readonly kind: 'area'; readonly areaMm2: number }
  | { readonly kind: 'gauge'; readonly awg: AwgSize }
  | QuantityRefusal;

/** Reads the size of a conductor, keeping the system it was typed in: `6 mm²`, `10 AWG`, `2/0`, `250 kcmil`. */
export function readConductorSize(typed: string): ReadConductorSize {
  const text = plainSigns(typed);
  const n = gaugeNumber(text);
  const kcmil = /^250 ?(?:kcmil|mcm|kcm)$/i.test(text);
  const awg = n === undefined ? (kcmil ? '250 kcmil' : undefined) : gaugeSize(n);
  if (awg !== undefined) return { kind: 'gauge', awg };
  if (n !== undefined) {
    return {
      kind: 'refused',
      found: `${typed.trim()} is no gauge the tables hold`,
      wanted: 'a standard size',
      mend: 'Type 14 to 1 AWG, 1/0 to 4/0, 250 kcmil, or mm².',
    };
  }
  const read = readQuantity(typed, 'mm²');
  return read.kind === 'value' ? { kind: 'area', areaMm2: read.value } : read;
}
