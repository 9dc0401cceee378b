import type { WeatherYear } from '@eaveline/formats';
import { type Job, kestrelRise } from '@eaveline/job';
import { expect, test } from 'vitest';
import { packFor } from '../rules/index.ts';
import { howFar } from './howFar.ts';
import { siteStage } from './index.ts';

const siteOf = (job: Job, weather?: WeatherYear) => siteStage.run(siteStage.view(job), {}, weather ? { weather } : {});

/** A job with one part of its facts changed. */
function withFacts(change: (facts: Job['facts']) => void): Job {
  const job = structuredClone(kestrelRise);
  change(job.facts);
  return job;
}

test('what the survey of Kestrel Rise left open is what is missing, and who brings it', () => {
  const { missing, survey } = siteOf(kestrelRise);
  expect(missing.map(({ at, from }) => `${from}: ${at}`)).toEqual([
    'network: facts.network.approvalNumber',
    'network: facts.network.approvalDate',
    'sample: facts.board.backing',
    'survey: facts.roof.planes.west.rafters.spacingMm',
  ]);
  expect(survey.wanted - survey.present).toBe(4);
  expect(survey.complete).toBe(false);
  expect(missing[3]?.what).toBe('West, rafter spacing');
});

test('a fact that comes in leaves the list; a plane without a row wants nothing', () => {
  const filled = withFacts((facts) => {
    const west = facts.roof.planes.west;
    const south = facts.roof.planes.south;
    if (!west || !south) throw new Error('Kestrel Rise has a west and a south plane');
    west.rafters.spacingMm = 600;
    south.rafters = {};
  });
  expect(siteOf(filled).missing.map(({ at }) => at)).not.toContain('facts.roof.planes.west.rafters.spacingMm');
  expect(siteOf(filled).missing.some(({ at }) => at.includes('south'))).toBe(false);
});

test('the declared loop impedance answers for the measured one; neither is missing then', () => {
  const declared = withFacts(({ supply }) => {
    delete supply.loopOhm;
    supply.declaredLoopOhm = 0.35;
  });
  const neither = withFacts(({ supply }) => {
    delete supply.loopOhm;
  });
  const missing = (job: Job) => siteOf(job).missing.some(({ at }) => at === 'facts.supply.loopOhm');
  expect([missing(declared), missing(neither)]).toEqual([false, true]);
});

test('the record low is the survey’s or nobody’s: no climate stands in for it', () => {
  const none = withFacts(({ site }) => {
    delete site.recordLowC;
    delete site.recordHighC;
  });
  expect(siteOf(none)).not.toHaveProperty('recordLowC');
  expect(siteOf(none)).not.toHaveProperty('recordHighC');
  expect(siteOf(none).missing.map(({ at }) => at)).toContain('facts.site.recordLowC');
  expect(siteOf(kestrelRise).recordLowC).toBe(-4);
});

test('changing the value of a fact changes nothing the site hangs on', () => {
  const longer = withFacts(({ supply }) => {
    supply.mains.lengthM = 40;
  });
  expect(JSON.stringify(siteStage.view(longer))).toBe(JSON.stringify(siteStage.view(kestrelRise)));
});

test('normals: shares sum to one, the nearest first, and the spread holds the places’ error and the years’', () => {
  const { climate } = siteOf(kestrelRise);
  expect(climate.kind).toBe('monthly normals');
  expect(climate.places.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  expect(climate.distanceKm).toBe(climate.places[0]?.distanceKm);
  // nine in ten within 10.5 % is 6.38 % of standard deviation; with 4 % from year to year √(6.38² + 4²) = 7.53 %
  expect(climate.annualSd).toBeCloseTo(0.0753, 4);
});

test('in mid-ocean it is flagged as far, and nobody pretends to know how far off', () => {
  const ocean = withFacts(({ site }) => {
    site.latitudeDeg = -40;
    site.longitudeDeg = -120;
    delete site.elevationM;
  });
  const { climate, elevationGuessed } = siteOf(ocean);
  expect(climate.far).toBe(true);
  expect(climate.quality).toContain('15 % taken');
  expect(elevationGuessed).toBe(true);
});

/** Two days of 500 and of 250 W/m² in January, the second half without temperature. */
function shortFile(latitudeDeg: number, longitudeDeg = 143.9): WeatherYear {
  const count = 48;
  const has = (from: number) => Uint8Array.from({ length: count }, (_, i) => (i < from ? 1 : 0));
  const full = has(count);
  const column = (value: number) => new Float64Array(count).fill(value);
  return {
    stepS: 3600,
    sunTimeMs: column(0),
    month: new Uint8Array(count).fill(1),
    ghi: Float64Array.from({ length: count }, (_, i) => (i < 24 ? 500 : 250)),
    dni: column(0),
    dhi: column(0),
    airC: Float64Array.from({ length: count }, (_, i) => (i < 24 ? 20 : 0)),
    windMS: column(1),
    place: { name: 'Aerodrome', latitudeDeg, longitudeDeg, elevationM: 900, utcOffsetH: 10 },
    has: { ghi: full, dni: full, dhi: full, airC: has(24), windMS: full },
    covered: { ghi: 48, dni: 48, dhi: 48, airC: 24, windMS: 48 },
    hoursInYear: 8760,
    sourceText: 'made up for this test',
  } as unknown as WeatherYear;
}

test('a weather file: its distance, its months as they stand, and what it lacks', () => {
  // half a degree of a meridian is 55.6 km on a sphere of 6371 km
  const { climate } = siteOf(kestrelRise, shortFile(-38.1));
  expect(climate.distanceKm).toBeCloseTo(55.6, 1);
  expect(climate.far).toBe(false);
  // January: mean 375 W/m² is 9 kWh/m² a day; temperature only over the hours that have it
  expect(climate.ghiKwhM2Day[0]).toBeCloseTo(9, 12);
  expect(climate.meanC[0]).toBeCloseTo(20, 12);
  // √(3² + 4²) = 5 %
  expect(climate.annualSd).toBeCloseTo(0.05, 12);
  expect(climate.remarks.join(' ')).toContain('8712 of 8760 hours have no sun on the level');
  expect(climate.remarks.join(' ')).toContain('470 m above the site');
});

test('a degree of longitude at 37.6° S is 88.1 km', () => {
  // 111.195 km · cos 37.6° = 111.195 · 0.79229
  expect(siteOf(kestrelRise, shortFile(-37.6, 144.9)).climate.distanceKm).toBeCloseTo(88.1, 1);
});

test('a file that does not say where it was taken has no distance, not a distance of nothing', () => {
  const { place: _, ...rest } = shortFile(-38.1);
  const { climate } = siteOf(kestrelRise, rest as WeatherYear);
  expect(climate.distanceKm).toBeUndefined();
  expect(climate.places).toEqual([]);
  expect(climate.far).toBe(true);
  expect(howFar(climate)).toBe('nobody knows how far away');
});

test('a file from the other side of the equator says that its summer is our winter', () => {
  const { climate } = siteOf(kestrelRise, shortFile(37.6));
  // 75.2 degrees of a meridian are 8362 km on a sphere of 6371 km
  expect(howFar(climate)).toBe('8362 km away, farther than it may carry');
  expect(climate.remarks.join(' ')).toContain('its summer is the winter of the site');
});

test('a file from two degrees away is far and counts for less', () => {
  const { climate } = siteOf(kestrelRise, shortFile(-39.6));
  expect(climate.far).toBe(true);
  // √(5² + 6.38²) = 8.11 %
  expect(climate.annualSd).toBeCloseTo(0.0811, 4);
});

test('a fact that only rules of another region wait for is not wanted; neutrals are traced where circuits are moved', () => {
  const moved = withFacts(({ loads }) => {
    delete loads.circuits.pump?.neutralTraced;
    delete loads.circuits.pump?.residualDevice;
  });
  const wanted = (job: Job) => siteStage.view(job).wanted.map(({ at }) => at);
  expect(siteOf(moved).missing.map(({ at }) => at)).toContain('facts.loads.circuits.pump.neutralTraced');
  const whole = structuredClone(moved);
  if (whole.choices.backup) whole.choices.backup.scope = 'whole';
  expect(wanted(whole)).not.toContain('facts.loads.circuits.pump.neutralTraced');
  // the sum of the breakers counts in the US alone
  expect(wanted(moved)).not.toContain('facts.board.breakerSumA');
  const us = structuredClone(moved);
  us.choices.rules = { pack: 'us', variant: 'us', editions: {} };
  expect(wanted(us)).toContain('facts.board.breakerSumA');
  const lacked = packFor(us.choices.rules).lacks.map(({ rule }) => rule);
  for (const { rules } of siteStage.view(us).wanted) {
    expect(rules.length === 0 || rules.some((rule) => !lacked.some((one) => one === rule))).toBe(true);
  }
});
