import { given, worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { placedBatteries } from '../placedBatteries.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Battery size: is the energy in each kind of place inside the region's sum? */
export const batterySize = rule({
  id: 'battery-size',
  sheet: '06',
  stops: true,
  question: 'Is there no more battery in one place than the region allows?',
  judge(context, limit) {
    const batteries = placedBatteries(context);
    return Object.entries(limit.value).flatMap(([where, most]): Judged[] => {
      const here = batteries.filter((battery) => battery.place?.wall.place === where);
      if (here.length === 0) return [];
      const value = here.reduce((sum, battery) => sum + battery.sheet.usableKwh, 0);
      const shown = showWithin(value, most, 'at most', 1);
      return [
        {
          about: abouts.battery(where.replace(' ', '-'), here.map((battery) => battery.name).join(', ')),
          title: `${shown.value} kWh in one place, ${where}. ${shown.limit} kWh is the most.`,
          value,
          limit: most,
          unit: 'kWh',
          sense: 'at most',
          working: worked(
            `Energy of the batteries, ${where}`,
            value,
            'kWh',
            'sum of what is usable',
            'equipment sheets',
            here.map(({ id, name, sheet }) =>
              given(
                name,
                sheet.usableKwh,
                'kWh',
                `choices.equipment.${context.choices.batteries[id]?.sheet}.usableKwh`,
                'equipment sheet',
              ),
            ),
            { decimals: 1 },
          ),
          ...(limit.note === undefined ? {} : { detail: limit.note }),
          mends: [{ words: 'Spread the batteries over two places, or take one out.' }],
        },
      ];
    });
  },
});
