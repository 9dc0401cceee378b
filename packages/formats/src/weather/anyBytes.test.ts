import { seededRandom } from '@eaveline/physics';
import { expect, test } from 'vitest';
import { excerptBytes } from '../../test/excerpt.ts';
import { remarkSentence } from '../reading/remark.ts';
import { readWeatherFile } from './readWeatherFile.ts';
import { WEATHER_QUANTITIES } from './weatherYear.ts';

const files = [
  'boston-3-days.epw',
  'greensboro-3-days.tmy3.csv',
  'piedmont-3-days.pvgis.csv',
  'piedmont-old-head-3-days.pvgis.csv',
  'greensboro-3-days.hourly.csv',
];

/** The file with some bytes changed, often in the head, sometimes cut off. */
function damaged(bytes: Uint8Array, random: () => number): Uint8Array {
  const copy = bytes.slice();
  const changes = 1 + Math.floor(random() * 40);
  for (let k = 0; k < changes; k++) {
    const at = Math.floor(random() * (random() < 0.3 ? 300 : copy.length));
    copy[at] = random() < 0.5 ? 48 + Math.floor(random() * 10) : Math.floor(random() * 256);
  }
  return random() < 0.2 ? copy.slice(0, Math.floor(random() * copy.length)) : copy;
}

test.each(files)('law: whatever bytes %s holds, reading answers, with finite numbers and whole sentences', (name) => {
  const { uniform } = seededRandom(name.length);
  const bytes = excerptBytes(name);
  for (let trial = 0; trial < 120; trial++) {
    const reading = readWeatherFile(damaged(bytes, uniform));
    const stopped = reading.remarks.some(({ severity }) => severity === 'stop');
    expect(reading.data === undefined).toBe(stopped);
    for (const remark of reading.remarks) expect(remarkSentence(remark)).not.toMatch(/NaN|undefined|Infinity/);
    if (!reading.data) continue;
    for (const quantity of WEATHER_QUANTITIES) {
      expect(reading.data[quantity].every(Number.isFinite)).toBe(true);
      expect(reading.data[quantity]).toHaveLength(reading.data.sunTimeMs.length);
    }
    expect(reading.data.sunTimeMs.every(Number.isFinite)).toBe(true);
  }
});
