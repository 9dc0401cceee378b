import { demoJobs, ironbarkClinic } from '@eaveline/job';
import { find, type Hits } from './find.ts';
import { type Findable, findableOf } from './findable.ts';

const JOBS = 5000;
const KEY = 'between two keys pressed one after another, 100 ms, the list is there';

/** The five demo jobs a thousand times, each with its own name and one serial. */
const book: readonly { readonly findable: Findable }[] = Array.from({ length: JOBS }, (_, n) => {
  const demo = demoJobs[n % demoJobs.length];
  if (demo === undefined) throw new Error('there are demo jobs');
  const serial = { at: '2026-05-15T06:10:00Z', by: 'Nia', of: 'u', serial: `7312-${String(n).padStart(4, '0')}-0098` };
  const records = { ...demo.records, serials: { one: serial } };
  return { findable: findableOf({ ...demo, id: `job-${n}`, name: `${demo.name} ${n}`, records }) };
});
const finds =
  (count: number, slip = false) =>
  (hits: Hits<unknown>) =>
    hits.hits.length === count && hits.slip === slip;

const search = (what: string, typed: string, check: (hits: Hits<unknown>) => boolean) => ({
  name: `web/book: ${what} in ${JOBS} jobs`,
  run: () => find(book, typed),
  check,
  budget: { ms: 100, why: KEY },
});

export const benches = [
  search('a serial', '7312 4321', finds(1)),
  search('two words', 'kestrel heath', finds(JOBS / 5)),
  search('a word that is nowhere', 'nowhere', finds(0)),
  search('a word with one letter wrong', 'larkspurr', finds(JOBS / 5, true)),
  {
    name: 'web/book: a job made ready to be found',
    run: () => findableOf(ironbarkClinic),
    check: (findable: Findable) => findable.all.includes('ironbark clinic'),
    budget: { ms: 2, why: 'thousands of jobs are made ready while the page stays at hand' },
  },
];
