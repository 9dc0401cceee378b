import { sheetOf } from '../../equipment.ts';
import { worked } from '../../working.ts';
import { abouts, plural, trunkName } from '../abouts.ts';
import { breakerCarriesA } from '../breakerCarriesA.ts';
import { type Judged, rule } from '../rule.ts';

/**
 * Units on a trunk: no more than breaker, trunk cable and the unit's sheet allow?
 *
 * Each bound in units: floor(bound in A / current of the busiest line · units), or the number on the sheet. The
 * least of them counts.
 */
export const unitsPerTrunk = rule({
  id: 'units-per-trunk',
  sheet: '04',
  stops: true,
  question: 'Are there no more units on each trunk than it carries?',
  judge({ trunks, choices, pack }) {
    return trunks.trunks.flatMap((trunk): Judged[] => {
      const choice = choices.trunks[trunk.id];
      if (choice === undefined || trunk.currentA <= 0) return [];
      const breaker = sheetOf(choices.equipment, choice.breakerSheet, 'breaker');
      const cable = sheetOf(choices.equipment, trunk.cableSheetId, 'trunk-cable');
      const unitsAt = (amperes: number) => Math.floor((amperes / trunk.currentA) * trunk.unitCount + 1e-9);
      const unitSheets = trunk.drops.flatMap((drop) => {
        const unit = drop.unitId === undefined ? undefined : choices.units[drop.unitId];
        return unit === undefined ? [] : [sheetOf(choices.equipment, unit.sheet, 'unit')];
      });
      const carriesA = breakerCarriesA(breaker, pack);
      const bounds = [
        { by: 'its breaker', most: unitsAt(carriesA), unit: 'A', at: carriesA },
        { by: 'the trunk cable', most: unitsAt(cable.ratedA), unit: 'A', at: cable.ratedA },
        ...unitSheets.flatMap((sheet) =>
          sheet.maxPerTrunk === undefined
            ? []
            : [{ by: `the sheet of ${sheet.name}`, most: sheet.maxPerTrunk, unit: '', at: sheet.maxPerTrunk }],
        ),
      ];
      const bound = bounds.reduce((least, each) => (each.most < least.most ? each : least));
      return [
        {
          about: abouts.trunk(trunk.id, trunk.name),
          title: `${trunkName(trunk.name)} has ${plural(trunk.unitCount, 'unit')}. ${bound.by.replace(/^./, (c) => c.toUpperCase())} carries ${bound.most}.`,
          value: trunk.unitCount,
          limit: bound.most,
          unit: 'units',
          sense: 'at most',
          working: worked(
            `Units on ${trunkName(trunk.name)}`,
            trunk.unitCount,
            '',
            'drops that hold a unit',
            'the job',
            [...new Set(unitSheets)].map((sheet) => ({
              name: sheet.name,
              value: unitSheets.filter((each) => each === sheet).length,
              unit: '',
              source: 'the job',
            })),
          ),
          limitWorking: worked(
            `Most units of ${trunkName(trunk.name)}`,
            bound.most,
            '',
            'the least of breaker, cable and sheet, in units',
            'equipment sheets',
            [
              trunk.currentWorking,
              // a sheet that many units share is named once
              ...[...new Map(bounds.map((each) => [each.by, each])).values()].map(({ by, most, at, unit }) =>
                unit === ''
                  ? { name: by, value: most, unit: 'units', source: 'equipment sheets' }
                  : worked(
                      by,
                      most,
                      'units',
                      'what it carries ÷ current of the busiest line · units, whole',
                      'sheets',
                      [{ name: 'carries', value: at, unit, source: 'equipment sheets' }],
                    ),
              ),
            ],
          ),
          mends: [{ words: `Move ${plural(trunk.unitCount - bound.most, 'unit')} to another trunk.` }],
        },
      ];
    });
  },
});
