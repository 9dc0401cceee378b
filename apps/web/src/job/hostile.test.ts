import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Job, practiceYard } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import * as sync from '@eaveline/sync';
import { editsBetween } from '@eaveline/sync/edits';
import { type JobStore, memoryStore, StoreFull } from '@eaveline/sync/store';
import { beforeAll, expect, test } from 'vitest';
import { changeKeptJob } from '../book/changeKept.ts';
import type { PlanDesk } from '../plan/planDesk.ts';
import { type JobServer, NEVER_SAVED, ServerAway } from './jobServer.ts';
import { type JobSession, makeJobSession, type OpenJob } from './jobSession.ts';
import type { PageChannel, PageNews } from './pageChannel.ts';

const core = createRequire(import.meta.url).resolve('@automerge/automerge/automerge.wasm');
beforeAll(() => sync.startDocuments(readFileSync(core)));

const ID = practiceYard.id;

/** Numbers in [0, 1) that come again with their seed (mulberry32). */
function random(seed: number) {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const turn = () => new Promise<void>((resolve) => setImmediate(resolve));
const turns = async (count: number) => {
  for (let i = 0; i < count; i += 1) await turn();
};
const never = () => new Promise<never>(() => {});

const desk = {
  workOut: async (job: Job) => ({
    job,
    plan: { jobId: job.id } as Plan,
    fresh: new Set(),
    progress: undefined,
    tookMs: 0,
  }),
  soFar: () => undefined,
  atHand: async () => undefined,
  forget: async () => {},
  stop() {},
  sumUp: never,
  readWeather: never,
  dropWeather: async () => {},
} as unknown as PlanDesk;

/** A world of one server and a few devices, in which everything takes its time and much of it fails. */
function world(seed: number) {
  const chance = random(seed);
  const upTo = (n: number) => Math.floor(chance() * n);
  let clockMs = Date.UTC(2026, 4, 12, 9);
  const now = () => {
    clockMs += chance() < 0.05 ? -3_600_000 : 20_000; // a clock is set back now and then
    return new Date(clockMs);
  };

  const saved: unknown[] = [structuredClone(practiceYard)];
  const link = { kind: 'good' as 'good' | 'away' | 'answers get lost', lateTurns: 0 };
  async function reach<T>(act: () => T): Promise<T> {
    await turns(upTo(link.lateTurns + 1));
    if (link.kind === 'away') throw new ServerAway('The server does not answer.');
    const answer = act();
    await turns(upTo(link.lateTurns + 1));
    if (link.kind === 'answers get lost') throw new ServerAway('The server does not answer.');
    return answer;
  }
  const server: JobServer = {
    list: () => reach(() => [{ id: ID, name: practiceYard.name, region: 'iec-eu/gb', updated: `${saved.length}` }]),
    get: () => reach(() => ({ document: structuredClone(saved.at(-1)), revision: `"${saved.length}"` })),
    stateAt: (_id, count) => reach(() => ({ document: structuredClone(saved[count - 1]), revision: `"${count}"` })),
    put: (_id, document, revision) =>
      reach(() => {
        if (JSON.stringify(document) === JSON.stringify(saved.at(-1)))
          return { kind: 'saved' as const, revision: `"${saved.length}"` };
        if (revision === NEVER_SAVED || (revision !== undefined && revision !== `"${saved.length}"`))
          return { kind: 'seen before' as const };
        saved.push(structuredClone(document));
        return { kind: 'saved' as const, revision: `"${saved.length}"` };
      }),
  };
  return { chance, upTo, now, saved, link, server };
}

type World = ReturnType<typeof world>;

/**
 * What a page asks of a store takes its turns; of a page that is gone nothing comes any more, and no answer goes to it.
 * As in a browser's database, what a page asked first is done first.
 */
function storeOf(store: JobStore, page: { gone: boolean }, device: { full: boolean }, { upTo }: World): JobStore {
  let before: Promise<unknown> = Promise.resolve();
  const slow = <T>(act: () => Promise<T>, writes = false): Promise<T> => {
    const mine = before.then(() => slowly(act, writes));
    before = mine.catch(() => {});
    return mine;
  };
  const slowly = async <T>(act: () => Promise<T>, writes: boolean): Promise<T> => {
    await turns(upTo(3));
    if (page.gone) return never();
    if (writes && device.full) throw new StoreFull('This device has no more room.');
    const answer = await act();
    await turns(upTo(3));
    return page.gone ? never() : answer;
  };
  return {
    list: () => slow(() => store.list()),
    kept: (id) => slow(() => store.kept(id)),
    history: (id) => slow(() => store.history(id)),
    aside: (id) => slow(() => store.aside(id)),
    addNew: (kept) => slow(() => store.addNew(kept), true),
    add: (kept, changes, taken) => slow(() => store.add(structuredClone(kept), changes, taken), true),
    begin: (id, changes) => slow(() => store.begin(id, changes), true),
    fold: (id, of) => slow(() => store.fold(id, of), true),
    setAside: (id, at, is) => slow(() => store.setAside(id, at, is), true),
    remove: (id, is) => slow(() => store.remove(id, is), true),
  };
}

function makeDevice(name: string, w: World) {
  const store = memoryStore();
  const device = { full: false };
  const ears = new Map<PageChannel, (news: PageNews) => void>();
  const channel = (): PageChannel => {
    let open = true;
    const mine: PageChannel = {
      tell(news) {
        if (!open) throw new Error('The channel is closed.'); // as a browser's own does
        const heard = structuredClone(news);
        for (const [other] of ears) if (other !== mine) void turns(w.upTo(3)).then(() => ears.get(other)?.(heard));
      },
      onNews: (hear) => ears.set(mine, hear),
      close: () => {
        open = false;
        ears.delete(mine);
      },
    };
    return mine;
  };
  return { name, store, device, channel };
}

type Device = ReturnType<typeof makeDevice>;

const fieldOf = (job: Job, path: readonly string[]) =>
  (job.customer as Readonly<Record<string, string | undefined>>)[path[1] as string];

/** One tab at one device: its session, opened again and again, and what was done in it. */
function makeTab(index: number, at: Device, w: World) {
  // fields of a newer version, which a job keeps as they are
  const place = (n: number) => ['customer', `tab-${index}-${n}`];
  /** By place: the values put there and not yet seen on the device, oldest first, behind the last that was. */
  const done = new Map<string, (string | undefined)[]>();
  const recordsDone: { name: string; kept: boolean }[] = [];
  /** Places changed by the page that is open: what it says is kept is said of these. */
  const ofThisPage = new Set<string>();
  /** Places whose value went with a page before it was kept. */
  const apart = new Set<string>();
  let session: JobSession | undefined;
  let page = { gone: false };
  let timers: (() => void)[] = [];
  let count = 0;

  function open() {
    page = { gone: false };
    timers = [];
    const here = timers;
    session = makeJobSession(ID, {
      ...{ server: pageServer(page), store: storeOf(at.store, page, at.device, w), desk, now: w.now },
      documents: async () => {
        await turns(w.upTo(8));
        return sync;
      },
      channel: at.channel(),
      here: () => ({ who: at.name, device: at.name }),
      later(call) {
        here.push(call);
        return () => {
          const where = here.indexOf(call);
          if (where >= 0) here.splice(where, 1);
        };
      },
    });
    return session.open();
  }
  function pageServer(of: { gone: boolean }): JobServer {
    const answer = async <T>(asked: Promise<T>): Promise<T> => {
      try {
        const answered = await asked;
        return of.gone ? never() : answered;
      } catch (error) {
        if (of.gone) return never();
        throw error;
      }
    };
    return {
      list: () => answer(w.server.list()),
      get: (id) => answer(w.server.get(id)),
      stateAt: (...asked) => answer(w.server.stateAt(...asked)),
      put: (...asked) => answer(w.server.put(...asked)),
    };
  }
  const state = () => session?.state();

  /** Everything done here so far is on the device, if the page says so. */
  function look() {
    const now = state();
    if (now?.kind !== 'open') return;
    if (now.keeping.device.kind === 'refused') {
      expect(now.keeping.device.words).not.toBe('');
      // another page of the device sends what it knows, and cannot put down that it did: its value comes back as of
      // somebody else, beside this one that was refused. Two then set one place
      for (const key of ofThisPage) if ((done.get(key) ?? []).length > 1) apart.add(key);
    }
    if (now.keeping.server.kind === 'waiting') expect(now.keeping.server.words).not.toBe('');
    if (now.keeping.device.kind !== 'kept') return;
    for (const key of ofThisPage) done.set(key, (done.get(key) ?? []).slice(-1));
    for (const record of recordsDone) record.kept = true;
  }

  return {
    at,
    done,
    recordsDone,
    apart,
    open,
    state,
    look,
    session: () => session,
    fire: () => timers.shift()?.(),
    fireAll() {
      for (const call of timers.splice(0)) call();
    },
    /** The tab is gone between two breaths; nothing was asked of it. */
    kill() {
      look();
      const now = state();
      // what the device had refused may have reached the server, as of somebody else: two then set one place
      if (now?.kind === 'open' && now.keeping.device.kind !== 'kept') for (const key of ofThisPage) apart.add(key);
      page.gone = true;
      session = undefined;
      // what was not kept may be there or not: nobody was told that it is
      ofThisPage.clear();
      recordsDone.splice(0, recordsDone.length, ...recordsDone.filter(({ kept }) => kept));
    },
    edit() {
      const now = state();
      if (now?.kind !== 'open' || now.past !== undefined || session === undefined) return;
      count += 1;
      const path = place(w.upTo(2));
      const value = w.chance() < 0.15 ? undefined : `v${index}-${count}`;
      const stood = fieldOf(now.job, path);
      if (stood === value) return;
      expect(session.edit([{ path, value }], `Field ${w.upTo(3)}`)).toBeUndefined();
      const key = path.join('.');
      done.set(key, [...(done.get(key) ?? []), stood, value]);
      ofThisPage.add(key);
    },
    record() {
      const now = state();
      if (now?.kind !== 'open' || now.past !== undefined || session === undefined) return;
      count += 1;
      const name = `tab-${index}-${count}`;
      const value = { at: '2026-05-12T09:41:00Z', by: at.name, test: 'anything', value: count, unit: 'Ω' };
      expect(session.edit([{ path: ['records', 'readings', name], value }], 'A reading.')).toBeUndefined();
      recordsDone.push({ name, kept: false });
    },
  };
}

type Tab = ReturnType<typeof makeTab>;

const isAtRest = (tab: Tab) => {
  const now = tab.state();
  return now?.kind === 'open' && now.keeping.device.kind === 'kept' && now.keeping.server.kind === 'agreed';
};

/** Lets tabs come to rest: the server answers, the devices have room, every tab is open and has had its turns. */
async function quiet(w: World, tabs: readonly Tab[]) {
  Object.assign(w.link, { kind: 'good', lateTurns: 0 });
  for (const { at } of tabs) at.device.full = false;
  for (let round = 0; round < 12 && (round < 2 || !tabs.every(isAtRest)); round += 1) {
    for (const tab of tabs) {
      if (tab.session() === undefined || tab.state()?.kind === 'away') await tab.open();
      tab.fireAll();
      await tab.session()?.saveNow();
      await turns(12);
      await tab.session()?.settled();
      tab.look();
    }
  }
}

/** A server tells nobody of what it was given: who opens the job hears of it. */
async function openAnew(w: World, tabs: readonly Tab[]) {
  for (const tab of tabs) tab.kill();
  await quiet(w, tabs);
}

/** Pages of one device show one job, and what was kept stands in it unless its place was changed since. */
function isWhole(tabs: readonly Tab[], contested: ReadonlySet<string>, said: string) {
  for (const tab of tabs) {
    const now = tab.state() as OpenJob;
    expect(now.kind, said).toBe('open');
    expect(now.keeping.apart?.words, said).toBeUndefined();
    expect(now.keeping.device.kind, said).toBe('kept');
    expect(now.keeping.server, said).toMatchObject({ kind: 'agreed' });
    const neighbour = tabs.find(({ at }) => at === tab.at)?.state() as OpenJob;
    expect(now.job, said).toEqual(neighbour.job);
    for (const { name, kept } of tab.recordsDone)
      if (kept) expect(now.job.records.readings[name], `${said}: record ${name}`).toBeDefined();
    for (const [key, values] of tab.done) {
      if (contested.has(key) || tab.apart.has(key)) continue;
      const stands = fieldOf(now.job, key.split('.'));
      expect(values, `${said}: ${key} is ${stands}`).toContain(stands);
    }
  }
}

async function live(seed: number, acts: number) {
  const w = world(seed);
  const devices = [makeDevice('phone', w), makeDevice('tablet', w)];
  const tabs = [0, 1, 2, 3].map((index) => makeTab(index, devices[index % 2] as Device, w));
  const contested = new Set<string>();
  const any = () => tabs[w.upTo(tabs.length)] as Tab;

  /** A step that may change places of other tabs: these have then several who changed them. */
  function steps(tab: Tab) {
    const session = tab.session();
    if (session === undefined || tab.state()?.kind !== 'open') return;
    const which = w.upTo(3);
    const before = (tab.state() as OpenJob).job;
    if (which === 0) session.undo();
    else if (which === 1) session.redo();
    else {
      const history = session.history() ?? [];
      const step = history[w.upTo(history.length)];
      if (step !== undefined && (tab.state() as OpenJob).past === undefined) session.goBackTo(step);
    }
    const after = (tab.state() as OpenJob).job;
    for (const { path } of editsBetween(before.customer, after.customer))
      contested.add(['customer', ...path].join('.'));
    expect(editsBetween(before.records, after.records), `seed ${seed}`).toEqual([]);
  }

  for (let act = 0; act < acts; act += 1) {
    const tab = any();
    const pick = w.upTo(100);
    if (tab.session() === undefined) void tab.open();
    else if (pick < 40) tab.edit();
    else if (pick < 46) tab.record();
    else if (pick < 52) steps(tab);
    else if (pick < 62) tab.kill();
    else if (pick < 65) tab.session()?.close();
    else if (pick < 75) tab.fire();
    else if (pick < 80) void tab.session()?.saveNow();
    else if (pick < 84) tab.at.device.full = w.chance() < 0.5;
    else if (pick < 92)
      Object.assign(w.link, {
        kind: (['good', 'good', 'away', 'answers get lost'] as const)[w.upTo(4)],
        lateTurns: w.upTo(10),
      });
    else if (pick < 95) {
      const { snapshot, changes } = await tab.at.store.history(ID);
      if (snapshot !== undefined || changes.length > 0)
        await tab.at.store.fold(ID, (all) => sync.openDocument(all).snapshot());
    } else if (pick < 97 && (await tab.at.store.kept(ID)) !== undefined) {
      const value = w.chance() < 0.5 ? { at: '2026-05-15T06:00:00Z', by: tab.at.name } : undefined;
      void changeKeptJob(practiceYard, [{ path: ['archived'], value }], 'Archived.', {
        ...{ store: storeOf(tab.at.store, { gone: false }, tab.at.device, w), server: w.server, now: w.now },
        documents: async () => sync,
        channel: tab.at.channel,
        later: () => () => {},
        here: () => ({ who: tab.at.name, device: tab.at.name }),
      }).then(({ words }) => expect(words).not.toBe(''));
    }
    await turns(w.upTo(6));
    for (const each of tabs) each.look();
    // a tab that was closed is opened anew by the next that comes by
    if (pick >= 62 && pick < 65) tab.kill();
  }
  await quiet(w, tabs);
  for (const { at } of tabs)
    isWhole(
      tabs.filter((tab) => tab.at === at),
      contested,
      `seed ${seed}, at rest`,
    );
  for (let pass = 0; pass < 2; pass += 1)
    for (const device of devices)
      await openAnew(
        w,
        tabs.filter(({ at }) => at === device),
      );
  isWhole(tabs, contested, `seed ${seed}, opened anew`);
  for (const tab of tabs) expect((tab.state() as OpenJob).job, `seed ${seed}`).toEqual(w.saved.at(-1));
}

const SEEDS = (process.env.HOSTILE_SEEDS ?? '1,2,3,4,5').split(',').map(Number);

test.each(SEEDS)('nothing kept is lost, whatever fails and whoever else is at it: seed %i', (seed) => live(seed, 70));
