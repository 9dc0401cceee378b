import { abouts } from '../abouts.ts';
import { placedBatteries } from '../placedBatteries.ts';
import { type Judged, rule } from '../rule.ts';

/** Vehicles: is the battery guarded where cars can reach it? */
export const batteryVehicles = rule({
  id: 'battery-vehicles',
  sheet: '06',
  stops: true,
  question: 'Is the battery guarded from vehicles?',
  judge(context) {
    return placedBatteries(context).flatMap(({ id, name, place, bollard }): Judged[] => {
      if (place === undefined) return [];
      const { wall, wallId } = place;
      const about = abouts.battery(id, name);
      if (bollard) return [{ about, state: 'meets', title: `${name} stands behind a bollard.` }];
      if (wall.vehicles === undefined) {
        return [
          { about, state: 'ask', title: `Can a car reach ${wall.name}?`, needs: [`facts.walls.${wallId}.vehicles`] },
        ];
      }
      return wall.vehicles
        ? [
            {
              about,
              state: 'fails',
              title: `Cars can reach ${name}. Nothing guards it.`,
              mends: [
                { words: 'Set a bollard.', changes: [{ path: ['choices', 'batteries', id, 'bollard'], value: true }] },
              ],
            },
          ]
        : [{ about, state: 'meets', title: `No car reaches ${wall.name}.` }];
    });
  },
});
