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
  const placed: Placed = {
    start,
    finish: new Float64Array(n),
    byStart: new Int32Array(n),
    byFinish: new Int32Array(n),
    count: 0,
    full: new Map(),
  };
  for (let k = 0; k < n; k++) {
    const task = order[k];
    let ready = 0;
    for (const b of work.before[task]) ready = Math.max(ready, start[b] + hours[b]);
    start[task] = earliest(work, crew, placed, task, hours[task], ready, dayH);
    placed.finish[task] = start[task] + hours[task];
    insert(placed.byStart, placed.count, task, start);
    insert(placed.byFinish, placed.count, task, placed.finish);
    placed.count++;
  }
  return start;
}

/** Tasks that have their times, in order of start and in order of finish. */
interface Placed {
  readonly start: Float64Array;
  readonly finish: Float64Array;
  readonly byStart: Int32Array;
  readonly byFinish: Int32Array;
  count: number;
  /** By how many hands are wanted: a stretch of time without a moment at which so many are free. */
  readonly full: Map<number, Stretch>;
}

/** h of working time; the end is not of it. */
interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Puts a task where its time belongs among the first `count` of a list. */
function insert(list: Int32Array, count: number, task: number, time: Float64Array): void {
  let low = 0;
  let high = count;
  while (low < high) {
    const mid = (low + high) >> 1;
    if (time[list[mid]] <= time[task]) low = mid + 1;
    else high = mid;
  }
  list.copyWithin(low + 1, low, count);
  list[low] = task;
}

function earliest(
  work: Work,
  crew: Crew,
  placed: Placed,
  task: number,
  durationH: number,
  ready: number,
  dayH: number | undefined,
): number {
  const hands = work.electricians[task] * 1024 + work.people[task];
  // what is placed stays: a stretch that had no hands free has none now
  const known = placed.full.get(hands);
  const inKnown = known !== undefined && known.from <= ready && ready < known.to;
  let at = inKnown ? known.to : ready;
  let fullTo = at;
  let isFull = true;
  const busy = busyAt(at, placed, work);
  const ahead: Busy = { ...busy };
  const fits = (now: Busy) =>
    now.electricians + work.electricians[task] <= crew.electricians && now.people + work.people[task] <= crew.people;
  for (;;) {
    const moved = dayH === undefined || work.splittable[task] ? at : inOneDay(at, durationH, dayH);
    const end = moved + durationH;
    walkTo(moved, busy, placed, work);
    const free = fits(busy);
    if (free && staysFree(moved, end)) break;
    const next = Math.max(nextFree(placed, busy.ended, end), moved);
    // hands come free only where something ends: none of a moment before that
    isFull &&= !free && moved === at;
    if (isFull) fullTo = next;
    at = next;
  }
  const found = { from: inKnown ? known.from : ready, to: fullTo };
  if (known === undefined || found.to - found.from > known.to - known.from) placed.full.set(hands, found);
  return dayH === undefined || work.splittable[task] ? at : inOneDay(at, durationH, dayH);

  /** Usage only rises where something starts: it is looked at there, from the moment to the end of the task. */
  function staysFree(from: number, end: number): boolean {
    Object.assign(ahead, busy);
    let k = busy.begun;
    while (k > 0 && placed.start[placed.byStart[k - 1]] > from) k--;
    for (; k < placed.count; k++) {
      const other = placed.byStart[k];
      const moment = placed.start[other];
      if (moment >= end - SAME_H) return true;
      if (placed.finish[other] <= from + SAME_H) continue;
      walkTo(moment, ahead, placed, work);
      if (!fits(ahead)) return false;
    }
    return true;
  }
}

/** Hands at work at a moment, and how many of the placed have begun and ended by it. */
interface Busy {
  begun: number;
  ended: number;
  electricians: number;
  people: number;
}

/** Found backwards from when all is done: most tasks are placed near the end of what is placed already. */
function busyAt(moment: number, { start, finish, byStart, byFinish, count }: Placed, work: Work): Busy {
  const busy: Busy = { begun: count, ended: count, electricians: 0, people: 0 };
  while (busy.begun > 0 && start[byStart[busy.begun - 1]] > moment + SAME_H) {
    const task = byStart[--busy.begun];
    busy.electricians -= work.electricians[task];
    busy.people -= work.people[task];
  }
  while (busy.ended > 0 && finish[byFinish[busy.ended - 1]] > moment + SAME_H) {
    const task = byFinish[--busy.ended];
    busy.electricians += work.electricians[task];
    busy.people += work.people[task];
  }
  return busy;
}

/** Goes on to a moment that is not earlier. */
function walkTo(moment: number, busy: Busy, { start, finish, byStart, byFinish, count }: Placed, work: Work): void {
  while (busy.begun < count && start[byStart[busy.begun]] <= moment + SAME_H) {
    const task = byStart[busy.begun++];
    busy.electricians += work.electricians[task];
    busy.people += work.people[task];
  }
  while (busy.ended < count && finish[byFinish[busy.ended]] <= moment + SAME_H) {
    const task = byFinish[busy.ended++];
    busy.electricians -= work.electricians[task];
    busy.people -= work.people[task];
  }
}

/** The next time somebody comes free of what is under way before an end. */
function nextFree({ start, finish, byFinish, count }: Placed, ended: number, end: number): number {
  for (let k = ended; k < count; k++) {
    const task = byFinish[k];
    if (start[task] < end - SAME_H) return finish[task];
  }
  return Number.POSITIVE_INFINITY;
}

/** The time itself if the task ends the same day, else the start of the next. */
function inOneDay(at: number, durationH: number, dayH: number): number {
  const day = Math.floor((at + SAME_H) / dayH);
  const ends = at + durationH <= (day + 1) * dayH + SAME_H;
  const atDayStart = at - day * dayH <= SAME_H;
  return ends || atDayStart ? at : (day + 1) * dayH;
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
