import type { Mend } from '../../finding.ts';
import type { Limit } from '../../rules/pack.ts';
import type { RuleLimits } from '../../rules/ruleLimits.ts';
import { worked } from '../../working.ts';
import { abouts, capital } from '../abouts.ts';
import { failingOrNearest } from '../failingOrNearest.ts';
import { gaps, type OnWall, type PlacedBattery, placedBatteries } from '../placedBatteries.ts';
import { isWithin, type Judged, rule } from '../rule.ts';
import { showWithin } from '../showWithin.ts';

type Clear = RuleLimits['battery-clearance'];
interface Thing {
  readonly id: string;
  readonly name: string;
  readonly at: OnWall;
  readonly sideMm: number;
  readonly aboveMm: number;
}

/**
 * Room round a battery: does everything that has to be kept clear of stand far enough off?
 *
 * Two rectangles on a wall. A thing is clear when it is far enough along the wall, or far enough above, or as far
 * below as beside. What is nearest to being clear is named.
 */
export const batteryClearance = rule({
  id: 'battery-clearance',
  sheet: '06',
  stops: true,
  question: 'Is the battery clear of windows, doors and appliances?',
  judge(context, limit) {
    const batteries = placedBatteries(context);
    return batteries.flatMap((battery) => {
      const { place } = battery;
      if (place === undefined) return [];
      const things = thingsOf(battery, batteries, limit.value);
      return failingOrNearest(things.map((thing) => judgeThing(battery, place.at, thing, things, limit)));
    });
  },
});

/** What a battery keeps clear of on its wall. */
function thingsOf(battery: PlacedBattery, all: readonly PlacedBattery[], clear: Clear): readonly Thing[] {
  const { wallId, wall } = battery.place ?? {};
  const items = Object.entries(wall?.items ?? {})
    .filter(([, item]) => clear.from.includes(item.kind))
    .filter(([, item]) => item.habitable || (item.kind !== 'window' && item.kind !== 'vent'))
    .map(([id, item]) => ({
      id,
      name: item.name,
      at: { left: item.leftMm, bottom: item.bottomMm, width: item.widthMm, height: item.heightMm },
      sideMm: clear.sideMm,
      aboveMm: clear.aboveMm,
    }));
  const between = clear.betweenMm;
  const others = all.flatMap(({ id, name, place }) =>
    between === undefined || id === battery.id || place === undefined || place.wallId !== wallId
      ? []
      : [{ id, name: `${name} beside it`, at: place.at, sideMm: between, aboveMm: between }],
  );
  return [...items, ...others];
}

/** The direction in which a thing is nearest to being clear: gap and what is asked for in it. */
function nearestWay(at: OnWall, thing: Thing): { readonly gap: number; readonly need: number; readonly way: string } {
  const { along, above, below } = gaps(at, thing.at);
  const ways = [
    { gap: along, need: thing.sideMm, way: 'at the side' },
    { gap: above, need: thing.aboveMm, way: 'above' },
    { gap: below, need: thing.sideMm, way: 'below' },
  ];
  return ways.reduce((best, each) => (each.need - each.gap < best.need - best.gap ? each : best));
}

const isClear = (at: OnWall, thing: Thing) => {
  const { gap, need } = nearestWay(at, thing);
  return isWithin(gap, need, 'at least');
};

function judgeThing(
  battery: PlacedBattery,
  at: OnWall,
  thing: Thing,
  things: readonly Thing[],
  limit: Limit<Clear>,
): Judged {
  const { gap, need, way } = nearestWay(at, thing);
  const shown = showWithin(Math.max(0, gap), need, 'at least', 0);
  const path = `choices.batteries.${battery.id}.place.leftMm`;
  return {
    about: abouts.battery(`${battery.id}-${thing.id}`, battery.name),
    title: `${battery.name} ${shown.value} mm from the ${thing.name}. ${shown.limit} mm must stay clear.`,
    detail: `Measured ${way}.`,
    value: Math.max(0, gap),
    limit: need,
    unit: 'mm',
    sense: 'at least',
    working: worked(
      `${capital(thing.name)} to ${battery.name}`,
      Math.max(0, gap),
      'mm',
      'gap between two rectangles on the wall',
      limit.clause,
      [
        { name: `${battery.name}, left edge`, value: at.left, unit: 'mm', source: 'the job', at: path },
        { name: `${battery.name}, width`, value: at.width, unit: 'mm', source: 'battery sheet' },
        { name: `${thing.name}, left edge`, value: thing.at.left, unit: 'mm', source: 'survey' },
        { name: `${thing.name}, width`, value: thing.at.width, unit: 'mm', source: 'survey' },
      ],
      { decimals: 0 },
    ),
    mends: [smallestMove(battery, at, things)],
  };
}

/** The smallest move along the wall after which everything is clear. */
function smallestMove(battery: PlacedBattery, at: OnWall, things: readonly Thing[]): Mend {
  const wallMm = battery.place?.wall.lengthMm ?? 0;
  // the best place, where it is not here, has its edge at the edge of something's clear zone
  const left = things
    .flatMap((thing) => [thing.at.left - thing.sideMm - at.width, thing.at.left + thing.at.width + thing.sideMm])
    .map((edge, k) => (k % 2 === 0 ? Math.floor(edge) : Math.ceil(edge)))
    .filter((edge) => edge >= 0 && edge + at.width <= wallMm)
    .filter((edge) => things.every((thing) => isClear({ ...at, left: edge }, thing)))
    .sort((a, b) => Math.abs(a - at.left) - Math.abs(b - at.left))[0];
  if (left === undefined) {
    return {
      words: `No place along ${battery.place?.wall.name ?? 'this wall'} is clear of everything: choose another wall.`,
    };
  }
  const byMm = Math.round(Math.abs(left - at.left));
  const nearest = Math.min(
    ...things.map((thing) => {
      const { gap, need } = nearestWay({ ...at, left }, thing);
      return gap - need;
    }),
  );
  return {
    words: `Move it ${byMm} mm to the ${left > at.left ? 'right' : 'left'}.`,
    ...(things.length === 1 && things[0] !== undefined
      ? { value: nearest + nearestWay({ ...at, left }, things[0]).need }
      : {}),
    changes: [{ path: ['choices', 'batteries', battery.id, 'place', 'leftMm'], value: left }],
  };
}
