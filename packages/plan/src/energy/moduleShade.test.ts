import { kestrelRise } from '@eaveline/job';
import { block, crown, type Point } from '@eaveline/physics';
import { expect, test } from 'vitest';
import type { PlacedModule } from '../array/types.ts';
import { planeFrame } from '../roof/planeShape.ts';
import type { LitPlane, RoofPlane } from '../roof/types.ts';
import { workOut } from '../workOut.ts';
import { moduleShade, sectionPoints } from './moduleShade.ts';
import { moduleYears } from './moduleYears.ts';
import { onPlane, shadeScene } from './shadeScene.ts';

const LATITUDE = -37.6;

/** A plane that faces north at 22.5°, its eave 10 m long with its left end at (5, 0, 3). */
const plane = {
  id: 'north',
  name: 'North',
  ...planeFrame(0, 22.5),
  outline: [
    [0, 0],
    [10, 0],
    [10, 6],
    [0, 6],
  ],
  outline3d: [[5, 0, 3]],
  areaM2: 60,
  obstructions: [],
} as unknown as RoofPlane;

/** A module of 1.134 by 1.722 m with its middle so far along the eave and up the slope. */
function moduleAt(u: number, v: number, upright = true): PlacedModule {
  const [widthM, heightM] = upright ? [1.134, 1.722] : [1.722, 1.134];
  return { id: 'm', name: 'N1·1', planeId: 'north', widthM, heightM, centre3d: onPlane(plane, [u, v]) } as PlacedModule;
}

const object = (name: string, body: ReturnType<typeof block>, transmission = 0) => ({ name, body, transmission });

test('sections divide the short side: three strips side by side upright, one above the other lying', () => {
  const spread = (points: readonly (readonly Point[])[], direction: readonly number[]) =>
    points.map((section) => {
      const along = section.map((p) => p.reduce((sum, x, k) => sum + x * (direction[k] as number), 0));
      return [Math.min(...along), Math.max(...along)] as const;
    });
  const upright = spread(sectionPoints(moduleAt(5, 3), plane), plane.along);
  // middles a third of 1.134 m apart, each section on one line up the slope
  for (const [k, [least, most]] of upright.entries()) {
    expect(most - least).toBeCloseTo(0, 9);
    if (k > 0) expect(least - (upright[k - 1]?.[0] as number)).toBeCloseTo(0.378, 9);
  }
  const lying = spread(sectionPoints(moduleAt(5, 3, false), plane), plane.upSlope);
  for (const [k, [least, most]] of lying.entries()) {
    expect(most - least).toBeCloseTo(0, 9);
    if (k > 0) expect(least - (lying[k - 1]?.[0] as number)).toBeCloseTo(0.378, 9);
  }
});

test('a chimney beside a module takes more from the section next to it', () => {
  const [e, n, u] = onPlane(plane, [3.8, 3]);
  const shade = moduleShade(
    moduleAt(5, 3),
    plane,
    [object('chimney', block([e, n, u + 0.5], 0.5, 0.5, 1.4))],
    LATITUDE,
    undefined,
  );
  const hidden = shade?.beam.map((raster) => raster?.hidden ?? 0) ?? [];
  // along the eave u runs from the east of this plane to its west: the first section is the near one
  expect(hidden[0]).toBeGreaterThan(hidden[1] as number);
  expect(hidden[1]).toBeGreaterThan(hidden[2] as number);
  expect(shade?.sky[0]).toBeLessThan(shade?.sky[2] as number);
});

test('mirrored at the meridian the shade is the mirror image', () => {
  const chimneyAt = (u: number) => {
    const [e, n, up] = onPlane(plane, [u, 3]);
    return [object('chimney', block([e, n, up + 0.5], 0.5, 0.5, 1.4))];
  };
  const one = moduleShade(moduleAt(5, 3), plane, chimneyAt(3.8), LATITUDE, undefined);
  const other = moduleShade(moduleAt(5, 3), plane, chimneyAt(6.2), LATITUDE, undefined);
  for (const k of [0, 1, 2] as const) {
    expect(one?.sky[k]).toBeCloseTo(other?.sky[2 - k] as number, 6);
    expect(one?.beam[k]?.hidden).toBeCloseTo(other?.beam[2 - k]?.hidden as number, 6);
  }
});

test('what stands behind the plane, or hardly over it, leaves the module clear', () => {
  const behind = [object('house next door', block([0, -30, 2], 8, 8, 4))];
  expect(moduleShade(moduleAt(5, 3), plane, behind, LATITUDE, undefined)).toBeUndefined();
  const far = [object('mast', block([0, 400, 5], 0.1, 0.1, 10))];
  expect(moduleShade(moduleAt(5, 3), plane, far, LATITUDE, undefined)).toBeUndefined();
});

test('a tree drawn over a module is said, and its light goes by what the tree lets through', () => {
  const [e, n] = onPlane(plane, [5, 3]);
  const tree = [{ name: 'Gum', body: crown([e, n, 0], 6, 12), transmission: 0.3 }];
  const shade = moduleShade(moduleAt(5, 3), plane, tree, LATITUDE, undefined);
  expect(shade?.inside).toEqual(['Gum stands where module N1·1 is: measure both once more.']);
  expect(shade?.sky).toEqual([0.3, 0.3, 0.3].map((share) => expect.closeTo(share, 9)));
});

test('things on the roof and its other planes stand in the scene, each under its name', () => {
  const { roof } = workOut(kestrelRise);
  const names = shadeScene(Object.values(kestrelRise.facts.site.objects), roof.planes).map(({ name }) => name);
  for (const { name, obstructions } of roof.planes) {
    expect(names).toContain(name);
    for (const thing of obstructions) expect(names).toContain(thing.name);
  }
});

test('a chimney of 1.2 m stands so high over the middle of its foot, on a slope too, and as wide as it was taped', () => {
  const chimney = { name: 'chimney', centre: [5, 3], widthM: 0.6, depthM: 0.5, heightM: 1.2 };
  const [standing] = shadeScene([], [{ ...plane, areaM2: 0, obstructions: [chimney] } as unknown as RoofPlane]);
  if (standing?.body.kind !== 'flat') throw new Error('a chimney has flat faces');
  const { vertices } = standing.body;
  const foot = onPlane(plane, [5, 3])[2];
  expect(Math.max(...vertices.map(([, , up]) => up)) - foot).toBeCloseTo(1.2, 9);
  // this plane’s eave runs east and west
  const easts = vertices.map(([east]) => east);
  expect(Math.max(...easts) - Math.min(...easts)).toBeCloseTo(0.6, 9);
});

test('one module moved: its own year is new, the others are the very same', () => {
  const { sun, roof, array } = workOut(kestrelRise);
  const { equipment } = kestrelRise.choices;
  const { objects, horizon } = kestrelRise.facts.site;
  const input = {
    sun,
    planes: roof.planes as readonly LitPlane[],
    equipment,
    objects: Object.values(objects),
    horizon,
  };
  const before = moduleYears({ ...input, modules: array.modules }).byModule;
  const [first, ...others] = array.modules.filter(({ name }) => name.startsWith('E1'));
  if (first === undefined) throw new Error('Kestrel Rise has a row E1');
  const [e, n, u] = first.centre3d;
  const moved: PlacedModule = { ...first, centre3d: [e, n - 0.2, u] };
  const modules = array.modules.map((module) => (module.id === first.id ? moved : module));
  const after = moduleYears({ ...input, modules }).byModule;
  expect(after.get(first.id)).not.toBe(before.get(first.id));
  for (const { id } of others) expect(after.get(id)).toBe(before.get(id));
});
