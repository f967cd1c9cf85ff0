import js from '@eslint/js'
import regexp from 'eslint-plugin-regexp'
import ts from 'typescript-eslint'

export default ts.config(
  { ignores: ['dist/', 'node_modules/', '.cache/', '**/generated/', '**/assembly/', 'test/workbench/node_modules/', 'samples/', 'src/core/api.d.ts'] },
  js.configs.recommended,
  ...ts.configs.recommended,
  {
    languageOptions: { globals: { process: 'readonly', console: 'readonly', setTimeout: 'readonly', clearTimeout: 'readonly', setInterval: 'readonly', fetch: 'readonly', URL: 'readonly', Buffer: 'readonly' } },
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
      'max-lines': ['error', { max: 280, skipBlankLines: true, skipComments: true }],
      'max-params': ['error', 5],
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'no-control-regex': 'off',
    },
  },
  {
    // What a person or a stranger wrote is matched by these: none may take longer than the text is long.
    files: ['src/**', 'webview/**'],
    plugins: { regexp },
    rules: { 'regexp/no-super-linear-backtracking': ['error', { report: 'potential' }], 'regexp/no-super-linear-move': ['error', { report: 'potential', ignorePartial: false }] },
  },
  { files: ['test/**', '**/*.test.ts'], rules: { 'max-lines-per-function': 'off', 'max-lines': 'off' } },
  {
    files: ['**/*.cjs'],
    languageOptions: { sourceType: 'commonjs', globals: { module: 'writable', require: 'readonly' } },
    rules: { '@typescript-eslint/no-require-imports': 'off' },
  },
)
