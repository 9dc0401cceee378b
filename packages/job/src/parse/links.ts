import type { SheetKind } from '../schema/sheets.ts';
import { fieldOf, gather } from './gather.ts';
import { type Remarked, shown, someOf, stop } from './remark.ts';

interface Link {
  /** Where the name stands. */
  readonly from: string;
  /** The map it has to be a key of. */
  readonly to: string;
  /** Sort of equipment it has to be, where it names a sheet. */
  readonly kind?: SheetKind;
  /** The key itself is the name. */
  readonly key?: true;
}

const sheet = (from: string, kind: SheetKind): Link => ({ from, to: 'choices.equipment', kind });

/** Every name in a job that points at something else in it. */
const LINKS: readonly Link[] = [
  { from: 'choices.rows.*.planeId', to: 'facts.roof.planes' },
  { from: 'facts.roof.obstructions.*.planeId', to: 'facts.roof.planes' },
  { from: 'choices.modules.*.rowId', to: 'choices.rows' },
  { from: 'choices.modules.*.unitId', to: 'choices.units' },
  { from: 'choices.units.*.trunkId', to: 'choices.trunks' },
  { from: 'choices.batteries.*.place.wallId', to: 'facts.walls' },
  { from: 'choices.backup.circuits.*', to: 'facts.loads.circuits', key: true },
  { from: 'choices.backup.trunks.*', to: 'choices.trunks', key: true },
  { from: 'choices.trunks.*.boardId', to: 'facts.existing' },
  { from: 'choices.parts.*', to: 'choices.equipment' },
  sheet('choices.rows.*.moduleSheet', 'module'),
  sheet('choices.units.*.sheet', 'unit'),
  sheet('choices.trunks.*.cableSheet', 'trunk-cable'),
  sheet('choices.trunks.*.homeRun.cableSheet', 'cable'),
  sheet('choices.trunks.*.breakerSheet', 'breaker'),
  sheet('choices.batteries.*.sheet', 'battery'),
  sheet('choices.batteries.*.cableSheet', 'cable'),
  sheet('choices.batteries.*.breakerSheet', 'breaker'),
  sheet('choices.backup.changeoverSheet', 'changeover'),
  sheet('choices.mounting.railSheet', 'rail'),
  sheet('choices.mounting.midClampSheet', 'clamp'),
  sheet('choices.mounting.endClampSheet', 'clamp'),
  sheet('choices.mounting.fixingSheet', 'fixing'),
  sheet('choices.mounting.spliceSheet', 'part'),
];

/** Names that point at nothing, or at equipment of another sort. */
export function brokenLinks(raw: unknown): Remarked[] {
  return LINKS.flatMap((link) => {
    const map = gather(raw, link.to)[0]?.value;
    return gather(raw, link.from).flatMap(({ path, value, ids }) => {
      const name = link.key ? ids.at(-1) : value;
      return typeof name === 'string' ? judge(link, map, path, name) : [];
    });
  });
}

function judge(link: Link, map: unknown, path: string, name: string): Remarked[] {
  const target = fieldOf(map, name);
  if (target === undefined) {
    const known = typeof map === 'object' && map !== null ? namesOf(map, link.kind) : [];
    return [
      stop(
        path,
        `${shown(name)}, which ${link.to} does not hold`,
        `one of ${link.to}`,
        `Add it there, or name one of these: ${someOf(known)}.`,
      ),
    ];
  }
  const kind = fieldOf(target, 'kind');
  if (link.kind === undefined || kind === link.kind || typeof kind !== 'string') return [];
  const fitting = namesOf(map as object, link.kind);
  return [
    stop(
      path,
      `${shown(name)}, the sheet of a ${kind}`,
      `the sheet of a ${link.kind}`,
      `Name one of these: ${someOf(fitting)}.`,
    ),
  ];
}

function namesOf(map: object, kind: SheetKind | undefined): string[] {
  return Object.keys(map).filter((id) => kind === undefined || fieldOf(fieldOf(map, id), 'kind') === kind);
}
