import { readFileSync } from 'node:fs';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { earlyParts } from './earlyParts.ts';

/** Where a page under work finds the jobs: a server started by hand, `eaveline serve --port 4199`. */
const JOBS_AT = process.env.EAVELINE_JOBS ?? 'http://127.0.0.1:4199';

/** The rooms below do nothing on being loaded but declare: what a page does not use of them need not travel. */
const treeshake = {
  moduleSideEffects: (id: string) => !/\/packages\/(physics|formats|job|sync|plan|papers)\//.test(id),
};

/** A colour of the day paper, as the styles have it. */
function dayColour(token: string): string {
  const tokens = readFileSync(new URL('./src/look/tokens.css', import.meta.url), 'utf8');
  const colour = new RegExp(`--${token}: (#[0-9a-f]{6});`).exec(tokens)?.[1];
  if (colour === undefined) throw new Error(`tokens.css gives --${token} no colour`);
  return colour;
}

/** A copy of the app on the device: it opens without its server, and a newer one waits until it is taken. */
const onDevice = VitePWA({
  registerType: 'prompt',
  injectRegister: null,
  manifest: {
    id: '/',
    name: 'Eaveline',
    short_name: 'Eaveline',
    description: 'Home solar jobs from the survey to the handover.',
    lang: 'en',
    start_url: '/',
    display: 'standalone',
    theme_color: dayColour('desk'),
    background_color: dayColour('desk'),
    icons: [
      { src: '/sign-192.png', sizes: '192x192', type: 'image/png' },
      { src: '/sign-512.png', sizes: '512x512', type: 'image/png' },
      { src: '/sign-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      { src: '/sign.svg', sizes: 'any', type: 'image/svg+xml' },
    ],
  },
  includeManifestIcons: false, // they are among the files below
  workbox: {
    globPatterns: ['**/*.{js,css,html,svg,png,wasm,ttf,woff,woff2}'],
    maximumFileSizeToCacheInBytes: 8 << 20,
    navigateFallback: '/index.html',
    navigateFallbackDenylist: [/^\/api\//],
    // the page that fetched the first copy is looked after by it at once, so that a newer one reaches it too
    clientsClaim: true,
    cleanupOutdatedCaches: true,
    inlineWorkboxRuntime: true,
  },
});

/** A job is drawn by its desk, and has its history opened after its first figures. */
const aJob = {
  startsWith: '/job/',
  drawnFrom: '/src/desk/deskPages.ts',
  wantedLater: [/packages\/sync\/src\/index\.ts$/, /automerge.*\.wasm/],
};

/**
 * What several pages are drawn from travels as one file beside the frame's, and all styles as one more. Some
 * twenty-five small files cost a first load more than the bytes that one page could do without: each is asked for,
 * answered and compiled by itself.
 */
const fewFiles = {
  groups: [
    { name: 'frame', tags: ['$initial' as const], priority: 1 },
    { name: 'shared', test: /[\\/](apps[\\/]web[\\/]src|packages)[\\/]/, minShareCount: 2 },
  ],
};

export default defineConfig({
  plugins: [react(), earlyParts([aJob]), onDevice],
  resolve: { conditions: ['source', 'module', 'browser', 'production'] },
  worker: { format: 'es', rolldownOptions: { treeshake } },
  build: { target: 'es2022', cssCodeSplit: false, rolldownOptions: { treeshake, output: { codeSplitting: fewFiles } } },
  server: {
    host: '127.0.0.1',
    port: 4198,
    proxy: {
      '/api': {
        target: JOBS_AT,
        changeOrigin: true,
        // the server takes writes from its own pages only; under work the page stands on another port
        configure: (proxy) => proxy.on('proxyReq', (request) => request.removeHeader('origin')),
      },
    },
  },
});
