// House rule: an arrow may only point to a room further down this list.
const ROOMS = [
  'apps/cli',
  'apps/web',
  'apps/server',
  'packages/papers',
  'packages/sync',
  'packages/plan',
  'packages/job',
  'packages/formats',
  'packages/physics',
];

const anyOf = (rooms) => `^(${rooms.join('|')})/`;
const TESTS = '[.](test|bench)[.]tsx?$|^packages/[^/]+/test/';

/** One rule a room, so that the message names the room that reached up. */
const roadsLeadDown = ROOMS.slice(1).map((room, k) => ({
  name: `${room.split('/')[1]}-reaches-up`,
  severity: 'error',
  comment: `${room} may only use the rooms below it in docs/decisions/0001-rooms-and-arrows.md`,
  from: { path: anyOf([room]) },
  to: { path: anyOf(ROOMS.slice(0, k + 1)) },
}));

module.exports = {
  forbidden: [
    ...roadsLeadDown,
    {
      name: 'core-is-pure',
      severity: 'error',
      comment: 'Files, sockets and clocks belong to the apps; pass the data in.',
      from: { path: '^packages/(physics|formats|job|plan|papers|sync)/src/', pathNot: TESTS },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'physics-stands-alone',
      severity: 'error',
      comment: 'physics is published without dependencies; write the few lines here.',
      from: { path: '^packages/physics/src/', pathNot: TESTS },
      to: { path: 'node_modules/' },
    },
    {
      name: 'react-stays-on-screen',
      severity: 'error',
      comment: 'Only the sheets know React; the figures behind them are plain functions.',
      from: { pathNot: '^apps/web/' },
      to: { path: 'node_modules/(react|react-dom|@types/react|@types/react-dom|@tanstack/react-router)/' },
    },
    {
      name: 'screens-keep-no-store',
      severity: 'error',
      comment: 'The sheets know neither databases nor files; they ask the server over HTTP.',
      from: { path: '^apps/web/src/', pathNot: TESTS },
      to: { path: '^apps/server/|node_modules/better-sqlite3/' },
    },
    {
      name: 'command-draws-no-screens',
      severity: 'error',
      comment: 'The command serves the built sheets as files; it never imports them.',
      from: { path: '^apps/cli/' },
      to: { path: '^apps/web/' },
    },
    {
      name: 'no-circles',
      severity: 'error',
      comment: 'Two files that need each other are one idea, or the shared part wants a file of its own.',
      from: {},
      to: { circular: true },
    },
    {
      name: 'every-import-resolves',
      severity: 'error',
      comment: 'An import that leads nowhere could hide an arrow: mend the path or add the dependency.',
      from: {},
      // `?url` is the bundler's way to ask for a file's address; whether the file is there is its business
      to: { couldNotResolve: true, pathNot: '[?]url$' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)dist/' },
    // type-only imports are arrows too
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['source', 'import', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.json', '.css'],
    },
  },
};
