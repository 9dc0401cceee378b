import { fieldOf, gather, groups, isRaw } from './gather.ts';
import { type Remarked, shown, stop } from './remark.ts';

/** Shares are written with three decimals; 24 of them may miss one by as much. */
const SHARES_MAY_MISS = 0.005;

/** Fields that only make sense together: shares that sum, ends in order, provenance of facts that exist. */
export function sums(raw: unknown): Remarked[] {
  return [...dayShape(raw), ...ridges(raw), ...clampZones(raw), ...provenance(raw)];
}

function dayShape(raw: unknown): Remarked[] {
  return gather(raw, 'facts.loads.dayShape').flatMap(({ path, value }) => {
    if (!Array.isArray(value) || value.length !== 24 || !value.every((share) => typeof share === 'number')) return [];
    const sum = value.reduce((total: number, share: number) => total + share, 0);
    if (Math.abs(sum - 1) <= SHARES_MAY_MISS) return [];
    const mend =
      sum < SHARES_MAY_MISS
        ? 'Give what each hour takes of the day, or leave it out.'
        : `Divide each by ${sum.toFixed(3)}.`;
    return [stop(path, `shares that sum to ${sum.toFixed(3)}`, 'shares that sum to 1', mend)];
  });
}

function ridges(raw: unknown): Remarked[] {
  return groups(raw, 'facts.roof.planes').flatMap(({ path, group }) => {
    const from = group.ridgeFromM;
    const to = group.ridgeToM;
    if (typeof from !== 'number' || typeof to !== 'number' || from <= to) return [];
    return [
      stop(
        `${path}.ridgeFromM`,
        `${shown(from)} m, right of ridgeToM ${shown(to)} m`,
        'the left end of the ridge',
        'Swap the two.',
      ),
    ];
  });
}

function clampZones(raw: unknown): Remarked[] {
  return groups(raw, 'choices.equipment').flatMap(({ path, group }) => {
    const from = group.clampZoneFrom;
    const to = group.clampZoneTo;
    if (typeof from !== 'number' || typeof to !== 'number' || from < to) return [];
    return [
      stop(
        `${path}.clampZoneFrom`,
        shown(from),
        `less than clampZoneTo, ${shown(to)}`,
        'Both are counted from the end of the module.',
      ),
    ];
  });
}

function provenance(raw: unknown): Remarked[] {
  const facts = fieldOf(raw, 'facts');
  return gather(raw, 'facts.provenance.*').flatMap(({ path, ids }) => {
    const of = ids.at(-1) ?? '';
    return isRaw(facts) && gather(facts, of).length === 0
      ? [
          {
            severity: 'note' as const,
            at: path,
            found: `the origin of ${shown(of)}, a fact that is not here`,
            wanted: 'a path inside facts',
            mend: 'Add the fact or take the entry out.',
          },
        ]
      : [];
  });
}
