import { fieldOf, gather, groups } from './gather.ts';
import { type Remarked, shown, someOf, stop } from './remark.ts';

const LINES: Readonly<Record<string, readonly string[]>> = {
  'single-phase': ['L1'],
  'split-phase': ['L1', 'L2'],
  'three-phase': ['L1', 'L2', 'L3'],
};

const LISTS = [
  'facts.loads.circuits.*.lines',
  'facts.existing.*.lines',
  'choices.trunks.*.lines',
  'choices.batteries.*.lines',
  'choices.backup.lines',
] as const;

/** Lines named that the supply does not have, a line named twice, and a unit on a line its trunk does not carry. */
export function supplyLines(raw: unknown): Remarked[] {
  const system = gather(raw, 'facts.supply.system')[0]?.value;
  const held = typeof system === 'string' && Object.hasOwn(LINES, system) ? LINES[system] : undefined;
  const named = LISTS.flatMap((list) => gather(raw, `${list}.*`));
  const units = gather(raw, 'choices.units.*.line');
  const measured = gather(raw, 'facts.supply.measuredV.*').map(({ path, ids }) => ({ path, value: ids.at(-1), ids }));
  const missing = [...named, ...units, ...measured].flatMap(({ path, value }) =>
    held && typeof value === 'string' && /^L[123]$/.test(value) && !held.includes(value)
      ? [
          stop(
            path,
            `line ${value}`,
            `a line of a ${system} supply: ${held.join(', ')}`,
            'Name a line the house has, or mend facts.supply.system.',
          ),
        ]
      : [],
  );
  return [...missing, ...twiceNamed(raw), ...offTrunk(raw)];
}

function twiceNamed(raw: unknown): Remarked[] {
  return LISTS.flatMap((list) => gather(raw, list)).flatMap(({ path, value }) =>
    Array.isArray(value) && new Set(value).size < value.length
      ? [stop(path, value.join(', '), 'each line once', 'Take the second one out.')]
      : [],
  );
}

function offTrunk(raw: unknown): Remarked[] {
  const trunks = gather(raw, 'choices.trunks')[0]?.value;
  return groups(raw, 'choices.units').flatMap(({ path, group }) => {
    const trunkId = group.trunkId;
    const line = group.line;
    const carried = typeof trunkId === 'string' ? fieldOf(fieldOf(trunks, trunkId), 'lines') : undefined;
    if (!Array.isArray(carried) || typeof line !== 'string' || carried.includes(line)) return [];
    return [
      stop(
        `${path}.line`,
        shown(line),
        `a line trunk ${shown(trunkId)} carries: ${someOf(carried.map(String))}`,
        'Put it on one of these, or on another trunk.',
      ),
    ];
  });
}
