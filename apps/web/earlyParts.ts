import type { Plugin } from 'vite';

/** What a page needs, by the beginning of its address. */
export interface Early {
  readonly startsWith: string;
  /** The module it is drawn from. */
  readonly drawnFrom: string;
  /**
   * Modules and other files it wants a moment later. They are fetched when there is nothing else to fetch, and are not
   * begun: a phone may be out of reach by then.
   */
  readonly wantedLater: readonly RegExp[];
}

/**
 * Has a page fetch the part it is drawn from beside the frame, and not after it: a small script in the head looks at
 * the address and names the files. What is drawn, and when, stays with the router.
 */
export function earlyParts(early: readonly Early[]): Plugin {
  return {
    name: 'early-parts',
    apply: 'build',
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const html = bundle['index.html'];
        if (html?.type !== 'asset') this.error('There is no index.html to put the early parts into.');
        const chunks = Object.values(bundle).filter((file) => file.type === 'chunk');
        const entry = chunks.find(({ isEntry }) => isEntry);
        if (entry === undefined) this.error('The page has no script of its own.');

        /** A chunk and all that it imports, one after another. */
        const withImports = (fileName: string, seen = new Set<string>()): Set<string> => {
          const chunk = bundle[fileName];
          if (chunk?.type !== 'chunk' || seen.has(fileName)) return seen;
          seen.add(fileName);
          for (const each of chunk.imports) withImports(each, seen);
          return seen;
        };
        const filesOf = (fileName: string) => {
          const scripts = [...withImports(fileName)];
          const styles = scripts.flatMap((each) => {
            const chunk = bundle[each];
            return chunk?.type === 'chunk' ? [...(chunk.viteMetadata?.importedCss ?? [])] : [];
          });
          return [...scripts, ...styles];
        };
        const atOnce = new Set(filesOf(entry.fileName));
        const parts = early.map(({ startsWith, drawnFrom, wantedLater }) => {
          const chunk = chunks.find(({ facadeModuleId }) => facadeModuleId?.endsWith(drawnFrom));
          if (chunk === undefined) this.error(`${drawnFrom} is no part that is fetched by itself.`);
          const now = filesOf(chunk.fileName).filter((file) => !atOnce.has(file));
          const later = wantedLater.flatMap((wanted) => {
            const found = Object.values(bundle).filter((file) =>
              wanted.test((file.type === 'chunk' ? file.facadeModuleId : undefined) ?? file.fileName),
            );
            if (found.length === 0) this.error(`${wanted} names no file of the app.`);
            return found.flatMap((file) => (file.type === 'chunk' ? filesOf(file.fileName) : [file.fileName]));
          });
          const known = new Set([...atOnce, ...now]);
          return [startsWith, now, [...new Set(later)].filter((file) => !known.has(file))] as const;
        });
        const fileName = this.getFileName(this.emitFile({ type: 'asset', name: 'early.js', source: scriptOf(parts) }));
        const text = typeof html.source === 'string' ? html.source : new TextDecoder().decode(html.source);
        html.source = text.replace('</title>', `</title>\n    <script src="/${fileName}"></script>`);
      },
    },
  };
}

function scriptOf(parts: readonly (readonly [string, readonly string[], readonly string[]])[]): string {
  return `for (const [startsWith, files, later] of ${JSON.stringify(parts)}) {
  if (!location.pathname.startsWith(startsWith)) continue;
  const link = (file, how) => {
    document.head.append(Object.assign(document.createElement('link'), how, { crossOrigin: '', href: '/' + file }));
  };
  const job = 'api/jobs/' + location.pathname.split('/')[2];
  for (const address of [job, job + '/plan']) link(address, { rel: 'preload', as: 'fetch' });
  for (const file of files) link(file, file.endsWith('.css') ? { rel: 'preload', as: 'style' } : { rel: 'modulepreload' });
  for (const file of later) link(file, { rel: 'prefetch' });
}
`;
}
