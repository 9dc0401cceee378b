import helmet from '@fastify/helmet';
import fastify, { type FastifyError, type FastifyInstance } from 'fastify';
import { type JobRouteParts, jobRoutes } from './jobRoutes.ts';
import { ownHouseOnly } from './ownHouseOnly.ts';
import { refused } from './problem.ts';
import { sheetFiles } from './sheetFiles.ts';

/** A job of 5,000 modules is about a tenth of this. */
const BODY_LIMIT_BYTES = 20 << 20;

export interface ServerParts extends JobRouteParts {
  /** The folder of the built sheets; without it only the data is served. */
  readonly webDir?: string | undefined;
  /** Receives what went wrong on our side; the answer itself says only that something did. */
  readonly onMistake?: (error: Error) => void;
}

/**
 * What a page of ours may load. The physics kernels may be wasm, the plan runs in a worker,
 * drawings carry their own styles, and the house network has no certificates to upgrade to.
 */
const contentSecurityPolicy = {
  useDefaults: false,
  directives: {
    defaultSrc: ["'self'"],
    scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
    styleSrc: ["'self'", "'unsafe-inline'"],
    imgSrc: ["'self'", 'data:', 'blob:'],
    fontSrc: ["'self'", 'data:'],
    connectSrc: ["'self'", 'ws:'],
    workerSrc: ["'self'", 'blob:'],
    frameSrc: ["'self'", 'blob:'],
    objectSrc: ["'none'"],
    baseUri: ["'self'"],
    formAction: ["'self'"],
    frameAncestors: ["'self'"],
  },
};

/** What fastify refuses by itself, in the one shape of our refusals. */
function requestProblem(error: FastifyError) {
  switch (error.code) {
    case 'FST_ERR_CTP_BODY_TOO_LARGE':
      return refused({
        at: 'body',
        found: 'more than 20 MB',
        wanted: 'a job document of at most 20 MB',
        mend: 'Keep photographs beside the job, not inside it.',
      });
    case 'FST_ERR_CTP_INVALID_MEDIA_TYPE':
      return refused({
        at: 'Content-Type',
        found: 'another kind of content',
        wanted: 'application/json',
        mend: 'Send the job document as JSON and say so in Content-Type.',
      });
    default:
      return refused({
        at: 'body',
        found: error.message,
        wanted: 'one JSON document',
        mend: 'Send the whole job document as JSON.',
      });
  }
}

/**
 * The server as an object that listens nowhere yet: the caller binds it, to 127.0.0.1 and nothing else,
 * for it knows no accounts.
 */
export function makeServer({ webDir, onMistake, ...jobs }: ServerParts): FastifyInstance {
  const app = fastify({ bodyLimit: BODY_LIMIT_BYTES, forceCloseConnections: true });
  // a form of a foreign page can send text/plain without asking; a job comes as JSON or not at all
  app.removeContentTypeParser('text/plain');
  app.register(helmet, { contentSecurityPolicy, strictTransportSecurity: false });
  ownHouseOnly(app);

  app.setErrorHandler<FastifyError>((error, _request, reply) => {
    const status = error.statusCode ?? 500;
    if (status < 500) return reply.code(status).send(requestProblem(error));
    onMistake?.(error);
    return reply.code(500).send(
      refused({
        at: 'server',
        found: 'a mistake of the server',
        wanted: 'an answer',
        mend: 'Nothing was saved by this request. What went wrong stands where the server was started.',
      }),
    );
  });

  app.get('/api/health', async () => ({ ok: true, jobs: (await jobs.store.list()).length }));
  jobRoutes(app, jobs);
  sheetFiles(app, webDir);
  return app;
}
