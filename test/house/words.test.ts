import assert from 'node:assert/strict'
import { readFileSync, readdirSync } from 'node:fs'
import { everyPhrase, wordsOf } from './words/phrases'

const placeholders = (text: string) => [...text.matchAll(/\{\d+\}/g)].map(([mark]) => mark).sort().join(' ')

describe('the words of other languages', () => {
  const said = everyPhrase()
  for (const language of readdirSync('src/words')) {
    const parts = wordsOf(language)
    const words = new Map(parts.flatMap(({ words }) => Object.entries(words)))

    it(`have a text for everything that is said (${language})`, () => {
      assert.ok(said.length > 200, 'little is found to be said')
      assert.deepEqual(said.filter(({ key }) => !words.get(key)?.trim()).map(({ key, file }) => `${file}: ${key}`), [])
    })

    it(`have none that nobody says (${language})`, () => {
      const keys = new Set(said.map(({ key }) => key))
      assert.deepEqual([...words.keys()].filter((key) => !keys.has(key)), [])
    })

    it(`have each in one part alone (${language})`, () => {
      assert.equal(parts.reduce((sum, { words }) => sum + Object.keys(words).length, 0), words.size)
    })

    it(`take the same values as the English ones (${language})`, () => {
      const differing = said.filter(({ key, english }) => words.has(key) && placeholders(words.get(key)!) !== placeholders(english))
      assert.deepEqual(differing.map(({ key }) => [key, words.get(key)]), [])
    })

    it(`begin and end as the English ones do (${language})`, () => {
      const ends = (text: string) => [/^\s*/.exec(text)![0], /[.!?…:]?\s*$/.exec(text)![0]].join('|')
      const differing = said.filter(({ key, english }) => words.has(key) && ends(words.get(key)!) !== ends(english))
      assert.deepEqual(differing.map(({ key }) => [key, words.get(key)]), [])
    })
  }
})

describe('the manifest', () => {
  const manifest = readFileSync('package.json', 'utf8')
  const texts = (file: string) => JSON.parse(readFileSync(file, 'utf8')) as Record<string, string>
  const named = [...manifest.matchAll(/"%([^%"]+)%"/g)].map(([, key]) => key!).sort()

  it('has its texts beside it, in every language', () => {
    assert.ok(named.length > 70)
    for (const file of ['package.nls.json', ...readdirSync('src/words').map((language) => `package.nls.${language}.json`)]) {
      const known = texts(file)
      assert.deepEqual(Object.keys(known).sort(), named, file)
      assert.deepEqual(Object.entries(known).filter(([, text]) => !text.trim()), [])
    }
  })

  it('shows no text of its own', () => {
    const shown = [...manifest.matchAll(/"(title|description|markdownDescription|contents|label|displayName)": "([^%"][^"]*)"/g)].map(([, , text]) => text)
    assert.deepEqual([...new Set(shown)], ['Detent'])
  })
})
