import { readdirSync } from 'node:fs';
import { cpus } from 'node:os';
import { join, relative } from 'node:path';
import { performance } from 'node:perf_hooks';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromiumPath, NO_CHROMIUM } from './chromium.mjs';
import { type MeasuredBench, quantile } from './measured.ts';

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
/** Of benches that measure in a page; each may take several samples a time. */
const MEASURED_TIMES = 10;

function benchFilesBelow(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return ['node_modules', 'dist'].includes(entry.name) ? [] : benchFilesBelow(path);
    return entry.name.endsWith('.bench.ts') ? [path] : [];
  });
}

interface BenchFile {
  readonly benches?: readonly Bench[];
  readonly measuredBenches?: readonly MeasuredBench[];
}

async function benchesOf(file: string): Promise<Required<BenchFile>> {
  const { benches, measuredBenches } = (await import(pathToFileURL(file).href)) as BenchFile;
  if (!Array.isArray(benches ?? measuredBenches))
    throw new Error(`${relative(ROOT, file)} exports no list of benches.`);
  return { benches: benches ?? [], measuredBenches: measuredBenches ?? [] };
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
    ...here(),
  };
}

const here = () => ({ node: process.versions.node, cpu: cpus()[0]?.model ?? 'unknown' });

async function measuredLine({ name, budget, measure }: MeasuredBench, times: number) {
  const { samples, more = {} } = await measure(times);
  const p50Ms = quantile(samples, 0.5);
  const p95Ms = quantile(samples, 0.95);
  const { p50 = Number.POSITIVE_INFINITY, p95 = Number.POSITIVE_INFINITY } = budget;
  return {
    name,
    p50Ms: rounded(p50Ms),
    p95Ms: rounded(p95Ms),
    minMs: rounded(Math.min(...samples)),
    ...Object.fromEntries(Object.entries(more).map(([what, value]) => [what, rounded(value)])),
    budgetMs: budget.p50 === undefined ? { p95 } : { p50 },
    within: p50Ms <= p50 && p95Ms <= p95,
    runs: samples.length,
    ...here(),
  };
}

/** A line says where it holds a budget, and against which of its figures. */
interface Line {
  readonly name: string;
  readonly within?: boolean;
  readonly withinByMin?: boolean;
}

/** `--once` checks every answer and times nothing; any other word keeps the benches whose name holds it. */
async function runBenches(args: readonly string[]): Promise<boolean> {
  const once = args.includes('--once');
  const words = args.filter((arg) => !arg.startsWith('--'));
  const wanted = ({ name }: { readonly name: string }) => words.every((word) => name.includes(word));
  const files = ['packages', 'apps', 'scripts'].flatMap((folder) => benchFilesBelow(join(ROOT, folder))).sort();
  let ran = 0;
  let good = true;
  async function line(name: string, file: string, make: () => Promise<Line>): Promise<void> {
    ran += 1;
    try {
      const made = await make();
      console.log(JSON.stringify(made));
      if (made.within === false || made.withinByMin === false) good = false;
    } catch (error) {
      good = false;
      console.log(JSON.stringify({ name, file: relative(ROOT, file), error: String(error) }));
    }
  }
  for (const file of files) {
    const { benches, measuredBenches } = await benchesOf(file);
    for (const bench of benches.filter(wanted)) {
      await line(bench.name, file, async () => {
        await checkOnce(bench);
        return once ? { name: bench.name, answer: 'right' } : lineOf(bench, await time(bench));
      });
    }
    for (const bench of measuredBenches.filter(wanted)) {
      if (chromiumPath() === undefined) {
        console.error(`${NO_CHROMIUM} Left out: ${bench.name}`);
        continue;
      }
      await line(bench.name, file, async () => {
        if (!once) return measuredLine(bench, MEASURED_TIMES);
        await bench.measure(1);
        return { name: bench.name, answer: 'right' };
      });
    }
  }
  if (ran === 0) console.error('No bench was run: a run that looked at nothing does not pass.');
  return good && ran > 0;
}

process.exitCode = (await runBenches(process.argv.slice(2))) ? 0 : 1;
