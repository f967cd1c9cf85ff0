import type { Leg } from '../../adjusters/adjuster'
import type { TextChange } from '../../text'
import type { Entry, Setting } from '../notebook'
import { pairOf } from '../tree'
import { contextOf } from './layout'
import { asFigure, Refusal, removePath, setPath } from './setPath'
import { figureText } from './writeScalar'

/**
 * Sets an adjuster's position in an entry. For one leg of a pair the other leg's value stays as it is written: a value
 * that stood for both becomes `{left: …, right: …}`.
 *
 * @throws Refusal where what stands there cannot be edited as one value
 */
export function setSetting(text: string, entry: Entry, adjusterId: string, leg: Leg | undefined, typed: string): TextChange[] {
  const pair = pairOf(pairOf(entry.node, 'settings')?.value, adjusterId)
  const shared = sharedOf(entry, adjusterId, leg)
  if (shared && leg) return splitShared(text, entry, shared, leg, typed)
  if (pair?.value.kind === 'map' && !leg) throw new Refusal(`\`${adjusterId}\` is set leg by leg here`)
  const wholeHere = leg && (pair === undefined || pair.value.kind === 'map')
  return setPath(text, entry.node, wholeHere ? ['settings', adjusterId, leg] : ['settings', adjusterId], typed, asFigure)
}

/** The one value written for both legs, if that is what stands there. */
function sharedOf(entry: Entry, adjusterId: string, leg: Leg | undefined): Setting | undefined {
  const setting = leg && entry.settings.get(`${adjusterId}/${leg}`)
  return setting?.shared ? setting : undefined
}

function splitShared(text: string, entry: Entry, shared: Setting, leg: Leg, typed: string): TextChange[] {
  const { range, style, alias } = shared.node
  const settings = pairOf(entry.node, 'settings')!.value
  if (settings.kind !== 'map' || settings.alias || alias) throw new Refusal('this value is shared with another place; change it in the text')
  const stood = text.slice(range.start, range.end)
  const context = { ...contextOf(text, settings), flow: true }
  const wanted = figureText(typed, context, style)
  if (wanted === stood) return []
  const both = shared.adjuster.legs.map((each) => `${each}: ${each === leg ? wanted : stood}`)
  return [{ ...range, text: `{${both.join(', ')}}` }]
}

/**
 * Takes out what an entry sets, so that the adjuster stands as in the entry it comes from again. Taking out one leg of
 * a value written for both leaves the other leg's.
 */
export function clearSetting(text: string, entry: Entry, adjusterId: string, leg: Leg | undefined): TextChange[] {
  const shared = sharedOf(entry, adjusterId, leg)
  if (shared && leg && shared.adjuster.legs.length > 1) {
    const other = shared.adjuster.legs.find((each) => each !== leg)!
    return [{ ...shared.node.range, text: `{${other}: ${text.slice(shared.node.range.start, shared.node.range.end)}}` }]
  }
  const pair = pairOf(pairOf(entry.node, 'settings')?.value, adjusterId)
  return removePath(text, entry.node, leg && pair?.value.kind === 'map' ? ['settings', adjusterId, leg] : ['settings', adjusterId])
}
