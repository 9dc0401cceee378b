import fc from 'fast-check';
import { expect, test } from 'vitest';
import { kestrelRise } from '../demo/index.ts';
import { jobSchema } from '../schema/job.ts';
import { writeJob } from '../write/writeJob.ts';
import { readThroughJson } from './jsonText.ts';
import { parseJob } from './parseJob.ts';

const good = writeJob(kestrelRise);

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

/** JSON with one letter taken out, doubled or changed. */
const nearlyJson = fc
  .tuple(
    fc.json({ maxDepth: 4 }),
    fc.nat(),
    fc.constantFrom('', ',', '"', '\\', '{', ']', '-', '0', '\n', '\u00a0', 'e'),
  )
  .map(([text, where, letter]) => {
    const at = where % (text.length + 1);
    return text.slice(0, at) + letter + text.slice(at + (where % 2));
  });

test('law: the reader finds a fault exactly where the platform refuses the text', () => {
  fc.assert(
    fc.property(fc.oneof(fc.json(), nearlyJson, fc.string()), (text) => {
      expect(readThroughJson(text, () => {}) === undefined).toBe(parses(text));
    }),
    { numRuns: 3000, seed: 1 },
  );
});

test('law: whatever is done to a job file, opening it ends in a sound job or in a reason why not', () => {
  const bitten = fc
    .tuple(fc.nat(good.length), fc.nat(40), fc.constantFrom('', '-', '"', '1e999', 'null', '[]', '{}', '"x"'))
    .map(([at, length, put]) => good.slice(0, at) + put + good.slice(at + length));
  fc.assert(
    fc.property(bitten, (text) => {
      const { job, remarks } = parseJob(text);
      if (job) expect(jobSchema.safeParse(job).success).toBe(true);
      else expect(remarks.some(({ severity }) => severity === 'stop')).toBe(true);
    }),
    { numRuns: 300, seed: 2 },
  );
});

test('law: a value of another sort anywhere in a job is a remark, never a crash', () => {
  const paths: (readonly string[])[] = [];
  const walk = (value: unknown, path: readonly string[]): void => {
    if (path.length > 0) paths.push(path);
    if (typeof value === 'object' && value !== null) {
      for (const [key, inner] of Object.entries(value)) walk(inner, [...path, key]);
    }
  };
  walk(JSON.parse(good), []);
  fc.assert(
    fc.property(
      fc.constantFrom(...paths),
      fc.constantFrom<unknown>(null, -1, 1e308, '', 'constructor', [], [null], {}, { id: null }, true),
      (path, put) => {
        const job = JSON.parse(good);
        const owner = path.slice(0, -1).reduce((group, step) => group[step], job);
        owner[path.at(-1) as string] = put;
        const { job: opened, remarks } = parseJob(JSON.stringify(job));
        if (!opened) expect(remarks.some(({ severity }) => severity === 'stop')).toBe(true);
      },
    ),
    { numRuns: 300, seed: 3 },
  );
});
