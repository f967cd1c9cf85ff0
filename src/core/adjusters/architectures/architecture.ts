import type { Facing, Rotation } from '../adjuster'

/** A question that a new notebook cannot do without, because machines of one kind differ in it. */
export interface Question {
  key: string
  /** In words for people: 'Which leg has the rebound adjuster?' */
  label: string
  choices: readonly { value: string; label: string }[]
  /** What is taken when nobody answers. */
  usual: string
}

/** Answers by the question's key. What is missing, or is none of the choices, is the usual. */
export type Answers = Readonly<Record<string, string>>

/** The facts of an adjuster, under the names of the file format, in the order in which they are written. */
export type Facts = {
  label?: string
  on: 'fork' | 'shock' | 'chassis' | 'tyres'
  legs?: readonly ('left' | 'right')[]
  controls: string
  counts: string
  higher_is?: 'more' | 'less'
  place?: string
  tool?: string
  faces?: Facing
  worked_from?: 'above' | 'below' | 'front' | 'rear' | 'left' | 'right'
  closes?: Rotation
  held_by?: 'ball' | 'o_ring' | 'friction' | 'locknut' | 'nothing'
  inside?: string
  notes?: string
}

/** An adjuster of a new notebook: its short name and its facts. */
export type NewAdjuster = readonly [id: string, facts: Facts]

/** A kind of machine: what can be adjusted on it and where. A starting point, to be corrected on the machine. */
export interface Architecture {
  key: string
  label: string
  /** One sentence. */
  about: string
  /** What it must ask beside the machine's name; mostly nothing. */
  asks: readonly Question[]
  adjusters: (answer: (key: string) => string) => readonly NewAdjuster[]
  /** Lines that belong under `machine`, such as `rear: {springs: 2}`. */
  machine?: readonly string[]
}

/** The answer to a question of an architecture: the one given if it is a choice, else the usual one. */
export function answerTo(questions: readonly Question[], answers: Answers): (key: string) => string {
  return (key) => {
    const question = questions.find((each) => each.key === key)
    const given = Object.hasOwn(answers, key) ? answers[key] : undefined
    const choice = question?.choices.find((each) => each.value === given)
    return choice?.value ?? question?.usual ?? ''
  }
}
