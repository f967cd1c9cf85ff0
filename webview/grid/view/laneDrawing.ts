import type { LaneMarks } from '../model/lanes'
import { laneHeight, laneTop } from './sizes'

const namespace = 'http://www.w3.org/2000/svg'
/** Where an entry's dot stands, px from its column's left, and how far a line takes to change its lane. */
const dotAt = 15
const turn = 16

/** The history over one column, as wide as that. It says nothing that is not said in words as well. */
export function drawLanes(svg: SVGSVGElement, marks: LaneMarks, width: number, lanes: number): void {
  const y = (lane: number) => laneTop + lane * laneHeight + laneHeight / 2
  const own = y(marks.own)
  const lines = [
    ...marks.passing.map((lane) => `M0 ${y(lane)}H${width}`),
    ...(marks.comes ? [`M0 ${own}H${dotAt}`] : []),
    ...(marks.goesOn ? [`M${dotAt} ${own}H${width}`] : []),
    ...marks.leaves.map((lane) => `M${dotAt} ${own}C${dotAt + turn * 0.6} ${own} ${dotAt + turn * 0.4} ${y(lane)} ${dotAt + turn} ${y(lane)}H${width}`),
  ]
  const path = document.createElementNS(namespace, 'path')
  path.setAttribute('class', 'lane-line')
  path.setAttribute('d', lines.join(''))
  const dot = document.createElementNS(namespace, 'circle')
  dot.setAttribute('class', marks.left ? 'lane-dot is-left' : 'lane-dot')
  for (const [name, value] of [['cx', dotAt], ['cy', own], ['r', 3.5]] as const) dot.setAttribute(name, String(value))
  const height = laneTop + lanes * laneHeight
  svg.setAttribute('viewBox', `0 0 ${width} ${height}`)
  svg.setAttribute('width', String(width))
  svg.setAttribute('height', String(height))
  svg.replaceChildren(path, dot)
}

export function makeLanes(): SVGSVGElement {
  const svg = document.createElementNS(namespace, 'svg')
  svg.setAttribute('class', 'lanes')
  svg.setAttribute('aria-hidden', 'true')
  return svg
}
