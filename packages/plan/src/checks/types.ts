import type { Finding, Tally } from '../finding.ts';
import type { PackWords } from '../rules/pack.ts';

export interface ChecksPlan {
  readonly pack: 'au-nz' | 'iec-eu' | 'us';
  readonly variant: string;
  readonly editions: Readonly<Record<string, string>>;
  /** What stops the job first, then asks, then the rest by how near they are to their limits. */
  readonly findings: readonly Finding[];
  readonly tally: Tally;
  /** Limits from memory that stand behind a `meets` and nobody has confirmed. */
  readonly unconfirmed: readonly { readonly rule: string; readonly clause: string; readonly edition: string }[];
  /** Confirmations that match no rule or no edition in force, each a sentence. */
  readonly idleConfirmations: readonly string[];
  readonly words: PackWords;
  readonly leavesOut: readonly string[];
}
