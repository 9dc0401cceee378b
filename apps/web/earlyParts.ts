import type { Plugin } from 'vite';

/** Files a page is drawn from, by the beginning of its address. */
type Early = readonly (readonly [startsWith: string, source: string])[];

/**
 * Has a page fetch the part it is drawn from beside the frame, and not after it: a small script in the head looks at
 * the address and names the files. What is drawn, and when, stays with the router.
 */
export function earlyParts(early: Early): Plugin {
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
        const parts = early.map(([startsWith, source]) => {
          const chunk = chunks.find(({ facadeModuleId }) => facadeModuleId?.endsWith(source));
          if (chunk === undefined) this.error(`${source} is no part that is fetched by itself.`);
          return [startsWith, filesOf(chunk.fileName).filter((file) => !atOnce.has(file))] as const;
        });
        const fileName = this.getFileName(this.emitFile({ type: 'asset', name: 'early.js', source: scriptOf(parts) }));
        const text = typeof html.source === 'string' ? html.source : new TextDecoder().decode(html.source);
        html.source = text.replace('</title>', `</title>\n    <script src="/${fileName}"></script>`);
      },
    },
  };
}

function scriptOf(parts: readonly (readonly [string, readonly string[]])[]): string {
  return `for (const [startsWith, files] of ${JSON.stringify(parts)}) {
  if (!location.pathname.startsWith(startsWith)) continue;
  for (const file of files) {
    const link = document.createElement('link');
    if (file.endsWith('.css')) Object.assign(link, { rel: 'preload', as: 'style' });
    else link.rel = 'modulepreload';
    link.crossOrigin = '';
    link.href = '/' + file;
    document.head.append(link);
  }
}
`;
}
