import assert from 'node:assert/strict'
import { codesOf, findingsOf, fixedBy, messagesOf } from './check'

const notebook = (...entries: string[]) => `format: 1\nentries:\n${entries.map((entry) => `  - {${entry}}\n`).join('')}`

describe('parent-loop', () => {
  const told = (...entries: string[]) => messagesOf('parent-loop', notebook(...entries))

  it('says whether an entry comes from itself or over others', () => {
    assert.match(told('id: one, from: one')[0]!, /^‘one’ cannot come from itself/)
    assert.deepEqual(told('id: egg, from: hen', 'id: hen, from: egg').map((message) => message.slice(0, 26)), ['‘hen’ leads back to ‘egg’:'])
    assert.match(told('from: hen', 'id: hen')[0]!, /^‘hen’ leads back to this entry:/)
    assert.deepEqual(told('id: egg', 'id: hen, from: egg'), [])
  })

  it('takes `from` out, and says where the entry then comes from', () => {
    const first = notebook('id: one, from: one, reason: r', 'id: two')
    const later = notebook('id: zero', 'id: one, from: one, reason: r')
    const titleOf = (text: string) => findingsOf(text).find(({ code }) => code === 'parent-loop')?.fixes?.[0]?.title
    assert.equal(titleOf(first), 'Take `from` out: the history begins here')
    assert.equal(titleOf(later), 'Take `from` out: it then comes from the entry before')
    assert.equal(fixedBy('parent-loop', first), notebook('id: one, reason: r', 'id: two'))
  })
})

describe('unknown-parent', () => {
  it('offers a name that is near, from an entry without a name too, and never its own', () => {
    assert.match(messagesOf('unknown-parent', notebook('id: baseline', 'from: basline'))[0]!, /^no entry is called ‘basline’; did you mean baseline\?$/)
    assert.match(messagesOf('unknown-parent', notebook('id: a', 'id: baseline, from: basline'))[0]!, /, so nothing is carried into this one$/)
  })
})

describe('entry-without-id', () => {
  it('offers a name that no other entry has', () => {
    const fixed = (other: string) => /id: (entry-\d+), as_found/.exec(fixedBy('entry-without-id', notebook(`id: ${other}`, 'reason: r, as_found: true')))?.[1]
    assert.deepEqual(['one', 'entry-2', 'entry-3'].map(fixed), ['entry-2', 'entry-3', 'entry-2'])
  })
})

describe('dates-backwards', () => {
  const told = (...dates: string[]) => messagesOf('dates-backwards', notebook(...dates.map((date, at) => `id: e${at}, as_found: true${date}`)))

  it('compares with the nearest entry above that is dated', () => {
    assert.match(told(', date: 2026-04-19', '', ', from: nowhere, date: 2026-04-18')[0]!, /the date of ‘e0’ above it/)
    assert.match(told(', date: 2026-04-20', ', date: 2026-04-21', ', from: nowhere, date: 2026-04-20')[0]!, /the date of ‘e1’ above it/)
  })

  it('compares days alone where one has no time, and to the minute where both have', () => {
    assert.deepEqual(told(', date: 2026-04-18 14:00', ', date: 2026-04-18'), [])
    assert.deepEqual(told(', date: 2026-04-18', ', date: 2026-04-18 09:00'), [])
    assert.equal(told(', date: 2026-04-18 14:00', ', date: 2026-04-18T13:59').length, 1)
    assert.deepEqual(told(', date: 2026-04-18T14:00:30', ', date: 2026-04-18 14:00:10'), [])
  })
})

describe('no-reason', () => {
  it('names all that was changed', () => {
    const text = `format: 1
adjusters: {r: {on: shock, controls: rebound, counts: clicks, label: Rear rebound}, p: {on: shock, controls: preload, counts: turns, label: Rear preload}}
entries:
  - {id: a, as_found: true, settings: {r: 3, p: 4}}
  - {id: b, settings: {r: 4, p: 5}}
`
    assert.match(messagesOf('no-reason', text)[0]!, /: Rear rebound; Rear preload$/)
    assert.match(messagesOf('several-changes', text)[0]!, /^2 things changed at once.*: Rear rebound; Rear preload$/)
  })
})

describe('altitude-without-unit', () => {
  const text = (altitude: string) => notebook(`id: a, as_found: true, conditions: {altitude: ${altitude}}`)
  const told = (altitude: string) => messagesOf('altitude-without-unit', text(altitude))

  it('takes ten thousand and more for mm that are meant', () => {
    assert.deepEqual([told('9999').length, told('10000').length, told('-9999').length], [1, 0, 1])
  })

  it('writes metres, without the spaces that were in quotes', () => {
    assert.match(told("' 650 '")[0]!, /such as 650 m$/)
    assert.match(fixedBy('altitude-without-unit', text("' 650 '")), /altitude: '?650 m'?\}/)
  })

  it('leaves alone what has a unit, and sea level', () => {
    assert.deepEqual([told('650 m'), told('650 mm'), told('65 cm'), told('0')].flat(), [])
  })
})

describe('unknown-rule', () => {
  it('says of what reading tells that it cannot be silenced, and of nothing else', () => {
    const rules = (code: string) => messagesOf('unknown-rule', `${notebook('id: a')}rules: {${code}: off}\n`)[0]
    assert.match(rules('wrong-shape')!, /^‘wrong-shape’ cannot be silenced: mend what it is about$/)
    assert.match(rules('no-raeson')!, /^no finding is called ‘no-raeson’; did you mean no-reason\?$/)
    assert.match(rules('zzz')!, /^no finding is called ‘zzz’$/)
  })

  it('offers no code that stands there already', () => {
    assert.match(messagesOf('unknown-rule', `${notebook('id: a')}rules: {no-reason: off, no-raeson: off}\n`)[0]!, /‘no-raeson’$/)
    const twice = `${notebook('id: a')}rules: {no-reason: off}\naccepted: [{finding: no-raeson, reason: r}]\n`
    assert.match(messagesOf('unknown-rule', twice)[0]!, /did you mean no-reason\?$/)
  })

  it('waits for a code to be typed', () => {
    assert.ok(!codesOf(`${notebook('id: a')}rules: {'': off}\n`).includes('unknown-rule'))
  })
})

describe('unknown-key', () => {
  it('offers no key that stands there already, and says what becomes of it', () => {
    assert.match(messagesOf('unknown-key', notebook('id: a, rason: r'))[0]!, /; did you mean reason\?$/)
    assert.match(messagesOf('unknown-key', notebook('id: a, rason: r, reason: s'))[0]!, /, so nothing is done with it$/)
  })

  const cut = (text: string) => messagesOf('unknown-key', text).filter((message) => message.includes('cuts the sentence')).length

  it('takes a bare word behind a comma for the rest of a sentence, and nothing else', () => {
    assert.equal(cut(notebook('id: a, ride: {felt: better, but lazy}')), 1)
    for (const ride of ['{but lazy, felt: better}', '{felt: better, but lazy: yes}', '{felt: better, "but lazy"}', '{felt: better, but lazy: {a: 1}}']) assert.equal(cut(notebook(`id: a, ride: ${ride}`)), 0, ride)
    assert.equal(cut('format: 1\nentries:\n  - id: a\n    ride:\n      felt: better\n      but lazy:\n'), 0)
  })

  it('puts the whole sentence in quotes, from where it begins', () => {
    const text = notebook('id: a, ride: {felt: better, but lazy, and slow, laps: 3}')
    assert.equal(fixedBy('unknown-key', text), notebook('id: a, ride: {felt: "better, but lazy, and slow", laps: 3}'))
  })

  it('leaves quotes to whoever began with something else than a sentence', () => {
    for (const felt of ['"better"', '{a: 1}', '[a]']) assert.throws(() => fixedBy('unknown-key', notebook(`id: a, ride: {felt: ${felt}, but lazy}`)), /offers no fix/, felt)
  })

  it('does not call a key within `entries` of something else an entry', () => {
    assert.equal(messagesOf('unknown-key', 'format: 1\nrider: {entries: {zzz: 1}}\nentries: []\n').length, 1)
  })
})
