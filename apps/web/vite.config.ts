import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** Where a page under work finds the jobs: a server started by hand, `eaveline serve --port 4199`. */
const JOBS_AT = process.env.EAVELINE_JOBS ?? 'http://127.0.0.1:4199';

export default defineConfig({
  plugins: [react()],
  resolve: { conditions: ['source', 'module', 'browser', 'production'] },
  worker: { format: 'es' },
  build: { target: 'es2022' },
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
