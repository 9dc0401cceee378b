import { sayWhoIsHere, useWho } from '../job/whoIsHere.ts';

/** Who works with this device: named once, then offered wherever somebody has to be named. */
export function useDevicePerson(): readonly [string, (name: string) => void] {
  return [useWho(), sayWhoIsHere];
}
