import { fieldOf, isRaw, type Raw } from '../parse/gather.ts';
import { type Remarked, shown, stop } from '../parse/remark.ts';
import type { Lifted } from './lifted.ts';

/** Lists of version 0 whose entries carry an `id`: maps keyed by it since version 1. */
const LISTS = [
  'facts.site.objects',
  'facts.roof.planes',
  'facts.roof.obstructions',
  'facts.loads.circuits',
  'facts.walls',
  'facts.existing',
  'choices.equipment',
  'choices.rows',
  'choices.modules',
  'choices.units',
  'choices.trunks',
  'choices.batteries',
  'choices.crew',
  'records.serials',
  'records.readings',
] as const;

const SYSTEMS: Readonly<Record<string, string>> = { 1: 'single-phase', 2: 'split-phase', 3: 'three-phase' };

type Loose = Record<string, unknown>;

/**
 * Version 0 to version 1.
 *
 * 1. Lists with ids became maps keyed by id, so that two people can add to one at once.
 * 2. `site.lat`, `site.lon` became `latitudeDeg`, `longitudeDeg`: units stand in the names.
 * 3. `supply.phases`, 1 2 or 3, became `system`: two phases were never meant, split phase was.
 * 4. A trunk's `feedAt` ("end", or a drop) became `feedDrop`; `breaker` became `breakerSheet`; `homeRunM`,
 *    `homeRunCable` and `homeRunRoute` became the group `homeRun`; its list `jumpers` became a map.
 * 5. A trunk's `trunkCurrentA` and `riseV` are dropped: what can be worked out is not stored.
 * 6. `choices.region`, "au-nz/au", became `rules` with pack and variant.
 */
export function liftV0(document: Raw): Lifted {
  const remarks: Remarked[] = [];
  const job = copy(document) as Loose;
  for (const path of LISTS) keyById(job, path, remarks);
  liftSite(fieldOf(job.facts, 'site'));
  liftSupply(fieldOf(job.facts, 'supply'));
  const choices = job.choices;
  if (isRaw(choices)) {
    liftRegion(choices as Loose);
    for (const trunk of Object.values(isRaw(choices.trunks) ? choices.trunks : {})) liftTrunk(trunk);
  }
  for (const wall of Object.values(asGroup(fieldOf(job.facts, 'walls')))) {
    if (isRaw(wall)) keyById(wall as Loose, 'items', remarks);
  }
  job.version = 1;
  return { document: job, remarks };
}

function copy(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(copy);
  if (!isRaw(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, copy(inner)]));
}

function asGroup(value: unknown): Raw {
  return isRaw(value) ? value : {};
}

function keyById(root: Loose, path: string, remarks: Remarked[]): void {
  const steps = path.split('.');
  const last = steps.pop() as string;
  let owner: unknown = root;
  for (const step of steps) owner = fieldOf(owner, step);
  if (!isRaw(owner)) return;
  const list = owner[last];
  if (!Array.isArray(list)) return;
  const map: Loose = {};
  list.forEach((entry: unknown, k) => {
    const at = `${path}.${k}`;
    const id = fieldOf(entry, 'id');
    if (!isRaw(entry) || typeof id !== 'string' || id === '__proto__') {
      remarks.push(
        stop(at, 'an entry without an id', 'an id', 'Give it one: it is how other parts of the job name it.'),
      );
    } else if (Object.hasOwn(map, id)) {
      remarks.push(
        stop(`${at}.id`, `${shown(id)}, which stands before it too`, 'an id of its own', 'Rename one of the two.'),
      );
    } else {
      const { id: _, ...rest } = entry;
      map[id] = rest;
    }
  });
  (owner as Loose)[last] = map;
}

function rename(group: Loose, from: string, to: string): void {
  if (!Object.hasOwn(group, from)) return;
  group[to] = group[from];
  delete group[from];
}

function liftSite(site: unknown): void {
  if (!isRaw(site)) return;
  rename(site as Loose, 'lat', 'latitudeDeg');
  rename(site as Loose, 'lon', 'longitudeDeg');
}

function liftSupply(supply: unknown): void {
  if (!isRaw(supply)) return;
  const group = supply as Loose;
  const system = SYSTEMS[String(group.phases)];
  if (system === undefined) return;
  group.system = system;
  delete group.phases;
}

function liftRegion(choices: Loose): void {
  const region = choices.region;
  if (typeof region !== 'string') return;
  const [pack, variant] = region.split('/');
  choices.rules = { pack, variant };
  delete choices.region;
}

function liftTrunk(trunk: unknown): void {
  if (!isRaw(trunk)) return;
  const group = trunk as Loose;
  rename(group, 'breaker', 'breakerSheet');
  if (group.feedAt === 'end') group.feedAt = 1;
  rename(group, 'feedAt', 'feedDrop');
  if (Object.hasOwn(group, 'homeRunM')) {
    group.homeRun = { cableSheet: group.homeRunCable, lengthM: group.homeRunM, route: group.homeRunRoute };
  }
  if (Array.isArray(group.jumpers)) {
    group.jumpers = Object.fromEntries(
      group.jumpers.map((jumper: unknown) => [`after-${String(fieldOf(jumper, 'afterDrop'))}`, jumper]),
    );
  }
  for (const gone of ['homeRunM', 'homeRunCable', 'homeRunRoute', 'trunkCurrentA', 'riseV']) delete group[gone];
}
