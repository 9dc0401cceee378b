import * as A from '@automerge/automerge/slim';

/**
 * Makes documents usable: loads their core, once.
 *
 * @param core the compiled core, or where it is fetched from: it is too large to travel with the page.
 */
export async function startDocuments(core: Uint8Array | string): Promise<void> {
  if (A.isWasmInitialized()) return;
  await A.initializeWasm(core);
}
