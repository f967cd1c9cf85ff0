import { readFileSync } from 'node:fs'
import { descriptions } from '../../../src/core/rules'
import { speak } from '../../../src/core/words/say'
import { everyPhrase } from './phrases'

/** A language without words: of every text only its values are left, so that whatever has letters was not said. */
export function speakNothing(): void {
  speak(Object.fromEntries(everyPhrase().map(({ key, english }) => [key, `◊${[...english.matchAll(/\{\d+\}/g)].map(([mark]) => ` ${mark} `).join('')}◊`])))
}

/** Words of the file format that stand in positions and quantities as they are written in a file, in any language. */
const formatWords = 'kg GPa cm clicks click turns turn flats flat rings ring lines line steps step dial out in mm inch kgf lbf bar psi kPa deg Nm Hz'.split(' ')

/** The keys and choices of the format and the codes of findings, which some findings name. */
export const namesOfFormat = ['true', 'false', ...wordsOfFormat(JSON.parse(readFileSync('schemas/setup.schema.json', 'utf8'))), ...descriptions.map(({ code }) => code)].join(' ')

/** Words that stand in every file, and are said all the same where a view shows them by themselves. */
const alwaysSaid = /^(left|right|front|rear)( \/ (left|right))?$/

/** Keys of a view whose texts are names for programs, and never shown. */
const unseen = new Set([
  'key', 'row', 'code', 'worst', 'onlyIn', 'way', 'rotation', 'view', 'severity', 'kind', 'state', 'group', 'form', 'entry', 'entries', 'of', 'on', 'chart', 'column', 'columns', 'direction', 'sizeIs', 'about/key', 'end', 'choices', 'slot', 'leg', 'seen', 'facing', 'topic', 'icon', 'id', 'path', 'sense', 'stroke', 'symbol',
])

/** The words of a view that were neither said nor stand in the file, each with where it was met. */
export function lettersLeft(view: unknown, fileText: string, allowed: readonly RegExp[] = []): string[] {
  const known = new Set([...words(fileText), ...formatWords].map((word) => word.toLowerCase()))
  const left: string[] = []
  const visit = (node: unknown, path: string): void => {
    if (typeof node === 'string') {
      const text = allowed.reduce((rest, pattern) => rest.replace(pattern, ''), node)
      const strange = words(text).filter((word) => alwaysSaid.test(text) || !known.has(word.toLowerCase()))
      if (strange.length > 0) left.push(`${path}: ${strange.join(' ')} | ${node}`)
    } else if (node instanceof Map) for (const [key, value] of node) visit(value, `${path}.${String(key)}`)
    else if (Array.isArray(node)) node.forEach((each) => visit(each, path))
    else if (typeof node === 'object' && node !== null) for (const [key, value] of Object.entries(node)) if (!unseen.has(key)) visit(value, `${path}.${key}`)
  }
  visit(view, '')
  return [...new Set(left)]
}


function wordsOfFormat(node: unknown): string[] {
  if (typeof node !== 'object' || node === null) return []
  return Object.entries(node).flatMap(([key, value]) => [
    ...(key === 'properties' ? Object.keys(value as object).flatMap(words) : []), ...(key === 'enum' ? (value as unknown[]).flatMap((each) => words(String(each))) : []), ...wordsOfFormat(value),
  ])
}

function words(text: string): string[] {
  return text.match(/\p{L}{2,}/gu) ?? []
}
