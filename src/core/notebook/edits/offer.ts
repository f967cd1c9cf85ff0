import type { Fix } from '../../finding'
import type { TextChange } from '../../text'
import { Refusal } from './refusal'

/** A fix of a finding, ready to be listed; none where its edit is refused or there is nothing to change. */
export function offer(title: string, make: () => TextChange[]): Fix[] {
  try {
    const changes = make()
    return changes.length === 0 ? [] : [{ title, changes }]
  } catch (error) {
    if (error instanceof Refusal) return []
    throw error
  }
}
