import type { Entry } from '../core/notebook/notebook'
import { say } from '../core/words/say'
import { asText } from './asText'
import type { Steps } from './steps'

/** Asks for one of some entries, in their order. `undefined` where the question is left. */
export async function pickEntry(title: string, entries: readonly Entry[], steps: Steps): Promise<Entry | undefined> {
  const items = entries.map((entry) => {
    const marks = [entry.date?.value, entry.asFound ? say('as found') : '', entry.baseline ? say('baseline') : '']
    return { label: asText(entry.key), description: asText(marks.filter(Boolean).join(' · ')), detail: asText(entry.reason?.value.trim().replace(/\s+/g, ' ') ?? ''), entry }
  })
  return (await steps.ask(items, { title }))?.entry
}
