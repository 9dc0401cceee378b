import { expect, test } from 'vitest';
import { chanceBy, finishChance, triangular } from './chance.ts';
import { scheduleDays, scheduleTasks } from './schedule.ts';
import type { Crew, Task } from './task.ts';

const task = (id: string, likely: number, people: number, electricians = 0, after: string[] = []): Task => ({
  id,
  hours: { low: 0.8 * likely, likely, high: 1.5 * likely },
  people,
  electricians,
  after,
});
const crew: Crew = { electricians: 1, people: 2 };

test('three tasks and one electrician, by hand: board 3 h, home run 2 h after it, roof 4 h beside them', () => {
  // E: board 0–3, home run 3–5; hand: roof 0–4
  const got = scheduleTasks({
    tasks: [task('roof', 4, 1), task('run', 2, 1, 1, ['board']), task('board', 3, 1, 1)],
    crew,
  });
  expect(got.finishH).toBe(5);
  expect(got).toMatchObject({ lowerBoundH: 5, proven: true, chain: ['board', 'run'] });
  expect(got.tasks.map((t) => [t.id, t.startH])).toEqual([
    ['board', 0],
    ['roof', 0],
    ['run', 3],
  ]);
});

test('two tasks that each need two of three people never run together: the bound knows', () => {
  const got = scheduleTasks({ tasks: [task('a', 2, 2), task('b', 3, 2)], crew: { electricians: 0, people: 3 } });
  expect(got).toMatchObject({ finishH: 5, lowerBoundH: 5, proven: true });
});

test('all hands stops everything else', () => {
  const tasks: Task[] = [{ ...task('talk', 0.5, 1), allHands: true }, task('a', 1, 1), task('b', 1, 1)];
  expect(scheduleTasks({ tasks, crew }).finishH).toBe(1.5);
});

/** The shortest finish over every order, by trying them all: the slow twin. */
function enumerated(tasks: readonly Task[], team: Crew): number {
  let best = Number.POSITIVE_INFINITY;
  const permute = (left: readonly Task[], done: readonly Task[]): void => {
    if (left.length === 0) best = Math.min(best, listFinish(done, team));
    for (const t of left) {
      if ((t.after ?? []).every((id) => done.some((d) => d.id === id)))
        permute(
          left.filter((x) => x !== t),
          [...done, t],
        );
    }
  };
  permute(tasks, []);
  return best;
}

/** Serial placing written from the definition, in tenths of an hour. */
function listFinish(order: readonly Task[], team: Crew): number {
  const used: { e: number; p: number }[] = [];
  const end = new Map<string, number>();
  for (const t of order) {
    const long = Math.round(t.hours.likely * 10);
    let at = Math.max(0, ...(t.after ?? []).map((id) => end.get(id) as number));
    const fits = (from: number) => {
      for (let k = from; k < from + long; k++) {
        const u = used[k] ?? { e: 0, p: 0 };
        if (u.e + (t.electricians ?? 0) > team.electricians || u.p + (t.people ?? 1) > team.people) return false;
      }
      return true;
    };
    while (!fits(at)) at++;
    for (let k = at; k < at + long; k++) {
      const u = used[k] ?? { e: 0, p: 0 };
      used[k] = { e: u.e + (t.electricians ?? 0), p: u.p + (t.people ?? 1) };
    }
    end.set(t.id, at + long);
  }
  return Math.max(...end.values()) / 10;
}

test('sixty seeded days of six tasks equal the enumeration of all their orders; the bound is never above it', () => {
  let seed = 11;
  const random = (n: number) => {
    seed = (Math.imul(seed, 1103515245) + 12345) & 0x7fffffff;
    return (seed >>> 8) % n;
  };
  const team = { electricians: 2, people: 3 };
  for (let round = 0; round < 60; round++) {
    const tasks = Array.from({ length: 6 }, (_, i) => {
      const electricians = random(3);
      const after = i > 0 && random(2) ? [`t${random(i)}`] : [];
      return task(
        `t${i}`,
        (1 + random(30)) / 10,
        Math.min(3, electricians + random(2) + (electricians ? 0 : 1)),
        electricians,
        after,
      );
    });
    const best = enumerated(tasks, team);
    const got = scheduleTasks({ tasks, crew: team });
    expect(got.finishH).toBeCloseTo(best, 6);
    expect(got.lowerBoundH).toBeLessThanOrEqual(best + 1e-9);
  }
});

test('law: crew never exceeded, nothing before what it waits for', () => {
  const tasks = [
    task('a', 2, 2),
    task('b', 1, 1, 1, ['a']),
    task('c', 3, 1, 0, ['a']),
    task('d', 2, 2, 1),
    task('e', 1, 1),
  ];
  const team = { electricians: 1, people: 3 };
  const { tasks: plan } = scheduleTasks({ tasks, crew: team });
  for (const { startH } of plan) {
    const running = plan.filter((p) => p.startH <= startH && p.finishH > startH + 1e-9);
    const sum = (of: (t: Task) => number) =>
      running.reduce((s, r) => s + of(tasks.find((t) => t.id === r.id) as Task), 0);
    expect(sum((t) => t.people ?? 1)).toBeLessThanOrEqual(3);
    expect(sum((t) => t.electricians ?? 0)).toBeLessThanOrEqual(1);
  }
  const at = (id: string) => plan.find((p) => p.id === id) as { startH: number; finishH: number };
  expect(at('b').startH).toBeGreaterThanOrEqual(at('a').finishH);
});

test('days of 8 h: a 3 h task is not started at hour 6, a splittable one goes on next morning', () => {
  const one: Crew = { electricians: 0, people: 1 };
  const whole = scheduleDays({ tasks: [task('a', 6, 1), task('b', 3, 1, 0, ['a'])], crew: one, hoursPerDay: 8 });
  expect(whole.days).toEqual([
    [{ id: 'a', startH: 0, finishH: 6, ends: true }],
    [{ id: 'b', startH: 0, finishH: 3, ends: true }],
  ]);
  const split = scheduleDays({
    tasks: [task('a', 6, 1), { ...task('b', 3, 1, 0, ['a']), splittable: true }],
    crew: one,
    hoursPerDay: 8,
  });
  expect(split.days[0]?.[1]).toEqual({ id: 'b', startH: 6, finishH: 8, ends: false });
  expect(split.days[1]).toEqual([{ id: 'b', startH: 0, finishH: 1, ends: true }]);
  expect(split).toMatchObject({ lowerBoundDays: 2, proven: true });
});

test('triangular 1–2–4: its median is 4 − √3 = 2.268, its mean 7/3', () => {
  const hours = { low: 1, likely: 2, high: 4 };
  // F(2) = 1/3; above it 1 − (4 − x)²/6 = ½
  expect(triangular(hours, 0.5)).toBeCloseTo(4 - Math.sqrt(3), 12);
  expect([0, 1 / 3, 1].map((u) => triangular(hours, u))).toEqual([1, 2, 4]);
  let sum = 0;
  for (let k = 0; k < 10000; k++) sum += triangular(hours, (k + 0.5) / 10000);
  expect(sum / 10000).toBeCloseTo(7 / 3, 4);
});

test('one task, no shared factor: half the jobs are done by the median, within the printed interval', () => {
  const one: Task = { id: 'a', hours: { low: 1, likely: 2, high: 4 } };
  const got = finishChance({ tasks: [one], crew, dayFactor: { low: 1, likely: 1, high: 1 }, samples: 4000, seed: 3 });
  const half = chanceBy(got, 4 - Math.sqrt(3));
  expect(half.low).toBeLessThan(0.5);
  expect(half.high).toBeGreaterThan(0.5);
  expect(got.meanH).toBeCloseTo(7 / 3, 1);
  expect(chanceBy(got, 4).share).toBe(1);
  expect(chanceBy(got, 0.9).share).toBe(0);
});

test('the same seed gives the same job, another seed another', () => {
  const tasks = [task('a', 2, 1), task('b', 3, 1, 1, ['a'])];
  const run = (seed: number) => finishChance({ tasks, crew, seed, samples: 50 }).finishH;
  expect(run(5)).toEqual(run(5));
  expect(run(5)).not.toEqual(run(6));
});

test('refuses a task no crew of this size can do, circles, strangers and hours that fall', () => {
  const run =
    (...tasks: Task[]) =>
    () =>
      scheduleTasks({ tasks, crew });
  expect(run(task('hoist', 1, 3))).toThrow('hoist is 3 people, 0 of them electricians');
  expect(run(task('board', 1, 2, 2))).toThrow('Bring a larger crew');
  expect(run(task('a', 1, 1, 0, ['b']), task('b', 1, 1, 0, ['a']))).toThrow('no circle');
  expect(run(task('a', 1, 1, 0, ['x']))).toThrow('a.after is x');
  expect(run(task('a', 1, 1), task('a', 1, 1))).toThrow('one task of each id');
  expect(run({ ...task('a', 1, 1), hours: { low: 2, likely: 1, high: 3 } })).toThrow('Low is at most likely');
  expect(() => scheduleDays({ tasks: [task('a', 9, 1)], crew, hoursPerDay: 8 })).toThrow('Mark the task splittable');
});
