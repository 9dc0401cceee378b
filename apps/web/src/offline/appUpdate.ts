/** How a newer app stands to this page. */
export type AppUpdate =
  | 'none'
  /** Fetched whole and waiting for a word. */
  | 'ready'
  /** Taken, here or in another tab: this page reloads as soon as nothing would be lost by it. */
  | 'taken';

const LOOK_AGAIN_AFTER_MS = 10 * 60_000;
const KEPT_YET_EVERY_MS = 300;

let state: AppUpdate = 'none';
const listeners = new Set<() => void>();

function become(next: AppUpdate): void {
  state = next;
  for (const listener of listeners) listener();
}

export const appUpdate = (): AppUpdate => state;

export function onAppUpdate(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Whoever has an edit that is not kept objects when the page is about to go; they are asked the same way here. */
function wouldLose(): boolean {
  return !dispatchEvent(new Event('beforeunload', { cancelable: true }));
}

function reloadOnceKept(): void {
  if (wouldLose()) setTimeout(reloadOnceKept, KEPT_YET_EVERY_MS);
  else location.reload();
}

/** The newer app once it is fetched whole; undefined where there is none. */
function fetchedWhole({ waiting, installing }: ServiceWorkerRegistration): Promise<ServiceWorker | undefined> {
  if (waiting !== null || installing === null) return Promise.resolve(waiting ?? undefined);
  return new Promise((resolve) => {
    installing.addEventListener('statechange', () => {
      if (installing.state === 'installed') resolve(installing);
      else if (installing.state === 'redundant') resolve(undefined); // it could not be fetched whole
    });
  });
}

/** Takes the newer app in every tab. Each reloads by itself, one with an edit under its pen when that is kept. */
export async function takeNewerApp(): Promise<void> {
  become('taken');
  const registration = await navigator.serviceWorker?.getRegistration();
  if (registration?.waiting === null) await lookForNewer(registration);
  const newer = registration && (await fetchedWhole(registration));
  if (newer === undefined) reloadOnceKept();
  else newer.postMessage({ type: 'SKIP_WAITING' }); // every tab hears of its new controller and reloads
}

const KEEPER = '/sw.js';

/** Asked first: a browser that is refused the keeper itself complains of an unknown error, which it is not. */
async function serverAnswers(): Promise<boolean> {
  try {
    return (await fetch(KEEPER, { method: 'HEAD', cache: 'no-store' })).ok;
  } catch {
    return false;
  }
}

/** Where the server does not answer, what has been fetched so far is all there is. */
async function lookForNewer(registration: ServiceWorkerRegistration): Promise<void> {
  if (await serverAnswers()) await registration.update().catch(() => {}); // it may go in that very moment
}

/** Without a server, or where the browser will not, there is no copy; the page works as it is, the next start asks again. */
async function firstCopy(container: ServiceWorkerContainer): Promise<ServiceWorkerRegistration | undefined> {
  if (!(await serverAnswers())) return undefined;
  return container.register(KEEPER).catch(() => undefined);
}

/**
 * Keeps a copy of the app on this device, so that it opens without a server, and looks out for a newer one.
 *
 * A newer one waits until a person takes it in some tab. Where the address is no safe one for the browser (plain http
 * from another computer) it keeps no copy, and the app needs its server.
 */
export async function keepApp(): Promise<void> {
  const container = navigator.serviceWorker as ServiceWorkerContainer | undefined;
  if (container === undefined) return;
  let controlled = container.controller !== null;
  container.addEventListener('controllerchange', () => {
    if (controlled) {
      become('taken');
      reloadOnceKept();
    }
    controlled = true; // the first copy takes this page under its care as it is
  });

  const registration = (await container.getRegistration()) ?? (await firstCopy(container));
  if (registration === undefined) return;
  const look = () => {
    if (registration.waiting !== null && controlled && state === 'none') become('ready');
  };
  look();
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', look));

  void lookForNewer(registration);
  let looked = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden' || performance.now() - looked < LOOK_AGAIN_AFTER_MS) return;
    looked = performance.now();
    void lookForNewer(registration);
  });
}
