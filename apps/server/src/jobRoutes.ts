import type { FastifyInstance } from 'fastify';
import { type Problem, refused, type Validated } from './problem.ts';
import type { JobStore } from './store/jobStore.ts';

/** Plans that were worked out for pages that open a job for the first time. */
export interface PlansAtHand {
  /** JSON text of the plan of this very document; undefined where none is at hand. Nothing is worked out for it. */
  answer(document: unknown): string | undefined;
  /** The document was saved: its plan may be wanted before long. */
  soon(document: unknown): void;
}

export interface JobRouteParts {
  readonly store: JobStore;
  /** Judges a whole document; nothing that fails it is written. */
  readonly validate: (document: unknown) => Validated;
  readonly now: () => Date;
  /** Draws the install pack of a valid document as one PDF; without it there is no such address. */
  readonly pack?: ((document: unknown, drawnAt: Date) => Promise<Uint8Array>) | undefined;
  readonly plans?: PlansAtHand | undefined;
}

const noSuchJob = (id: string) =>
  refused({
    at: 'id',
    found: id,
    wanted: 'the id of a job in the book',
    mend: 'Take an id from GET /api/jobs, or save a job under this one first.',
  });

const noSuchRevision = (id: string, revision: string) =>
  refused({
    at: 'revision',
    found: revision,
    wanted: `the number of a save of ${id}`,
    mend: `Take the newest from the ETag of GET /api/jobs/${id}, or one from 1 up to it.`,
  });

const otherId = (inPath: string, inDocument: string): Problem => ({
  at: 'id',
  found: inDocument,
  wanted: inPath,
  mend: 'Send a document to the address that bears its own id.',
});

const seenBefore = (revision: string) =>
  refused({
    at: 'If-Match',
    found: revision,
    wanted: 'the newest revision',
    mend: 'Somebody saved meanwhile. Read the job again, bring the changes together, then save.',
  });

const eTag = (revision: number) => `"${revision}"`;

/** The revision an If-Match header names: undefined without header or for `*`, NaN where it names none of ours. */
function revisionOf(ifMatch: string | undefined): number | undefined {
  if (ifMatch === undefined || ifMatch === '*') return undefined;
  const digits = /^"(\d{1,15})"$/.exec(ifMatch)?.[1];
  return digits === undefined ? Number.NaN : Number(digits);
}

/**
 * Jobs over HTTP.
 *
 * - `GET /api/jobs`: what is in the book, the job saved last first.
 * - `GET /api/jobs/:id`: the document; its revision stands in `ETag`, the time of its save in `Last-Modified`.
 * - `GET /api/jobs/:id/revisions/:revision`: the document as it was saved then.
 * - `PUT /api/jobs/:id`: the whole document. 400 with every problem, and nothing written, where it does not hold.
 *   With `If-Match` of a revision that is no longer the newest, 412 and nothing written.
 * - `GET /api/jobs/:id/plan`: the plan of the job as it is kept now, where one is at hand; else 204.
 * - `GET /api/jobs/:id/pack.pdf`: the install pack of the job as it is kept now.
 */
export function jobRoutes(app: FastifyInstance, { store, validate, now, pack, plans }: JobRouteParts): void {
  app.get('/api/jobs', async () =>
    (await store.list()).map(({ id, name, region, updated }) => ({ id, name, region, updated })),
  );

  app.get<{ Params: { id: string } }>('/api/jobs/:id', async ({ params }, reply) => {
    const job = await store.get(params.id);
    if (job === undefined) return reply.code(404).send(noSuchJob(params.id));
    return reply
      .header('etag', eTag(job.revision))
      .header('last-modified', new Date(job.updated).toUTCString())
      .header('cache-control', 'no-cache') // what a browser may guess from the time of the save is never good enough
      .send(job.document);
  });

  app.get<{ Params: { id: string; revision: string } }>(
    '/api/jobs/:id/revisions/:revision',
    async ({ params }, reply) => {
      const revision = Number(params.revision);
      const saved = Number.isSafeInteger(revision) ? await store.stateAt(params.id, revision) : undefined;
      if (saved === undefined) return reply.code(404).send(noSuchRevision(params.id, params.revision));
      return reply
        .header('etag', eTag(saved.revision))
        .header('last-modified', new Date(saved.savedAt).toUTCString())
        .header('cache-control', 'no-cache')
        .send(saved.document);
    },
  );

  app.put<{ Params: { id: string } }>('/api/jobs/:id', async ({ params, body, headers }, reply) => {
    const judged = validate(body);
    if (!judged.ok) return reply.code(400).send(refused(...judged.problems));
    if (judged.id !== params.id) return reply.code(400).send(refused(otherId(params.id, judged.id)));

    const { id, name, region, document } = judged;
    const entry = await store.put({ id, name, region, document, savedAt: now() }, revisionOf(headers['if-match']));
    if (entry === undefined) return reply.code(412).send(seenBefore(headers['if-match'] ?? ''));
    plans?.soon(document);
    const { updated } = entry;
    return reply.header('etag', eTag(entry.revision)).send({ id, name, region, updated });
  });

  app.get<{ Params: { id: string } }>('/api/jobs/:id/plan', async ({ params }, reply) => {
    const job = await store.get(params.id);
    if (job === undefined) return reply.code(404).send(noSuchJob(params.id));
    const answer = plans?.answer(job.document);
    reply.header('cache-control', 'no-store');
    return answer === undefined ? reply.code(204).send() : reply.type('application/json').send(answer);
  });

  if (pack === undefined) return;
  app.get<{ Params: { id: string } }>('/api/jobs/:id/pack.pdf', async ({ params }, reply) => {
    const job = await store.get(params.id);
    if (job === undefined) return reply.code(404).send(noSuchJob(params.id));
    const pdf = await pack(job.document, now());
    return reply
      .type('application/pdf')
      .header('content-disposition', `inline; filename="${params.id}-pack.pdf"`)
      .header('cache-control', 'no-store')
      .send(Buffer.from(pdf));
  });
}
