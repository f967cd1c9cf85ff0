import type { Rotation } from '../adjusters/adjuster'
import type { ChartGroup } from '../charts/view'

/**
 * What is known about a cell, ready to read: the same card in the grid, in the text and on a key. Plain words; whoever
 * draws it lays out the sections and decides nothing.
 */
export interface Card {
  /** 'Fork rebound, right leg'. */
  title: string
  /** Where it is and what it takes: 'fork caps · 19 mm hex'. */
  subtitle?: string
  sections: CardSection[]
  /** The charts that draw this row. */
  chart?: ChartGroup
  /** What to draw: the head as the person sees it. */
  drawing?: HeadDrawing
}

export interface CardSection {
  heading: string
  lines: string[]
  /** A caution is set apart from facts. */
  caution?: boolean
  /** The drawing belongs here. */
  drawn?: boolean
}

/** The head of an adjuster as seen from where it is worked, and the rotation that turns it from there. */
export interface HeadDrawing {
  /** Seen so; absent where the view is from the side and only facing the head tells. */
  seen?: Rotation
  facing: Rotation
  /** 'seen from above', 'facing the head'. */
  viewpoint: string
  /** What the rotation is for: 'turn in' where nothing else is said. */
  purpose?: string
  /** The whole in words, for those who do not see it. */
  text: string
}
