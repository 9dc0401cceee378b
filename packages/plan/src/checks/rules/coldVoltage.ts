import { sheetsOfKind } from '../../equipment.ts';
import { given, worked } from '../../working.ts';
import type { CheckContext } from '../context.ts';
import { type InputPair, inputPairs } from '../inputPairs.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { against } from '../units.ts';

/**
 * Cold voltage: does the module stay below the unit's d.c. maximum on the coldest dawn?
 *
 *     V = Voc · (1 + β · (T − 25)),  T the record low
 *
 * The record low comes from the survey alone. Without it the rule asks: no typical year and no mean stands in.
 */
export const coldVoltage = rule({
  id: 'cold-voltage',
  question: 'Does the module stay below the unit’s d.c. maximum on the coldest dawn on record?',
  sheet: '03',
  stops: true,
  judge: (context, { clause }) => inputPairs(context).map((pair) => judgePair(pair, context, clause)),
});

function judgePair(pair: InputPair, context: CheckContext, clause: string): Judged {
  const { module, unit, about } = pair;
  const lowC = context.facts.site.recordLowC;
  if (lowC === undefined) {
    return {
      about,
      state: 'ask',
      title: `What is the lowest temperature on record here? ${unit.name} takes ${unit.maxDcV} V.`,
      detail: 'A typical year does not hold the coldest dawn.',
      needs: ['facts.site.recordLowC'],
    };
  }
  const coldV = module.vocV * (1 + (module.vocPctPerK / 100) * (lowC - 25));
  const { shown, ...measured } = against(coldV, 'at most', unit.maxDcV, 'V');
  return {
    about,
    ...measured,
    title: `${module.name} gives ${shown.value} at ${lowC} °C. ${unit.name} takes ${shown.limit}.`,
    working: coldWorking(pair, lowC, coldV, clause),
    mends: isWithin(coldV, unit.maxDcV, 'at most') ? [] : [{ words: otherUnit(context, coldV) }],
  };
}

function coldWorking({ module, moduleSheetId }: InputPair, lowC: number, coldV: number, clause: string) {
  const at = `choices.equipment.${moduleSheetId}`;
  return worked(
    'Cold voltage of one module',
    coldV,
    'V',
    'V = V_oc · (1 + β · (T − 25))',
    clause,
    [
      given('open-circuit voltage', module.vocV, 'V', `${at}.vocV`, 'equipment sheet'),
      given('its coefficient', module.vocPctPerK, '%/K', `${at}.vocPctPerK`, 'equipment sheet'),
      given('record low', lowC, '°C', 'facts.site.recordLowC', 'survey'),
    ],
    { symbol: 'V', decimals: 2 },
  );
}

/** A unit at hand that takes the voltage, in words: another unit changes currents, trunks and papers with it. */
function otherUnit({ choices }: CheckContext, coldV: number): string {
  const names = sheetsOfKind(choices.equipment, 'unit')
    .filter(({ sheet }) => sheet.maxDcV >= coldV)
    .map(({ sheet }) => sheet.name);
  return names.length > 0
    ? `Use ${names.join(' or ')} under these modules.`
    : 'Use a unit with a higher d.c. maximum, or a module of lower voltage.';
}
