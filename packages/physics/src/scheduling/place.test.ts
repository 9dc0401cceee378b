import { expect, test } from 'vitest';
import { place, seeded } from './place.ts';
import { type Crew, prepare, type Task } from './task.ts';

/** Is the crew enough at every moment of [at, at + h) beside the tasks that have their times? Counted moment by moment. */
function free(tasks: readonly Task[], done: readonly number[], start: Float64Array, crew: Crew, k: number, at: number) {
  const end = at + (tasks[k] as Task).hours.likely;
  const under = (moment: number) =>
    done.filter((p) => start[p] <= moment && start[p] + (tasks[p] as Task).hours.likely > moment);
  const moments = [at, ...done.map((p) => start[p]).filter((moment) => moment > at && moment < end)];
  return moments.every((moment) => {
    const all = [...under(moment), k].map((p) => tasks[p] as Task);
    const people = all.reduce((sum, task) => sum + (task.people ?? 1), 0);
    const electricians = all.reduce((sum, task) => sum + (task.electricians ?? 0), 0);
    return people <= crew.people && electricians <= crew.electricians;
  });
}

test('each task starts at the first moment that its forerunners and the crew leave it, in hundreds of small jobs', () => {
  const random = seeded(11);
  const upTo = (n: number) => Math.floor(random() * (n + 1));
  let judged = 0;
  for (let job = 0; job < 300; job++) {
    const crew = { electricians: 1 + upTo(1), people: 2 + upTo(2) };
    // hours in halves: sums are exact, so that a time is the same or it is not
    const tasks: Task[] = Array.from({ length: 1 + upTo(14) }, (_, k) => {
      const likely = 0.5 * (1 + upTo(7));
      const after = Array.from({ length: k }, (_unused, b) => `t${b}`).filter(() => random() < 0.1);
      return {
        id: `t${k}`,
        hours: { low: likely, likely, high: likely },
        people: 1 + upTo(1),
        electricians: upTo(1),
        after,
      };
    });
    const work = prepare(tasks, crew);
    const order = tasks.map((_, k) => k);
    const start = place(work, crew, work.likely, order);
    for (const k of order) {
      const done = order.slice(0, k);
      const ready = Math.max(0, ...work.before[k].map((b) => start[b] + work.likely[b]));
      const candidates = [ready, ...done.map((p) => start[p] + work.likely[p])].filter((at) => at >= ready);
      const first = Math.min(...candidates.filter((at) => free(tasks, done, start, crew, k, at)));
      expect(start[k], `job ${job}, task ${k}`).toBe(first);
      judged++;
    }
  }
  expect(judged).toBeGreaterThan(1000);
});
