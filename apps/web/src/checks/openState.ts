import type { About, Finding } from '@eaveline/plan';

/** Fails or asks: what a thing drawn bears a mark for. What meets is quiet. */
export type OpenState = Exclude<Finding['state'], 'meets'>;

/** Which thing of a drawing is asked about. */
export interface Drawn {
  readonly kind: About['kind'];
  readonly id: string;
  /** Its parts count too: `north-1-1-left` is an edge of module `north-1-1`. */
  readonly parts?: boolean;
}

/** How the worst open finding about a thing stands; undefined where all about it meets. */
export function openState(
  findings: readonly Pick<Finding, 'about' | 'state'>[],
  { kind, id, parts = false }: Drawn,
): OpenState | undefined {
  const mine = findings.filter(
    ({ about }) => about.kind === kind && (about.id === id || (parts && about.id.startsWith(`${id}-`))),
  );
  return (['fails', 'ask'] as const).find((open) => mine.some(({ state }) => state === open));
}

/** The worse of some. */
export function worseOf(...states: readonly (OpenState | undefined)[]): OpenState | undefined {
  return (['fails', 'ask'] as const).find((open) => states.includes(open));
}

/** `, fails`: ends the name that a thing drawn has for a screen reader. */
export function openWords(state: OpenState | undefined): string {
  return state === undefined ? '' : `, ${state === 'ask' ? 'asks' : 'fails'}`;
}
