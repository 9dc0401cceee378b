import { readWeatherFile, remarkSentence, type WeatherYear } from '@eaveline/formats';
import { createPlanner, type Plan, type Planner, type StageName, stageNames } from '@eaveline/plan';
import type { Answer, Ask } from './message.ts';
import { summaryOf } from './summaryOf.ts';

/** The little of a worker's own scope that is used here; the DOM's types know only windows. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<Ask>) => void) | null;
  postMessage(answer: Answer): void;
}
const scope = globalThis as unknown as WorkerScope;

interface Desk {
  readonly planner: Planner;
  weather?: WeatherYear;
  /** False until a whole plan of this job has been handed over. */
  handedOver: boolean;
}

/** One memory a job, so that going from job to job redoes nothing. */
const desks = new Map<string, Desk>();

function deskOf(jobId: string): Desk {
  const known = desks.get(jobId);
  if (known !== undefined) return known;
  const desk: Desk = { planner: createPlanner(), handedOver: false };
  desks.set(jobId, desk);
  return desk;
}

function partsOf(plan: Plan, names: readonly StageName[]): Partial<Pick<Plan, StageName>> {
  return Object.fromEntries(names.map((name) => [name, plan[name]]));
}

function answer(ask: Ask): Answer {
  const { seq } = ask;
  switch (ask.kind) {
    case 'work out': {
      const began = performance.now();
      const desk = deskOf(ask.job.id);
      const whole = !desk.handedOver;
      desk.handedOver = false; // where the plan falls over half way, the next one is handed over whole
      const plan = desk.planner(ask.job, desk.weather === undefined ? {} : { weather: desk.weather });
      const names = whole ? stageNames : desk.planner.redone();
      desk.handedOver = true;
      const { jobId, jobName, invented } = plan;
      const parts = partsOf(plan, names);
      return { kind: 'plan', seq, head: { jobId, jobName, invented }, parts, tookMs: performance.now() - began };
    }
    case 'sum up': {
      // a memory of its own: the sheets' memory must not move on without the page hearing of it
      const plan = createPlanner()(ask.job);
      return { kind: 'summary', seq, summary: summaryOf(plan, ask.job) };
    }
    case 'read weather': {
      const { data, remarks } = readWeatherFile(ask.bytes);
      const desk = deskOf(ask.jobId);
      if (data !== undefined) desk.weather = data;
      const read = { fileName: ask.name, remarks: remarks.map(remarkSentence) };
      const place = data && (data.place?.name ?? 'a place the file does not name');
      return { kind: 'weather', seq, read: place === undefined ? read : { ...read, place } };
    }
    case 'drop weather': {
      delete deskOf(ask.jobId).weather;
      return { kind: 'weather', seq, read: undefined };
    }
  }
}

scope.onmessage = ({ data }) => {
  try {
    scope.postMessage(answer(data));
  } catch (error) {
    scope.postMessage({
      kind: 'fell over',
      seq: data.seq,
      words: error instanceof Error ? error.message : String(error),
    });
  }
};
