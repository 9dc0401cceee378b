type Group = Record<string, unknown>;

/** Chances that come out the same on every machine: mulberry32. */
export function seededChance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** What a figure may become: nothing, less, more, far too much, below zero. */
const SCALES = [0, 1e-3, 0.1, 0.5, 0.99, 1.01, 2, 10, 1000, -1];
const TEXTS = [
  '',
  '<img src=x onerror=alert(1)>',
  '=HYPERLINK("x")',
  'Mars/Phobos',
  'three-phase',
  'L2',
  '𓆏'.repeat(400),
];

/**
 * Changes one thing in a job's facts or choices: takes it away, scales it, flips it, or writes something hostile.
 * @returns what was done, for the message of a failing test.
 */
export function mutateJob(job: Group, chance: () => number): string {
  const pick = <T>(of: readonly T[]): T => of[Math.floor(chance() * of.length)] as T;
  const [owner, key, path] = pick([...placesOf(job.facts, 'facts'), ...placesOf(job.choices, 'choices')]);
  const was = owner[key];
  const turn = chance();
  if (typeof was === 'number' && turn < 0.6) owner[key] = was * pick(SCALES);
  else if (typeof was === 'boolean' && turn < 0.4) owner[key] = !was;
  else if (typeof was === 'string' && turn < 0.3) owner[key] = pick(TEXTS);
  else if (Array.isArray(owner)) owner.splice(Number(key), 1);
  else delete owner[key];
  return `${path}: ${JSON.stringify(was)?.slice(0, 40)} → ${JSON.stringify(owner[key])?.slice(0, 40) ?? 'gone'}`;
}

function placesOf(value: unknown, path: string): [Group, string, string][] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [
    [value as Group, key, `${path}.${key}`] as [Group, string, string],
    ...placesOf(inner, `${path}.${key}`),
  ]);
}
