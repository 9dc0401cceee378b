import type { FastifyInstance, FastifyRequest } from 'fastify';
import { refused } from './problem.ts';

const OWN_NAME = /^(localhost|127\.0\.0\.1)(:\d+)?$/i;
const ONLY_READS: ReadonlySet<string> = new Set(['GET', 'HEAD', 'OPTIONS']);

/** A page of ours has the same origin as the server it talks to; a request without one comes from no page. */
function comesFromElsewhere({ headers }: FastifyRequest): boolean {
  const { origin, host } = headers;
  if (origin !== undefined) return origin !== `http://${host}`;
  const site = headers['sec-fetch-site'];
  return site !== undefined && site !== 'same-origin' && site !== 'none';
}

/**
 * Turns away what a page of another site could send to a server on this computer.
 *
 * - A name other than our own in the Host header: a foreign page whose name was pointed at 127.0.0.1
 *   (DNS rebinding) would otherwise read every job.
 * - A write whose Origin is not ours: a foreign page can send it, though not read the answer.
 */
export function ownHouseOnly(app: FastifyInstance): void {
  app.addHook('onRequest', async (request, reply) => {
    if (!OWN_NAME.test(request.headers.host ?? '')) {
      return reply.code(403).send(
        refused({
          at: 'Host',
          found: request.headers.host ?? 'none',
          wanted: 'localhost or 127.0.0.1',
          mend: 'Open the address that the start of the server printed.',
        }),
      );
    }
    if (!ONLY_READS.has(request.method) && comesFromElsewhere(request)) {
      return reply.code(403).send(
        refused({
          at: 'Origin',
          found: request.headers.origin ?? 'a page of another site',
          wanted: `http://${request.headers.host}`,
          mend: 'Change jobs from the pages of this server only.',
        }),
      );
    }
  });
}
