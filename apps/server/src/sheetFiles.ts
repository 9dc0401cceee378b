import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { refused } from './problem.ts';

const YEAR_S = 365 * 24 * 3600;

/** A built file bears the hash of its content in its name and may be kept for ever; any other is asked for anew. */
function cacheControl(path: string): string {
  return /[/\\]assets[/\\]/.test(path) ? `public, max-age=${YEAR_S}, immutable` : 'no-cache';
}

/** A person opening or reloading the address of a sheet, as against a page asking for a file or for data. */
function opensASheet({ method, url, headers }: FastifyRequest): boolean {
  const path = new URL(url, 'http://localhost').pathname;
  return (
    (method === 'GET' || method === 'HEAD') && !path.startsWith('/api/') && (headers.accept ?? '').includes('text/html')
  );
}

/**
 * The built sheets, and everything else that is not found.
 *
 * The address of a sheet is known only to the page itself, so every such address is answered with the page.
 *
 * @param webDir  the folder with `index.html`; undefined where only the data is served.
 */
export function sheetFiles(app: FastifyInstance, webDir: string | undefined): void {
  if (webDir !== undefined) {
    app.register(fastifyStatic, {
      root: webDir,
      cacheControl: false,
      setHeaders: (reply, path) => void reply.setHeader('cache-control', cacheControl(path)),
    });
  }
  app.setNotFoundHandler((request, reply) => {
    if (webDir !== undefined && opensASheet(request)) return reply.sendFile('index.html');
    return reply.code(404).send(
      refused({
        at: 'address',
        found: `${request.method} ${request.url}`,
        wanted: webDir === undefined ? 'an address below /api/jobs' : 'a sheet, or an address below /api/jobs',
        mend: 'Start from the address that the start of the server printed.',
      }),
    );
  });
}
