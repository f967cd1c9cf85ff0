import assert from 'node:assert/strict'
import fc from 'fast-check'
import { checkFile } from '../../src/cli/checkedFile'
import { reportAsGithub } from '../../src/cli/checkReports'
import { run } from '../../src/cli/run'
import type { World } from '../../src/cli/outcome'

const tern = `format: 1
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
entries:
  - id: as-found
    as_found: true
    settings: {fork_rebound: {left: 3 out, right: 6 in}}
  - id: as-found
    settings: {fork_rebound: 3 out, "𝄞 {0}": 4}
    reason: right leg brought to the left
`
describe('detent check --format github', () => {
  it('puts each finding beside its line, and ends with the sum', () => {
    const lines = reportAsGithub([checkFile('./garage/tern.setup.yaml', tern)]).split('\n')
    assert.match(lines.join('\n'), /^::error file=garage\/tern\.setup\.yaml,line=8,endLine=8,col=9,endColumn=17,title=duplicate-entry::‘as-found’ is the id of an entry above already/m)
    assert.equal(lines.at(-2), '1 notebook: 2 errors, 2 warnings, 0 notes')
    assert.match(reportAsGithub([checkFile('a', 'format: 1\nentries: [{as_found: true}]\n')]), /^::warning file=a,/m)
    assert.match(reportAsGithub([checkFile('a', 'format: 1\nmachin: {}\n')]), /^::notice file=a,line=2,.*title=unknown-key::.*\n1 notebook: 0 errors, 0 warnings, 1 note\n$/m)
  })

  it('escapes what would end a property, a message or the command', () => {
    const text = 'format: 1\n"a%b,c:d\\n::error::gotcha\\r": 1\n'
    const [first, ...more] = reportAsGithub([checkFile('50%,a:b\n.yaml', text)]).split('\n')
    assert.match(first!, /^::notice file=50%25%2Ca%3Ab%0A\.yaml,line=2,endLine=2,col=1,endColumn=\d+,title=unknown-key::.*a%25b,c:d%0A::error::gotcha%0D/)
    assert.equal(more.length, 2)
  })

  it('gives no columns over several lines, which the forge would not take, and no file for standard input', () => {
    const several = { ...checkFile('a', 'a: 1\nb: 2\n'), findings: [{ code: 'x', severity: 'error' as const, message: 'm', range: { start: 0, end: 8 } }] }
    assert.equal(reportAsGithub([several]).split('\n')[0], '::error file=a,line=1,endLine=2,title=x::m')
    assert.match(reportAsGithub([checkFile('-', tern)]), /^::\w+ line=/)
  })

  it('prints one line a finding, whatever is written in the notebook', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary' }), fc.string(), (key, path) => {
      const file = checkFile(path, `format: 1\n${JSON.stringify(key)}: 1\n`)
      const lines = reportAsGithub([file]).split(/[\r\n]/)
      assert.equal(lines.length, file.findings.length + 2)
    }), { numRuns: 50 })
  })
})

describe('detent check', () => {
  const world = { find: (paths: readonly string[]) => [...paths], read: () => tern } as Partial<World> as World

  it('fails alike in every format', () => {
    for (const format of ['text', 'json', 'github', 'sarif']) {
      assert.equal(run(['check', 'a', '--format', format], world).code, 1, format)
      assert.equal(run(['check', 'a', '--format', format, '--fail-on', 'never'], world).code, 0, format)
    }
  })
})
