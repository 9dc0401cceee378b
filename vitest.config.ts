import { defineConfig } from 'vitest/config';
import { chromiumPath } from './scripts/chromium.mjs';

const rooms = [
  'packages/physics',
  'packages/formats',
  'packages/job',
  'packages/sync',
  'packages/plan',
  'packages/papers',
  'apps/server',
  'apps/cli',
  'apps/web',
  'scripts',
];

// a test that needs a browser says `test.skipIf(!process.env.CHROME_PATH)`
const browser = chromiumPath();

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    // a guard against a hang, not a measure of speed: a busy computer must not fail a sound test
    testTimeout: 120_000,
    hookTimeout: 120_000,
    passWithNoTests: false,
    env: browser === undefined ? {} : { CHROME_PATH: browser },
    projects: rooms.map((root) => ({
      extends: true as const,
      // walks through a real browser may lose a race on a busy computer: three tries, then it is a fault
      test: {
        name: root.split('/').at(-1) as string,
        root,
        retry: root === 'apps/web' ? 2 : 0,
        include: ['{src,test}/**/*.test.{ts,tsx}', '*.test.ts'],
      },
    })),
  },
});
