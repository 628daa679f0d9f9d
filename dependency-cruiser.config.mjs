/** The direction of imports, as rules that say what to do instead. */
export default {
  forbidden: [
    { name: 'no-cycles', severity: 'error', comment: 'Two files that need each other are one file, or need a third that both import.', from: {}, to: { circular: true } },
    { name: 'core-is-pure', severity: 'error', comment: 'core runs in server, browser and command line: give it numbers, take values.', from: { path: '^core/' }, to: { path: '^(server|client|tests|prisma)/' } },
    { name: 'core-no-node', severity: 'error', comment: 'No I/O in core: read the file in server/ and hand over its text.', from: { path: '^core/' }, to: { dependencyTypes: ['core'] } },
    { name: 'core-chosen-packages', severity: 'error', comment: 'core takes only small pure libraries; add one to this list with a line in DEVELOPERS.md.', from: { path: '^core/' }, to: { dependencyTypes: ['npm'], pathNot: 'node_modules/(zod|saxes|xmlchars|fraction\\.js|@noble/hashes)/' } },
    { name: 'server-not-client', severity: 'error', comment: 'What both need lives in core.', from: { path: '^server/' }, to: { path: '^client/' } },
    { name: 'client-not-server', severity: 'error', comment: 'What both need lives in core.', from: { path: '^client/' }, to: { path: '^server/' } },
    { name: 'only-the-store-sees-the-database', severity: 'error', comment: 'Ask the store for what you need; it speaks in values of core.', from: { path: '^server/', pathNot: '^server/(store|database)/' }, to: { path: '(node_modules/(pg|pg-boss|@prisma)/|prisma-client)' } },
    { name: 'one-importer-of-the-engraver-client', severity: 'error', comment: 'Ask client/engraving for a drawing.', from: { path: '^client/', pathNot: '^client/engraving/engraver\\.ts$' }, to: { path: 'node_modules/verovio/' } },
    { name: 'engraver-required-on-the-server', severity: 'error', comment: 'Require it, as server/print/engraver.ts does: imported, it costs a gigabyte.', from: { path: '^server/' }, to: { path: 'node_modules/verovio/dist/verovio-module' } },
    { name: 'one-importer-of-the-engraver-server', severity: 'error', comment: 'Ask server/print/engraver.ts for a drawing or for MEI.', from: { path: '^server/', pathNot: '^server/print/engraver\\.ts$' }, to: { path: 'node_modules/verovio/' } },
    { name: 'rules-stand-alone', severity: 'error', comment: 'Move what two rules share out of check/rules/.', from: { path: '^core/check/rules/' }, to: { path: '^core/check/rules/' } },
    { name: 'operations-stand-alone', severity: 'error', comment: 'Move what two operations share into core/agreement/.', from: { path: '^core/agreement/operations/' }, to: { path: '^core/agreement/operations/' } },
    { name: 'no-orphans', severity: 'error', comment: 'Nothing reaches this file: delete it or use it.', from: { orphan: true, pathNot: '\\.d\\.ts$|client/main\\.tsx$|\\.worker\\.ts$|server/(main|worker)\\.ts$|server/cli/bowline\\.mjs$' }, to: {} },
  ],
  options: {
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules|server/store/prisma-client' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default', 'types'] },
  },
};
