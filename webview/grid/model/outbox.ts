import type { Gesture } from '../../../src/core/grid/gesture'
import type { LeftOut } from '../../../src/core/grid/applyGesture'
import type { GridPlace } from '../../../src/core/grid/view'
import type { FromWebview } from '../../../src/protocol'

/** What the host said to a gesture. */
export interface Answer {
  refused?: string
  /** Cells that were left out while others were written. */
  left?: LeftOut[]
  reveal?: GridPlace
}

/** How long an answer may take, in ms, before a person is told that nobody listens. */
export const patienceMs = 2000

export interface OutboxPorts {
  send(message: FromWebview): void
  later(ms: number, action: () => void): void
  /** Whether the host answers, whenever that changes. */
  silenceChanged(silent: boolean): void
}

/** Sends gestures, gives each its number and notices when the host has stopped answering. */
export class Outbox {
  silent = false
  #last = 0
  #waiting = new Map<number, (answer: Answer) => void>()

  constructor(readonly ports: OutboxPorts) {}

  /** Sends it; `answered` is called when the host answers, be it ever so late. Gives the gesture's number. */
  send(gesture: Gesture, answered: (answer: Answer) => void): number {
    const id = ++this.#last
    this.#waiting.set(id, answered)
    this.ports.send({ type: 'gesture', id, gesture })
    this.ports.later(patienceMs, () => this.#waiting.has(id) && this.#setSilent(true))
    return id
  }

  /** The host answered. */
  take(id: number, answer: Answer): void {
    const answered = this.#waiting.get(id)
    this.#waiting.delete(id)
    if (this.#waiting.size === 0) this.#setSilent(false)
    answered?.(answer)
  }

  #setSilent(silent: boolean): void {
    if (silent === this.silent) return
    this.silent = silent
    this.ports.silenceChanged(silent)
  }
}
