import { abouts } from '../abouts.ts';
import { placedBatteries } from '../placedBatteries.ts';
import { type Judged, rule } from '../rule.ts';

/** Place of the battery: is it one where the region allows a battery at all? */
export const batteryPlace = rule({
  id: 'battery-place',
  sheet: '06',
  stops: true,
  question: 'Does the battery stand where one may stand?',
  judge(context, limit) {
    return placedBatteries(context).map(({ id, name, place }): Judged => {
      const about = abouts.battery(id, name);
      if (place === undefined) {
        return { about, state: 'ask', title: `Which wall takes ${name}?`, needs: [`choices.batteries.${id}.place`] };
      }
      const { wall } = place;
      if (limit.value.includes(wall.place)) {
        return {
          about,
          state: 'fails',
          title: `${name} on ${wall.name}: ${wall.place}. No battery may stand there.`,
          detail: `Not allowed: ${limit.value.join(', ')}.`,
          mends: [{ words: 'Choose a wall outside, or in a garage.' }],
        };
      }
      return { about, state: 'meets', title: `${name} on ${wall.name}: ${wall.place}.` };
    });
  },
});
