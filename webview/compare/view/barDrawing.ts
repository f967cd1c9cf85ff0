import type { Bar } from '../model/bar'

const svg = 'http://www.w3.org/2000/svg'
/** The drawing's measures, in its own units: as many to the range as there are percent. */
const [left, right, width, height, middle] = [8, 108, 116, 14, 7]

function shape(name: string, attributes: Record<string, string | number>): SVGElement {
  const element = document.createElementNS(svg, name)
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value))
  return element
}

/**
 * The size of a change as a drawing for the eye; its words stand beside it. A line is the range with its ends, a ring is
 * where it stood and a tip where it stands; where the range is not known the line is broken and the bar starts from its middle.
 */
export function drawBar(bar: Bar): SVGElement {
  const drawing = shape('svg', { class: 'bar', viewBox: `0 0 ${width} ${height}`, width, height, 'aria-hidden': 'true', focusable: 'false' })
  if (bar.kind === 'range') {
    const [from, to] = [placeOf(bar.from), placeOf(bar.to)]
    drawing.append(
      shape('path', { class: 'bar-line', d: `M${left} ${middle}H${right}M${left} 3V11M${right} 3V11` }),
      ...arrow(from, to), shape('circle', { class: 'bar-ring', cx: from, cy: middle, r: 3 }),
    )
    return drawing
  }
  const centre = (left + right) / 2
  drawing.append(
    shape('path', { class: 'bar-line bar-unknown', d: `M${left} ${middle}H${right}` }), shape('path', { class: 'bar-line', d: `M${centre} 2V12` }),
    ...arrow(centre, centre + (bar.more ? 1 : -1) * bar.size * (right - centre)),
  )
  return drawing
}

const placeOf = (share: number) => left + share * (right - left)

/** So far from the ring a tip is seen whole; a smaller change is drawn as large as this. */
const least = 9

/** A stroke that ends in a tip, which points the way also where the stroke is too short to be seen. */
function arrow(from: number, end: number): SVGElement[] {
  const way = end < from ? -1 : 1
  const to = Math.min(right + 4, Math.max(left - 4, from + way * Math.max(least, Math.abs(end - from))))
  return [
    shape('path', { class: 'bar-stroke', d: `M${from} ${middle}H${to - 3 * way}` }),
    shape('path', { class: 'bar-tip', d: `M${to + 2 * way} ${middle}L${to - 5 * way} 2.5V11.5Z` }),
  ]
}
