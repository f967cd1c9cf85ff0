// The import rules of the house, as DEVELOPERS.md tells them: core <- language <- editor, core <- cli,
// protocol <- editor and webview; never back, never sideways.
const forbid = (name, from, to, extra = {}) => ({ name, severity: 'error', from: { path: from }, to: { path: to, ...extra } })

module.exports = {
  forbidden: [
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } } },
    forbid('core-is-pure', '^src/core', '^(src/(language|editor|cli|protocol)|webview|test)'),
    forbid('language-sees-only-core', '^src/language', '^(src/(editor|cli|protocol)|webview|test)'),
    forbid('editor-not-cli', '^src/editor', '^(src/cli|webview|test)'),
    forbid('cli-sees-only-core', '^src/cli', '^(src/(editor|language|protocol)|webview|test)'),
    forbid('protocol-names-types-only', '^src/protocol', '^(src/(editor|cli|language)|webview|test)'),
    forbid('webview-sees-only-protocol', '^webview', '^(src/(core|language|editor|cli)|test)', { dependencyTypesNot: ['type-only'] }),
    forbid('vscode-only-in-editor', '^(src/(core|language|cli|protocol)|webview)', '^vscode$|@types/vscode'),
    // The thread that reads logs is asked for where there is Node, and done without where there is none.
    { name: 'node-only-in-cli', severity: 'error', from: { path: '^(src/(core|language|editor|protocol)|webview)', pathNot: '^src/editor/logs/readOnThread' }, to: { dependencyTypes: ['core'] } },
    // What stands in for the library where a check is bundled has its types.
    forbid('yaml-only-in-notebook', '^src/(core/(?!notebook)|language|editor|cli/(?!lateYaml))|^webview', 'node_modules/yaml/'),
    forbid('notation-is-plain', '^src/core/notation', '^src/core/(notebook|adjusters|compute|rules|compare|grid)'),
    forbid('compute-is-plain', '^src/core/compute', '^src/core/(notebook|rules|compare|grid)'),
    forbid('logs-know-no-notebook', '^src/core/logs', '^src/core/(notebook|derived|rules|compare|grid|card|advice|export)'),
    forbid('notebook-below-rules', '^src/core/notebook', '^src/core/(rules|compare|grid)'),
    forbid('charts-know-no-page', '^webview/charts', '^webview/(?!charts)'),
    forbid('chart-library-in-one-folder', '^webview/(?!charts)', 'node_modules/uplot'),
    forbid('toolkit-in-one-module', '^webview/(?!controls)', 'webview-ui-toolkit'),
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { conditionNames: ['import', 'require', 'node', 'default', 'types'] },
  },
}
