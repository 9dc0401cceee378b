import type { Job } from '@eaveline/job';
import { expect, test } from 'vitest';
import { eighteenModuleHouse } from '../../test/eighteenModuleHouse.ts';
import { arrayStage } from '../array/index.ts';
import { roofStage } from '../roof/index.ts';
import { siteStage } from '../site/index.ts';
import { sunStage } from '../sun/index.ts';
import { dayStage } from './index.ts';

function dayOf(job: Job) {
  const site = siteStage.run(siteStage.view(job), {}, {});
  const sun = sunStage.run(sunStage.view(job), { site }, {});
  const roof = roofStage.run(roofStage.view(job), { sun }, {});
  const array = arrayStage.run(arrayStage.view(job), { roof }, {});
  return dayStage.run(dayStage.view(job), { sun, array }, {});
}

const crewOf = (electricians: number, hands: number) =>
  Object.fromEntries([
    ...Array.from({ length: electricians }, (_, k) => [`e${k}`, { name: `E${k}`, role: 'electrician' as const }]),
    ...Array.from({ length: hands }, (_, k) => [`h${k}`, { name: `H${k}`, role: 'roof hand' as const }]),
  ]);

const house = (electricians: number, hands: number, doneBefore: Record<string, boolean> = {}) =>
  eighteenModuleHouse((draft) => {
    draft.choices.crew = crewOf(electricians, hands);
    draft.choices.day = { date: '2026-06-15', hoursPerDay: 8.5, doneBefore };
  });

const hoursOf = (job: Job, id: string) => dayOf(job).tasks.find((task) => task.id === id)?.hours.likely;

test('hours follow the drawing: the trade table gives 4 h for 18 modules, 2.5 h for two home runs', () => {
  const job = house(2, 2);
  expect(hoursOf(job, 'modules:south')).toBeCloseTo(4, 9);
  expect(hoursOf(job, 'homeRun:a')).toBeCloseTo(1.25, 9);
  const feet = dayOf(job).tasks.find((task) => task.id === 'feet:south');
  // 36 feet take 6 h under tile: a sixth of an hour each
  expect(feet?.hours.likely).toBeCloseTo((feet?.working.inputs?.[0]?.value as number) / 6, 9);
});

test('modules wait for the dead tests of the trunk beneath them, and energy for everything', () => {
  const { tasks } = dayOf(house(2, 2));
  const at = (id: string) => tasks.find((task) => task.id === id);
  const end = (id: string) => ((at(id)?.parts.at(-1)?.day ?? 0) - 1) * 8.5 + (at(id)?.endH ?? 0);
  const start = (id: string) => ((at(id)?.day ?? 0) - 1) * 8.5 + (at(id)?.startH ?? 0);
  expect(start('modules:south')).toBeGreaterThanOrEqual(end('deadTrunk:a') - 1e-9);
  expect(start('powerUp')).toBeGreaterThanOrEqual(end('deadAll') - 1e-9);
});

test('nobody is in two places: at every start, hands and licences suffice', () => {
  const { tasks } = dayOf(house(1, 2));
  const parts = tasks.flatMap((task) => task.parts.map((part) => ({ ...task, ...part })));
  for (const { day, startH } of parts) {
    const busy = parts.filter((part) => part.day === day && part.startH <= startH + 1e-9 && part.endH > startH + 1e-9);
    expect(busy.reduce((sum, { electricians }) => sum + electricians, 0)).toBeLessThanOrEqual(1);
    expect(busy.reduce((sum, { people }) => sum + people, 0)).toBeLessThanOrEqual(3);
  }
});

test('days are promised with four chances in five, and more days are never less likely', () => {
  const { days, chanceByDays, wantedChance } = dayOf(house(2, 2));
  const chance = (d: number) => chanceByDays.find((row) => row.days === d)?.chance ?? Number.NaN;
  expect(chance(days)).toBeGreaterThanOrEqual(wantedChance);
  const rising = chanceByDays.map((row) => row.chance);
  expect([...rising].sort((a, b) => a - b)).toEqual(rising);
});

test('no order beats the bound, and done before is not done again', () => {
  const plain = dayOf(house(2, 2));
  expect(plain.hours).toBeGreaterThanOrEqual(plain.boundHours - 1e-9);
  const before = dayOf(house(2, 2, { talk: true, edge: true }));
  expect(before.tasks.find(({ id }) => id === 'edge')).toMatchObject({ doneBefore: true, parts: [] });
  expect(before.hours).toBeLessThan(plain.hours);
});

test('a crew without a licence is told so, and the tasks still stand', () => {
  const day = dayOf(house(0, 3));
  expect(day.refusal).toContain('electricians');
  expect(day.days).toBe(0);
  expect(day.tasks.length).toBeGreaterThan(10);
});

test('the same job gives the same days', () => {
  expect(dayOf(house(2, 2))).toEqual(dayOf(house(2, 2)));
});

test('no figure of the day stands outside the range beside it; where the trials lie is said in words', () => {
  const { workings, hours } = dayOf(house(2, 2));
  for (const { range, value } of workings) {
    if (range === undefined || typeof value !== 'number') continue;
    expect(value).toBeGreaterThanOrEqual(range[0]);
    expect(value).toBeLessThanOrEqual(range[1]);
  }
  const time = workings.find(({ name }) => name === 'Working time');
  expect(time?.value).toBe(hours);
  const [soon = 0, late = 0] = [...(time?.note ?? '').matchAll(/within ([\d.]+) h/g)].map(([, h]) => Number(h));
  expect(soon).toBeLessThan(late);
  expect(hours).toBeLessThan(late);
});
