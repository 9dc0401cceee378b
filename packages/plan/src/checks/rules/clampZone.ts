import type { Rail } from '../../array/types.ts';
import type { Change } from '../../finding.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { type Judged, rule } from '../rule.ts';
import { signed } from '../showWithin.ts';

/** Clamp zone: does every rail meet the frames where the module sheet allows clamps? */
export const clampZone = rule({
  id: 'clamp-zone',
  sheet: '03',
  stops: true,
  question: 'Do the rails meet the frames inside the clamp zone?',
  judge({ array }) {
    return failingOrNearest(
      array.rails.map((rail): Judged => {
        const about = { kind: 'rail' as const, id: rail.id, name: rail.name };
        const [low, high] = rail.zoneMm;
        const at = rail.fromModuleEdgeMm;
        if (!rail.zoneKnown) {
          return {
            about,
            state: 'ask',
            title: `${rail.name}: may clamps sit on the short side?`,
            detail: 'The module sheet gives a zone for its long side only.',
            needs: [`choices.rows.${rail.rowId}.orientation`],
          };
        }
        const above = at - low > high - at;
        const value = at;
        const limit = above ? high : low;
        return {
          about,
          title: `${rail.name} crosses ${signed(at, 0)} mm from the lower edge. The zone is ${signed(low, 0)} to ${signed(high, 0)} mm.`,
          value,
          limit,
          unit: 'mm',
          sense: above ? 'at most' : 'at least',
          state: rail.inZone ? 'meets' : 'fails',
          mends: [middleOfZones(array.rails, rail)],
        };
      }),
    );
  },
});

function middleOfZones(rails: readonly Rail[], rail: Rail) {
  const pair = rails.filter((each) => each.rowId === rail.rowId).sort((a, b) => a.v - b.v);
  const middles = pair.map(({ zoneMm: [low, high] }) => Math.round((low + high) / 2));
  const mine = pair.indexOf(rail);
  const changes: Change[] = [{ path: ['choices', 'rows', rail.rowId, 'railsMm'], value: middles }];
  return {
    words: `Put its rails ${middles.join(' and ')} mm from the lower edge.`,
    ...(middles[mine] === undefined ? {} : { value: middles[mine] }),
    ...(pair.length === 2 ? { changes } : {}),
  };
}
