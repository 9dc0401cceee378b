import type { Job } from '@eaveline/job';
import type { Plan } from '@eaveline/plan';
import { ENGINE, keptPlans, NO_PLANS_KEPT } from './keptPlans.ts';
import type { Answer, Ask, SetAside } from './message.ts';
import { makePlanWork } from './planWork.ts';

/** The little of a worker's own scope that is used here; the DOM's types know only windows. */
interface WorkerScope {
  onmessage: ((event: MessageEvent<Ask | SetAside>) => void) | null;
  postMessage(answer: Answer): void;
}
const scope = globalThis as unknown as WorkerScope;

/** A message to oneself comes back behind those that have come in meanwhile; a timer would wait 4 ms each time. */
const { port1, port2 } = new MessageChannel();
const lookUp = () =>
  new Promise<void>((back) => {
    port1.onmessage = () => back();
    port2.postMessage(undefined);
  });

/** Half a frame. */
const QUICK_MS = 8;

/** Edits come one after another; what the job came to is kept when they rest. */
const KEEP_AFTER_MS = 1500;
const kept = ENGINE === undefined ? NO_PLANS_KEPT : keptPlans(ENGINE);
let keeping: ReturnType<typeof setTimeout> | undefined;
function onWhole(job: Job, plan: Plan): void {
  clearTimeout(keeping);
  keeping = setTimeout(() => void kept.keep(job, plan), KEEP_AFTER_MS);
}

const take = makePlanWork({ post: (answer) => scope.postMessage(answer), lookUp, quickMs: QUICK_MS, onWhole });
scope.onmessage = ({ data }) => void take(data);
