import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** Where a page under work finds the jobs: a server started by hand, `eaveline serve --port 4199`. */
const JOBS_AT = process.env.EAVELINE_JOBS ?? 'http://127.0.0.1:4199';

/** The rooms below do nothing on being loaded but declare: what a page does not use of them need not travel. */
const treeshake = { moduleSideEffects: (id: string) => !/\/packages\/(physics|formats|job|plan|papers)\//.test(id) };

export default defineConfig({
  plugins: [react()],
  resolve: { conditions: ['source', 'module', 'browser', 'production'] },
  worker: { format: 'es', rolldownOptions: { treeshake } },
  build: { target: 'es2022', rolldownOptions: { treeshake } },
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
