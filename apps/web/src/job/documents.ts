import type { beginDocument, openDocument } from '@eaveline/sync';

/** What a session needs of the part that keeps histories. */
export interface Documents {
  readonly beginDocument: typeof beginDocument;
  readonly openDocument: typeof openDocument;
}

let started: Promise<Documents> | undefined;

/** The part that keeps histories, fetched when first asked for: its core is larger than all the rest of the page. */
export function documents(): Promise<Documents> {
  if (started !== undefined) return started;
  started = (async () => {
    const [sync, { default: core }] = await Promise.all([
      import('@eaveline/sync'),
      import('@automerge/automerge/automerge.wasm?url'),
    ]);
    await sync.startDocuments(core);
    return sync;
  })();
  started.catch(() => {
    started = undefined; // next time may go better
  });
  return started;
}
