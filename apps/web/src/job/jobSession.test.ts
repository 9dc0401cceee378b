import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Job, kestrelRise } from '@eaveline/job';
import type { Plan, StageName } from '@eaveline/plan';
import * as sync from '@eaveline/sync';
import { type JobStore, memoryStore, StoreFull, StoreNewer } from '@eaveline/sync/store';
import { beforeAll, describe, expect, test } from 'vitest';
import { type PlanDesk, Stopped, type WorkOutOptions } from '../plan/planDesk.ts';
import { type JobServer, ServerAway } from './jobServer.ts';
import { makeJobSession, type OpenJob } from './jobSession.ts';
import type { PageChannel, PageNews } from './pageChannel.ts';

const core = createRequire(import.meta.url).resolve('@automerge/automerge/automerge.wasm');
beforeAll(() => sync.startDocuments(readFileSync(core)));

const ID = 'kestrel-rise';
const LENGTH = ['choices', 'trunks', 'a', 'homeRun', 'lengthM'];
const FEED = ['choices', 'trunks', 'a', 'feedDrop'];
const longer = (lengthM: number) => [{ path: LENGTH, value: lengthM }];
const fed = (drop: number) => [{ path: FEED, value: drop }];
const lengthOf = (job: Job) => job.choices.trunks.a?.homeRun.lengthM;
const feedOf = (job: Job) => job.choices.trunks.a?.feedDrop;
const READING = { at: '2026-05-12T09:41:00Z', by: 'Nia', test: 'loop:trunk:a', value: 0.6, unit: 'Ω' };

/** A server of one job that counts revisions and can be out of reach. */
function oneJobServer(first: unknown = kestrelRise) {
  let document: unknown = first;
  let revision = 1;
  const states = new Map<number, unknown>();
  const server = {
    away: false,
    job: () => document as Job,
    stateAt: async (_id: string, count: number) => ({
      document: count === revision ? document : states.get(count),
      revision: `"${count}"`,
    }),
    somebodyElseSaves(change: (job: Job) => void) {
      states.set(revision, document);
      document = structuredClone(document);
      change(document as Job);
      revision += 1;
    },
    list: async () => [],
    get: async () => {
      if (server.away) throw new ServerAway('The server does not answer.');
      return document === null ? undefined : { document, revision: `"${revision}"` };
    },
    put: async (_id: string, next: unknown, ifMatch?: string) => {
      if (server.away) throw new ServerAway('The server does not answer.');
      if (ifMatch !== undefined && ifMatch !== `"${document === null ? 0 : revision}"`)
        return { kind: 'seen before' as const };
      states.set(revision, document);
      document = next;
      revision += 1;
      return { kind: 'saved' as const, revision: `"${revision}"` };
    },
  };
  return server satisfies JobServer;
}

/** Hands over a plan that bears the job's name: what is worked out is the plan's own matter. */
function plainDesk() {
  let fallsOver: Error | undefined;
  const planned = (job: Job) => ({
    job,
    plan: { jobId: job.id, jobName: job.name } as Plan,
    begun: undefined,
    fresh: new Set<StageName>(['site']),
    progress: undefined,
  });
  return {
    fallOver(error: Error | undefined) {
      fallsOver = error;
    },
    async workOut(job: Job, { onPart }: WorkOutOptions = {}) {
      onPart?.({ ...planned(job), progress: { stage: 'energy', done: 6, of: 13 } });
      if (fallsOver !== undefined) throw fallsOver;
      return { ...planned(job), tookMs: 0 };
    },
    soFar: () => undefined,
    atHand: async () => undefined,
    lookAt() {},
    forget: async () => {},
    stop() {},
    sumUp: () => Promise.reject(new Error('not asked here')),
    readWeather: async (_id: string, fileName: string) => ({ fileName, place: 'Testing', remarks: [] }),
    dropWeather: async () => {},
  } satisfies PlanDesk & { fallOver(error: Error | undefined): void };
}

/** Pages of one device that hear each other. */
function oneDevice() {
  const ears = new Map<PageChannel, (news: PageNews) => void>();
  return (): PageChannel => {
    const channel: PageChannel = {
      tell(news) {
        for (const [other, hear] of ears) if (other !== channel) hear(structuredClone(news));
      },
      onNews: (hear) => ears.set(channel, hear),
      close: () => ears.delete(channel),
    };
    return channel;
  };
}

interface Page {
  readonly server?: ReturnType<typeof oneJobServer>;
  readonly store?: JobStore;
  readonly channel?: PageChannel;
  readonly device?: string;
  readonly who?: string;
  readonly desk?: PlanDesk;
}

async function opened({
  server = oneJobServer(),
  store = memoryStore(),
  device = 'phone',
  who = 'Nia',
  ...rest
}: Page = {}) {
  const calls: (() => void)[] = [];
  let minute = 0;
  const session = makeJobSession(ID, {
    server,
    store,
    desk: rest.desk ?? plainDesk(),
    documents: async () => sync,
    channel: rest.channel ?? oneDevice()(),
    here: () => ({ who, device }),
    // a minute passes between any two looks at the clock, so that no two edits are one step by haste
    now: () => {
      minute += 1;
      return new Date(Date.UTC(2026, 4, 12, 9, minute));
    },
    later: (call) => {
      calls.push(call);
      return () => calls.splice(calls.indexOf(call), 1);
    },
  });
  await session.open();
  return { session, server, store, calls, state: () => session.state() as OpenJob };
}

/** A page whose part that keeps histories never comes. */
async function openedWithoutHistory(store: JobStore) {
  const session = makeJobSession(ID, {
    ...{ server: oneJobServer(), store, desk: plainDesk(), channel: oneDevice()() },
    now: () => new Date(),
    later: () => () => {},
    here: () => ({ who: 'Nia', device: 'phone' }),
    documents: () => new Promise<never>(() => {}),
  });
  void session.open();
  while (session.state().kind !== 'open') await new Promise((resolve) => setTimeout(resolve));
  return { session };
}

describe('the device comes first', () => {
  test('an edit is on the device when it says so, and on the server when it says that', async () => {
    const { session, server, store, state } = await opened();
    expect(session.edit(longer(33), 'Home run of trunk A.')).toBeUndefined();
    expect(state().keeping.device.kind).toBe('keeping');
    await session.settled();
    expect(state().keeping.device.kind).toBe('kept');
    expect(lengthOf((await store.kept(ID))?.job as Job)).toBe(33);
    expect(lengthOf(server.job())).toBe(31);
    await session.saveNow();
    expect(lengthOf(server.job())).toBe(33);
    expect(state().keeping.server.kind).toBe('agreed');
  });

  test('with the server away the job opens, is edited, opens again with the edit, and goes when the server is back', async () => {
    const first = await opened();
    first.server.away = true;
    first.session.edit(longer(34), 'Home run of trunk A.');
    await first.session.saveNow();
    expect(first.state().keeping.server).toMatchObject({ kind: 'waiting', words: 'The server does not answer.' });

    const second = await opened({ server: first.server, store: first.store });
    expect(lengthOf(second.state().job)).toBe(34);
    first.server.away = false;
    await second.session.saveNow();
    expect(lengthOf(first.server.job())).toBe(34);
  });

  test('a job that is nowhere is missing; one on a server out of reach is away', async () => {
    expect((await opened({ server: oneJobServer(null) })).session.state().kind).toBe('missing');
    const server = oneJobServer();
    server.away = true;
    expect((await opened({ server })).session.state().kind).toBe('away');
  });

  test('an edit made before the history is open is in it afterwards', async () => {
    const store = memoryStore();
    await store.add({ id: ID, job: kestrelRise, keptAt: '2026-05-01T00:00:00Z' }, []);
    let open = () => {};
    const waits = new Promise<void>((resolve) => {
      open = resolve;
    });
    const session = makeJobSession(ID, {
      server: oneJobServer(),
      ...{
        store,
        desk: plainDesk(),
        channel: oneDevice()(),
        now: () => new Date('2026-05-12T09:41:00Z'),
        later: () => () => {},
      },
      here: () => ({ who: 'Nia', device: 'phone' }),
      documents: () => waits.then(() => sync),
    });
    const opening = session.open();
    await Promise.resolve();
    await new Promise((resolve) => setTimeout(resolve));
    expect(session.edit(longer(33), 'Home run of trunk A.')).toBeUndefined();
    expect(session.history()).toBeUndefined();
    await session.settled();
    expect(lengthOf((await store.kept(ID))?.job as Job)).toBe(33);
    open();
    await opening;
    expect(session.history()?.map(({ what }) => what)).toEqual(['Home run of trunk A', 'Begun']);
    expect((session.state() as OpenJob).undo).toBe('Home run of trunk A');
  });
});

describe('steps back and forth', () => {
  test('without end, by meaning, and after the page was closed', async () => {
    const first = await opened();
    first.session.edit(longer(33), 'Home run of trunk A.');
    first.session.edit(fed(5), 'Feed of trunk A.');
    await first.session.settled();
    const { session, state } = await opened({ store: first.store, server: first.server });
    expect(state().undo).toBe('Feed of trunk A');
    expect(session.undo()).toBe('Taken back: Feed of trunk A.');
    expect(session.undo()).toBe('Taken back: Home run of trunk A.');
    expect(state().job).toEqual(kestrelRise);
    expect(session.undo()).toBe('Nothing to take back.');
    expect(session.redo()).toBe('Done again: Home run of trunk A.');
    expect(lengthOf(state().job)).toBe(33);
    expect(state().redo).toBe('Feed of trunk A');
  });

  test('a reading on record is not taken back, and a step back goes past it', async () => {
    const { session, state } = await opened();
    session.edit(longer(33), 'Home run of trunk A.');
    session.edit([{ path: ['records', 'readings', 'r1'], value: READING }], 'A reading.');
    expect(state().undo).toBe('Home run of trunk A');
    session.undo();
    expect(state().job.records.readings.r1?.value).toBe(0.6);
    expect(lengthOf(state().job)).toBe(31);
  });

  test('a refused edit changes nothing and says the way out', async () => {
    const { session, state } = await opened();
    expect(session.edit(longer(-1), 'Home run of trunk A.')).toContain('has to be more than 0');
    expect(lengthOf(state().job)).toBe(31);
    expect(state().undo).toBeUndefined();
  });
});

describe('going back to a moment', () => {
  test('it is looked at without being changed, then gone back to; records stay, and that can be taken back too', async () => {
    const { session, state } = await opened();
    session.edit(fed(5), 'Feed of trunk A.');
    session.edit(longer(33), 'Home run of trunk A.');
    session.edit([{ path: ['records', 'readings', 'r1'], value: READING }], 'A reading.');
    const then = session.history()?.find(({ what }) => what === 'Feed of trunk A');
    if (then === undefined) throw new Error('the step is not in the history');

    session.look(then);
    expect([feedOf(state().job), lengthOf(state().job)]).toEqual([5, 31]);
    expect(session.edit(longer(40), 'Home run of trunk A.')).toContain('This is the job as it was');
    expect(session.undo()).toContain('This is the job as it was');
    session.look(undefined);
    expect(lengthOf(state().job)).toBe(33);

    expect(session.goBackTo(then)).toBeUndefined();
    expect([feedOf(state().job), lengthOf(state().job)]).toEqual([5, 31]);
    expect(state().job.records.readings.r1?.value).toBe(0.6);
    expect(session.undo()).toBe('Taken back: Gone back to: Feed of trunk A.');
    expect(lengthOf(state().job)).toBe(33);
  });

  test('the history says who, when and what each step changed', async () => {
    const { session } = await opened({ who: 'Tomas' });
    session.edit(fed(5), 'Feed of trunk A.');
    const [step] = session.history() ?? [];
    expect(step).toMatchObject({ who: 'Tomas', what: 'Feed of trunk A', kind: 'edit' });
    expect(step?.at?.getUTCFullYear()).toBe(2026);
    expect(session.editsOf(step as NonNullable<typeof step>)).toEqual([
      { path: FEED, before: feedOf(kestrelRise), after: 5 },
    ]);
  });
});

describe('two pages of one device', () => {
  test('each shows the other’s edit, and both are kept', async () => {
    const device = oneDevice();
    const store = memoryStore();
    const server = oneJobServer();
    const one = await opened({ store, server, channel: device() });
    const two = await opened({ store, server, channel: device() });
    one.session.edit(longer(33), 'Home run of trunk A.');
    await one.session.settled();
    expect(lengthOf(two.state().job)).toBe(33);
    two.session.edit(fed(5), 'Feed of trunk A.');
    await two.session.settled();
    await one.session.settled();
    for (const { state } of [one, two]) expect([feedOf(state().job), lengthOf(state().job)]).toEqual([5, 33]);
    const third = await opened({ store, server, channel: device() });
    expect([feedOf(third.state().job), lengthOf(third.state().job)]).toEqual([5, 33]);
  });
});

describe('the server’s state grew too', () => {
  test('edits at other places go together by themselves', async () => {
    const { session, server, state } = await opened();
    server.somebodyElseSaves((job) => {
      (job.choices.trunks.a as { feedDrop: number }).feedDrop = 5;
    });
    session.edit(longer(35), 'Home run of trunk A.');
    await session.saveNow();
    expect([feedOf(state().job), lengthOf(state().job)]).toEqual([5, 35]);
    expect([feedOf(server.job()), lengthOf(server.job())]).toEqual([5, 35]);
    expect(session.history()?.some(({ kind }) => kind === 'taken in')).toBe(true);
  });

  test('what somebody else saved while this device was off is there when the job is opened', async () => {
    const first = await opened();
    await first.session.settled();
    first.server.somebodyElseSaves((job) => {
      (job.choices.trunks.a as { feedDrop: number }).feedDrop = 6;
    });
    const again = await opened({ server: first.server, store: first.store });
    expect(feedOf(again.state().job)).toBe(6);
    expect(again.state().keeping).toMatchObject({ server: { kind: 'agreed' }, apart: undefined });
  });

  test('two states that did not grow from one: nothing is written until a person picks', async () => {
    const store = memoryStore();
    const mine = structuredClone(kestrelRise);
    mine.about = 'Begun apart';
    await store.add({ id: ID, job: mine, keptAt: '2026-05-01T00:00:00Z' }, []);
    const { session, server, state } = await opened({ store });
    expect(state().keeping.apart?.onServer).toBe(true);
    session.edit(longer(36), 'Home run of trunk A.');
    await session.saveNow();
    expect(lengthOf(server.job())).toBe(31);
    await session.keepMine();
    expect(lengthOf(server.job())).toBe(36);
    expect(state().keeping.apart).toBeUndefined();
  });

  test('theirs may be taken instead, and mine is still in the history', async () => {
    const store = memoryStore();
    const mine = structuredClone(kestrelRise);
    mine.about = 'Begun apart';
    await store.add({ id: ID, job: mine, keptAt: '2026-05-01T00:00:00Z' }, []);
    const { session, state } = await opened({ store });
    await session.takeTheirs();
    expect(state().job).toEqual(kestrelRise);
    session.undo();
    expect(state().job.about).toBe('Begun apart');
  });
});

describe('what one place knows less of takes nothing back', () => {
  test('the device does not answer when the job is opened: the server’s state is not put over what waits there', async () => {
    const first = await opened();
    first.server.away = true;
    first.session.edit(longer(33), 'Home run of trunk A.');
    await first.session.settled();
    first.server.away = false;
    const { store, server } = first;
    let fails = true;
    const waking: JobStore = { ...store, kept: (id) => (fails ? Promise.reject(new Error('asleep')) : store.kept(id)) };
    const opening = opened({
      store: {
        ...waking,
        addNew: (kept) => {
          fails = false;
          return store.addNew(kept);
        },
      },
      server,
    });
    const { session, state } = await opening;
    expect(lengthOf(state().job)).toBe(33);
    await session.saveNow();
    expect(lengthOf(server.job())).toBe(33);
    expect(lengthOf((await store.kept(ID))?.job as Job)).toBe(33);
  });

  test('an answer lost on the way: our own earlier state does not come back as somebody else’s', async () => {
    const { session, server, state } = await opened();
    await session.saveNow();
    const { put } = server;
    server.put = async (...asked) => {
      await put(...asked);
      throw new ServerAway('The server does not answer.');
    };
    session.edit(longer(33), 'Home run of trunk A.');
    await session.saveNow();
    expect(lengthOf(server.job())).toBe(33);
    server.put = put;
    // somebody saves on top of it, much, so that their changes would count as the later ones
    server.somebodyElseSaves((job) => {
      for (let n = 0; n < 20; n += 1) (job.customer as Record<string, string>)[`field ${n}`] = 'theirs';
    });
    session.edit(longer(31), 'Home run of trunk A.');
    await session.saveNow();
    await session.saveNow();
    expect(lengthOf(state().job)).toBe(31);
    expect(lengthOf(server.job())).toBe(31);
    expect(server.job().customer).toMatchObject({ 'field 19': 'theirs' });
  });

  test('two pages take one job on from the server at once, and one is edited before the other is open', async () => {
    const device = oneDevice();
    const store = memoryStore();
    const server = oneJobServer();
    let answer = () => {};
    const late = {
      ...server,
      get: () =>
        new Promise<Awaited<ReturnType<typeof server.get>>>((resolve) => {
          answer = () => void server.get().then(resolve);
        }),
    };
    const slow = opened({ store, server: late, channel: device() });
    const quick = await opened({ store, server, channel: device() });
    quick.session.edit(longer(33), 'Home run of trunk A.');
    await quick.session.settled();
    await new Promise((resolve) => setTimeout(resolve));
    answer();
    // the late page has its own job of the server by now; it goes on with the one that is kept
    const again = setInterval(() => answer(), 1);
    const { state } = await slow;
    clearInterval(again);
    expect(lengthOf(state().job)).toBe(33);
    expect(lengthOf(quick.state().job)).toBe(33);
  });

  test('edits of two pages without an open history are both there afterwards, though both pages went', async () => {
    const store = memoryStore();
    await store.add({ id: ID, job: kestrelRise, keptAt: '2026-05-01T00:00:00Z' }, []);
    for (const changes of [longer(33), fed(5)]) {
      // what was read before the other page kept its edit
      const before: JobStore = {
        ...store,
        kept: async () => ({ id: ID, job: kestrelRise, keptAt: '2026-05-01T00:00:00Z' }),
      };
      const { session } = await openedWithoutHistory(before);
      expect(session.edit(changes, 'An edit.')).toBeUndefined();
      await session.settled();
    }
    const { state, session } = await opened({ store });
    expect([lengthOf(state().job), feedOf(state().job)]).toEqual([33, 5]);
    expect(session.undo()).toBe('Taken back: An edit.');
    expect((await store.kept(ID))?.loose).toBeUndefined();
  });

  test('picking the other state, and taking that back, takes no record away', async () => {
    const store = memoryStore();
    const mine = { ...structuredClone(kestrelRise), about: 'Begun apart' };
    mine.records = { ...mine.records, readings: { ...mine.records.readings, mine: READING } };
    await store.add({ id: ID, job: mine, keptAt: '2026-05-01T00:00:00Z' }, []);
    const server = oneJobServer({
      ...kestrelRise,
      records: { ...kestrelRise.records, readings: { ...kestrelRise.records.readings, theirs: READING } },
    });
    const { session, state } = await opened({ store, server });
    await session.takeTheirs();
    expect(state().job.about).toBe(kestrelRise.about);
    expect(Object.keys(state().job.records.readings)).toEqual(expect.arrayContaining(['mine', 'theirs']));
    session.undo();
    expect(state().job.about).toBe('Begun apart');
    expect(Object.keys(state().job.records.readings)).toEqual(expect.arrayContaining(['mine', 'theirs']));
  });

  test('insisting does not go over a state that nobody has seen', async () => {
    const store = memoryStore();
    await store.add({ id: ID, job: { ...kestrelRise, about: 'Begun apart' }, keptAt: '2026-05-01T00:00:00Z' }, []);
    const { session, server, state } = await opened({ store });
    server.somebodyElseSaves((job) => {
      (job as { about: string }).about = 'Saved since';
    });
    await session.keepMine();
    expect(server.job().about).toBe('Saved since');
    expect(state().keeping.apart?.onServer).toBe(true);
    await session.keepMine();
    expect(server.job().about).toBe('Begun apart');
  });

  test('a served job that bears another id is not opened under this one', async () => {
    const { session } = await opened({ server: oneJobServer({ ...kestrelRise, id: 'another' }) });
    expect(session.state()).toMatchObject({ kind: 'unreadable', words: [expect.stringContaining('another')] });
  });

  test('what the device refused is still tried after the session was closed', async () => {
    const store = memoryStore();
    let full = false;
    const tight: JobStore = {
      ...store,
      add: (...all) => (full ? Promise.reject(new StoreFull('Full.')) : store.add(...all)),
    };
    const { session, calls } = await opened({ store: tight });
    await session.settled();
    full = true;
    session.edit(longer(33), 'Home run of trunk A.');
    await session.settled();
    session.close();
    full = false;
    for (const call of calls.splice(0)) call();
    await session.settled();
    expect(lengthOf((await store.kept(ID))?.job as Job)).toBe(33);
  });
});

describe('bad stores', () => {
  test('two pages find one damaged history: one lays it aside, and what is begun again is not laid aside too', async () => {
    const first = await opened();
    first.session.edit(longer(33), 'Home run of trunk A.');
    await first.session.settled();
    const { store, server } = first;
    first.session.close();
    await store.fold(ID, () => new Uint8Array([1, 2, 3]));
    const damaged = await store.history(ID);
    const one = await opened({ store, server });
    one.session.edit(longer(34), 'Home run of trunk A.');
    await one.session.settled();
    // the other page had read the history before the first one laid it aside
    let reads = 0;
    const late: JobStore = { ...store, history: async (id) => (reads++ === 0 ? damaged : store.history(id)) };
    const two = await opened({ store: late, server });
    expect(lengthOf(two.state().job)).toBe(34);
    expect(await store.aside(ID)).toHaveLength(1);
  });

  test('a history that does not read: the job stands as last kept, what does not read is laid aside whole', async () => {
    const first = await opened();
    first.session.edit(longer(33), 'Home run of trunk A.');
    await first.session.settled();
    await first.store.fold(ID, () => new Uint8Array([1, 2, 3]));
    const { session, state, store } = await opened({ store: first.store, server: first.server });
    expect(lengthOf(state().job)).toBe(33);
    expect(state().notices.join()).toContain('does not read');
    expect((await store.aside(ID)).map(({ bytes }) => bytes.length)).toEqual([3]);
    expect(session.edit(longer(34), 'Home run of trunk A.')).toBeUndefined();
    await session.settled();
    expect((await opened({ store, server: first.server })).state().notices).toEqual([]);
  });

  test('no room: it is said, the edit stands on the page, and it is kept when there is room again', async () => {
    const store = memoryStore();
    let full = false;
    const tight: JobStore = {
      ...store,
      add: (kept, changes) =>
        full ? Promise.reject(new StoreFull('This device has no more room.')) : store.add(kept, changes),
    };
    const { session, server, state } = await opened({ store: tight });
    await session.settled();
    full = true;
    session.edit(longer(33), 'Home run of trunk A.');
    await session.settled();
    expect(state().keeping.device).toEqual({ kind: 'refused', words: 'This device has no more room.' });
    expect(lengthOf(state().job)).toBe(33);
    full = false;
    await session.saveNow();
    await session.settled();
    expect(state().keeping.device.kind).toBe('kept');
    const again = await opened({ store, server });
    expect(lengthOf(again.state().job)).toBe(33);
    expect(again.state().undo).toBe('Home run of trunk A');
  });

  test('a store of a newer Eaveline is left alone', async () => {
    const newer: JobStore = { ...memoryStore(), kept: () => Promise.reject(new StoreNewer('A newer Eaveline.')) };
    const { session } = await opened({ store: newer });
    expect(session.state()).toMatchObject({ kind: 'unreadable', words: ['A newer Eaveline.', expect.any(String)] });
  });

  test('a job of a newer version does not open, stays as it is, and can be saved', async () => {
    const store = memoryStore();
    const job = { ...kestrelRise, version: 99 };
    await store.add({ id: ID, job, keptAt: '2026-05-01T00:00:00Z' }, []);
    const { session } = await opened({ store });
    expect(session.state()).toMatchObject({ kind: 'unreadable', raw: job });
    expect((await store.kept(ID))?.job).toEqual(job);
  });
});

describe('the plan beside the job', () => {
  test('worked out: it is of the job on the screen, and says when', async () => {
    const { state } = await opened();
    await Promise.resolve();
    expect(state()).toMatchObject({ stale: false, progress: undefined, notWorkedOut: undefined });
    expect(state().workedOutAt).toBeInstanceOf(Date);
  });

  test('stopped by a person: what stands is told from what is of before, and it can be worked out again', async () => {
    const desk = plainDesk();
    const { session, state } = await opened({ desk });
    const progress = { stage: 'energy', done: 6, of: 13 } as const;
    desk.fallOver(
      new Stopped({
        job: state().job,
        plan: state().plan,
        begun: undefined,
        fresh: new Set(['site', 'sun']),
        progress,
      }),
    );
    await session.workOutAgain();
    expect(state()).toMatchObject({ stale: true, progress: undefined });
    expect([...state().fresh]).toEqual(['site', 'sun']);
    expect(state().stopped).toContain('Stopped at energy, stage 7 of 13.');
    desk.fallOver(undefined);
    await session.workOutAgain();
    expect(state()).toMatchObject({ stale: false, stopped: undefined });
  });

  test('fallen over: the job is kept all the same, and the words are there', async () => {
    const desk = plainDesk();
    const { session, state } = await opened({ desk });
    desk.fallOver(new Error('no such climate'));
    session.edit(longer(33), 'Home run of trunk A.');
    await session.settled();
    await Promise.resolve();
    expect(state().notWorkedOut).toBe('no such climate');
    expect(state().keeping.device.kind).toBe('kept');
  });
});

test('a history of a job the server has had for longer begins with what it is: its newest state, taken on', async () => {
  const server = oneJobServer();
  server.somebodyElseSaves((job) => Object.assign(job, { about: 'Gate code 4711' }));
  const { session } = await opened({ server });
  expect(session.history()?.map(({ what }) => what)).toEqual(['Taken on from the firm’s server, as its save 2 has it']);
});
