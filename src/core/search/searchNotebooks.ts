import { nearest } from '../nearest'
import { wordsAt } from '../notebook/machine'
import type { Entry, Notebook } from '../notebook/notebook'
import { isDay } from '../rules/unreadableDate'
import { say } from '../words/say'
import { entryTexts, type EntryText } from './entryTexts'
import { adjusterNames, findAdjusters } from './findAdjusters'
import { fold, readQuery, type Query } from './readQuery'
import { comparing, furthest, type Asked } from './standingsAsked'

/** An entry that was found, and what in it. */
export interface Match<Source> {
  source: Source
  notebook: Notebook
  entry: Entry
  /** The machine's name; empty where it has none. */
  machine: string
  /** The latest day up to it in its file, its own unless dates run backwards: what it is put in order by. Empty where none is known. */
  day: string
  /** What the words were found in, or what there is to say of it where it was found by positions alone. */
  found: EntryText[]
  /** How it stands, where positions were asked for. */
  stands: string[]
}

export interface Found<Source> {
  /** Newest first. */
  matches: Match<Source>[]
  /** What of the question could not be answered, and what to do; a sentence each. */
  problems: string[]
}

export interface Searched<Source> {
  source: Source
  notebook: Notebook
}

/**
 * Looks through the entries of notebooks: for words in reasons, feel, notes and names, which must all be there, and for
 * entries at which an adjuster stood somewhere. Answers ‘when did we last go this soft’. Where nothing is asked, it is all.
 */
export function searchNotebooks<Source>(sources: readonly Searched<Source>[], typed: string): Found<Source> {
  const steps = searchInSteps(sources, typed)
  for (;;) {
    const { done, value } = steps.next()
    if (done) return value
  }
}

/** The same, a notebook at a time, so that whoever looks through many can do something else in between, or give it up. */
export function* searchInSteps<Source>(sources: readonly Searched<Source>[], typed: string): Generator<undefined, Found<Source>> {
  const query = readQuery(typed)
  const answers: Found<Source>[] = []
  for (const { source, notebook } of sources) {
    answers.push(searchOne(source, notebook, query))
    yield
  }
  const matches = answers.flatMap((answer) => answer.matches)
  const strange = namesIn(query).filter((name) => sources.every(({ notebook }) => findAdjusters(notebook, name).length === 0))
  // A position that one machine cannot answer is no trouble as long as another can.
  const problems = matches.length === 0 ? answers.flatMap((answer) => answer.problems) : []
  return { matches: newestFirst(matches, sources.map(({ notebook }) => notebook)), problems: [...new Set([...strange.map((name) => unknown(name, sources)), ...problems])] }
}

const namesIn = ({ comparisons, extremes }: Query) => [...comparisons, ...extremes].map(({ adjuster }) => adjuster)

function unknown(name: string, sources: readonly { notebook: Notebook }[]): string {
  const meant = nearest(name, sources.flatMap(({ notebook }) => adjusterNames(notebook)))
  return say`No notebook here has an adjuster ‘${name}’${meant ? say`; did you mean ‘${meant}’?` : ''}`
}

function searchOne<Source>(source: Source, notebook: Notebook, query: Query): Found<Source> {
  const asked = [...query.comparisons.map((each) => comparing(notebook, each)), ...query.extremes.map((each) => furthest(notebook, each))]
  const machine = wordsAt(notebook, ['machine', 'name'])?.trim() ?? ''
  let day = ''
  const matches = notebook.entries.flatMap((entry): Match<Source>[] => {
    const own = entry.date?.value
    if (own !== undefined && own > day && isDay(own)) day = own
    const found = wordsIn(entry, machine, query.words)
    const stands = found && standing(entry, asked)
    return stands ? [{ source, notebook, entry, machine, day, found, stands }] : []
  })
  return { matches, problems: asked.flatMap(({ problem }) => (problem === undefined ? [] : [problem])) }
}

/** The texts that have the words; `undefined` where one of them is nowhere. A machine's name may have some of them. */
function wordsIn(entry: Entry, machine: string, words: readonly string[]): EntryText[] | undefined {
  const folded = foldedTexts(entry)
  const texts = folded.map(({ each }) => each)
  if (words.length === 0) return texts.slice(0, 1)
  const name = fold(machine)
  if (!words.every((word) => name.includes(word) || folded.some(({ text }) => text.includes(word)))) return undefined
  const found = folded.filter(({ text }) => words.some((word) => text.includes(word))).map(({ each }) => each)
  return found.length > 0 ? found : texts.slice(0, 1)
}

/** A search asks anew with each key, of the same entries. */
const known = new WeakMap<Entry, { each: EntryText; text: string }[]>()

function foldedTexts(entry: Entry): { each: EntryText; text: string }[] {
  const found = known.get(entry) ?? entryTexts(entry).map((each) => ({ each, text: fold(each.text) }))
  known.set(entry, found)
  return found
}

function standing(entry: Entry, asked: readonly Asked[]): string[] | undefined {
  const stands = asked.map(({ at }) => at(entry))
  return stands.includes(undefined) ? undefined : (stands as string[])
}

/** By day; of one day, notebook by notebook and the last entry of a file first. */
function newestFirst<Source>(matches: readonly Match<Source>[], notebooks: readonly Notebook[]): Match<Source>[] {
  const place = new Map(notebooks.map((notebook, at) => [notebook, at]))
  return [...matches].sort((a, b) => {
    if (a.day.slice(0, 10) !== b.day.slice(0, 10)) return a.day < b.day ? 1 : -1
    return place.get(a.notebook)! - place.get(b.notebook)! || b.entry.index - a.entry.index
  })
}
