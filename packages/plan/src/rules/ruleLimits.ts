import type { WallFacts } from '@eaveline/job';
import type { Limit } from './limit.ts';

type Place = WallFacts['place'];
type WallItemKind = WallFacts['items'][string]['kind'];

/** How the neutral of an island comes to earth. */
export type IslandNeutral = 'grid neutral stays' | 'bond relay and own electrode' | 'bond stays at the service';

/** What a region sets beside each rule of the checks: a figure, or in words where to find it. */
export interface RuleLimits {
  'supply-voltage': readonly [number, number];
  'wind-exposed': string;

  /** Largest disagreement of two measures of a plane, share. */
  'roof-measures': number;
  rafters: string;
  /** Coverings of buildings older than this may hold asbestos. */
  asbestos: number;

  'cold-voltage': string;
  'hot-voltage': string;
  /** Factor on the short-circuit current for bright cloud edges. */
  'short-circuit-current': number;
  /** D.c. volts inside the array that the unit-per-module case promises. */
  'low-voltage-dc': number;
  'dc-ac-ratio': number;
  setbacks: string;
  /** Width of a path from eave to ridge beside the array, m. */
  'roof-path': number;
  'module-overlap': string;
  'obstruction-clear': string;
  'clamp-zone': string;
  'rail-overhang': number;
  'rail-expansion': string;
  'foot-spacing': string;
  'foot-uplift': number;
  'fixing-covering': string;
  /** Bending stress of a rail against the stress its sheet allows. */
  'rail-stress': string;
  'gap-under': readonly [number, number];
  /** Glass above the roof plane, mm. */
  'proud-of-roof': number;

  'units-per-trunk': string;
  'trunk-rise': number;
  'trunk-rise-with-battery': number;
  'drop-reach': string;
  'trunk-caps': string;

  /** Design current times this may not pass the breaker. */
  'breaker-rating': number;
  /** Share of its rating a breaker carries for hours between two others. */
  'breaker-continuous': number;
  'cable-capacity': string;
  'fault-loop': string;
  'breaking-capacity': string;
  bus: number;
  'free-ways': string;
  /** VA between the fullest and the emptiest line; `older` where only a superseded edition's figure is known. */
  'line-difference': { readonly va: number; readonly older: boolean };
  'standing-leakage': number;
  'breaker-both-ways': string;
  surge: string;
  /** Colour schemes met in the region's boards. */
  'wiring-colours': readonly string[];
  /** Boards older than this may be backed with asbestos. */
  'board-backing': number;

  'battery-place': readonly Place[];
  /** Clear at each side, and below whatever stands above, mm; from which things; between two batteries. */
  'battery-clearance': {
    readonly sideMm: number;
    readonly aboveMm: number;
    readonly from: readonly WallItemKind[];
    readonly betweenMm?: number;
  };
  'battery-barrier': string;
  'battery-vehicles': string;
  /** Most kWh by place. */
  'battery-size': Readonly<Partial<Record<Place, number>>>;
  'backup-running': number;
  'backup-start': number;
  'backup-solar': number;
  'backup-residual-device': string;
  'backup-lines': string;
  'left-dark': string;
  'backup-neutral': string;
  'island-earthing': IslandNeutral;
  'changeover-rating': string;

  /** At or below it on every line the network is told or the simple way is open; above it, asked first. */
  'network-threshold': {
    readonly onePhase: number;
    readonly threePhase: number;
    readonly unit: 'A' | 'VA';
    readonly below: string;
    readonly above: string;
  };
  /** Taken for each line until the network's letter is here, VA; 0 where there is none to take. */
  'export-limit': number;
  'network-approval': string;

  labels: string;
  documents: string;
  'design-sign-off': string;
}

export type RuleId = keyof RuleLimits;

/** Rules a region has. One that it lacks stands in the pack's `lacks` with the reason. */
export type RuleBook = { readonly [K in RuleId]?: Limit<RuleLimits[K]> };
