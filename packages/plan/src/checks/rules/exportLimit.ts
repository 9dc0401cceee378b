import type { BoardPlan } from '../../board/types.ts';
import type { Mend } from '../../finding.ts';
import { linesOf } from '../../supply.ts';
import type { Line } from '../../trunks/types.ts';
import { given, type Working, worked } from '../../working.ts';
import { abouts, withArticle } from '../abouts.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

/**
 * Export limit: is what can go out held to what the network lets out?
 *
 * What can go out is everything that the units and the solar already there give with nothing on, held to the limit
 * set on the system, which is measured where the house meets its meter:
 *
 *     out = min(units + old, max(set, old)) + old on a meter element of its own
 *
 * The setting holds the units back, never the old array. The battery is taken to be set not to export.
 */
export const exportLimit = rule({
  id: 'export-limit',
  sheet: '07',
  stops: true,
  question: 'Is export held to what the network lets out?',
  judge({ facts: { network, supply }, choices, trunks, board, pack }, limit): Judged[] {
    const about = abouts.network('export', 'Export');
    const perLine = network.exportLimitVAPerLine;
    const total = network.exportLimitVATotal;
    if (perLine === undefined && total === undefined) {
      return [
        {
          about,
          state: 'ask',
          title: `What does the ${pack.words.network} let out?`,
          detail:
            limit.value > 0
              ? `Until its letter is here, ${(limit.value / 1000).toFixed(2)} kVA on each ${pack.words.line} is taken.`
              : 'Only its letter says.',
          needs: ['facts.network.exportLimitVAPerLine', 'facts.network.exportLimitVATotal'],
        },
      ];
    }
    const lines = linesOf(supply.system);
    const there = (ofA: BoardPlan['thereA']) => (line: Line) => ofA[line] * supply.nominalV;
    const ofLine = (line: Line): Powers => ({
      unitsVA: trunks.lineVA[line],
      thereVA: there(board.thereA)(line),
      apartVA: there(board.thereApartA)(line),
    });
    const cases: Case[] = [];
    if (perLine !== undefined) {
      const setVA = choices.exportLimitSetVA;
      // each line by itself: the old array may stand on another line than the fullest
      const fullest = lines.map(ofLine).reduce((a, b) => (outVA(b, setVA) > outVA(a, setVA) ? b : a));
      cases.push({
        id: 'export-line',
        where: ` on ${withArticle(pack.words.line)}`,
        limitVA: perLine,
        at: 'facts.network.exportLimitVAPerLine',
        of: 'the line with most',
        powers: fullest,
        settable: true,
        setVA,
      });
    }
    if (total !== undefined) {
      // what is set counts a line where the network counts lines, else the sum
      const settable = perLine === undefined;
      cases.push({
        id: 'export-sum',
        where: ' in sum',
        limitVA: total,
        at: 'facts.network.exportLimitVATotal',
        of: 'all lines',
        powers: lines.map(ofLine).reduce(plus),
        settable,
        setVA: settable ? choices.exportLimitSetVA : undefined,
      });
    }
    return cases.map((one): Judged => {
      const { id, where, limitVA, setVA, powers } = one;
      const value = outVA(powers, setVA);
      const shown = showWithin(value / 1000, limitVA / 1000, 'at most', 2);
      return {
        about: abouts.network(id, 'Export'),
        title: `${shown.value} kVA can go out${where}. The ${pack.words.network} lets ${shown.limit} kVA out.`,
        value: value / 1000,
        limit: limitVA / 1000,
        unit: 'kVA',
        sense: 'at most',
        seen: 'network letter',
        working: workingOf(one, value),
        mends: mendsOf(one, pack.words.network),
      };
    });
  },
});

/** What feeds on a line, or on all of them, at its rating, VA. */
interface Powers {
  readonly unitsVA: number;
  /** Solar that stood there before. */
  readonly thereVA: number;
  /** Of that, what stands on an element of the meter of its own. */
  readonly apartVA: number;
}

interface Case {
  readonly id: 'export-line' | 'export-sum';
  readonly where: string;
  readonly limitVA: number;
  readonly at: string;
  readonly of: string;
  readonly powers: Powers;
  readonly settable: boolean;
  readonly setVA: number | undefined;
}

/** What is set can hold the units back to nothing; it neither slows the old array nor sees past its own meter. */
function outVA({ unitsVA, thereVA, apartVA }: Powers, setVA: number | undefined): number {
  const seenVA = thereVA - apartVA;
  return Math.min(unitsVA + seenVA, Math.max(setVA ?? Number.POSITIVE_INFINITY, seenVA)) + apartVA;
}

function plus(a: Powers, b: Powers): Powers {
  return { unitsVA: a.unitsVA + b.unitsVA, thereVA: a.thereVA + b.thereVA, apartVA: a.apartVA + b.apartVA };
}

function workingOf({ where, of, powers, setVA, limitVA, at }: Case, value: number): Working {
  const { unitsVA, thereVA, apartVA } = powers;
  const solar = thereVA > 0 ? 'ratings of the units and of the solar already there' : 'ratings of the units';
  return worked(
    `What can go out${where}`,
    value / 1000,
    'kVA',
    setVA === undefined
      ? `${solar}, the house taking nothing`
      : thereVA > 0
        ? 'the lesser of the ratings and what is set, but never less than the solar already there'
        : 'the lesser of the ratings and what is set',
    'equipment sheets and the job',
    [
      worked('ratings of the units', unitsVA, 'VA', of, 'equipment sheets', []),
      ...(thereVA > 0
        ? [worked('solar already there', thereVA, 'VA', `${of}, current at its rating · nominal voltage`, 'survey', [])]
        : []),
      ...(apartVA > 0
        ? [worked('of that, on a meter element of its own', apartVA, 'VA', 'what is set does not see it', 'survey', [])]
        : []),
      ...(setVA === undefined ? [] : [given('limit set', setVA, 'VA', 'choices.exportLimitSetVA')]),
      given('limit of the network', limitVA, 'VA', at, 'network letter'),
    ],
    { decimals: 2 },
  );
}

function mendsOf({ settable, where, limitVA, powers }: Case, network: string): readonly Mend[] {
  if (powers.thereVA > limitVA)
    return [
      {
        words: `The solar already there gives ${(powers.thereVA / 1000).toFixed(2)} kVA by itself: hold it back too, or ask the ${network} for more.`,
      },
    ];
  if (!settable) return [{ words: 'Set a limit on the sum as well, or fit fewer units.' }];
  const setVA = limitVA - powers.apartVA;
  return [
    {
      words: `Set the export limit to ${(setVA / 1000).toFixed(2)} kVA${where}.`,
      value: limitVA / 1000,
      changes: [{ path: ['choices', 'exportLimitSetVA'], value: setVA }],
    },
  ];
}
