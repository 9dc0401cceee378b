import { sheetOf } from '../../equipment.ts';
import { given, worked } from '../../working.ts';
import { abouts, plural } from '../abouts.ts';
import { isWithin, rule } from '../rule.ts';
import { signed } from '../showWithin.ts';

/** Breakers are set at 30 °C. IEC 60898-1 (from memory). */
const SET_AT_C = 30;
/** Lost for each kelvin above that: common practice, no source. */
const PER_KELVIN = 0.005;
const MANY = 3;

/**
 * Breakers in the heat: does the fullest carry its current for hours, warm and between others?
 *
 * A lone breaker carries 1 − 0.005 · (T − 30) of its rating; three and more side by side carry the region's share of
 * that. Between the two a blank way settles it: it asks, and a licensed person's word answers.
 */
export const breakerContinuous = rule({
  id: 'breaker-continuous',
  sheet: '05',
  stops: false,
  question: 'Do breakers side by side carry their currents in the heat?',
  judge({ board, facts, choices, confirmed }, limit) {
    const circuits = board.circuits.filter(
      (circuit) => sheetOf(choices.equipment, circuit.breakerSheetId, 'breaker').curve !== 'US',
    );
    if (circuits.length === 0) return [];
    const about = { ...abouts.board(board.name), id: 'breakers' };
    const heatC = facts.board.ambientC;
    const beside = circuits.length >= MANY;
    const row = beside ? `${plural(circuits.length, 'breaker')} side by side` : plural(circuits.length, 'breaker');
    if (heatC === undefined) {
      return [{ about, state: 'ask', title: `${row}: how hot is it at the board?`, needs: ['facts.board.ambientC'] }];
    }
    const alone = 1 - PER_KELVIN * Math.max(0, heatC - SET_AT_C);
    const most = beside ? limit.value * alone : alone;
    const fullest = circuits.reduce((a, b) => (b.designA / b.breakerA > a.designA / a.breakerA ? b : a));
    const share = fullest.designA / fullest.breakerA;
    const between = !isWithin(share, most, 'at most') && isWithin(share, alone, 'at most');
    const pct = (part: number) => signed(100 * part, 0);
    return [
      {
        about,
        title: `${row} at ${signed(heatC, 0)} °C. The fullest runs at ${pct(share)} %; ${pct(most)} % is the most.`,
        detail: between ? `${fullest.name}. A blank way between would settle it.` : fullest.name,
        value: 100 * share,
        limit: 100 * most,
        unit: '%',
        sense: 'at most',
        ...(between
          ? { state: confirmed('breaker-continuous', limit.document) ? ('meets' as const) : ('ask' as const) }
          : {}),
        needs: ['choices.confirmations'],
        working: worked(
          `${fullest.name}, share of its breaker`,
          100 * share,
          '%',
          'I_b ÷ I_n',
          'unit and breaker sheets',
          [
            fullest.designWorking,
            { name: 'rating of its breaker', value: fullest.breakerA, unit: 'A', source: 'breaker sheet' },
          ],
          { decimals: 0 },
        ),
        limitWorking: worked(
          'Carried in the heat',
          100 * most,
          '%',
          beside ? `${limit.value} · (1 − 0.005 · (T − 30))` : '1 − 0.005 · (T − 30)',
          `${limit.clause}; ${limit.note ?? ''}`,
          [given('heat at the board', heatC, '°C', 'facts.board.ambientC', 'survey')],
          { decimals: 0 },
        ),
        mends: [{ words: 'Leave a blank way on both sides, or choose the next rating.' }],
      },
    ];
  },
});
