/** Why a change was made; it travels with the change. */
export interface Reason {
  /** Name of the person at the device. */
  readonly who: string;
  /** `moved 3 modules`. */
  readonly what: string;
  /** Device it was made on, so that a step back on one takes nothing back from another. */
  readonly device: string;
  /** Changes of one step bear one name: letters typed into a field are one step. */
  readonly step: string;
  /** A record is superseded, never taken back. */
  readonly kind: 'begun' | 'edit' | 'record' | 'undo' | 'redo' | 'gone back' | 'taken in';
  /** Step taken back or done again. */
  readonly of?: string;
  /** Names an edit made before the history was open, so that no two pages take it in twice. */
  readonly loose?: string;
}

const KINDS: readonly Reason['kind'][] = ['begun', 'edit', 'record', 'undo', 'redo', 'gone back', 'taken in'];

/** A reason as a change's message bears it. */
export function messageOf(reason: Reason): string {
  return JSON.stringify(reason);
}

/** The reason a change bears; one without a readable one is somebody's edit all the same. */
export function reasonOf(message: string | null | undefined, hash: string): Reason {
  const unknown: Reason = { who: '', what: message ?? '', device: '', step: hash, kind: 'edit' };
  if (!message) return unknown;
  try {
    const { who, what, device, step, kind, of, loose } = JSON.parse(message) as Record<string, unknown>;
    if (![who, what, device, step].every((each) => typeof each === 'string')) return unknown;
    const known = KINDS.find((each) => each === kind) ?? 'edit';
    const reason = { who, what, device, step, kind: known } as Reason;
    return {
      ...reason,
      ...(typeof of === 'string' ? { of } : {}),
      ...(typeof loose === 'string' ? { loose } : {}),
    };
  } catch {
    return unknown;
  }
}
