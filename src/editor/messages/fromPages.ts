import type { FromCompare, FromTurns, FromWebview } from '../../protocol'
import { isGesture } from './isGesture'
import { count, group, kindOf, listOf, maybe, oneOf, stretch, text, truth, type Shape } from './shapes'

const place = group({ column: text, row: text })
const side = oneOf('left', 'right')

const grid: Record<FromWebview['type'], Record<string, Shape>> = {
  ready: {},
  gesture: { id: count, gesture: isGesture },
  pendingSent: { id: count },
  cardAsked: { id: count, row: text, column: maybe(text) },
  adviceAsked: { id: count, column: text },
  chartsAsked: { group: oneOf('sag', 'force', 'geometry', 'log'), column: maybe(text), between: maybe(listOf(text)), within: maybe(stretch) },
  chartsLeft: {},
  openText: { place: maybe(place), line: maybe(count) },
  selectionChanged: { place: (value) => value === null || place(value), columns: listOf(text), range: truth, cells: count },
}

const compare: Record<FromCompare['type'], Record<string, Shape>> = {
  ready: {}, sidesSwapped: {}, stepped: { newer: truth }, sideAsked: { side }, filterSet: { onlyDifferences: truth },
  placeOpened: { side, place }, lineOpened: { side, line: count }, turnListAsked: {},
}

const turns: Record<FromTurns['type'], Record<string, Shape>> = { ready: {}, copyAsked: {}, saveAsked: {} }

const shapes = { grid: kindOf('type', grid), compare: kindOf('type', compare), turns: kindOf('type', turns) }
interface Messages { grid: FromWebview; compare: FromCompare; turns: FromTurns }

/** Hands on what a page says where it has the shape of a message; anything else is dropped. */
export function fromPage<Name extends keyof Messages>(name: Name, receive: (message: Messages[Name]) => void): (message: unknown) => void {
  return (message) => {
    if (shapes[name](message)) receive(message as Messages[Name])
  }
}
