import { type Job, kestrelRise, quaysideTerrace } from '@eaveline/job';
import { planFigures, type StageName, stageNames, workOut } from '@eaveline/plan';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Answer, Ask, SetAside } from './message.ts';
import { makePlanDesk, type PlanSoFar, Stopped, type WorkerLike } from './planDesk.ts';
import { makePlanWork } from './planWork.ts';

/** Each look up waits until the test lets the worker walk on, so a test decides where the worker stands. */
function slowWorker() {
  const said: (Ask | SetAside)[] = [];
  let ended = 0;
  let walkOn: (() => void) | undefined;
  let worker: WorkerLike | undefined;
  const hire = () => {
    const terminate = () => {
      ended += 1;
    };
    const mine: WorkerLike = { onmessage: null, onerror: null, postMessage, terminate };
    const take = makePlanWork({
      quickMs: -1, // no stage is quick: it halts before each
      post: (answer: Answer) => mine.onmessage?.(new MessageEvent('message', { data: structuredClone(answer) })),
      lookUp: () =>
        new Promise<void>((back) => {
          walkOn = back;
        }),
    });
    function postMessage(message: Ask | SetAside) {
      said.push(message);
      void take(structuredClone(message));
    }
    worker = mine;
    return mine;
  };
  /** Lets it walk through so many stages, or to the end. */
  const walk = async (stages = Number.POSITIVE_INFINITY) => {
    for (let n = 0; n < stages; n++) {
      await Promise.resolve().then(() => {});
      if (walkOn === undefined) return;
      const go = walkOn;
      walkOn = undefined;
      go();
      await new Promise((done) => setImmediate(done));
    }
  };
  return {
    hire,
    walk,
    said: () => said.map(({ kind }) => kind),
    ended: () => ended,
    breakDown: (words: string) => worker?.onerror?.({ message: words } as ErrorEvent),
  };
}

const planned = (job: Job) => planFigures(workOut(job));
/** A plan as text: compared at once, not figure by figure. */
const text = (plan: unknown) => JSON.stringify(plan);

const withHomeRunM = (lengthM: number): Job => {
  const job = structuredClone(kestrelRise);
  const trunk = job.choices.trunks.a;
  if (trunk) trunk.homeRun.lengthM = lengthM;
  return job;
};

beforeEach(() => vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] }));
afterEach(() => vi.useRealTimers());

test('a plan that is there within a few frames is handed over whole; of the first what the sheet is drawn from before', async () => {
  const worker = slowWorker();
  const desk = makePlanDesk(worker.hire);
  const onPart = vi.fn();
  desk.lookAt(['checks']);
  const asked = desk.workOut(kestrelRise, { onPart });
  await worker.walk();
  const { plan, fresh, progress, job } = await asked;
  vi.runAllTimers();
  expect(text(plan)).toBe(text(planned(kestrelRise)));
  expect([fresh, progress, job]).toEqual([new Set(stageNames), undefined, kestrelRise]);
  expect(onPart).toHaveBeenCalledOnce();
  const [{ begun }] = onPart.mock.calls[0] as [PlanSoFar];
  // checks stand on all of the road before them but the year
  const before = stageNames.slice(0, stageNames.indexOf('checks') + 1);
  expect([...(begun?.has ?? [])]).toEqual(before.filter((stage) => stage !== 'energy'));

  // from then on a quick one is nobody's news before it is whole
  const again = desk.workOut({ ...kestrelRise, name: 'Kestrel' }, { onPart });
  await worker.walk();
  await again;
  vi.runAllTimers();
  expect(onPart).toHaveBeenCalledOnce();
});

test('a longer one is told as its stages are done; an edit shows which of the known ones are of before', async () => {
  const worker = slowWorker();
  const desk = makePlanDesk(worker.hire);
  const heard: PlanSoFar[] = [];
  const onPart = (soFar: PlanSoFar) => heard.push(soFar);

  const first = desk.workOut(kestrelRise, { onPart });
  await worker.walk(4); // site, sun, roof and array stand
  vi.advanceTimersByTime(50);
  expect(heard.at(-1)).toMatchObject({ plan: undefined, progress: { stage: 'trunks', done: 4, of: 13 } });
  await worker.walk();
  const { plan: before } = await first;

  const longer = withHomeRunM(40);
  const second = desk.workOut(longer, { onPart });
  await worker.walk(1); // trunks are the first that hang on a cable's length
  vi.advanceTimersByTime(50);
  const { plan, fresh, progress } = heard.at(-1) ?? {};
  expect([...(fresh ?? [])]).toEqual(stageNames.slice(0, progress?.done ?? 0));
  expect(fresh?.has('trunks')).toBe(true);
  expect(fresh?.has('checks')).toBe(false);
  expect(plan?.trunks.trunks[0]?.homeRun.lengthM).toBe(40);
  expect(plan?.checks).toEqual(before.checks);
  await worker.walk();
  expect(text((await second).plan)).toBe(text(planned(longer)));
});

test('of many edits in a row only the newest is worked out to its end, and all who wait are handed its plan', async () => {
  const worker = slowWorker();
  const desk = makePlanDesk(worker.hire);
  const asked = [10, 20, 30].map((lengthM) => desk.workOut(withHomeRunM(lengthM)));
  await worker.walk();
  const newest = text(planned(withHomeRunM(30)));
  for (const { plan, job } of await Promise.all(asked)) {
    expect(job.choices.trunks.a?.homeRun.lengthM).toBe(30);
    expect(text(plan)).toBe(newest);
  }
  expect(worker.said()).toEqual(['work out', 'set aside', 'work out']);
  expect(worker.ended()).toBe(0);
});

test('a plan comes before summaries, which go on where they were left', async () => {
  const worker = slowWorker();
  const desk = makePlanDesk(worker.hire);
  const order: string[] = [];
  const summaries = [kestrelRise, quaysideTerrace].map((job) => desk.sumUp(job).then(() => order.push(job.id)));
  await worker.walk(2);
  const plan = desk.workOut(quaysideTerrace).then(() => order.push('plan'));
  await worker.walk();
  await Promise.all([plan, ...summaries]);
  expect(order).toEqual(['plan', 'quayside-terrace', 'kestrel-rise']);
});

test('a stage that takes too long is not waited for when the job has changed', async () => {
  const worker = slowWorker();
  const desk = makePlanDesk(worker.hire);
  const first = desk.workOut(kestrelRise);
  await worker.walk(3);
  vi.advanceTimersByTime(1000);
  const second = desk.workOut(withHomeRunM(12));
  vi.advanceTimersByTime(499);
  expect(worker.ended()).toBe(0);
  vi.advanceTimersByTime(1);
  expect(worker.ended()).toBe(1);
  await worker.walk();
  expect(text((await first).plan)).toBe(text((await second).plan));
  expect(text((await second).plan)).toBe(text(planned(withHomeRunM(12))));
});

test('stopped: what was done until then stands, and the next plan is whole again', async () => {
  const worker = slowWorker();
  const desk = makePlanDesk(worker.hire);
  const asked = desk.workOut(kestrelRise);
  await worker.walk(6);
  desk.stop();
  expect(worker.ended()).toBe(1);
  const stopped = await asked.catch((error: unknown) => error);
  expect(stopped).toBeInstanceOf(Stopped);
  expect((stopped as Stopped).message).toBe(
    'Stopped at energy, stage 7 of 13. The figures before it stand; the rest is not worked out.',
  );
  const fresh: StageName[] = ['site', 'sun', 'roof', 'array', 'trunks', 'board'];
  expect([...(stopped as Stopped).soFar.fresh]).toEqual(fresh);

  const again = desk.workOut(kestrelRise);
  await worker.walk();
  expect(text((await again).plan)).toBe(text(planned(kestrelRise)));

  const edited = desk.workOut(withHomeRunM(9));
  await worker.walk(1);
  desk.stop();
  await expect(edited).rejects.toThrow(
    /^Stopped at .*, stage \d+ of 13\. The figures before it stand; the rest is of an/,
  );
  expect(desk.soFar('kestrel-rise')).toMatchObject({ progress: undefined, plan: { jobId: 'kestrel-rise' } });
});

test('with nothing under work there is nothing to stop', () => {
  const worker = slowWorker();
  makePlanDesk(worker.hire).stop();
  expect(worker.ended()).toBe(0);
});

test('a worker that did not load is said to be so, and the next plan gets another', async () => {
  const worker = slowWorker();
  const desk = makePlanDesk(worker.hire);
  const asked = desk.workOut(kestrelRise);
  worker.breakDown('');
  await expect(asked).rejects.toThrow('The part that works plans out did not load.');
  const again = desk.workOut(kestrelRise);
  await worker.walk();
  expect(text((await again).plan)).toBe(text(planned(kestrelRise)));
});
