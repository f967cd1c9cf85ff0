import type { LabelPart, Measure } from '../model/labels'

const pen = document.createElement('canvas').getContext('2d')

/** The share of the page's type that a part of a label has, as grid.css has it. */
const shares: Record<LabelPart, number> = { name: 1, detail: 1, unit: 0.85 }

/** Measures texts in the type that an element has now, which the person chooses; each text once. */
export function measureIn(element: HTMLElement): Measure {
  const { fontFamily, fontSize, fontWeight } = getComputedStyle(element)
  const known = new Map<string, number>()
  return (text, part) => {
    const key = `${part} ${text}`
    let width = known.get(key)
    if (width === undefined) {
      const px = parseFloat(fontSize) * shares[part]
      if (pen) pen.font = `${fontWeight} ${px}px ${fontFamily}`
      known.set(key, width = pen ? pen.measureText(text).width : text.length * px * 0.55)
    }
    return width
  }
}
