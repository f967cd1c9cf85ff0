import { say } from '../words/say'
import type { Adjuster } from './adjuster'
import { isTurned } from './describeTurning'

/** Another adjuster in the same place: in the head of this one, around it, or somewhere beside it. */
export interface Neighbour {
  label: string
  tool?: string
  is: 'inside' | 'around' | 'beside'
}

/**
 * The other adjusters that sit in the same place as each, by its name: what a notebook says with `inside`, and besides
 * whatever else is turned in a place of the same name. Adjusters that have none are absent.
 */
export function findNeighbours(adjusters: ReadonlyMap<string, Adjuster>): Map<string, Neighbour[]> {
  const found = new Map<string, Neighbour[]>()
  const turned = [...adjusters.values()].filter(isTurned)
  const near = byPlace(turned)
  for (const adjuster of turned) {
    const neighbours = near(adjuster).flatMap((other) => {
      const is = other === adjuster || !share(adjuster, other) ? undefined : relation(adjuster, other)
      return is ? [{ label: other.label, is, ...(other.tool ? { tool: other.tool } : {}) }] : []
    })
    if (neighbours.length > 0) found.set(adjuster.id, neighbours)
  }
  return found
}

/** More are in no place of a machine; each with all others of thousands would keep whoever opens that waiting. */
const mostTogether = 100

/** Gives those that may be together with one, in the order of all: they name each other, or one place. */
function byPlace(turned: readonly Adjuster[]): (adjuster: Adjuster) => Adjuster[] {
  const order = new Map(turned.map((adjuster, at) => [adjuster, at]))
  const groups = new Map<string, Adjuster[]>()
  for (const adjuster of turned) {
    for (const name of namesFor(adjuster)) {
      const group = groups.get(name)
      if (group) group.push(adjuster)
      else groups.set(name, [adjuster])
    }
  }
  const of = (name: string) => groups.get(name)!
  return (adjuster) => [...new Set(namesFor(adjuster).map(of).filter(({ length }) => length <= mostTogether).flat())].sort((a, b) => order.get(a)! - order.get(b)!)
}

/** Two that are together have one of these in common. */
function namesFor(adjuster: Adjuster): string[] {
  const { id, inside, place } = adjuster
  return [`id ${id}`, ...(inside === undefined ? [] : [`id ${inside}`]), ...(place === undefined ? [] : [`place ${placeName(adjuster)}`])]
}

function relation(adjuster: Adjuster, other: Adjuster): Neighbour['is'] | undefined {
  if (other.inside === adjuster.id) return 'inside'
  if (adjuster.inside === other.id) return 'around'
  return adjuster.place !== undefined && placeName(adjuster) === placeName(other) && adjuster.on === other.on && facesAlike(adjuster, other) ? 'beside' : undefined
}

/** What stands behind a comma tells the two apart: ‘reservoir, the screw inside the hex’. */
function placeName({ place = '' }: Adjuster): string {
  return place.split(',')[0]!.trim().toLowerCase().replace(/\s+/g, ' ')
}

function facesAlike(one: Adjuster, other: Adjuster): boolean {
  return one.faces === undefined || other.faces === undefined || one.faces === other.faces
}

/** Whether they can be in one place at all: in one leg, or where there are none. */
function share(one: Adjuster, other: Adjuster): boolean {
  return one.legs.length === 0 || other.legs.length === 0 || one.legs.some((leg) => other.legs.includes(leg))
}

/** What is wrong with what an adjuster says it sits inside of; `undefined` where nothing is. */
export function insideProblem(adjuster: Adjuster, adjusters: ReadonlyMap<string, Adjuster>): string | undefined {
  const { inside, id } = adjuster
  if (inside === undefined) return undefined
  if (inside === id) return say('it cannot sit inside itself (`inside`)')
  const outer = adjusters.get(inside)
  if (!outer) return say`it sits inside ‘${inside}’, but this machine has no adjuster of that name`
  if (outer.inside === id) return say`it sits inside ‘${outer.label}’, which is said to sit inside it: take one \`inside\` out`
  if (!isTurned(adjuster) || !isTurned(outer)) return say`only what is turned can sit inside another (\`inside: ${inside}\`)`
  return share(adjuster, outer) ? undefined : say`it sits inside ‘${outer.label}’, which is in the other leg`
}

/** What to mind about the others in one place, common practice: turned along, they lose their count. */
export function neighbourWords({ neighbours = [] }: Adjuster): string[] {
  return neighbours.map(({ label, tool, is }) => {
    const withWhat = tool ? ` (${tool})` : ''
    switch (is) {
      case 'inside': return say`‘${label}’ sits inside it and must not turn along: hold it still${withWhat} while you turn this, and count it again afterwards.`
      case 'around': return say`It sits inside ‘${label}’, which must not turn along: hold that still${withWhat} while you turn this.`
      case 'beside': return say`‘${label}’${withWhat} is in the same place: make sure which of the two you turn, and that the other stays where it is.`
    }
  })
}
