import { finite } from '../refusal.ts';

/** Numbers by chance that come again with the same seed, on every machine. */
export interface SeededRandom {
  /** Evenly spread in 0 < x < 1. */
  uniform(): number;
  /** Normal with mean 0 and standard deviation 1. */
  gaussian(): number;
}

/**
 * Small fast counting generator of three 32-bit words and a counter (sfc32), started from one number.
 * Integer arithmetic only, so the same everywhere; not for secrets.
 *
 * Normal numbers by the polar method, two at a time.
 *
 * @param seed  Any finite number; its whole part, modulo 2³², and the bits above both count.
 * @throws {Refusal} `not-finite`.
 *
 * Sources: Doty-Humphrey, PractRand, sfc32 (from memory); Marsaglia and Bray 1964, SIAM Review 6, 260.
 */
export function seededRandom(seed: number): SeededRandom {
  finite(seed, 'seed', 'Give any whole number.');
  let a = seed >>> 0;
  let b = Math.floor(seed / 4294967296) >>> 0;
  let c = 0x9e3779b9;
  let counter = 1;
  let spare: number | undefined;

  const word = (): number => {
    const t = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + t) | 0;
    return t >>> 0;
  };
  // the first words still show the seed
  for (let k = 0; k < 16; k++) word();

  const uniform = (): number => (word() + 0.5) / 4294967296;
  const gaussian = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const s = x * x + y * y;
      if (s >= 1 || s === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(s)) / s);
      spare = y * scale;
      return x * scale;
    }
  };
  return { uniform, gaussian };
}
