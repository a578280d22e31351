// Who may import whom. tests/architecture.test.ts holds the finer rules; this one sees whole chains.

const forbid = (name, comment, from, to) => ({ name, severity: 'error', comment, from, to })

export default {
  forbidden: [
    forbid('no-circles', 'Two files that need each other are one file, or three.', {}, { circular: true }),
    forbid(
      'no-orphans',
      'A file that nothing imports is used by nobody.',
      { orphan: true, pathNot: ['[.]test[.]tsx?$', '[.]d[.]ts$', '^src/main[.]ts$'] },
      {},
    ),
    forbid('all-found', 'Every import leads somewhere.', {}, { couldNotResolve: true }),
    forbid(
      'engine-stands-alone',
      'The engine imports itself, zod and fraction.js.',
      { path: '^engine/' },
      { pathNot: ['^engine/', '(^|/)node_modules/(zod|fraction[.]js)/'] },
    ),
    forbid(
      'engine-by-its-front-door',
      'The assistant uses what engine/index.ts lists.',
      { path: '^src/' },
      { path: '^engine/', pathNot: '^engine/index[.]ts$' },
    ),
    forbid(
      'calculations-meet-in-the-job',
      'Calculations join through words, never by import.',
      { path: '^engine/calculations/' },
      { path: '^engine/calculations/' },
    ),
    forbid(
      'fronts-know-no-model',
      'The server, the page, the command line and MCP know the assistant, never a model.',
      { path: '^src/(http|web|cli|mcp)/' },
      { path: '^src/readers/model/' },
    ),
    forbid('tests-stay-outside', 'The program does not import its tests.', { path: '^(src|engine)/' }, { path: '^tests/' }),
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default', 'types'] },
  },
}
