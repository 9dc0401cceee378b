import type { ENU, UV } from '../roof/types.ts';
import type { Working } from '../working.ts';

export interface PlacedModule {
  readonly id: string;
  /** `N1·7`: plane letter, row from the eaves, place from the left. */
  readonly name: string;
  readonly rowId: string;
  readonly planeId: string;
  readonly row: number;
  readonly place: number;
  readonly unitId: string;
  readonly input: number;
  readonly sheetId: string;
  /** Lower left corner, size, in the plane. */
  readonly at: UV;
  readonly widthM: number;
  readonly heightM: number;
  readonly corners: readonly UV[];
  readonly centre: UV;
  readonly centre3d: ENU;
  readonly pmpW: number;
  /** Least distance from a corner or side to the plane's edge of each kind, metres; negative where it is over the edge. */
  readonly clear: { readonly eave: number; readonly ridge: number; readonly side: number };
  /** Nearest obstruction and the room left to its clear zone; negative where it is inside. */
  readonly obstruction?: { readonly id: string; readonly name: string; readonly roomM: number };
  /** Another module it overlaps. */
  readonly overlaps?: string;
}

export interface Foot {
  readonly id: string;
  readonly u: number;
  /** Which rafter from the left end of the eave, from 1; undefined where rafters are not known and the place is nominal. */
  readonly rafter?: number;
}

export interface Rail {
  readonly id: string;
  /** `N1 lower`. */
  readonly name: string;
  readonly rowId: string;
  readonly planeId: string;
  readonly v: number;
  readonly fromU: number;
  readonly toU: number;
  readonly lengthMm: number;
  readonly feet: readonly Foot[];
  /** False where the feet stand on no known rafter: the drawing says `nominal`. */
  readonly onRafters: boolean;
  /** False where the rafters leave no places for feet that keep both spacing and overhang. */
  readonly keepsLimits: boolean;
  /** Places where the rail bears on frames: mid and end clamps, u. */
  readonly clamps: readonly { readonly u: number; readonly kind: 'mid' | 'end' }[];
  /** Distance of this rail from the lower edge of its modules, mm, and the zone the sheet allows. */
  readonly fromModuleEdgeMm: number;
  readonly zoneMm: readonly [number, number];
  /** False where the sheet gives no zone for the side this rail crosses: then `inZone` is false and it has to be asked. */
  readonly zoneKnown: boolean;
  readonly inZone: boolean;
}

export interface ArrayRow {
  readonly id: string;
  readonly name: string;
  readonly planeId: string;
  readonly row: number;
  readonly orientation: 'portrait' | 'landscape';
  /** In the order of their places. */
  readonly moduleIds: readonly string[];
  /** Outside of the first frame to outside of the last. */
  readonly lengthMm: number;
  readonly gapMm: number;
  readonly at: UV;
  readonly heightM: number;
  readonly railIds: readonly string[];
}

export interface ArrayPlan {
  readonly modules: readonly PlacedModule[];
  readonly rows: readonly ArrayRow[];
  readonly rails: readonly Rail[];
  readonly stcW: number;
  readonly massKg: number;
  readonly workings: readonly Working[];
  readonly leavesOut: readonly string[];
}
