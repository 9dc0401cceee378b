import { abouts } from '../abouts.ts';
import { placedBatteries } from '../placedBatteries.ts';
import { type Judged, rule } from '../rule.ts';

/** Barrier: does a board that does not burn stand between the battery and a room people live in, or a wall that burns? */
export const batteryBarrier = rule({
  id: 'battery-barrier',
  sheet: '06',
  stops: true,
  question: 'Is there a barrier where the wall asks for one?',
  judge(context, limit) {
    return placedBatteries(context).flatMap(({ id, name, place, barrier }): Judged[] => {
      if (place === undefined) return [];
      const { wall, wallId } = place;
      const about = abouts.battery(id, name);
      if (barrier) return [{ about, state: 'meets', title: `${name} stands on a barrier: ${limit.value}.` }];
      const why = [
        ...(wall.habitableBehind ? ['people live behind it'] : []),
        ...(wall.combustible ? ['it burns'] : []),
      ];
      if (why.length > 0) {
        return [
          {
            about,
            state: 'fails',
            title: `${name} on ${wall.name} has no barrier: ${why.join(' and ')}.`,
            detail: `Asked for: ${limit.value}.`,
            mends: [
              {
                words: 'Put a barrier behind it.',
                changes: [{ path: ['choices', 'batteries', id, 'barrier'], value: true }],
              },
            ],
          },
        ];
      }
      const needs = (['habitableBehind', 'combustible'] as const)
        .filter((fact) => wall[fact] === undefined)
        .map((fact) => `facts.walls.${wallId}.${fact}`);
      if (needs.length > 0) {
        return [{ about, state: 'ask', title: `What is behind ${wall.name}, and does it burn?`, needs }];
      }
      return [{ about, state: 'meets', title: `${wall.name} asks for no barrier.` }];
    });
  },
});
