/** A label at its place: how high it is, and where its middle should be. */
export interface Wanted {
  middle: number
  height: number
}

/**
 * The tops of labels side by side in one column so that none covers another: each as near to where it should be as the
 * others allow, all within `room` as long as they fit. In the order they were given.
 */
export function spreadLabels(wanted: readonly Wanted[], room: number): number[] {
  const order = wanted.map((_, at) => at).sort((a, b) => wanted[a]!.middle - wanted[b]!.middle || a - b)
  const tops = new Array<number>(wanted.length).fill(0)
  let end = 0
  for (const at of order) {
    const { middle, height } = wanted[at]!
    tops[at] = Math.max(end, middle - height / 2)
    end = tops[at]! + height
  }
  // From the bottom up again, for what was pushed out below.
  let floor = Math.max(room, wanted.reduce((sum, { height }) => sum + height, 0))
  for (const at of [...order].reverse()) {
    tops[at] = Math.min(tops[at]!, floor - wanted[at]!.height)
    floor = tops[at]!
  }
  return tops
}

export interface Box {
  left: number
  top: number
  width: number
  height: number
}

/**
 * Which of several places for a label fewest lines run through; the first among equals. Lines are points on the page in
 * their order, and are looked at every few px.
 */
export function clearestBox(boxes: readonly Box[], lines: readonly (readonly (readonly [x: number, y: number])[])[]): Box | undefined {
  const crossed = boxes.map((box) => lines.reduce((sum, points) => sum + pointsWithin(box, points), 0))
  return boxes[crossed.indexOf(Math.min(...crossed))]
}

const lookPx = 4

function pointsWithin({ left, top, width, height }: Box, points: readonly (readonly [x: number, y: number])[]): number {
  let within = 0
  points.forEach(([x, y], at) => {
    const [fromX, fromY] = points[at - 1] ?? [x, y]
    const steps = Math.min(500, Math.max(1, Math.ceil(Math.hypot(x - fromX, y - fromY) / lookPx)))
    for (let step = 1; step <= steps; step++) {
      const [px, py] = [fromX + ((x - fromX) * step) / steps, fromY + ((y - fromY) * step) / steps]
      if (px >= left && px <= left + width && py >= top && py <= top + height) within++
    }
  })
  return within
}

/** Which of so many named places get their name when each may take `widest` px of `room`: every one, or every so-manieth. */
export function namedPlaces(from: number, to: number, count: number, room: number, widest: number): number[] {
  const first = Math.max(0, Math.ceil(from))
  const last = Math.min(count - 1, Math.floor(to))
  if (last < first) return []
  const fit = Math.max(1, Math.floor((room / (to - from)) * (last - first + 1) / Math.max(1, widest)))
  const every = Math.ceil((last - first + 1) / fit)
  return Array.from({ length: Math.floor((last - first) / every) + 1 }, (_, step) => first + step * every)
}
