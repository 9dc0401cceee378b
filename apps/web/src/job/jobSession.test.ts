import { type Job, kestrelRise } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import { expect, test } from 'vitest';
import type { PlanDesk } from '../plan/planDesk.ts';
import { type JobServer, ServerAway } from './jobServer.ts';
import { makeJobSession, type OpenJob } from './jobSession.ts';
import { memoryUnsaved } from './unsaved.ts';

const longer = (lengthM: number) => [{ path: ['choices', 'trunks', 'a', 'homeRun', 'lengthM'], value: lengthM }];

/** A server of one job that counts revisions and can be out of reach. */
function oneJobServer() {
  let document: unknown = kestrelRise;
  let revision = 1;
  const server = {
    away: false,
    lengthM: () => (document as Job).choices.trunks.a?.homeRun.lengthM,
    somebodyElseSaves: () => {
      revision += 1;
    },
    list: async () => [],
    get: async () => {
      if (server.away) throw new ServerAway('The server does not answer.');
      return { document, revision: `"${revision}"` };
    },
    put: async (_id: string, next: unknown, ifMatch?: string) => {
      if (server.away) throw new ServerAway('The server does not answer.');
      if (ifMatch !== undefined && ifMatch !== `"${revision}"`) return { kind: 'seen before' as const };
      document = next;
      revision += 1;
      return { kind: 'saved' as const, revision: `"${revision}"` };
    },
  };
  return server satisfies JobServer;
}

/** Hands over a plan that bears the job's name: what is worked out is the plan's own matter. */
const desk: PlanDesk = {
  workOut: async (job) => ({ plan: { jobId: job.id, jobName: job.name } as Plan, tookMs: 0 }),
  sumUp: () => Promise.reject(new Error('not asked here')),
  readWeather: async (_id, fileName) => ({ fileName, place: 'Testing', remarks: [] }),
  dropWeather: async () => {},
};

async function opened(server = oneJobServer(), unsaved = memoryUnsaved()) {
  const calls: (() => void)[] = [];
  const session = makeJobSession('kestrel-rise', {
    server,
    unsaved,
    desk,
    now: () => new Date('2026-05-12T09:41:00Z'),
    later: (call) => {
      calls.push(call);
      return () => calls.splice(calls.indexOf(call), 1);
    },
  });
  await session.open();
  const state = () => session.state() as OpenJob;
  return { session, server, unsaved, state };
}

test('an edit is kept in the browser before it is sent, and leaves it when the server has it', async () => {
  const { session, server, unsaved, state } = await opened();
  expect(session.edit(longer(33), 'home run A')).toBeUndefined();
  expect(state().keeping.kind).toBe('keeping');
  expect(await unsaved.get('kestrel-rise')).toBeDefined();
  await session.saveNow();
  expect(server.lengthM()).toBe(33);
  expect(state().keeping.kind).toBe('kept');
  expect(await unsaved.get('kestrel-rise')).toBeUndefined();
});

test('with the server away nothing is lost: a second tab opens with the edit, and it goes when the server is back', async () => {
  const first = await opened();
  first.server.away = true;
  first.session.edit(longer(34), 'home run A');
  await first.session.saveNow();
  expect(first.state().keeping).toMatchObject({ kind: 'waiting', words: 'The server does not answer.' });

  const second = await opened(first.server, first.unsaved);
  expect(second.state().job.choices.trunks.a?.homeRun.lengthM).toBe(34);
  first.server.away = false;
  await second.session.saveNow();
  expect(first.server.lengthM()).toBe(34);
});

test('when somebody else saved meanwhile nothing is written until a person picks', async () => {
  const { session, server, state } = await opened();
  server.somebodyElseSaves();
  session.edit(longer(35), 'home run A');
  await session.saveNow();
  expect(state().keeping.kind).toBe('two versions');
  expect(server.lengthM()).toBe(31);
  await session.keepMine();
  expect(server.lengthM()).toBe(35);
  expect(state().keeping.kind).toBe('kept');
});

test('theirs may be taken instead', async () => {
  const { session, server, unsaved, state } = await opened();
  server.somebodyElseSaves();
  session.edit(longer(36), 'home run A');
  await session.saveNow();
  await session.takeTheirs();
  expect(state().job.choices.trunks.a?.homeRun.lengthM).toBe(31);
  expect(await unsaved.get('kestrel-rise')).toBeUndefined();
});

test('a refused edit changes nothing and says the way out', async () => {
  const { session, state } = await opened();
  expect(session.edit(longer(-1), 'home run A')).toContain('has to be more than 0');
  expect(state().job.choices.trunks.a?.homeRun.lengthM).toBe(31);
  expect(state().undo).toBeUndefined();
});

test('one step back takes back all the typing in one field', async () => {
  const { session, state } = await opened();
  for (const lengthM of [3, 33, 33.5]) session.edit(longer(lengthM), 'home run A');
  expect(state().undo).toBe('home run A');
  session.undo();
  expect(state().job.choices.trunks.a?.homeRun.lengthM).toBe(31);
});

test('a reading on record is not taken back, nor by a step back over it', async () => {
  const { session, state } = await opened();
  session.edit(longer(33), 'home run A');
  const reading = { at: '2026-05-12T09:41:00Z', by: 'Nia', test: 'loop:trunk:a', value: 0.6, unit: 'Ω' };
  session.edit([{ path: ['records', 'readings', 'r1'], value: reading }], 'a reading');
  expect(state().undo).toBeUndefined();
  session.undo();
  expect(state().job.records.readings.r1?.value).toBe(0.6);
  expect(state().job.choices.trunks.a?.homeRun.lengthM).toBe(33);
});
