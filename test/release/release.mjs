// `npm run release -- X.Y.Z [--dry-run]`: everything up to the point where others see it. On a clean checkout it runs the
// checks, sets the version, writes the changelog's section, and makes the two packages. It publishes nothing: it ends by
// saying how that is done, after somebody has looked.
//   --dry-run   leaves package.json, the lock file and the changelog as they are
import { execFileSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { withRelease, wrongWith } from './changelog.ts'

const { values, positionals: [version, ...more] } = parseArgs({ allowPositionals: true, options: { 'dry-run': { type: 'boolean', default: false } } })
const dry = values['dry-run']
const git = (...args) => execFileSync('git', args, { encoding: 'utf8' }).trim()
const npm = (...args) => execFileSync(process.platform === 'win32' ? 'npm.cmd' : 'npm', args, { stdio: 'inherit', shell: process.platform === 'win32' })
const manifest = () => JSON.parse(readFileSync('package.json', 'utf8'))

if (version === undefined || more.length > 0) leave('Name the version: npm run release -- 1.2.0')
const wrong = wrongWith(manifest().version, version)
if (wrong) leave(wrong)
if (!dry && git('status', '--porcelain') !== '') leave('The checkout has changes that are not committed. Commit them first.')

const last = git('tag', '--list', 'v*', '--sort=-v:refname').split('\n')[0]
const subjects = git('log', '--no-merges', '--format=%s', last ? `${last}..HEAD` : 'HEAD').split('\n').filter(Boolean)
const date = new Date().toISOString().slice(0, 10)
let changelog
try {
  changelog = withRelease(readFileSync('CHANGELOG.md', 'utf8'), { version, date, subjects })
} catch (error) {
  leave(error.message)
}

if (dry) {
  console.log(changelog.slice(0, changelog.indexOf('\n## ', changelog.indexOf(`## ${version}`) + 1) + 1 || undefined))
} else {
  npm('run', 'typecheck')
  npm('run', 'lint')
  npm('test')
  npm('version', version, '--no-git-tag-version')
  writeFileSync('CHANGELOG.md', changelog)
  npm('run', 'package')
  npm('pack')
  git('commit', '--quiet', '-m', `Release ${version}`, '--', 'package.json', 'package-lock.json', 'CHANGELOG.md')
  git('tag', `v${version}`)
  console.log(`\nVersion ${version} is committed and tagged here, and nowhere else yet. Look at the packages, then:
  git push --follow-tags
  npx vsce publish --packagePath detent-${version}.vsix
  npm publish detent-${version}.tgz`)
}

function leave(why) {
  console.error(why)
  process.exit(2)
}
