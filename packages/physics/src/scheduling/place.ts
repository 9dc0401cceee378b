import type { Crew, Work } from './task.ts';

/** Times closer than this are the same, h. */
const SAME_H = 1e-9;

/**
 * Serial schedule generation: each task in the order given, at the earliest time its forerunners are done and the
 * crew has hands free for all of it. With a day length, a task that is not splittable starts only where it ends the
 * same day; one longer than a day then starts with a day.
 *
 * @returns start times, h of working time.
 */
export function place(
  work: Work,
  crew: Crew,
  hours: ArrayLike<number>,
  order: ArrayLike<number>,
  dayH?: number,
): Float64Array {
  const n = work.ids.length;
  const start = new Float64Array(n).fill(-1);
  const placed: number[] = [];
  for (let k = 0; k < n; k++) {
    const task = order[k];
    let ready = 0;
    for (const b of work.before[task]) ready = Math.max(ready, start[b] + hours[b]);
    start[task] = earliest(work, crew, hours, start, placed, task, ready, dayH);
    placed.push(task);
  }
  return start;
}

function earliest(
  work: Work,
  crew: Crew,
  hours: ArrayLike<number>,
  start: Float64Array,
  placed: readonly number[],
  task: number,
  ready: number,
  dayH: number | undefined,
): number {
  let at = ready;
  for (;;) {
    const moved = dayH === undefined || work.splittable[task] ? at : inOneDay(at, hours[task], dayH);
    const busyUntil = clash(work, crew, hours, start, placed, task, moved);
    if (busyUntil === undefined) return moved;
    at = Math.max(busyUntil, moved);
  }
}

/** The time itself if the task ends the same day, else the start of the next. */
function inOneDay(at: number, durationH: number, dayH: number): number {
  const day = Math.floor((at + SAME_H) / dayH);
  const ends = at + durationH <= (day + 1) * dayH + SAME_H;
  const atDayStart = at - day * dayH <= SAME_H;
  return ends || atDayStart ? at : (day + 1) * dayH;
}

/** Undefined if the crew can do the task from `at` on; else the next time somebody comes free. */
function clash(
  work: Work,
  crew: Crew,
  hours: ArrayLike<number>,
  start: Float64Array,
  placed: readonly number[],
  task: number,
  at: number,
): number | undefined {
  const end = at + hours[task];
  if (fits(work, crew, hours, start, placed, task, at)) {
    let everywhere = true;
    // usage only rises where something starts: look there and at the task's own start
    for (const p of placed) {
      const moment = start[p];
      if (moment <= at || moment >= end - SAME_H || moment + hours[p] <= at + SAME_H) continue;
      if (fits(work, crew, hours, start, placed, task, moment)) continue;
      everywhere = false;
      break;
    }
    if (everywhere) return undefined;
  }
  let free = Number.POSITIVE_INFINITY;
  for (const p of placed) {
    const finish = start[p] + hours[p];
    if (start[p] < end - SAME_H && finish > at + SAME_H && finish < free) free = finish;
  }
  return free;
}

/** Are there hands for the task beside what is under way at a moment? */
function fits(
  work: Work,
  crew: Crew,
  hours: ArrayLike<number>,
  start: Float64Array,
  placed: readonly number[],
  task: number,
  moment: number,
): boolean {
  let e = work.electricians[task];
  let people = work.people[task];
  for (const p of placed) {
    if (start[p] > moment + SAME_H || start[p] + hours[p] <= moment + SAME_H) continue;
    e += work.electricians[p];
    people += work.people[p];
  }
  return e <= crew.electricians && people <= crew.people;
}

/** Time from the start of each task to the end of all that hangs on it, its own hours included. */
export function tails(work: Work, hours: ArrayLike<number>): Float64Array {
  const n = work.ids.length;
  const tail = new Float64Array(n);
  for (let i = n - 1; i >= 0; i--) {
    let rest = 0;
    for (const j of work.next[i]) rest = Math.max(rest, tail[j]);
    tail[i] = hours[i] + rest;
  }
  return tail;
}

/** Orders tasks by a priority, largest first, never before what they wait for. */
export function byPriority(work: Work, priority: ArrayLike<number>): Int32Array {
  const n = work.ids.length;
  const waits = work.before.map((list) => list.length);
  const open: number[] = [];
  for (let i = 0; i < n; i++) if (waits[i] === 0) open.push(i);
  const order = new Int32Array(n);
  for (let k = 0; k < n; k++) {
    let pick = 0;
    for (let c = 1; c < open.length; c++) if (priority[open[c]] > priority[open[pick]]) pick = c;
    const task = open.splice(pick, 1)[0];
    order[k] = task;
    for (const j of work.next[task]) if (--waits[j] === 0) open.push(j);
  }
  return order;
}

/** When everything is done, h. */
export function finishOf(start: ArrayLike<number>, hours: ArrayLike<number>): number {
  let end = 0;
  for (let i = 0; i < start.length; i++) end = Math.max(end, start[i] + hours[i]);
  return end;
}

/** A small seeded generator (mulberry32): the same seed gives the same plan on every machine. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
