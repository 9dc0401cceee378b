/**
 * Seed of the generated year of a place: the same on every machine, and the same for a whole town, so that a pin moved
 * across the street does not change the weather. FNV-1a over the coordinates to a tenth of a degree (from memory).
 */
export function placeSeed(latitudeDeg: number, longitudeDeg: number): number {
  let hash = 0x811c9dc5;
  for (const letter of `${Math.round(latitudeDeg * 10)} ${Math.round(longitudeDeg * 10)}`) {
    hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  }
  return hash;
}
