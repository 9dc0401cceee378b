import { layFeet } from '../../array/layFeet.ts';
import type { Mend } from '../../finding.ts';
import { worked } from '../../working.ts';
import type { CheckContext } from '../context.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/**
 * Uplift: does the worst foot hold with margin?
 *
 * Resistance over load, both at one level: a load with its factors on may not stand against a characteristic
 * resistance. Where the levels differ, or a figure is missing, it asks.
 */
export const footUplift = rule({
  id: 'foot-uplift',
  sheet: '03',
  stops: true,
  question: 'Does the worst foot hold?',
  judge(context, limit): Judged[] {
    const { structure, choices } = context;
    if (choices.mounting === undefined || context.array.modules.length === 0) return [];
    const about = { kind: 'fixing' as const, id: 'worst-foot', name: 'Worst foot' };
    const { worst, capacity } = structure;
    if (worst === undefined) {
      return [
        {
          about,
          state: 'ask',
          title: 'Wind on the feet: not worked out yet.',
          detail: `${structure.missing.length} figures are missing.`,
          needs: structure.missing,
        },
      ];
    }
    const fixing = `choices.equipment.${choices.mounting.fixingSheet}`;
    if (capacity === undefined || worst.capacityN === undefined) {
      return [
        {
          about,
          state: 'ask',
          title: `What does one fixing hold in this roof? The worst foot is pulled with ${worst.upliftN.toFixed(0)} N.`,
          needs: [`${fixing}.upliftN`],
          working: worst.working,
        },
      ];
    }
    if (capacity.level !== structure.level) {
      return [
        {
          about,
          state: 'ask',
          title: `The load is ${article(structure.level)}, the fixing’s figure is ${article(capacity.level)}. They may not be set against each other.`,
          needs: [`${fixing}.upliftLevel`, `${fixing}.upliftN`],
          working: worst.working,
        },
      ];
    }
    if (worst.upliftN <= 0) {
      return [{ about, state: 'meets', title: 'No foot is pulled upward.', seen: capacitySeen(context) }];
    }
    const value = worst.capacityN / worst.upliftN;
    const shown = showWithin(value, limit.value, 'at least', 2);
    return [
      {
        about,
        title: `The worst foot, ${worst.where}, holds ${shown.value} times its pull. ${shown.limit} is the least.`,
        value,
        limit: limit.value,
        unit: '',
        sense: 'at least',
        working: worked('Margin of the worst foot', value, '', 'R ÷ F', limit.clause, [
          { name: 'resistance of one fixing', value: worst.capacityN, unit: 'N', source: capacity.basis },
          worst.working,
        ]),
        // below one the foot pulls out: that is no matter of practice
        ...(value < 1 ? { seen: 'equipment sheet' as const } : {}),
        mends: [closer(context, value, limit.value)],
      },
    ];
  },
});

const article = (level: string) => (level === 'allowable' ? 'an allowable one' : `a ${level} one`);
const capacitySeen = ({ structure }: CheckContext) =>
  structure.capacity === undefined ? ('practice' as const) : ('equipment sheet' as const);

/**
 * Feet closer together, on the next rafters. The pull on a foot goes with the spacing, near enough to choose by: the
 * figure itself waits until the feet are laid again.
 */
function closer(context: CheckContext, margin: number, least: number): Mend {
  const { choices, roof, facts } = context;
  const spacingMm = choices.mounting?.footSpacingMm ?? 0;
  const rafterMm = Math.max(0, ...roof.planes.map((plane) => facts.roof.planes[plane.id]?.rafters.spacingMm ?? 0));
  const wantedMm = (spacingMm * margin) / least;
  const onRafters = rafterMm > 0 ? Math.floor(wantedMm / rafterMm) * rafterMm : Math.floor(wantedMm / 10) * 10;
  if (onRafters <= 0) return { words: 'Choose a stronger fixing: one on every rafter does not hold.' };
  const tooFar = overhangingThen(context, onRafters);
  const price = tooFar.length === 0 ? '' : ` ${listed(tooFar)} then overhang${tooFar.length === 1 ? 's' : ''} too far.`;
  return {
    words: `Set feet at most ${onRafters} mm apart.${price}`,
    changes: [{ path: ['choices', 'mounting', 'footSpacingMm'], value: onRafters }],
  };
}

/** `N2 lower and N2 upper`. */
function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** Rails whose ends would pass a third of the span beside them, once that is shorter: said before the mend is taken. */
function overhangingThen({ array, roof }: CheckContext, spacingMm: number): readonly string[] {
  const raftersOf = new Map(roof.planes.map(({ id, raftersU }) => [id, raftersU]));
  return array.rails
    .filter(({ keepsLimits }) => keepsLimits)
    .filter(({ fromU, toU, planeId }) => !layFeet(fromU, toU, spacingMm / 1000, raftersOf.get(planeId)).keepsLimits)
    .map(({ name }) => name);
}
