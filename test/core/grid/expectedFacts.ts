import type { Gesture } from '../../../src/core/grid/gesture'
import { findField } from '../../../src/core/notebook/fields'
import type { GridPlace } from '../../../src/core/grid/view'
import type { Notebook } from '../../../src/core/notebook/notebook'
import { factKey, type Facts, type PlainNotebook } from './plainFacts'

/**
 * What a notebook must say after a gesture, worked out on plain facts.
 */
export function expectedFacts(before: PlainNotebook, notebook: Notebook, gesture: Gesture, reveal?: GridPlace): PlainNotebook {
  const after: PlainNotebook = { ...before, rest: { ...before.rest }, entries: before.entries.map((entry) => ({ ...entry, facts: { ...entry.facts } })) }
  const factsAt = (column: string): Facts => {
    const index = notebook.entries.findIndex(({ key }) => key === column)
    return after.entries.filter(({ isMap }) => isMap)[index]!.facts
  }
  switch (gesture.kind) {
    case 'setCell': putCell(factsAt(gesture.column), notebook, gesture.row, gesture.text); break
    case 'setCells': for (const { column, row, text } of gesture.cells) putCell(factsAt(column), notebook, row, text); break
    case 'clearCells': for (const { column, row } of gesture.cells) putCell(factsAt(column), notebook, row, ''); break
    case 'annotate': put(factsAt(gesture.column), ['remarks', gesture.row.replace(/^settings\//, '')], words(gesture.text)); break
    case 'setHeader': setHeader(after, factsAt(gesture.column), notebook, gesture); break
    case 'removeEntry': after.entries.splice(after.entries.indexOf(after.entries.find(({ facts }) => facts === factsAt(gesture.column))!), 1); break
    case 'addEntry': after.entries.push({ isMap: true, facts: newFacts(notebook, gesture, reveal!.column) }); break
    case 'returnTo': after.entries.push({ isMap: true, facts: returnFacts(notebook, gesture, reveal!.column) }); break
    default: throw new Error(`nothing is known of ${gesture.kind}`)
  }
  return after
}

function newFacts({ entries }: Notebook, { after, date, id, reason }: Extract<Gesture, { kind: 'addEntry' }>, revealed: string): Facts {
  const facts: Facts = {}
  const parent = entries.find(({ key }) => key === after)
  put(facts, ['id'], (id ?? '').trim().replace(/\s+/g, ' ') || revealed)
  put(facts, ['date'], date)
  if (parent && parent !== entries.at(-1)) put(facts, ['from'], parent.id!.value)
  if (entries.length === 0) put(facts, ['as_found'], 'true')
  put(facts, ['reason'], words(reason ?? ''))
  return facts
}

function returnFacts({ entries }: Notebook, { column, date, id, reason }: Extract<Gesture, { kind: 'returnTo' }>, revealed: string): Facts {
  const facts: Facts = {}
  put(facts, ['id'], (id ?? '').trim().replace(/\s+/g, ' ') || revealed)
  put(facts, ['date'], date)
  put(facts, ['from'], entries.find(({ key }) => key === column)!.id!.value)
  put(facts, ['reason'], words(reason))
  return facts
}

function putCell(facts: Facts, notebook: Notebook, row: string, text: string): void {
  if (row === 'bounce.front' || row === 'bounce.rear') putList(facts, row.split('.'), text)
  else put(facts, pathOf(notebook, row), text === '' ? '' : typedAs(row, text))
}

/** A list stands or falls as a whole; a blank parts two figures only where there is nothing but figures. */
function putList(facts: Facts, path: readonly string[], text: string): void {
  const typed = text.trim()
  const inside = (typed.startsWith('[') && typed.endsWith(']') ? typed.slice(1, -1) : typed).trim().replace(/,$/, '')
  const items = inside.split(/^[-+−\d.\s]+$/.test(inside) && /[\d.]\s+[-+−]?[\d.]/.test(inside) && !/[-+−]\s|[-+−]$/.test(inside) ? /\s+/ : ',').map((item) => item.trim().replace(/\s+/g, ' '))
  const [first, second] = path
  for (const key of Object.keys(facts)) {
    const keys = JSON.parse(key) as string[]
    if (keys.length === 3 && keys[0] === first && keys[1] === second && /^\d+$/.test(keys[2]!)) delete facts[key]
  }
  if (typed !== '') items.forEach((item, at) => { facts[factKey([...path, String(at)])] = item })
}

function put(facts: Facts, path: readonly string[], text: string): void {
  const key = factKey(path)
  if (text === '') delete facts[key]
  // A block has a line end that is not shown; typing what is shown changes nothing.
  else if (facts[key]?.trim() !== text) facts[key] = text
}

function pathOf(notebook: Notebook, row: string): string[] {
  if (!row.startsWith('settings/')) return row.split('.')
  const name = row.slice('settings/'.length)
  const leg = /\/(left|right)$/.exec(name)?.[1]
  if (leg === undefined || notebook.adjusters.get(name)?.legs.length === 0) return ['settings', name]
  const id = name.slice(0, -leg.length - 1)
  // A value without a leg's name is the only leg's.
  return notebook.adjusters.get(id)?.legs.length === 1 ? ['settings', id, 'only'] : ['settings', id, leg]
}

/** Figures lose what blanks they have too many, words keep theirs. */
function typedAs(row: string, text: string): string {
  const field = findField(row)
  const isFigure = row.startsWith('settings/') || field?.dimension !== undefined || row === 'ride.laps' || row.endsWith('.seconds')
  return isFigure ? text.trim().replace(/\s+/g, ' ') : words(text)
}

function words(text: string): string {
  return text.trim().replace(/\r\n?/g, '\n')
}

function setHeader(after: PlainNotebook, facts: Facts, notebook: Notebook, { column, field, text }: Extract<Gesture, { kind: 'setHeader' }>): void {
  const old = facts[factKey(['id'])]
  put(facts, [field], field === 'reason' ? words(text) : text.trim().replace(/\s+/g, ' '))
  if (field !== 'id') return
  const renamed = text.trim().replace(/\s+/g, ' ')
  const isAlone = old !== undefined && notebook.entries.filter(({ id }) => id?.value === old).length === 1
  for (const entry of after.entries) if (isAlone && entry.facts[factKey(['from'])] === old) entry.facts[factKey(['from'])] = renamed
  for (const [path, value] of Object.entries(after.rest)) {
    const [section, , key] = JSON.parse(path) as string[]
    if (section === 'accepted' && key === 'entry' && value === column) after.rest[path] = renamed
  }
}
