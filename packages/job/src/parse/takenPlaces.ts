import { fieldOf, gather, groups } from './gather.ts';
import { type Remarked, shown, stop } from './remark.ts';

/** More drops on one trunk than any maker's cable carries: the rules judge the number, this only speaks of it. */
const MANY_UNITS = 40;

/** Two things where one fits: modules at one place, modules on one input, units on one drop; and what has no place. */
export function takenPlaces(raw: unknown): Remarked[] {
  return [
    ...twice(raw, 'choices.modules', 'rowId', 'place', 'Give each module of the row a place of its own.'),
    ...twice(raw, 'choices.modules', 'unitId', 'input', 'Give it a free input, or a unit of its own.', 1),
    ...twice(raw, 'choices.units', 'trunkId', 'drop', 'Give it a free drop.'),
    ...beyondInputs(raw),
    ...idleUnits(raw),
    ...alongTrunks(raw),
  ];
}

function twice(raw: unknown, map: string, whose: string, which: string, mend: string, otherwise?: number): Remarked[] {
  const first = new Map<string, string>();
  return groups(raw, map).flatMap(({ path, id, group }) => {
    const owner = fieldOf(group, whose);
    const number = fieldOf(group, which) ?? otherwise;
    if (typeof owner !== 'string' || typeof number !== 'number') return [];
    const key = `${owner}\n${number}`;
    const holder = first.get(key);
    if (holder === undefined) {
      first.set(key, id);
      return [];
    }
    return [
      stop(
        `${path}.${which}`,
        `${which} ${number} of ${owner}, which ${holder} has`,
        `a free ${which} of ${owner}`,
        mend,
      ),
    ];
  });
}

function beyondInputs(raw: unknown): Remarked[] {
  const units = gather(raw, 'choices.units')[0]?.value;
  const equipment = gather(raw, 'choices.equipment')[0]?.value;
  return groups(raw, 'choices.modules').flatMap(({ path, group }) => {
    const unitId = fieldOf(group, 'unitId');
    const sheet = typeof unitId === 'string' ? fieldOf(fieldOf(units, unitId), 'sheet') : undefined;
    const inputs = typeof sheet === 'string' ? fieldOf(fieldOf(equipment, sheet), 'inputs') : undefined;
    const input = fieldOf(group, 'input') ?? 1;
    if (typeof inputs !== 'number' || typeof input !== 'number' || input <= inputs) return [];
    return [
      stop(
        `${path}.input`,
        `input ${input} of ${String(unitId)}`,
        `at most ${inputs}: its sheet ${shown(sheet)} takes no more`,
        'No unit takes this module: add a unit for it, or take the module out.',
      ),
    ];
  });
}

function idleUnits(raw: unknown): Remarked[] {
  const used = new Set(groups(raw, 'choices.modules').map(({ group }) => fieldOf(group, 'unitId')));
  return groups(raw, 'choices.units').flatMap(({ path, id }) =>
    used.has(id)
      ? []
      : [
          {
            severity: 'warn' as const,
            at: path,
            found: 'no module on this unit',
            wanted: 'at least one',
            mend: 'Put a module on it, or take the unit out: it still costs a drop.',
          },
        ],
  );
}

function alongTrunks(raw: unknown): Remarked[] {
  const dropsOf = new Map<unknown, number[]>();
  for (const { group } of groups(raw, 'choices.units')) {
    const drop = fieldOf(group, 'drop');
    if (typeof drop !== 'number') continue;
    const trunkId = fieldOf(group, 'trunkId');
    const drops = dropsOf.get(trunkId);
    if (drops) drops.push(drop);
    else dropsOf.set(trunkId, [drop]);
  }
  return groups(raw, 'choices.trunks').flatMap(({ path, id, group }) => {
    const drops = dropsOf.get(id);
    return drops ? [...manyUnits(path, drops.length), ...pastEnd(path, group, drops)] : [emptyTrunk(path)];
  });
}

function emptyTrunk(path: string): Remarked {
  return {
    severity: 'warn',
    at: path,
    found: 'no unit on this trunk',
    wanted: 'at least one',
    mend: 'Put units on it, or take the trunk out.',
  };
}

function manyUnits(path: string, n: number): Remarked[] {
  if (n <= MANY_UNITS) return [];
  return [
    {
      severity: 'warn',
      at: path,
      found: `${n} units on one trunk`,
      wanted: `at most ${MANY_UNITS}`,
      mend: 'It opens, and the checks will judge its current. Split it: no breaker for such a cable carries so many.',
    },
  ];
}

function pastEnd(path: string, trunk: Readonly<Record<string, unknown>>, drops: readonly number[]): Remarked[] {
  const spare = typeof trunk.spareDrops === 'number' ? trunk.spareDrops : 0;
  const last = drops.reduce((most, drop) => Math.max(most, drop), 0) + spare;
  const feed = trunk.feedDrop;
  const past: Remarked[] = [];
  if (typeof feed === 'number' && feed > last) {
    past.push(
      stop(
        `${path}.feedDrop`,
        `drop ${feed}`,
        `a drop from 1 to ${last}`,
        'The home run enters at a drop that is laid.',
      ),
    );
  }
  for (const { path: at, value } of gather(trunk, 'jumpers.*.afterDrop')) {
    if (typeof value === 'number' && value >= last) {
      past.push(
        stop(
          `${path}.${at}`,
          `after drop ${value}`,
          `before the last drop, ${last}`,
          'A jumper stands between two drops.',
        ),
      );
    }
  }
  return past;
}
