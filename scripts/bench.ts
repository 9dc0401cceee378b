import { readdirSync } from 'node:fs';
import { cpus } from 'node:os';
import { join, relative } from 'node:path';
import { performance } from 'node:perf_hooks';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** What a `*.bench.ts` file exports a list of, under the name `benches`. */
export interface Bench {
  readonly name: string;
  /** The work, with data made beforehand from a seed; returns its answer so that it cannot be left out as dead. */
  run(): unknown;
  /** Throws, or gives false, where the answer is wrong: a wrong answer has no speed. */
  check(answer: unknown): unknown;
  /** Steps in one run; prints nanoseconds a step. */
  readonly steps?: number;
  /** A promise about the smallest time, with its reason; going over it fails the run. */
  readonly budget?: { readonly ms: number; readonly why: string };
}

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const WARM_UP = { runs: 3, ms: 200 };
const TIMED = { leastRuns: 5, mostRuns: 50, ms: 2000 };

function benchFilesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return ['node_modules', 'dist'].includes(entry.name) ? [] : benchFilesBelow(path);
    return entry.name.endsWith('.bench.ts') ? [path] : [];
  });
}

async function benchesOf(file: string): Promise<readonly Bench[]> {
  const { benches } = (await import(pathToFileURL(file).href)) as { benches?: readonly Bench[] };
  if (!Array.isArray(benches)) throw new Error(`${relative(ROOT, file)} exports no list named benches.`);
  return benches;
}

async function checkOnce({ run, check, name }: Bench): Promise<void> {
  if ((await check(await run())) === false) throw new Error(`${name}: the answer is wrong.`);
}

// the answers of timed runs end here, so that no run is dead code
const sink: [unknown] = [undefined];

async function time({ run }: Bench): Promise<number[]> {
  const warmFrom = performance.now();
  for (let k = 0; k < WARM_UP.runs || performance.now() - warmFrom < WARM_UP.ms; k++) sink[0] = await run();
  const timesMs: number[] = [];
  const from = performance.now();
  while (timesMs.length < TIMED.leastRuns || (timesMs.length < TIMED.mostRuns && performance.now() - from < TIMED.ms)) {
    const start = performance.now();
    sink[0] = await run();
    timesMs.push(performance.now() - start);
  }
  return timesMs;
}

const rounded = (value: number) => Number(value.toPrecision(4));

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] as number) + (sorted[Math.floor(half)] as number)) / 2;
}

/**
 * One line of the output. The budget is held against the smallest time, `withinByMin`: what else the computer does only
 * ever adds. The median says what a person meets.
 */
function lineOf({ name, steps, budget }: Bench, timesMs: readonly number[]) {
  const minMs = Math.min(...timesMs);
  const meanMs = timesMs.reduce((sum, ms) => sum + ms, 0) / timesMs.length;
  const sdMs = Math.sqrt(timesMs.reduce((sum, ms) => sum + (ms - meanMs) ** 2, 0) / (timesMs.length - 1));
  return {
    name,
    minMs: rounded(minMs),
    medianMs: rounded(medianOf(timesMs)),
    meanMs: rounded(meanMs),
    sdMs: rounded(sdMs),
    ...(steps ? { minNsPerStep: rounded((minMs * 1e6) / steps) } : {}),
    ...(budget ? { budgetMs: budget.ms, withinByMin: minMs <= budget.ms } : {}),
    runs: timesMs.length,
    node: process.versions.node,
    cpu: cpus()[0]?.model ?? 'unknown',
  };
}

/** `--once` checks every answer and times nothing; any other word keeps the benches whose name holds it. */
async function runBenches(args: readonly string[]): Promise<boolean> {
  const once = args.includes('--once');
  const words = args.filter((arg) => !arg.startsWith('--'));
  const files = ['packages', 'apps'].flatMap((folder) => benchFilesBelow(join(ROOT, folder))).sort();
  let ran = 0;
  let good = true;
  for (const file of files) {
    for (const bench of await benchesOf(file)) {
      if (!words.every((word) => bench.name.includes(word))) continue;
      ran += 1;
      try {
        await checkOnce(bench);
        const line = once ? { name: bench.name, answer: 'right' } : lineOf(bench, await time(bench));
        console.log(JSON.stringify(line));
        if ('withinByMin' in line && !line.withinByMin) good = false;
      } catch (error) {
        good = false;
        console.log(JSON.stringify({ name: bench.name, file: relative(ROOT, file), error: String(error) }));
      }
    }
  }
  if (ran === 0) console.error('No bench was run: a run that looked at nothing does not pass.');
  return good && ran > 0;
}

process.exitCode = (await runBenches(process.argv.slice(2))) ? 0 : 1;
