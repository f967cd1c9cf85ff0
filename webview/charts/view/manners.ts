/** How the series of a chart are told apart without colour: each has a dash and a mark of its own, in this order. */
export const dashes: readonly (readonly number[])[] = [[], [7, 4], [2, 3], [10, 3, 2, 3]]

/** The mark of a series around a place, as an SVG path: disc, square, triangle, diamond. Every other one is hollow. */
export function markPath(series: number, x: number, y: number, r: number): string {
  switch (series % 4) {
    case 0: return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`
    case 1: return `M${x - r * 0.9} ${y - r * 0.9}h${r * 1.8}v${r * 1.8}h${-r * 1.8}z`
    case 2: return `M${x} ${y - r * 1.15}l${r * 1.1} ${r * 2}h${-r * 2.2}z`
    default: return `M${x} ${y - r * 1.25}l${r * 1.2} ${r * 1.25}l${-r * 1.2} ${r * 1.25}l${-r * 1.2} ${-r * 1.25}z`
  }
}

export const isHollow = (series: number): boolean => series % 2 === 1

/** There are so many inks; a further series begins anew, with another dash. */
export const inkCount = 4

export const dashOf = (series: number): readonly number[] => dashes[(series + Math.floor(series / inkCount)) % dashes.length]!
