import assert from 'node:assert/strict'
import { eachCase, edited, head, inEntry, refusal, set } from '../../grid/editing'

const left = 'settings/fork/left'
const shock = 'settings/shock'

describe('setting a position', () => {
  eachCase([
    ['replaces it and nothing beside it', '  - id: a\n    settings:\n      shock: 3 out   # as last time\n', set(shock, '4 out'), '  - id: a\n    settings:\n      shock: 4 out   # as last time\n'],
    ['keeps single quotes', "  - id: a\n    settings: {shock: '3 out'}\n", set(shock, '4 out'), "  - id: a\n    settings: {shock: '4 out'}\n"],
    ['keeps double quotes', '  - id: a\n    settings: {shock: "3 out"}\n', set(shock, '4 out'), '  - id: a\n    settings: {shock: "4 out"}\n'],
    ['writes a number as it was typed', '  - id: a\n    settings: {shock: 3}\n', set(shock, '1.0'), '  - id: a\n    settings: {shock: 1.0}\n'],
    ['loses the blanks around it and doubled within', '  - id: a\n    settings: {shock: 3}\n', set(shock, '  1  3/4   turns '), '  - id: a\n    settings: {shock: 1 3/4 turns}\n'],
    ['quotes what would not be a value by itself', '  - id: a\n    settings: {shock: 3}\n', set(shock, '3, or 4'), '  - id: a\n    settings: {shock: "3, or 4"}\n'],
    ['puts a new one under its neighbours', '  - id: a\n    settings:\n      fork: 3   # both\n    reason: x\n', set(shock, '4'), '  - id: a\n    settings:\n      fork: 3   # both\n      shock: 4\n    reason: x\n'],
    ['puts a new one behind its neighbours in braces', '  - id: a\n    settings: {fork: 3}   # both\n', set(shock, '4'), '  - id: a\n    settings: {fork: 3, shock: 4}   # both\n'],
    ['leaves a comma at the end where it is', '  - id: a\n    settings: {fork: 3, }\n', set(shock, '4'), '  - id: a\n    settings: {fork: 3, shock: 4, }\n'],
    ['makes the settings that are missing, before what comes after them', '  - id: a\n    date: 2026-04-18\n    reason: x\n', set(shock, '4'), '  - id: a\n    date: 2026-04-18\n    settings:\n      shock: 4\n    reason: x\n'],
    ['fills settings that are left empty, below their comments', '  - id: a\n    settings:   # none yet\n      # counted from closed\n    reason: x\n', set(shock, '4'), '  - id: a\n    settings:   # none yet\n      # counted from closed\n      shock: 4\n    reason: x\n'],
    ['leaves a comment between neighbours to the one above', '  - id: a\n    settings:\n      fork: 3\n      # worn\n    # later\n', set(shock, '4'), '  - id: a\n    settings:\n      fork: 3\n      shock: 4\n      # worn\n    # later\n'],
    ['fills empty braces', '  - id: a\n    settings: {}\n', set(shock, '4'), '  - id: a\n    settings: {shock: 4}\n'],
    ['takes the place of a null', '  - id: a\n    settings: ~ # none\n', set(shock, '4'), '  - id: a\n    settings: {shock: 4} # none\n'],
    ['stands behind the colon of a key without a value', '  - id: a\n    settings:\n      shock: # count it\n      fork: 3\n', set(shock, '4'), '  - id: a\n    settings:\n      shock: 4 # count it\n      fork: 3\n'],
    ['gives a key alone in braces its colon', '  - id: a\n    settings: {shock, fork: 3}\n', set(shock, '4'), '  - id: a\n    settings: {shock: 4, fork: 3}\n'],
    ['finds quoted keys', '  - "id": a\n    \'settings\': {"shock": 3}\n', set(shock, '4'), '  - "id": a\n    \'settings\': {"shock": 4}\n'],
    ['takes the place of an alias, whose value others keep', '  - id: a\n    notes: &n 3 out\n    settings: {shock: *n }\n', set(shock, '4'), '  - id: a\n    notes: &n 3 out\n    settings: {shock: 4 }\n'],
    ['replaces a block by one line', '  - id: a\n    settings:\n      shock: |  # long ago\n        3 out\n      fork: 3\n', set(shock, '4'), '  - id: a\n    settings:\n      shock: 4  # long ago\n      fork: 3\n'],
    ['takes any word there is', '  - id: a\n    settings: {shock: 3}\n', set(shock, '¾ 日本 𝄞'), '  - id: a\n    settings: {shock: ¾ 日本 𝄞}\n'],
    ['writes an indentation of one blank as it finds it', ' - id: a\n   settings:\n    fork: 3\n', set(shock, '4'), ' - id: a\n   settings:\n    fork: 3\n    shock: 4\n'],
    ['writes an indentation of four as it finds it', '    -   id: a\n        settings:\n            fork: 3\n', set(shock, '4'), '    -   id: a\n        settings:\n            fork: 3\n            shock: 4\n'],
    ['finds a list that begins under its key', '- id: a\n  settings:\n    fork: 3\n', set(shock, '4'), '- id: a\n  settings:\n    fork: 3\n    shock: 4\n'],
    ['finds the last line of a text without a line end', '  - id: a\n    settings:\n      fork: 3', set(shock, '4'), '  - id: a\n    settings:\n      fork: 3\n      shock: 4'],
    ['stays before a document’s end', '  - id: a\n    settings:\n      fork: 3\n...\n', set(shock, '4'), '  - id: a\n    settings:\n      fork: 3\n      shock: 4\n...\n'],
    ['keeps away from the blank lines that a block owns', '  - id: a\n    settings:\n      fork: |+\n        3\n\n  - id: b\n', set(shock, '4'), '  - id: a\n    settings:\n      fork: |+\n        3\n\n      shock: 4\n  - id: b\n'],
    ['writes an only leg’s without its name', '  - id: a\n', set('settings/foot/right', '4'), '  - id: a\n    settings:\n      foot: 4\n'],
    ['writes an only leg’s by its name where that is how it stands', '  - id: a\n    settings: {foot: {right: 3}}\n', set('settings/foot/right', '4'), '  - id: a\n    settings: {foot: {right: 4}}\n'],
  ])

  it('changes nothing where it stands so already', () => {
    const text = "  - id: a\n    settings: {shock: '3 out', fork: 3}\n"
    assert.equal(inEntry(text, set(shock, ' 3 out')), text)
    assert.equal(inEntry(text, set(left, '3')), text)
  })

  it('finds an adjuster of any name', () => {
    const names = ['__proto__', 'Gabel links', 'höhe #2', '12', 'null', 'a/left', 'it\'s: "x"', 'constructor']
    for (const name of names) {
      const text = `format: 1\nadjusters:\n  ${JSON.stringify(name)}: {on: shock, controls: rebound, counts: clicks}\nentries:\n  - id: a\n`
      assert.match(edited(edited(text, set(`settings/${name}`, '4')), set(`settings/${name}`, '5')), /: 5\n$/)
    }
  })

  it('gives a name that is no plain word its quotes', () => {
    const text = 'format: 1\nadjusters: {"a: b": {on: shock, controls: rebound, counts: clicks}}\nentries:\n  - id: a\n'
    assert.equal(edited(text, set('settings/a: b', '4')), `${text}    settings:\n      "a: b": 4\n`)
  })
})

describe('setting one leg', () => {
  eachCase([
    ['splits the value that stood for both', '  - id: a\n    settings:\n      fork: 3 out   # both\n', set(left, '4 out'), '  - id: a\n    settings:\n      fork: {left: 4 out, right: 3 out}   # both\n'],
    ['splits a value in braces', '  - id: a\n    settings: {fork: 3 out, shock: 7}\n', set('settings/fork/right', '4 out'), '  - id: a\n    settings: {fork: {left: 3 out, right: 4 out}, shock: 7}\n'],
    ['keeps the quotes of both', "  - id: a\n    settings: {fork: '3 out'}\n", set(left, '4 out'), "  - id: a\n    settings: {fork: {left: '4 out', right: '3 out'}}\n"],
    ['quotes what may stand alone but not in braces', '  - id: a\n    settings:\n      fork: 3, or so\n', set(left, '4'), '  - id: a\n    settings:\n      fork: {left: 4, right: "3, or so"}\n'],
    ['splits a block', '  - id: a\n    settings:\n      fork: |  # both\n        3 out\n', set(left, '4'), '  - id: a\n    settings:\n      fork: {left: 4, right: 3 out}  # both\n'],
    ['leaves the other leg carried', '  - id: a\n    settings:\n      shock: 3\n', set(left, '4'), '  - id: a\n    settings:\n      shock: 3\n      fork: {left: 4}\n'],
    ['leaves the other leg carried in an entry without settings', '  - id: a\n', set(left, '4'), '  - id: a\n    settings:\n      fork: {left: 4}\n'],
    ['does not set the other leg where nothing stands behind the name', '  - id: a\n    settings:\n      fork:\n', set(left, '4'), '  - id: a\n    settings:\n      fork: {left: 4}\n'],
    ['does not set the other leg in the place of a null', '  - id: a\n    settings: {fork: null}\n', set(left, '4'), '  - id: a\n    settings: {fork: {left: 4}}\n'],
    ['goes beside the other leg', '  - id: a\n    settings: {fork: {right: 3}}\n', set(left, '4'), '  - id: a\n    settings: {fork: {right: 3, left: 4}}\n'],
    ['goes below the other leg', '  - id: a\n    settings:\n      fork:\n        right: 3\n', set(left, '4'), '  - id: a\n    settings:\n      fork:\n        right: 3\n        left: 4\n'],
    ['splits an alias', '  - id: a\n    notes: &n 3 out\n    settings: {fork: *n }\n', set(left, '4'), '  - id: a\n    notes: &n 3 out\n    settings: {fork: {left: 4, right: *n} }\n'],
  ])
})

describe('clearing a position', () => {
  eachCase([
    ['takes its line', '  - id: a\n    settings:\n      fork: 3\n      shock: 4\n    reason: x\n', set(shock, ''), '  - id: a\n    settings:\n      fork: 3\n    reason: x\n'],
    ['leaves the comment behind it, and those above', '  - id: a\n    settings:\n      fork: 3\n      # why\n      shock: 4   # worn\n', set(shock, ''), '  - id: a\n    settings:\n      fork: 3\n      # why\n      # worn\n'],
    ['takes the settings along that become empty', '  - id: a\n    settings:\n      shock: 4\n    reason: x\n', set(shock, ''), '  - id: a\n    reason: x\n'],
    ['leaves the comments in settings that become empty', '  - id: a\n    settings: # all\n      # why\n      shock: 4 # worn\n    reason: x\n', set(shock, ''), '  - id: a\n    # all\n    # why\n    # worn\n    reason: x\n'],
    ['takes one of several in braces', '  - id: a\n    settings: {fork: 3, shock: 4}\n', set(shock, ''), '  - id: a\n    settings: {fork: 3}\n'],
    ['takes the first of several in braces', '  - id: a\n    settings: {shock: 4, fork: 3}\n', set(shock, ''), '  - id: a\n    settings: {fork: 3}\n'],
    ['takes the last before a comma', '  - id: a\n    settings: {fork: 3, shock: 4,}\n', set(shock, ''), '  - id: a\n    settings: {fork: 3,}\n'],
    ['leaves the comments between braces', '  - id: a\n    settings: {\n      fork: 3, # both\n      shock: 4 # one\n    }\n', set(shock, ''), '  - id: a\n    settings: {\n      fork: 3, # both\n       # one\n    }\n'],
    ['takes the comma that stands behind a comment', '  - id: a\n    settings: {\n      shock: 4 # one\n      , fork: 3\n    }\n', set(shock, ''), '  - id: a\n    settings: {\n       # one\n       fork: 3\n    }\n'],
    ['leaves one leg what stood for both', '  - id: a\n    settings: {fork: 3 out}\n', set(left, ''), '  - id: a\n    settings: {fork: {right: 3 out}}\n'],
    ['takes one leg of two', '  - id: a\n    settings:\n      fork:\n        left: 3\n        right: 4\n', set(left, ''), '  - id: a\n    settings:\n      fork:\n        right: 4\n'],
    ['takes the adjuster along with its last leg', '  - id: a\n    settings: {shock: 4, fork: {left: 3}}\n', set(left, ''), '  - id: a\n    settings: {shock: 4}\n'],
    ['does nothing to what is carried', '  - id: a\n    settings: {shock: 4}\n', set(left, ''), '  - id: a\n    settings: {shock: 4}\n'],
    ['does nothing to a key without a value', '  - id: a\n    settings: {shock: , fork: 3}\n', set(shock, ''), '  - id: a\n    settings: {shock: , fork: 3}\n'],
    ['pulls up the next pair behind the dash', '  - settings: {shock: 4}   # one\n    id: a\n', set(shock, ''), '  - # one\n    id: a\n'],
    ['takes the last line of a text without a line end', '  - id: a\n    settings:\n      fork: 3\n      shock: 4', set(shock, ''), '  - id: a\n    settings:\n      fork: 3'],
    ['leaves braces in an entry that holds nothing else', '  - settings: {shock: 4}\n', { kind: 'clearCells', cells: [{ column: '#1', row: shock }] }, '  - {}\n'],
  ])
})

describe('a position that is not written here alone', () => {
  const shared = 'this value is shared with another place; change it in the text'
  const cases: [string, string, string][] = [
    ['an anchored value', '  - id: a\n    settings: {shock: &s 3 out}\n  - id: b\n    settings: {shock: *s }\n', shared],
    ['anchored settings', '  - id: a\n    settings: &s {shock: 3 out}\n  - id: b\n    settings: *s\n', shared],
    ['settings that are an alias', '  - id: b\n    settings: &s {shock: 3 out}\n  - id: a\n    settings: *s\n', shared],
    ['an anchored entry', '  - &e\n    id: a\n    settings: {shock: 3 out}\nold: *e\n', shared],
    ['a tagged value', '  - id: a\n    settings: {shock: !!str 3}\n', 'an anchor or a tag stands before this value; change it in the text'],
  ]
  for (const [title, entry, words] of cases) {
    it(`is neither set nor cleared: ${title}`, () => {
      assert.equal(refusal(`${head}entries:\n${entry}`, set(shock, '4')), words)
      if (words === shared) assert.match(refusal(`${head}entries:\n${entry}`, set(shock, '')), /shared with|stands for a value/)
    })
  }

  it('is set where an anchor has no alias', () => {
    assert.equal(inEntry('  - id: a\n    settings: &s {shock: 3 out}\n', set(shock, '4')), '  - id: a\n    settings: &s {shock: 4}\n')
  })

  it('is refused where a group or an unknown row stands', () => {
    assert.equal(refusal(`${head}entries:\n  - id: a\n    settings: {shock: {left: 3}}\n`, set(shock, '4')), '`shock` is set leg by leg here')
    assert.equal(refusal(`${head}entries:\n  - id: a\n    settings: {shock: [3]}\n`, set(shock, '')), '`shock` holds a group of values here; change it in the text')
    assert.equal(refusal(`${head}entries:\n  - id: a\n    settings: 3\n`, set(shock, '4')), '`settings` holds something else here; change it in the text')
    assert.equal(refusal(`${head}entries:\n  - id: a\n`, set('settings/gone', '4')), 'there is no such adjuster any more')
    assert.equal(refusal(`${head}entries:\n  - id: b\n`, set(shock, '4')), 'there is no entry ‘a’ any more')
    assert.equal(refusal(`${head}entries:\n  - id: a\n    ? settings\n`, set(shock, '4')), '`settings` has no colon behind it; change it in the text')
  })
})
