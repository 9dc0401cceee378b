import { positive, Refusal } from '../refusal.ts';

/**
 * What a force means: a value of nature (`characteristic`), factored for strength design (`design`), or for
 * working-stress design (`allowable`). Loads and resistances carry it, so that they cannot be mixed.
 */
export type Level = 'characteristic' | 'design' | 'allowable';

export interface Force<L extends Level = Level> {
  readonly newtons: number;
  readonly level: L;
}

/**
 * Load over resistance of the same level; above 1 fails.
 * @throws {Refusal} `inconsistent` when the levels differ: an ultimate load never meets an allowable capacity.
 */
export function utilisation(load: Force, resistance: Force): number {
  if (load.level !== resistance.level || load.level === 'characteristic') {
    throw new Refusal({
      code: 'inconsistent',
      at: 'level',
      got: `${load.level} load, ${resistance.level} resistance`,
      want: 'both design or both allowable',
      mend: 'Factor both by the same standard before comparing.',
    });
  }
  const resistanceN = positive(resistance.newtons, 'resistance.newtons', 'Give the resistance of the fixing.');
  return load.newtons / resistanceN;
}
