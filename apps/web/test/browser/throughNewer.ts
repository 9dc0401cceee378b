import { createServer, request } from 'node:http';
import type { AddressInfo } from 'node:net';

/** An address in front of a server, where a newer app can come out without a second build. */
export interface AddressInFront {
  readonly url: string;
  /** From now on the app there is another one: same files, another page. */
  comeOutNewer(): void;
  end(): Promise<void>;
}

/** What tells a page of the newer app from one of the older. */
export const NEWER_TITLE = 'Eaveline, newer';

const newerPage = (page: string) => page.replace('<title>Eaveline</title>', `<title>${NEWER_TITLE}</title>`);

/** The keeper of the app lists every file with its revision; a newer page has another. */
function newerKeeper(keeper: string): string {
  const listed = /\{(?=[^{}]*url:"\/?index\.html")([^{}]*?)revision:"(\w+)"([^{}]*)\}/;
  if (!listed.test(keeper)) throw new Error('sw.js lists no index.html with its revision');
  return keeper.replace(listed, '{$1revision:"$2newer"$3}');
}

/** Passes everything on to the server at `target`. */
export async function addressInFront(target: string): Promise<AddressInFront> {
  let newer = false;
  const front = createServer((asked, answer) => {
    // the server knows nothing of a newer app: it may not answer that nothing has changed
    const { 'if-none-match': _etag, 'if-modified-since': _since, ...headers } = asked.headers;
    const { method } = asked;
    const path = asked.url ?? '/';
    const change = { '/sw.js': newerKeeper, '/index.html': newerPage, '/': newerPage }[path.split('?')[0] ?? path];
    const passedOn = request(new URL(path, target), { method, headers }, (got) => {
      if (!newer || method !== 'GET' || change === undefined || got.statusCode !== 200) {
        answer.writeHead(got.statusCode ?? 502, got.headers);
        got.pipe(answer);
        return;
      }
      const chunks: Buffer[] = [];
      got.on('data', (chunk: Buffer) => chunks.push(chunk));
      got.on('end', () => {
        const body = Buffer.from(change(Buffer.concat(chunks).toString('utf8')));
        const { etag: _older, ...others } = got.headers;
        answer.writeHead(200, { ...others, 'content-length': body.length });
        answer.end(body);
      });
    });
    passedOn.on('error', () => answer.destroy());
    asked.pipe(passedOn);
  });
  await new Promise<void>((done) => front.listen(0, '127.0.0.1', done));
  return {
    url: `http://127.0.0.1:${(front.address() as AddressInfo).port}`,
    comeOutNewer() {
      newer = true;
    },
    async end() {
      front.closeAllConnections();
      await new Promise((done) => front.close(done));
    },
  };
}
