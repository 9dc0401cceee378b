import { AWG_SIZES, IEC_CAPACITY_SIZES_MM2 } from '@eaveline/physics';

/** One size of a cable as the trade of the region names it, and as the job holds it. */
export interface ConductorSize {
  readonly words: string;
  readonly size: { readonly areaMm2: number } | { readonly awg: string };
}

/** Sizes a cable may have, thinnest first: the ones the tables hold. */
export function conductorSizes(pack: 'au-nz' | 'iec-eu' | 'us'): readonly ConductorSize[] {
  return pack === 'us'
    ? AWG_SIZES.map((awg) => ({ words: `${awg} AWG`, size: { awg } }))
    : IEC_CAPACITY_SIZES_MM2.map((areaMm2) => ({ words: `${areaMm2} mm²`, size: { areaMm2 } }));
}
