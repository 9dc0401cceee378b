import type { StoredHistory } from './jobStore.ts';

/** A history as one run of bytes: its snapshot, then its changes, as they can be read one after another. */
export function together({ snapshot, changes }: StoredHistory): Uint8Array {
  const pieces = [...(snapshot === undefined ? [] : [snapshot]), ...changes.map(({ bytes }) => bytes)];
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
