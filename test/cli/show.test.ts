import assert from 'node:assert/strict'
import { run } from '../../src/cli/run'
import { UsageError, type World } from '../../src/cli/outcome'
import { ternSketch } from '../core/derived/ternSketch'

function show(text: string, ...args: string[]): string {
  const { out, code, err } = run(['show', 'a.setup.yaml', ...args], shelf({ 'a.setup.yaml': text }))
  assert.equal(code, 0, err)
  return out
}

function shelf(files: Record<string, string>): World {
  return {
    find: (paths) => [...paths], create: () => assert.fail(), write: () => assert.fail(), today: () => assert.fail('no day is asked'),
    read: (path) => {
      if (files[path] === undefined) throw new UsageError(`${path}: there is no such file or folder`)
      return files[path]
    },
  }
}

/** The lines that are in one text and not in the other. */
const newLines = (before: string, after: string) => after.split('\n').filter((line) => !before.split('\n').includes(line))

describe('detent show as what git compares', () => {
  it('says the same of the same notebook, wherever the file lies and however it is written', () => {
    const nameless = ternSketch.replace(/ *name: .*\n/, '')
    const [one, other] = ['a.setup.yaml', '.merge_file_x1'].map((path) => run(['show', path, '--all'], shelf({ [path]: nameless })).out)
    assert.equal(one, other)
    assert.match(one!, /^a machine without a name\n/)
    assert.equal(show(ternSketch.replaceAll('\n', '\r\n'), '--all'), show(ternSketch, '--all'))
    assert.equal(show(ternSketch.replaceAll(/^(\s*- )?(\w+: )(?=\w)/gm, '$1$2 '), '--all'), show(ternSketch, '--all'))
  })

  it('changes only the lines that tell what changed, whatever else is in the table', () => {
    const entry = (setting: string) => `format: 1\nmachine: {name: Tern}\nadjusters:\n  a: {on: fork, controls: rebound, counts: clicks}\n  b: {on: fork, controls: compression, counts: clicks}\nentries:\n  - id: x\n    settings: {a: 3 out${setting}}\n`
    assert.deepEqual(newLines(show(entry('')), show(entry(', b: 4 out'))), ['  B                                                4 out'])
    const longer = entry(', b: 4 out').replace('b: {on', 'b: {label: a very long name of an adjuster that hardly anyone would give, on')
    assert.deepEqual(newLines(show(entry('')), show(longer)), ['  a very long name of an adjuster that hardly anyone would give  4 out'])
  })

  it('--all tells what is said of the machine too, and everything about the entries but comments that stand alone', () => {
    const [before, after] = [show(ternSketch, '--all'), show(ternSketch.replace(/range: \d+/, 'range: 99'), '--all')]
    assert.deepEqual(newLines(before, after).map((line) => line.replace(/ +/g, ' ')), [' adjusters.fork_preload.range 99'])
    const remarked = 'format: 1\nadjusters: {a: {on: fork, controls: rebound, counts: clicks}}\nentries:\n  - id: x\n    settings:\n      a: 3 out   # felt loose\n    remarks: {ride.felt: not ridden}\n'
    assert.match(show(remarked), /^ {2}A {2,}3 out {2}# felt loose$/m)
    assert.match(show(remarked), /^ {2}Feel {2,}# not ridden$/m)
  })

  it('lets nothing in a notebook act on the terminal it is shown in', () => {
    const text = 'format: 1\nmachine: {name: "a\\u001b[31mb"}\nadjusters: {}\nentries:\n  - id: "x\\u001b[2J"\n    reason: "r\\u202er\\u0007"\n'
    assert.doesNotMatch(show(text, '--all'), /[\x00-\x09\x0b-\x1f\x7f-\x9f\u202e]/)
  })

  it('--or-text shows a text that does not parse as it is, with its error', () => {
    const broken = 'format: 1\nmachine: {name: "Tern\n'
    assert.equal(run(['show', 'a.setup.yaml'], shelf({ 'a.setup.yaml': broken })).code, 2)
    assert.match(show(broken, '--or-text'), /^This text does not parse: line \d: .*\n\nformat: 1\nmachine: \{name: "Tern\n$/)
    assert.equal(show(ternSketch, '--or-text', '--all'), show(ternSketch, '--all'))
    assert.match(show('', '--or-text', '--all'), /no entries yet/)
  })

  it('takes --entry or --all, not both', () => {
    assert.equal(run(['show', 'a.setup.yaml', '--all', '--entry', 'run-1'], shelf({ 'a.setup.yaml': ternSketch })).code, 2)
  })
})

describe('detent show --format html', () => {
  const html = (...args: string[]) => run(['show', 'a.setup.yaml', '--format', 'html', ...args], shelf({ 'a.setup.yaml': ternSketch, 'empty.setup.yaml': 'format: 1\n' }))

  it('prints the sheet of an entry, the last one when none is named', () => {
    assert.match(html().out, /^<!doctype html>[^]*<p class="entry">run-1<\/p>[^]*<\/html>\n$/)
    assert.match(html('--entry', 'as-found').out, /<p class="entry">as-found<\/p>/)
  })

  it('ends with exit code 2 for several entries, for none, and for another format', () => {
    assert.equal(html('--all').code, 2)
    assert.equal(html('--or-text').code, 2)
    assert.equal(run(['show', 'e', '--format', 'html'], shelf({ e: 'format: 1\n' })).code, 2)
    assert.equal(run(['show', 'e', '--format', 'pdf'], shelf({ e: ternSketch })).code, 2)
  })
})
