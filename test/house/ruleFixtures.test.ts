import assert from 'node:assert/strict'
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Finding } from '../../src/core/finding'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { descriptions } from '../../src/core/rules/index'
import { applyChanges, lineOf, lineStarts } from '../../src/core/text'
import { fixturesTold, fixturesToldPath } from './docs/fixturesTold'
import { fixKeeps, readMarks } from './marks'
import { withLogsFrom } from './withLogsFrom'

const folder = 'test/fixtures/rules'
const pattern = /^([a-z]+(?:-[a-z]+)*)(?:\.([a-z]+(?:-[a-z]+)*))?(\.ok)?\.setup\.yaml$/

/** `<code>.setup.yaml` must fire and `<code>.ok.setup.yaml` must not; `<code>.<case>…` are further ones of either kind. */
const fixtures = readdirSync(folder).filter((name) => name !== 'logs').map((name) => {
  const match = pattern.exec(name)
  return { name, code: match?.[1], ok: match?.[2] === 'ok' || match?.[3] !== undefined, text: readFileSync(join(folder, name), 'utf8') }
})
const codes = descriptions.map(({ code }) => code)

/** As where logs are looked at: those that a fixture names lie below its folder. */
function findingsOf(text: string): Finding[] {
  return checkNotebook(withLogsFrom(folder, readNotebook(text)))
}

/** One line a finding, in the order of the text; the severity only where a mark on that line asks for one. */
function told(text: string): string[] {
  const starts = lineStarts(text)
  const asked = new Set(readMarks(text).flatMap(({ line, code, severity }) => (severity ? [`${line} ${code}`] : [])))
  return findingsOf(text).map(({ code, severity, range }) => {
    const at = `${lineOf(starts, range.start) + 1} ${code}`
    return asked.has(at) ? `${at} ${severity}` : at
  }).sort()
}

function demanded(text: string): string[] {
  const marks = readMarks(text)
  return marks.map(({ line, code }) => {
    const severity = marks.find((mark) => mark.line === line && mark.code === code && mark.severity)?.severity
    return severity ? `${line} ${code} ${severity}` : `${line} ${code}`
  }).sort()
}

/** Findings of one code in one place; the same place may have several. */
function alike({ code, place }: Finding, all: readonly Finding[]): number {
  return all.filter((other) => other.code === code && other.place?.entry === place?.entry && other.place?.row === place?.row).length
}

const ofCode = (code: string) => (finding: Finding) => finding.code === code

describe('the fixtures of the rules', () => {
  it('have a notebook that must fire and one that must not for every code there is', () => {
    const names = new Set(fixtures.map(({ name }) => name))
    const missing = codes.flatMap((code) => [`${code}.setup.yaml`, `${code}.ok.setup.yaml`]).filter((name) => !names.has(name))
    assert.deepEqual(missing, [])
  })

  it('are all named after a code', () => {
    assert.deepEqual(fixtures.filter(({ code }) => !codes.includes(code ?? '')).map(({ name }) => name), [])
  })

  it('tell what they told when somebody last looked: see what differs, and `npm run docs`', () => {
    assert.equal(fixturesTold(), readFileSync(fixturesToldPath, 'utf8'))
  })

  for (const { name, code, ok, text } of fixtures) {
    describe(name, () => {
      it('has exactly the findings that are marked, on their lines', () => {
        assert.deepEqual(told(text), demanded(text))
      })

      it(ok ? 'does not fire its rule' : 'fires its rule', () => {
        assert.equal(findingsOf(text).some(ofCode(code!)), !ok)
      })

      it('says the same with the line ends of Windows', () => {
        assert.deepEqual(told(text.replaceAll('\n', '\r\n')), demanded(text))
      })

      it('has ranges and fixes that lie inside the text', () => {
        for (const { range, fixes = [] } of findingsOf(text)) {
          for (const { start, end } of [range, ...fixes.flatMap(({ changes }) => changes)]) assert.ok(start >= 0 && start <= end && end <= text.length, `${start}–${end}`)
        }
      })

      it('has fixes that make their finding go away and break nothing', () => {
        if (fixKeeps(text) !== undefined) return
        const before = findingsOf(text)
        for (const finding of before) {
          for (const fix of finding.fixes ?? []) {
            const fixed = applyChanges(text, fix.changes)
            const after = findingsOf(fixed)
            assert.equal(readNotebook(fixed).broken, undefined, `${fix.title} breaks the text:\n${fixed}`)
            assert.ok(alike(finding, after) < alike(finding, before), `${fix.title} leaves ${finding.code}:\n${fixed}`)
          }
        }
      })

      it('survives being cut off anywhere, with every range inside the text', () => {
        for (let length = 0; length <= text.length; length += 97) {
          for (const { range, message } of findingsOf(text.slice(0, length))) {
            assert.ok(range.start >= 0 && range.start <= range.end && range.end <= length && message !== '', `${length}: ${message}`)
          }
        }
      })
    })
  }
})
