import process from 'node:process';

/**
 * The surroundings a person would start a command in. The test runner says `NODE_ENV=test`, by which the sheets would
 * be built with the slow, twice-mounting React of development, and walked through as nobody ever sees them.
 */
export const realEnv: NodeJS.ProcessEnv = Object.fromEntries(
  Object.entries(process.env).filter(([name]) => name !== 'NODE_ENV' && !name.startsWith('VITEST')),
);
