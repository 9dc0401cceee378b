import { DESIGN, type DesignSignature, designBasis, type Job, type Records } from '@eaveline/job';
import type { Change } from '@eaveline/plan';

/** Who signs a design, and under which licence. */
export interface DesignSigner {
  readonly name: string;
  readonly licence: string;
}

/**
 * The record of a signature put to the design as it stands, at an instant of its own. It names the one that stood
 * before as superseded; nothing on record is edited.
 */
export function signatureChange(
  job: Job,
  { name, licence }: DesignSigner,
  before: string | undefined,
  at: Date,
): Change {
  const { digest, parts } = designBasis(job);
  const record: Records['signatures'][string] = {
    at: at.toISOString(),
    by: name,
    of: DESIGN,
    name,
    licence,
    basis: digest,
    basisParts: { ...parts },
    ...(before === undefined ? {} : { supersedes: before }),
  };
  return { path: ['records', 'signatures', freeId(job.records.signatures, at)], value: record };
}

/** `design-2026-05-12t06-10-00-000z`; told apart where it is taken. */
function freeId(taken: Records['signatures'], at: Date): string {
  const plain = `design-${at.toISOString()}`
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/-+$/, '');
  for (let n = 1; ; n++) {
    const id = n === 1 ? plain : `${plain}-${n}`;
    if (taken[id] === undefined) return id;
  }
}

/** How the signature stands, in one sentence; undefined where nobody has signed. */
export function standingWords(signature: DesignSignature | undefined): string {
  if (signature === undefined) return 'Nobody has signed this design.';
  const { name, licence, on, of } = signature;
  const who = `${name}${licence === undefined ? '' : `, licence ${licence},`} on ${on}`;
  if (of === 'this design') return `Signed by ${who}, as it stands.`;
  return of === 'earlier'
    ? `Signed by ${who} for an earlier design. It needs a new signature.`
    : `Signed by ${who}. The record does not say for which design: it needs a new signature.`;
}

/** What the signer should have seen before: what fails, what is asked, what nobody confirmed. */
export function beforeSigning(tally: {
  readonly fails: number;
  readonly ask: number;
  readonly unconfirmed: number;
}): string {
  const parts = [
    tally.fails > 0 && `${tally.fails} ${tally.fails === 1 ? 'check fails' : 'checks fail'}`,
    tally.ask > 0 && `${tally.ask} ${tally.ask === 1 ? 'waits' : 'wait'} for an answer`,
    tally.unconfirmed > 0 &&
      `${tally.unconfirmed} ${tally.unconfirmed === 1 ? 'meets' : 'meet'} a limit nobody has confirmed`,
  ].filter((words) => words !== false);
  return parts.length === 0 ? '' : `${parts.join(', ')}. Sheet 08 has them.`;
}
