import { oneLine } from '../oneLine'

const byEntity: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '|': '&#124;', $: '&#36;' }
/** Prints nothing, and keeps a forge from making a mention or a reference of what stands on both sides of it. */
const apart = '&#8203;'

/**
 * What a person wrote, as one line of Markdown that reads as it was written: nothing in it is markup, breaks out of a
 * table's cell, is taken for HTML, notifies anyone or refers to an issue. What only a table or a tag could read is
 * written as an entity, for which no renderer looks for structure; the rest has a backslash.
 */
export function markdownText(text: string): string {
  return oneLine(text)
    .replace(/[\\`*_{}[\]~^#]|[&<>|$]/g, (character) => byEntity[character] ?? `\\${character}`)
    // A person, an issue, a merge request, a milestone, a label, a commit, a smiley.
    .replace(/@(?=\S)/g, `@${apart}`)
    .replace(/(\\[#~]|[!%])(?=[\p{L}\p{N}"])/gu, `$1${apart}`)
    .replace(/(&#36;|&amp;)(?=[\p{L}\p{N}"])/gu, `$1${apart}`)
    .replace(/(GH-)(?=\d)/gi, `$1${apart}`)
    .replace(/:(?=[\w+-]+:)/g, `:${apart}`)
    // An address that a stranger wrote is read before it is followed.
    .replace(/:(?=\/\/)/g, `:${apart}`)
    .replace(/(www)(?=\.)/gi, `$1${apart}`)
    // At the start of a line these would begin a list, or be a rule.
    .replace(/^([-+](?=\s|-|$)|\d{1,9}(?=[.)](?:\s|$)))/, (start) => (/\d/.test(start) ? `${start}${apart}` : `\\${start}`))
}
