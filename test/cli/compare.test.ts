import assert from 'node:assert/strict'
import { join } from 'node:path'
import { ternSketch } from '../core/derived/ternSketch'
import { aRepository, type Repository } from './aRepository'

const next = (id: string, settings: string, reason: string, more = '') => `  - id: ${id}\n    date: 2026-04-19\n    settings: {${settings}}\n    reason: ${reason}\n${more}`
const second = ternSketch + next('run-2', 'shock_rebound: 9 out', 'it packed down')
const file = 'my bikes/tern 650.setup.yaml'

describe('detent compare and turns on a real repository', function () {
  this.timeout(20_000)
  let repository: Repository
  const compare = (...args: string[]) => repository.detent(['compare', ...args])
  const out = (...args: string[]) => {
    const { out: printed, err, code } = compare(...args)
    assert.deepEqual([code, err], [0, undefined])
    return printed
  }
  const trouble = (...args: string[]) => {
    const { out: printed, err, code } = compare(...args)
    assert.deepEqual([code, printed], [2, ''])
    return err!.replace('detent compare: ', '').trimEnd()
  }

  beforeEach(() => {
    repository = aRepository()
    repository.write(file, ternSketch)
    repository.commit('begin')
    repository.write(file, second)
  })
  afterEach(() => repository.remove())

  it('reviews what is not committed yet: the new entry, against the one it comes from', () => {
    const printed = out(`HEAD:${file}`, file)
    assert.match(printed, /^Tern 650: 1 entry added\n/)
    assert.match(printed, /\nFrom: HEAD:my bikes\/tern 650\.setup\.yaml \(as it is in HEAD\)\nTo: my bikes\/tern 650\.setup\.yaml\n/)
    assert.match(printed, /\n {2}- run-2, 2026-04-19: added, comes from run-1\n\nrun-2, added, comes from run-1\nWhy: it packed down\n/)
    assert.match(printed, /Shock rebound +7 clicks out +9 clicks out +2 clicks out: less rebound damping \(9 % of range\)/)
  })

  it('has the logs of the entries compared, as they lie beside the file now, and of no others', async () => {
    const logged = (fork: string, more = '') => `format: 1
machine: {name: Tern 650, front: {travel: 120}, logger: {time: {column: t}, front: {column: fork}}}
adjusters: {fork_rebound: {on: fork, controls: rebound, counts: clicks, range: 20}}
entries:
  - {id: one, date: 2026-06-13, settings: {fork_rebound: ${fork}}, ride: {log: one.csv}}
  - {id: two, date: 2026-06-14, settings: {fork_rebound: 5 out}, reason: it packed down, ride: {log: two.csv}}
${more}`
    const csv = (deepest: number) => `t,fork\n${Array.from({ length: 1000 }, (_, row) => `${row / 100},${row === 500 ? deepest : 40 + (row % 40)}`).join('\n')}\n`
    const name = 'logged.setup.yaml'
    repository.write(name, logged('3 out'))
    repository.write('one.csv', csv(119.5))
    repository.write('two.csv', csv(100))
    repository.commit('with logs')
    const told = async (...args: string[]) => {
      const { out: printed, err, code } = await repository.start(['compare', ...args])
      assert.deepEqual([code, err], [0, undefined])
      return printed
    }
    assert.match(await told(`${name}#one`, `${name}#two`), /\n[^\n]*[Dd]eepest[^\n]*119\.5[^\n]*100\b[^\n]*-?−?19\.5/)
    assert.doesNotMatch(await told('--no-logs', `${name}#one`, `${name}#two`), /119\.5/)
    const three = '  - {id: three, from: two, date: 2026-06-15, settings: {fork_rebound: 6 out}, reason: still, ride: {log: three.csv}}\n'
    repository.write(name, logged('3 out', three))
    repository.write('three.csv', csv(90))
    repository.write('one.csv', 'no log at all')
    const review = await told(`HEAD:${name}`, name)
    assert.match(review, /\(as it is in HEAD; its logs as they lie beside the file now\)/)
    assert.match(review, /[Dd]eepest[^\n]*100\b[^\n]*90\b/)
    assert.doesNotMatch(review, /one\.csv|no log at all/)
  })

  it('tells what is staged from what is not', () => {
    repository.git('add', '--all')
    repository.write(file, second + next('run-3', 'shock_rebound: 10 out', 'still'))
    assert.match(out(`HEAD:${file}`, `:${file}`), /^Tern 650: 1 entry added\n[^]*run-2/)
    assert.match(out(`:${file}`, file), /^Tern 650: 1 entry added\n[^]*run-3/)
    assert.match(out(`HEAD:${file}`, file), /^Tern 650: 2 entries added\n/)
    assert.match(out(`:${file}`, file), /\(as it is staged\)/)
  })

  it('compares branches, tags and what lies a way back from them', () => {
    repository.commit('softer')
    repository.git('switch', '--quiet', '--create', 'topic/wet', 'HEAD~1')
    repository.write(file, ternSketch + next('rain', 'shock_rebound: 12 out', 'rain'))
    repository.commit('rain')
    repository.git('tag', 'v1')
    const between = out(`main:${file}`, `topic/wet:${file}`)
    assert.match(between, /- rain, 2026-04-19: added, comes from run-1\n {2}- run-2, 2026-04-19: removed\n/)
    assert.equal(out(`main~1:${file}`, `v1~:${file}`), out(`v1^{/begin}:${file}`, `HEAD~1:${file}`).replaceAll('v1^{/begin}', 'main~1').replaceAll('HEAD~1', 'v1~'))
    assert.match(out(`main:${file}#run-2`, `v1:${file}#rain`), /On the way:\n {2}- back over run-2, 2026-04-19: it packed down\n {2}- then rain, 2026-04-19: rain\n/)
  })

  it('says by what name a renamed file is to be asked for, and compares it by that', () => {
    repository.commit('softer')
    repository.git('mv', file, 'curlew.setup.yaml')
    for (const [when, revision] of [['staged', 'HEAD'], ['committed', 'HEAD~1']] as const) {
      assert.equal(trouble(`${revision}:curlew.setup.yaml`, 'curlew.setup.yaml'), `‘${revision}’ has no ‘curlew.setup.yaml’: it was ‘${file}’ then, so write ${revision}:${file}`, when)
      assert.match(out(`${revision}:${file}`, 'curlew.setup.yaml'), /^Tern 650: nothing changed\n/)
      if (when === 'staged') repository.commit('rename')
    }
    assert.match(out(`HEAD~2:${file}`, 'curlew.setup.yaml'), /1 entry added/)
    assert.match(repository.detent(['compare', 'HEAD~1:tern 650.setup.yaml', 'curlew.setup.yaml']).err ?? '', /did you mean HEAD~1:my bikes\/tern 650\.setup\.yaml\?/)
  })

  it('takes a renamed machine in one file, and one without a name, for the same machine', () => {
    repository.write(file, second.replace('Tern 650', 'Tern 651'))
    assert.match(out(`HEAD:${file}`, file), /^Tern 651: 1 entry added; 1 fact about the machine\n/)
    const unnamed = (text: string) => text.replace('  name: Tern 650\n', '')
    repository.write(file, unnamed(ternSketch))
    repository.commit('no name')
    repository.write('other.setup.yaml', unnamed(second))
    assert.match(out(`HEAD:${file}`, 'other.setup.yaml'), /1 entry added/)
  })

  it('says that a file is in conflict, and compares its sides', () => {
    repository.commit('softer')
    repository.git('switch', '--quiet', '--create', 'topic', 'HEAD~1')
    repository.write(file, ternSketch + next('rain', 'shock_rebound: 12 out', 'rain'))
    repository.commit('rain')
    repository.git('merge', '--quiet', 'main')
    const line = ternSketch.split('\n').length
    assert.equal(trouble(`HEAD:${file}`, file), `${file}:${line}: this file is in conflict; settle it first, or compare its sides: :2:${file} is ours and :3:${file} is theirs`)
    assert.equal(trouble(`:${file}`, `HEAD:${file}`), `${file} is in conflict, so nothing of it is staged; write :2:${file} for ours, :3:${file} for theirs, :1:${file} for what both come from`)
    assert.match(out(`:2:${file}`, `:3:${file}`), /- run-2, 2026-04-19: added, comes from run-1\n {2}- rain, 2026-04-19: removed\n/)
    assert.match(out(`:1:${file}`, `:2:${file}`), /1 entry added/)
  })

  it('says which revision, file or entry there is not, and which was probably meant', () => {
    repository.commit('softer')
    assert.equal(trouble(`mian~1:${file}`, file), 'there is no revision ‘mian~1’ in this repository; did you mean ‘main~1’?')
    assert.equal(trouble(`HEAD~9:${file}`, file), 'there is no revision ‘HEAD~9’ in this repository; ‘HEAD’ there is, but not ‘~9’ from it')
    assert.equal(trouble(`nowhere:${file}`, file), 'there is no revision ‘nowhere’ in this repository')
    assert.equal(trouble('HEAD:my bikes/tern 65.setup.yaml', file), `‘HEAD’ has no ‘my bikes/tern 65.setup.yaml’; did you mean HEAD:${file}?`)
    assert.equal(trouble('HEAD:gone/tern 650.setup.yaml', file), `‘HEAD’ has no ‘gone/tern 650.setup.yaml’; did you mean HEAD:${file}?`)
    assert.equal(trouble('HEAD:my bikes', file), '‘HEAD’ has no ‘my bikes’')
    assert.equal(trouble(`HEAD:${file}#run2`, file), `HEAD:${file} has no entry ‘run2’; did you mean ‘run-2’? It has as-found, run-1, run-2`)
    assert.equal(trouble(file, 'gone.setup.yaml'), 'gone.setup.yaml: there is no such file or folder')
    assert.equal(trouble(':gone.setup.yaml', file), 'gone.setup.yaml is not staged, and git knows no such file')
    assert.equal(trouble(`:2:${file}`, file), `${file} is in no conflict, so it has no side :2`)
  })

  it('says which side does not parse, where and why; both if it is both', () => {
    repository.write('bad.setup.yaml', 'format: 1\nmachine: {name: "Tern\n')
    assert.match(trouble(file, 'bad.setup.yaml'), /^bad\.setup\.yaml:\d+:\d+: [^\n]+$/)
    repository.commit('bad')
    assert.match(trouble('HEAD:bad.setup.yaml', 'bad.setup.yaml'), /^HEAD:bad\.setup\.yaml:\d+:\d+: [^\n]+\nbad\.setup\.yaml:\d+:\d+: [^\n]+$/)
    repository.write('empty.setup.yaml', 'format: 1\n')
    assert.equal(trouble('empty.setup.yaml', file), 'empty.setup.yaml has no entries yet')
  })

  it('says that there is no repository', () => {
    const lone = aRepository()
    try {
      lone.write(file, ternSketch)
      lone.git('status')
      lone.write('.git/HEAD', 'broken')
      assert.match(lone.detent(['compare', `HEAD:${file}`, file]).err!, /is in no git repository that can be read/)
    } finally {
      lone.remove()
    }
  })

  it('reads paths from a folder below, through .. and as absolute ones', () => {
    for (const spec of ['HEAD:tern 650.setup.yaml', 'HEAD:./tern 650.setup.yaml', `HEAD:../${file}`, `HEAD:${join(repository.folder, file)}`]) {
      const { out: printed, err } = repository.detent(['compare', spec, 'tern 650.setup.yaml'], 'my bikes')
      assert.equal(err, undefined, spec)
      assert.match(printed, /1 entry added/, spec)
    }
  })

  it('compares the entries that are named, the last one where a side names none', () => {
    assert.match(out(`${file}#as-found`, `${file}#run-1`), /^Tern 650\n=+\nFrom: as-found [^]*Fork rebound, right +6 clicks out +3 clicks out/)
    assert.match(out(`${file}#as-found`, file), /\nTo: run-2 · 2026-04-19 · /)
    assert.match(out(`${file}##1`, `${file}##2`), /\nFrom: as-found /)
    assert.match(out(`HEAD:${file}`, `${file}#run-2`), /\nFrom: run-1 [^]*Why: it packed down/)
    assert.match(out(`${file}#run-1`, `${file}#run-1`), /Everything stands where it stood\./)
  })

  it('compares two machines by their shares of range, and says so', () => {
    repository.write('heron.setup.yaml', second.replace('Tern 650', 'Heron 980').replace('range: 22', 'range: 44'))
    const printed = out(file, 'heron.setup.yaml')
    assert.match(printed, /These are two machines\. A click of one is no click of the other/)
    assert.match(printed, /Shock rebound +9 clicks out +9 clicks out +20 % of range: more rebound damping/)
    assert.match(repository.detent(['turns', file, 'heron.setup.yaml']).err!, /^detent turns: These are two machines, ‘Tern 650’ and ‘Heron 980’/)
  })

  it('prints Markdown for a pull request that no word of it can break', () => {
    repository.write(file, ternSketch + next('a|b', 'shock_rebound: 9 out', '"| `x` <b>@oda</b>\\n\\n# fixes #12"', '    ride: {felt: "[x](y) | z"}\n'))
    const printed = out(`HEAD:${file}`, file, '--format', 'markdown')
    assert.match(printed, /^### Tern 650: 1 entry added\n\n\*\*From:\*\* HEAD:my bikes\/tern 650\.setup\.yaml \(as it is in HEAD\)\n/)
    assert.match(printed, /\n#### a&#124;b, added, comes from run-1\n\n\*\*Why:\*\* &#124; \\`x\\` &lt;b&gt;@&#8203;oda&lt;\/b&gt; \/ \\# fixes \\#&#8203;12\n/)
    assert.match(printed, /\n\| Shock rebound \| 7 clicks out \| 9 clicks out \| 2 clicks out: less rebound damping \(9 % of range\) \|\n/)
    assert.match(printed, /\n\| Feel \| – \| \\\[x\\\]\(y\) &#124; z \|\n/)
  })

  it('prints JSON for scripts, of a review or of two states', () => {
    const { version, review } = JSON.parse(out(`HEAD:${file}`, file, '--format', 'json'))
    assert.equal(version, 1)
    assert.deepEqual([review.before.file, review.before.read_only, review.entries.map((entry: { kind: string; key: string }) => `${entry.kind} ${entry.key}`)], [`HEAD:${file}`, 'as it is in HEAD', ['added run-2']])
    const { comparison } = JSON.parse(out(`${file}#run-1`, `${file}#run-2`, '--format', 'json'))
    const row = comparison.groups.flatMap((group: { rows: object[] }) => group.rows).find(({ key }: { key: string }) => key === 'settings/shock_rebound')
    assert.deepEqual([row.change.by, row.change.direction, row.different, comparison.one_machine], [2, 'less', true, true])
  })

  it('lists the turns from one state to another, with exit code 1 where something cannot be turned', () => {
    const there = repository.detent(['turns', `HEAD:${file}`, file])
    assert.deepEqual([there.code, there.err], [0, undefined])
    assert.match(there.out, /\nShock\n {2}Shock rebound · shock foot\n {4}\[ \] 2 clicks out, from 7 clicks out to 9 clicks out\n {8}Turn it clockwise, as you look down on it from above, to turn it out/)
    const back = repository.detent(['turns', file, `${file}#as-found`, '--format', 'json'])
    const { turn_list: list } = JSON.parse(back.out)
    assert.deepEqual(list.groups.map(({ key }: { key: string }) => key), ['stand', 'fork', 'shock'])
    repository.write(file, second.replace('9 out', '30 out'))
    const beyond = repository.detent(['turns', `HEAD:${file}`, file])
    assert.equal(beyond.code, 1)
    assert.match(beyond.out, /Cannot be reached by turning\n {2}! Shock rebound \(shock foot\): it should stand at 30 clicks out/)
    assert.equal(repository.detent(['turns', file]).code, 2)
    assert.match(repository.detent(['turns', file, 'bad\0.yaml']).err!, /^detent turns: /)
  })
})
