import { defineConfig } from 'vitest/config';

const rooms = [
  'packages/physics',
  'packages/formats',
  'packages/job',
  'packages/plan',
  'packages/papers',
  'apps/server',
  'apps/cli',
  'apps/web',
];

export default defineConfig({
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    passWithNoTests: false,
    projects: rooms.map((root) => ({
      extends: true as const,
      test: { name: root.split('/')[1] as string, root, include: ['{src,test}/**/*.test.{ts,tsx}'] },
    })),
  },
});
