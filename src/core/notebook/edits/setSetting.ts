import type { Leg } from '../../adjusters/adjuster'
import type { TextChange } from '../../text'
import { say } from '../../words/say'
import type { Entry, Setting } from '../notebook'
import { pairOf } from '../tree'
import { contextOf, isNothing } from './layout'
import { refuseFixed, refuseMarked } from './refusal'
import { replaceScalar } from './replaceScalar'
import { asFigure, clearPath, Refusal, setPath } from './setPath'
import { figureText, inFlow } from './writeScalar'

/**
 * Sets an adjuster's position in an entry. For one leg of a pair the other leg's value stays as it is written: a value
 * that stood for both becomes `{left: …, right: …}`.
 *
 * @throws Refusal where what stands there cannot be edited as one value
 */
export function setSetting(text: string, entry: Entry, adjusterId: string, leg: Leg | undefined, typed: string): TextChange[] {
  const value = pairOf(pairOf(entry.node, 'settings')?.value, adjusterId)?.value
  const shared = sharedOf(entry, adjusterId, leg)
  if (shared && leg) return splitShared(text, entry, shared, leg, typed)
  if (value?.kind === 'map' && !leg) throw new Refusal(say`\`${adjusterId}\` is set leg by leg here`)
  const byLeg = leg && (value === undefined || value.kind === 'map' || isNothing(value))
  return setPath(text, entry.node, byLeg ? ['settings', adjusterId, leg] : ['settings', adjusterId], typed, asFigure)
}

/** The one value written for both legs, if that is what stands there. */
function sharedOf(entry: Entry, adjusterId: string, leg: Leg | undefined): Setting | undefined {
  const setting = leg && entry.settings.get(`${adjusterId}/${leg}`)
  return setting?.shared ? setting : undefined
}

function splitShared(text: string, entry: Entry, shared: Setting, leg: Leg, typed: string): TextChange[] {
  const { node } = shared
  if (node.text === typed.trim()) return []
  refuseElsewhere(text, entry, shared)
  const stood = inFlow(text, node)
  const wanted = figureText(typed, { ...contextOf(text, entry.node), flow: true }, node.alias ? undefined : node.style)
  const both = shared.adjuster.legs.map((each) => `${each}: ${each === leg ? wanted : stood}`)
  return replaceScalar(text, node, `{${both.join(', ')}}`)
}

function refuseElsewhere(text: string, entry: Entry, { node }: Setting): void {
  const settings = pairOf(entry.node, 'settings')!.value
  for (const map of [entry.node, settings]) if (map.kind === 'map') refuseFixed(text, map)
  refuseMarked(node)
}

/**
 * Takes out what an entry sets, so that the adjuster stands as in the entry it comes from again. Taking out one leg of
 * a value written for both leaves the other leg's.
 */
export function clearSetting(text: string, entry: Entry, adjusterId: string, leg: Leg | undefined): TextChange[] {
  const shared = sharedOf(entry, adjusterId, leg)
  if (shared && leg) {
    refuseElsewhere(text, entry, shared)
    const other = shared.adjuster.legs.find((each) => each !== leg)!
    return replaceScalar(text, shared.node, `{${other}: ${inFlow(text, shared.node)}}`)
  }
  const value = pairOf(pairOf(entry.node, 'settings')?.value, adjusterId)?.value
  return clearPath(text, entry.node, leg && value?.kind === 'map' ? ['settings', adjusterId, leg] : ['settings', adjusterId])
}
