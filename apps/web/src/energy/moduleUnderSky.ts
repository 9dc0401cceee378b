import type { Plan } from '@eaveline/plan';
import { figure } from '../words/figure.ts';

type Module = Plan['array']['modules'][number];

/** The module whose sky is drawn: the one selected, else the one that loses most of its light. */
export function moduleUnderSky(
  { array, energy }: Pick<Plan, 'array' | 'energy'>,
  selected: string | undefined,
): { readonly module: Module | undefined; readonly words: string } {
  const picked = selected?.startsWith('energy:') ? selected.slice('energy:'.length) : undefined;
  const worst = energy.modules.reduce<(typeof energy.modules)[number] | undefined>(
    (most, each) => (each.shadeLoss > (most?.shadeLoss ?? -1) ? each : most),
    undefined,
  );
  const year = energy.modules.find(({ moduleId }) => moduleId === picked) ?? worst;
  const module = array.modules.find(({ id }) => id === year?.moduleId);
  if (module === undefined || year === undefined) return { module: undefined, words: '' };
  const lost =
    year.shadeLoss === 0
      ? 'nothing near takes any of its light'
      : `near objects take ${figure(year.shadeLoss * 100, 1)} % of its light`;
  return { module, words: lost };
}
