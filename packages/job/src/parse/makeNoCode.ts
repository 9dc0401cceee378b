import { z } from 'zod';

/**
 * Has jobs be checked by functions that are there and not by some made for the purpose. For a page whose policy forbids
 * code made from text: there the checks would try it once, be refused, and pay a tenth of a second for it at the first
 * job that is opened.
 */
export function makeNoCode(): void {
  z.config({ jitless: true });
}
