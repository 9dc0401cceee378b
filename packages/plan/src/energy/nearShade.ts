import type { SiteFacts } from '@eaveline/job';
import type { ENU } from '../roof/types.ts';
import { SUNS_A_STEP, type SunPath } from './sunPath.ts';

type SiteObject = SiteFacts['objects'][string];

/** Whether a ray from the origin along a unit vector meets a body: east, north and up of the vector. */
type Meets = (e: number, n: number, u: number) => boolean;

/** Below every cosine, rounding allowed for. */
const EVERY_WAY = -2;

/** A body as one point sees it. */
interface SeenBody {
  readonly meets: Meets;
  readonly transmission: number;
  /** Unit vector to the middle of it and the cosine of the cone round it that holds all of it. */
  readonly towards: ENU;
  readonly coneCos: number;
}

/**
 * Share of the sun's beam that reaches a point past near objects, one value a step; undefined where nothing is ever
 * in the way.
 *
 * A tree is an upright ellipsoid from its foot to its top, a pole a cylinder, a building a square block with its
 * sides to the compass points. Behind two objects the shares multiply. Each step is the mean of the suns on its way;
 * the edge of a shadow across the module is not followed.
 *
 * @param lit  Beam a step: where it is 0 nothing is looked up.
 */
export function nearShade(
  point: ENU,
  objects: readonly SiteObject[],
  { east, north, up }: SunPath,
  lit: Float64Array,
): Float64Array | undefined {
  const bodies = objects.map((object) => seenFrom(point, object));
  if (bodies.length === 0) return undefined;
  let open: Float64Array | undefined;
  for (let i = 0; i < lit.length; i++) {
    if (lit[i] === 0) continue;
    let lost = 0;
    for (let at = i * SUNS_A_STEP; at < (i + 1) * SUNS_A_STEP; at++) {
      lost += 1 - passing(bodies, east[at] as number, north[at] as number, up[at] as number);
    }
    if (lost > 0) {
      open ??= new Float64Array(lit.length).fill(1);
      open[i] = 1 - lost / SUNS_A_STEP;
    }
  }
  return open;
}

/** Share of one sun that passes all bodies; most are ruled out by the cone that holds them. */
function passing(bodies: readonly SeenBody[], e: number, n: number, u: number): number {
  let share = 1;
  for (const { meets, transmission, towards, coneCos } of bodies) {
    const near = e * towards[0] + n * towards[1] + u * towards[2] >= coneCos;
    if (near && meets(e, n, u)) share *= transmission;
  }
  return share;
}

function seenFrom([pe, pn, pu]: ENU, object: SiteObject): SeenBody {
  const { eastM, northM, baseM, heightM, widthM, kind, transmission } = object;
  const middle: ENU = [eastM - pe, northM - pn, baseM + heightM / 2 - pu];
  const meets = { tree: ellipsoid, pole: cylinder, building: block }[kind](middle, widthM / 2, heightM / 2);
  const away = Math.hypot(...middle);
  const radius = Math.hypot(kind === 'building' ? widthM / Math.SQRT2 : widthM / 2, heightM / 2);
  // inside the ball round the body every direction has to be looked at
  const coneCos = away > radius ? Math.sqrt(1 - (radius / away) ** 2) : EVERY_WAY;
  const towards: ENU = away > 0 ? [middle[0] / away, middle[1] / away, middle[2] / away] : [0, 0, 1];
  return { meets, transmission, towards, coneCos };
}

/** Ellipsoid of half width `a` and half height `b` round a middle: |t·d − c| = 1 in the space scaled by both. */
function ellipsoid([ce, cn, cu]: ENU, a: number, b: number): Meets {
  const inside = (ce * ce + cn * cn) / (a * a) + (cu * cu) / (b * b) - 1;
  return (e, n, u) => {
    const dd = (e * e + n * n) / (a * a) + (u * u) / (b * b);
    const dc = (e * ce + n * cn) / (a * a) + (u * cu) / (b * b);
    return inside <= 0 || (dc > 0 && dc * dc >= dd * inside);
  };
}

/** Upright cylinder: inside its circle between two distances, and there between its ends. */
function cylinder([ce, cn, cu]: ENU, radius: number, half: number): Meets {
  return (e, n, u) => {
    const flat = e * e + n * n;
    const along = e * ce + n * cn;
    const cross = e * cn - n * ce;
    const under = radius * radius * flat - cross * cross;
    if (under < 0) return false;
    if (flat === 0) return ce * ce + cn * cn <= radius * radius && cu + half > 0;
    const reach = Math.sqrt(under);
    return between((along - reach) / flat, (along + reach) / flat, u, cu - half, cu + half);
  };
}

/** Whether a ray that rises by `u` a metre is between two heights anywhere from one distance to another, ahead of it. */
function between(nearT: number, farT: number, u: number, low: number, high: number): boolean {
  const from = Math.max(0, nearT);
  if (farT < from) return false;
  const [a, b] = [u * from, u * farT];
  return Math.min(a, b) <= high && Math.max(a, b) >= low;
}

/** Square block with its sides to the compass points: the slabs of its three axes share a distance ahead. */
function block(middle: ENU, half: number, halfUp: number): Meets {
  const halves: ENU = [half, half, halfUp];
  return (e, n, u) => {
    let from = 0;
    let to = Number.POSITIVE_INFINITY;
    for (let axis = 0; axis < 3; axis++) {
      const d = axis === 0 ? e : axis === 1 ? n : u;
      const c = middle[axis] as number;
      const h = halves[axis] as number;
      if (Math.abs(d) < 1e-12) {
        if (Math.abs(c) > h) return false;
        continue;
      }
      const [one, other] = [(c - h) / d, (c + h) / d];
      from = Math.max(from, Math.min(one, other));
      to = Math.min(to, Math.max(one, other));
    }
    return to >= from;
  };
}
