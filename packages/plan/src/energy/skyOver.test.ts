import { kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { workOut } from '../workOut.ts';
import { SKY_AZIMUTHS, skyOver } from './skyOver.ts';

const { array, roof } = workOut(kestrelRise);
const { objects, horizon } = kestrelRise.facts.site;
const over = (name: string) => {
  const module = array.modules.find((one) => one.name === name);
  if (module === undefined) throw new Error(`Kestrel Rise has no ${name}`);
  return { module, ...skyOver(module, roof.planes, { objects: Object.values(objects), horizon }) };
};

test('the gum stands before the east row, where its middle is; planes behind the module are not told', () => {
  const { bodies, module } = over('E1·5');
  expect(bodies.map(({ name }) => name)).toEqual(['gum']);
  const [{ heights, transmission } = { heights: [], transmission: 1 }] = bodies;
  const gum = Object.values(objects).find(({ name }) => name === 'gum');
  if (gum === undefined) throw new Error('Kestrel Rise has a gum');
  expect(transmission).toBe(gum.transmission);
  const [east, north] = [gum.eastM - module.centre3d[0], gum.northM - module.centre3d[1]];
  const towards = (((Math.atan2(east, north) * 180) / Math.PI + 360) % 360) / 2;
  const columns = SKY_AZIMUTHS.filter((_, k) => heights[k] !== undefined);
  const middle = columns.reduce((sum, azimuth) => sum + azimuth, 0) / columns.length;
  // columns stand 2° apart
  expect(Math.abs(middle / 2 - towards)).toBeLessThan(1);
});

test('a module is seen from behind up to its pitch, opposite its facing, and not at all before it', () => {
  const { behindDeg } = over('E1·5');
  const east = roof.planes.find(({ name }) => name === 'East');
  if (east === undefined) throw new Error('Kestrel Rise has an east plane');
  const at = (azimuthDeg: number) => behindDeg[Math.round((((azimuthDeg % 360) + 360) % 360) / 2)] as number;
  expect(at(east.facingDeg)).toBe(0);
  // the column may lie a degree beside the steepest way down, where the height is flat
  expect(at(east.facingDeg + 180)).toBeCloseTo(east.pitchDeg, 1);
});
