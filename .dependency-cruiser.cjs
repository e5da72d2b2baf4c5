/** The import rule: a layer imports only from those before it, and through their index. */
const layers = [
  'core',
  'measure',
  'geometry',
  'sketch',
  'materials',
  'base',
  'routing',
  'wood',
  'checks',
  'drawing',
  'print',
  'design',
  'cli',
  'web',
];

const upwards = layers.slice(0, -1).map((layer, at) => ({
  name: `${layer}-imports-downwards`,
  comment: `src/${layer} may import only from: ${layers.slice(0, at).join(', ') || 'nothing'}.`,
  severity: 'error',
  from: { path: `^src/${layer}/` },
  to: { path: `^src/(${layers.slice(at + 1).join('|')})/` },
}));

const pastIndex = layers.map((layer) => ({
  name: `${layer}-through-its-index`,
  comment: `Another layer reaches src/${layer} through src/${layer}/index.ts.`,
  severity: 'error',
  from: { path: '^src/', pathNot: `^src/${layer}/` },
  to: { path: `^src/${layer}/`, pathNot: layer === 'design' ? '^src/design/(index|files)\\.ts$' : `^src/${layer}/index\\.ts$` },
}));

module.exports = {
  forbidden: [
    ...upwards,
    ...pastIndex,
    {
      name: 'web-and-cli-apart',
      severity: 'error',
      from: { path: '^src/web/' },
      to: { path: '^src/cli/' },
    },
    {
      name: 'node-only-in-cli-and-files',
      comment: 'All the rest runs in a browser too.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/(cli/|design/files\\.ts$)' },
      to: { dependencyTypes: ['core'] },
    },
    { name: 'no-cycles', severity: 'error', from: { path: '^src/' }, to: { circular: true } },
    {
      name: 'no-development-packages',
      severity: 'error',
      from: { path: '^src/' },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'], dependencyTypesNot: ['type-only'], pathNot: '@types' },
    },
    {
      name: 'resolvable',
      comment: 'Files that vite gives by their address stand behind a question mark; what is made while it builds is virtual.',
      severity: 'error',
      from: { path: '^src/' },
      to: { couldNotResolve: true, pathNot: '\\?url$|^virtual:' },
    },
    {
      name: 'design-files-from-cli-only',
      comment: 'The one module of design/ that touches a disk has its own door.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/(cli|design)/' },
      to: { path: '^src/design/files\\.ts$' },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default'] },
  },
};
