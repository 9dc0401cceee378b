import { sheetOf } from '../../equipment.ts';
import { worked } from '../../working.ts';
import { abouts } from '../abouts.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/** Standing leakage: does what the units leak leave their residual device alone? Σ I_leak ≤ share · IΔn. */
export const standingLeakage = rule({
  id: 'standing-leakage',
  sheet: '05',
  stops: false,
  question: 'Does the standing leakage leave the residual device alone?',
  judge({ board, trunks, choices, pack }, limit) {
    return board.circuits.flatMap((circuit): Judged[] => {
      const breaker = sheetOf(choices.equipment, circuit.breakerSheetId, 'breaker');
      const trunk = trunks.trunks.find((each) => circuit.kind === 'trunk' && each.id === circuit.of);
      if (breaker.residualMA === undefined || trunk === undefined) return [];
      const sheets = trunk.drops.flatMap((drop) => {
        const unit = drop.unitId === undefined ? undefined : choices.units[drop.unitId];
        return unit === undefined ? [] : [sheetOf(choices.equipment, unit.sheet, 'unit')];
      });
      const value = sheets.reduce((sum, sheet) => sum + sheet.standingLeakageMA, 0);
      const most = limit.value * breaker.residualMA;
      const shown = showWithin(value, most, 'at most', 1);
      return [
        {
          about: abouts.circuit(circuit.id, circuit.name),
          title: `${circuit.name} leaks ${shown.value} mA. Its ${breaker.residualMA} mA ${pack.words.residualDevice} bears ${shown.limit} mA.`,
          value,
          limit: most,
          unit: 'mA',
          sense: 'at most',
          working: worked(
            `${circuit.name}, standing leakage`,
            value,
            'mA',
            'sum of what its units leak',
            'unit sheets',
            [...new Set(sheets)].flatMap((sheet) => [
              { name: `one ${sheet.name} leaks`, value: sheet.standingLeakageMA, unit: 'mA', source: 'unit sheet' },
              {
                name: `${sheet.name} on the trunk`,
                value: sheets.filter((each) => each === sheet).length,
                unit: '',
                source: 'the job',
              },
            ]),
            { decimals: 1 },
          ),
          limitWorking: worked(
            'Borne without tripping',
            most,
            'mA',
            'share · IΔn',
            limit.clause,
            [
              { name: 'share', value: limit.value, unit: '', source: limit.clause },
              { name: 'residual rating', value: breaker.residualMA, unit: 'mA', source: 'breaker sheet' },
            ],
            { decimals: 1 },
          ),
          mends: [{ words: `Split the trunk, or leave the ${pack.words.residualDevice} out where the rules allow.` }],
        },
      ];
    });
  },
});
