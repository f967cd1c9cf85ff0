import { schemasAt } from '../../core/notebook/schemaKeys'
import { say } from '../../core/words/say'
import { choiceWords } from '../choiceWords'
import type { Asked, Completion } from './completion'

/** What the format lets one choose from here, with what each choice says; and its examples where it gives some. */
export function choiceCompletions({ path, cursor }: Asked): Completion[] {
  const nodes = schemasAt(path)
  const about = nodes.find((node) => node.description !== undefined)?.description
  const named = nodes.flatMap((node): readonly unknown[] => node.enum ?? (node.type === 'boolean' ? [true, false] : []))
  const examples = cursor.flow || cursor.quote ? [] : nodes.flatMap((node) => node.examples ?? [])
  return [...named, ...examples].map((value) => {
    const label = textOf(value)
    const detail = choiceWords(path, label)
    return { label, kind: 'choice', insert: label, ...(detail ? { detail } : {}), ...(about ? { about: say(about) } : {}), fromSchema: true }
  })
}

function textOf(value: unknown): string {
  return Array.isArray(value) ? `[${value.map(textOf).join(', ')}]` : String(value)
}

/** Both legs, or one of them. */
export function legsCompletions({ cursor }: Asked): Completion[] {
  if (cursor.expects !== 'value') return []
  return [['[left, right]', say('one in each leg')], ['[left]', say('in the left leg only')], ['[right]', say('in the right leg only')]].map(([label, detail]) =>
    ({ label: label!, kind: 'choice', detail: detail!, insert: label! }))
}
