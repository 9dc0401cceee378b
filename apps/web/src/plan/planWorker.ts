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

const take = makePlanWork({ post: (answer) => scope.postMessage(answer), lookUp, quickMs: QUICK_MS });
scope.onmessage = ({ data }) => void take(data);
