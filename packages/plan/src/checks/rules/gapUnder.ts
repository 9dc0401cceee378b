import { abouts } from '../abouts.ts';
import { rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Gap under the module: inside the band in which the region's coefficients hold? */
export const gapUnder = rule({
  id: 'gap-under',
  sheet: '03',
  stops: true,
  question: 'Is the gap under the modules inside its band?',
  judge({ choices: { mounting } }, { value: [low, high], clause }) {
    if (mounting === undefined) return [];
    const value = mounting.gapUnderMm;
    const nearHigh = value - low > high - value;
    const limit = nearHigh ? high : low;
    const sense = nearHigh ? 'at most' : 'at least';
    const shown = showWithin(value, limit, sense, 0);
    return [
      {
        about: abouts.job('mounting', 'Mounting'),
        title: `${shown.value} mm under the modules. ${low} to ${high} mm is the band.`,
        value,
        limit,
        unit: 'mm',
        sense,
        working: { name: 'Gap', value, unit: 'mm', source: clause, at: 'choices.mounting.gapUnderMm' },
        mends: [
          {
            words: `Choose ${limit} mm.`,
            value: limit,
            changes: [{ path: ['choices', 'mounting', 'gapUnderMm'], value: limit }],
          },
        ],
      },
    ];
  },
});
