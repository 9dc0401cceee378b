import { describe, expect, test } from 'vitest';
import { seededRandom } from '../series/seededRandom.ts';
import { beamOpen, beamRaster, sunCells, type Veil } from './beamRaster.ts';
import {
  block,
  type ConvexBody,
  cone,
  cross,
  crown,
  cylinder,
  dot,
  type FlatBody,
  flatPolygon,
  minus,
  type Point,
  prism,
} from './convexBody.ts';
import { skyPatch, stands } from './skyPatch.ts';
import { hiddenHeights, skyShare } from './skyShare.ts';

const LEVEL: Point = [0, 0, 1];
const HERE: Point = [0, 0, 0];

const veil = (body: ConvexBody, point: Point, transmission = 0): Veil[] => {
  const patch = skyPatch(body, point);
  return patch === undefined ? [] : [{ patch, transmission }];
};

function meetsPolygon({ vertices, faces }: FlatBody, from: Point, d: Point): boolean {
  const [{ normal, distance } = { normal: LEVEL, distance: 0 }] = faces;
  const t = (distance - dot(normal, from)) / dot(normal, d);
  if (!(t > 0)) return false;
  const at: Point = [from[0] + t * d[0], from[1] + t * d[1], from[2] + t * d[2]];
  const sides = vertices.map((a, k) => {
    const b = vertices[(k + 1) % vertices.length] as Point;
    return Math.sign(dot(cross(minus(b, a), minus(at, a)), normal));
  });
  return sides.every((side) => side === sides[0]);
}

/** Whether a ray meets a body, by where it goes in and out of it: nothing here knows of patches. */
function meets(body: ConvexBody, from: Point, d: Point): boolean {
  if (body.kind === 'round') {
    const s: Point = [1 / body.halfWidthM, 1 / body.halfWidthM, 1 / body.halfHeightM];
    const scale = (p: Point): Point => [p[0] * s[0], p[1] * s[1], p[2] * s[2]];
    const [c, r] = [scale(minus(body.centre, from)), scale(d)];
    const along = dot(c, r);
    return along > 0 && along * along >= dot(r, r) * (dot(c, c) - 1);
  }
  if (body.faces.length === 1) return meetsPolygon(body, from, d);
  let [near, far] = [0, Number.POSITIVE_INFINITY];
  for (const { normal, distance } of body.faces) {
    const [speed, gap] = [dot(normal, d), distance - dot(normal, from)];
    if (Math.abs(speed) < 1e-12) {
      if (gap < 0) return false;
    } else if (speed > 0) far = Math.min(far, gap / speed);
    else near = Math.max(near, gap / speed);
  }
  return far > near;
}

describe('what a body hides', () => {
  test('a point in a body is known, whatever the body is', () => {
    for (const body of [
      block([0, 0, 1], 2, 2, 2),
      cylinder([0, 0, 0], 1, 2),
      cone([0, 0, 0], 1, 2),
      crown([0, 0, 0], 2, 2),
    ]) {
      expect(stands([0, 0, 0.9], body)).toBe(true);
      expect(stands([3, 0, 0.9], body)).toBe(false);
      expect(skyPatch(body, [3, 0, 0.9])).toBeDefined();
    }
  });

  test('a polygon seen from its edge hides nothing', () => {
    const plane = flatPolygon([
      [0, 0, 0],
      [4, 0, 0],
      [4, 3, 2],
      [0, 3, 2],
    ]);
    expect(skyPatch(plane, [2, -1.5, -1])).toBeUndefined();
    expect(skyPatch(plane, [2, -1.5, -0.9])).toBeDefined();
  });

  test('a body of no depth is refused with the way out', () => {
    expect(() => block([0, 0, 0], 2, 0, 2)).toThrow('Give the body a width, a depth and a height above 0.');
  });
});

describe('heights a body hides', () => {
  test('a house 8 m off, 4 m wide and 3 m over the eye: up to atan(3/8) = 20.56° ahead, nothing 15° beside it', () => {
    // its near face 8 m north, 4 m wide: atan(2/8) = 14.04° to either side
    const [patch] = veil(block([0, 10, 0], 4, 4, 6), HERE).map((one) => one.patch);
    if (patch === undefined) throw new Error('the house stands before the sky');
    expect(hiddenHeights(patch, 0)?.[0]).toBe(0);
    expect(hiddenHeights(patch, 0)?.[1]).toBeCloseTo(20.556, 3);
    expect(hiddenHeights(patch, 14)).toBeDefined();
    expect(hiddenHeights(patch, 15)).toBeUndefined();
    expect(hiddenHeights(patch, 180)).toBeUndefined();
  });
});

describe('share of the sky', () => {
  test('an endless high wall takes half the sky of level ground', () => {
    // half of the hemisphere, and half of its cosine, lies on either side
    const wall = block([0, 1, 500_000], 4, 4_000_000, 1_000_000, 0);
    expect(skyShare(LEVEL, veil(wall, [0, -2, 0]))).toBeCloseTo(0.5, 4);
  });

  test('an endless wall up to 30° before a plane that faces it: sky from 30° up', () => {
    // upright plane facing north, wall north to height e in each slice: strip of constant height over distance.
    // For a two-dimensional scene the view factor is (1 − sin 30°)/2 of the plane; of its sky, half, that is 1 − sin 30°.
    const wall = prism(
      [
        [-1e6, 10, -1],
        [1e6, 10, -1],
        [1e6, 11, -1],
        [-1e6, 11, -1],
      ],
      [
        [-1e6, 10, 10 * Math.tan(Math.PI / 6)],
        [1e6, 10, 10 * Math.tan(Math.PI / 6)],
        [1e6, 11, 10 * Math.tan(Math.PI / 6)],
        [-1e6, 11, 10 * Math.tan(Math.PI / 6)],
      ],
    );
    expect(skyShare([0, 1, 0], veil(wall, HERE))).toBeCloseTo(1 - Math.sin(Math.PI / 6), 3);
  });

  test('a horizon of 20° all round leaves cos² 20° of the sky of level ground', () => {
    expect(skyShare(LEVEL, [], new Float64Array(361).fill(20))).toBeCloseTo(Math.cos((20 * Math.PI) / 180) ** 2, 6);
  });

  test('a million rays: within 0.5 % past a house, a chimney, trees of both kinds, a pole and a roof plane', () => {
    const bodies: readonly (readonly [ConvexBody, number])[] = [
      [block([6, 9, 3], 8, 6, 6, 30), 0],
      [block([1.5, 0.8, 0.5], 0.6, 0.6, 1.6), 0],
      [crown([-7, 4, 0], 5, 9), 0.4],
      [cone([-3, -8, 0], 2, 10), 0.2],
      [cylinder([2, -5, -2], 0.15, 8), 0],
      [
        flatPolygon([
          [3, -2, 0],
          [3, 4, 0],
          [6, 4, 2.5],
          [6, -2, 2.5],
        ]),
        0,
      ],
    ];
    const normal: Point = [0, Math.sin(0.4), Math.cos(0.4)];
    const veils = bodies.flatMap(([body, transmission]) => veil(body, HERE, transmission));
    const random = seededRandom(7).uniform;
    let [all, seen] = [0, 0];
    for (let n = 0; n < 1_000_000; n++) {
      const up = random();
      const turn = 2 * Math.PI * random();
      const flat = Math.sqrt(1 - up * up);
      const d: Point = [flat * Math.sin(turn), flat * Math.cos(turn), up];
      const light = Math.max(0, dot(normal, d));
      let passes = 1;
      for (const [body, transmission] of bodies) if (light > 0 && meets(body, HERE, d)) passes *= transmission;
      all += light;
      seen += light * passes;
    }
    const share = seen / all;
    // a million rays know it to 0.0005 (σ); twenty sides for a round add less
    expect(share).toBeGreaterThan(0.5);
    expect(Math.abs(skyShare(normal, veils) / share - 1)).toBeLessThan(0.005);
  });
});

describe('share of the beam', () => {
  const latitudeDeg = -37.6;
  const rad = Math.PI / 180;
  const sunAt = (declinationDeg: number, hourDeg: number): Point => {
    const [d, h, l] = [declinationDeg * rad, hourDeg * rad, latitudeDeg * rad];
    return [
      -Math.cos(d) * Math.sin(h),
      Math.sin(d) * Math.cos(l) - Math.cos(d) * Math.cos(h) * Math.sin(l),
      Math.sin(d) * Math.sin(l) + Math.cos(d) * Math.cos(h) * Math.cos(l),
    ];
  };
  const oneStep = (sun: Point, stepS: number) =>
    sunCells({ east: [sun[0]], north: [sun[1]], up: [sun[2]] }, 1, stepS, latitudeDeg);

  test('behind nothing there is no raster; a point sees what stands before it only', () => {
    expect(beamRaster([[], []], latitudeDeg)).toBeUndefined();
    // south of the house in the south the sun never comes
    expect(beamRaster([veil(block([0, -30, 1], 2, 2, 2), HERE)], latitudeDeg)).toBeUndefined();
  });

  test('an endless high wall in the east opens at noon: the edge falls on the very minute', () => {
    const wall = block([1.5, 0, 50_000], 400_000, 1, 100_000);
    const raster = beamRaster([veil(wall, HERE)], latitudeDeg);
    if (raster === undefined) throw new Error('the wall hides the morning');
    for (const declination of [-23, 0, 20.5]) {
      // 5 minutes are 1.25° of hour angle: a quarter of a step before noon leaves three quarters of it after
      expect(beamOpen(raster, oneStep(sunAt(declination, -2), 300), 0)).toBeCloseTo(0, 3);
      expect(beamOpen(raster, oneStep(sunAt(declination, 2), 300), 0)).toBeCloseTo(1, 3);
      expect(beamOpen(raster, oneStep(sunAt(declination, 0.25 * 1.25), 300), 0)).toBeCloseTo(0.75, 3);
    }
  });

  test('two thousand suns: the hour’s mean against a ray each half minute', () => {
    const bodies: readonly (readonly [ConvexBody, number])[] = [
      [block([4, 8, 3], 5, 6, 6, 20), 0],
      [crown([-6, 5, 0], 5, 9), 0.4],
      [cylinder([0.6, 3, -2], 0.3, 6), 0],
    ];
    const veils = bodies.flatMap(([body, transmission]) => veil(body, HERE, transmission));
    const raster = beamRaster([veils], latitudeDeg);
    if (raster === undefined) throw new Error('something stands before the sun');
    const random = seededRandom(11).uniform;
    let [worst, sum, count] = [0, 0, 0];
    for (let n = 0; n < 2000; n++) {
      const declination = -23 + 46 * random();
      const hour = -60 + 120 * random();
      if (sunAt(declination, hour)[2] < 0.15) continue;
      let rays = 0;
      for (let k = 0; k < 120; k++) {
        const d = sunAt(declination, hour - 7.5 + (15 * (k + 0.5)) / 120);
        let passes = 1;
        for (const [body, transmission] of bodies) if (meets(body, HERE, d)) passes *= transmission;
        rays += passes / 120;
      }
      const off = Math.abs(beamOpen(raster, oneStep(sunAt(declination, hour), 3600), 0) - rays);
      worst = Math.max(worst, off);
      sum += off;
      count += 1;
    }
    expect(count).toBeGreaterThan(1000);
    // levels one degree apart blend over the top of a house: one hour may be off there, the mean is not
    expect(sum / count).toBeLessThan(0.004);
    expect(worst).toBeLessThan(0.12);
  });

  test('mirrored at the meridian, what hides the morning hides the evening', () => {
    const east = beamRaster([veil(block([5, 4, 2], 3, 2, 4, 25), HERE)], latitudeDeg);
    const west = beamRaster([veil(block([-5, 4, 2], 3, 2, 4, -25), HERE)], latitudeDeg);
    if (east === undefined || west === undefined) throw new Error('both hide something');
    for (const hour of [15, 35, 48, 60]) {
      const morning = beamOpen(east, oneStep(sunAt(-10, -hour), 300), 0);
      expect(beamOpen(west, oneStep(sunAt(-10, hour), 300), 0)).toBeCloseTo(morning, 5);
    }
  });

  test('a place is the mean of its points', () => {
    const wall = block([1.5, 0, 50_000], 400_000, 1, 100_000);
    const raster = beamRaster([veil(wall, HERE), []], latitudeDeg);
    if (raster === undefined) throw new Error('the wall hides the morning');
    expect(beamOpen(raster, oneStep(sunAt(0, -30), 3600), 0)).toBeCloseTo(0.5, 5);
  });
});
