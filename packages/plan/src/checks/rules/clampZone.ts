import type { Rail } from '../../array/types.ts';
import { sheetOf } from '../../equipment.ts';
import type { MendChange } from '../../finding.ts';
import { worked } from '../../working.ts';
import { plural } from '../abouts.ts';
import type { CheckContext } from '../context.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { showWithin, signed } from '../showWithin.ts';

/**
 * Clamp zone: does every rail meet the frames where the module sheet allows clamps?
 *
 * A sheet gives its zone for the long side. A row that lies the other way asks once for each module, and a licensed
 * person's word answers.
 */
export const clampZone = rule({
  id: 'clamp-zone',
  sheet: '03',
  stops: true,
  question: 'Do the rails meet the frames inside the clamp zone?',
  judge(context, limit) {
    const { array } = context;
    const known = array.rails.filter((rail) => rail.zoneKnown);
    const unknown = array.rails.filter((rail) => !rail.zoneKnown);
    return [
      ...askOfSheets(context, unknown, limit.document),
      ...failingOrNearest(known.map((rail) => judgeRail(rail, array.rails))),
    ];
  },
});

function judgeRail(rail: Rail, rails: readonly Rail[]): Judged {
  const [low, high] = rail.zoneMm;
  const at = rail.fromModuleEdgeMm;
  const above = at - low > high - at;
  const sense = above ? ('at most' as const) : ('at least' as const);
  const shown = showWithin(at, above ? high : low, sense, 0);
  const zone = above ? `${signed(low, 0)} to ${shown.limit}` : `${shown.limit} to ${signed(high, 0)}`;
  return {
    about: { kind: 'rail', id: rail.id, name: rail.name },
    title: `${rail.name} crosses ${shown.value} mm from the lower edge. The zone is ${zone} mm.`,
    value: at,
    limit: above ? high : low,
    unit: 'mm',
    sense,
    state: rail.inZone ? 'meets' : 'fails',
    working: worked(
      `${rail.name}, from the lower edge of the row`,
      at,
      'mm',
      'as the row puts it, else the middle of the zone',
      'the drawing',
      [
        worked('zone begins', low, 'mm', 'share of the long side', 'equipment sheet', [], { decimals: 0 }),
        worked('zone ends', high, 'mm', 'share of the long side', 'equipment sheet', [], { decimals: 0 }),
      ],
      { at: `choices.rows.${rail.rowId}.railsMm`, decimals: 0 },
    ),
    mends: [middleOfZones(rails, rail)],
  };
}

function askOfSheets(context: CheckContext, rails: readonly Rail[], document: string): readonly Judged[] {
  const { choices, confirmed } = context;
  const sheets = new Map<string, string[]>();
  for (const rail of rails) {
    const id = choices.rows[rail.rowId]?.moduleSheet;
    if (id !== undefined) sheets.set(id, [...(sheets.get(id) ?? []), rail.name]);
  }
  return [...sheets].map(([id, names]): Judged => {
    const { name } = sheetOf(choices.equipment, id, 'module');
    const about = { kind: 'module' as const, id, name };
    if (confirmed('clamp-zone', document)) {
      return { about, state: 'meets', title: `${name}: clamps on the short side, by a licensed person’s word.` };
    }
    return {
      about,
      state: 'ask',
      title: `${name}: may clamps sit on the short side?`,
      detail: `Its sheet gives a zone for the long side only. ${plural(names.length, 'rail waits', 'rails wait')} for it.`,
      needs: ['choices.confirmations'],
    };
  });
}

function middleOfZones(rails: readonly Rail[], rail: Rail) {
  const pair = rails.filter((each) => each.rowId === rail.rowId).sort((a, b) => a.v - b.v);
  const middles = pair.map(({ zoneMm: [low, high] }) => Math.round((low + high) / 2));
  const mine = pair.indexOf(rail);
  const changes: MendChange[] = [{ path: ['choices', 'rows', rail.rowId, 'railsMm'], value: middles }];
  return {
    words: `Put its rails ${middles.join(' and ')} mm from the lower edge.`,
    ...(middles[mine] === undefined ? {} : { value: middles[mine] }),
    ...(pair.length === 2 ? { changes } : {}),
  };
}
