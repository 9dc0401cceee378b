/** A job as the book lists it. */
export interface ListedJob {
  readonly id: string;
  readonly name: string;
  readonly region: string;
  readonly updated: string;
}

/** Revision of a job that was never saved: as the server counts saves, from 1. */
export const NEVER_SAVED = '"0"';

/** The save a revision names, where the server counts them; NaN where it does not say. */
export function countOfRevision(revision: string | undefined): number {
  return Number(/^"(\d{1,15})"$/.exec(revision ?? '')?.[1] ?? Number.NaN);
}

export interface ServedJob {
  readonly document: unknown;
  readonly revision: string | undefined;
  /** When it was saved there, seconds of UTC since 1970; left out where the server does not say. */
  readonly savedAtS?: number;
}

/** What came of saving. */
export type Saved =
  | { readonly kind: 'saved'; readonly revision: string | undefined }
  /** Somebody saved meanwhile; nothing was written. */
  | { readonly kind: 'seen before' }
  | { readonly kind: 'refused'; readonly words: string };

/** Thrown where the server cannot be reached or answers something else than the truth about jobs. */
export class ServerAway extends Error {
  override readonly name = 'ServerAway';
}

/** The jobs of the firm, wherever they are kept. */
export interface JobServer {
  list(): Promise<readonly ListedJob[]>;
  /** Undefined where there is no such job. */
  get(id: string): Promise<ServedJob | undefined>;
  /** The job as it was saved then, counted from 1; undefined where the server does not know. */
  stateAt(id: string, count: number): Promise<ServedJob | undefined>;
  /** Without a revision it is written over whatever is there; with `NEVER_SAVED` only where there is nothing. */
  put(id: string, document: unknown, revision?: string): Promise<Saved>;
}

async function ask(address: string, init?: RequestInit): Promise<Response> {
  try {
    return await fetch(address, init);
  } catch {
    throw new ServerAway('The server does not answer.');
  }
}

async function problemWords(response: Response): Promise<string> {
  const body: unknown = await response.json().catch(() => undefined);
  const problems = (
    body as { problems?: readonly { at: string; found: string; wanted: string; mend: string }[] } | undefined
  )?.problems;
  const first = problems?.[0];
  if (first === undefined) return `The server answered ${response.status}.`;
  return `${first.at}: found ${first.found}; wanted ${first.wanted}. ${first.mend}`;
}

async function servedIn(response: Response): Promise<ServedJob> {
  const savedMs = Date.parse(response.headers.get('last-modified') ?? '');
  return {
    document: await response.json(),
    revision: response.headers.get('etag') ?? undefined,
    ...(Number.isNaN(savedMs) ? {} : { savedAtS: Math.floor(savedMs / 1000) }),
  };
}

/** Jobs over HTTP, from the server this page came from. */
export const jobServer: JobServer = {
  async list() {
    const response = await ask('/api/jobs');
    if (!response.ok) throw new ServerAway(await problemWords(response));
    return (await response.json()) as ListedJob[];
  },
  async get(id) {
    const response = await ask(`/api/jobs/${encodeURIComponent(id)}`);
    if (response.status === 404) return undefined;
    if (!response.ok) throw new ServerAway(await problemWords(response));
    return servedIn(response);
  },
  async stateAt(id, count) {
    const response = await ask(`/api/jobs/${encodeURIComponent(id)}/revisions/${count}`);
    if (response.status === 404) return undefined;
    if (!response.ok) throw new ServerAway(await problemWords(response));
    return servedIn(response);
  },
  async put(id, document, revision) {
    const headers: Record<string, string> = { 'content-type': 'application/json' };
    if (revision !== undefined) headers['if-match'] = revision;
    const response = await ask(`/api/jobs/${encodeURIComponent(id)}`, {
      method: 'PUT',
      headers,
      body: JSON.stringify(document),
    });
    if (response.ok) return { kind: 'saved', revision: response.headers.get('etag') ?? undefined };
    if (response.status === 412) return { kind: 'seen before' };
    if (response.status === 400) return { kind: 'refused', words: await problemWords(response) };
    throw new ServerAway(await problemWords(response));
  },
};
