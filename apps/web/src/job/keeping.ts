/** Where the newest edits are on this device. */
export type OnDevice =
  | { readonly kind: 'kept'; readonly at: Date | undefined }
  | { readonly kind: 'keeping' }
  /** Not on the device; `words` say why. They are on this page alone. */
  | { readonly kind: 'refused'; readonly words: string };

/** Where they are on the firm's server. */
export type OnServer =
  /** The job was opened a moment ago. */
  | { readonly kind: 'asking' }
  | { readonly kind: 'agreed'; readonly at: Date }
  | { readonly kind: 'sending' }
  /** `words` say what it waits for. */
  | { readonly kind: 'waiting'; readonly words: string; readonly since: Date };

/** Two states of the job that do not go together by themselves: a person picks. */
export interface Apart {
  /** Why, in words. */
  readonly words: string;
  /** True where the other state is the server's, false where another page of this device made it. */
  readonly onServer: boolean;
}

/** Where the newest edits are. */
export interface Keeping {
  readonly device: OnDevice;
  readonly server: OnServer;
  readonly apart: Apart | undefined;
}

/** True while closing the page would lose something. */
export function wouldBeLost({ device }: Keeping): boolean {
  return device.kind !== 'kept';
}

export function wordsOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
