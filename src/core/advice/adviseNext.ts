import { phrase } from '../words/say'
import { isBlocked } from './isBlocked'
import { fileUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import type { Advice, Advisor } from './advice'
import { checkFigures } from './checkFigures'
import { chooseSpring } from './chooseSpring'
import { freeFork } from './freeFork'
import { legsAlike } from './legsAlike'
import { setSag } from './setSag'
import { tuneRebound } from './tuneRebound'
import { useTravel } from './useTravel'

/** Who is asked, in the order of the trade. */
const advisors: readonly Advisor[] = [legsAlike, freeFork, setSag, chooseSpring, useTravel, tuneRebound, checkFigures]

const justRide: Advice = {
  topic: 'ride', kind: 'ride', step: phrase('leave it as it is and ride; then write down the travel used and what it felt like'),
  evidence: [phrase('nothing that was measured asks for a change')], expect: [], assumes: [],
}

/** The one next step for the state of an entry: the first that anyone in the order of the trade has to name. */
export function adviseNext(notebook: Notebook, entry: Entry, units = fileUnits): Advice {
  const blocked = isBlocked(notebook, entry)
  if (blocked) return blocked
  for (const advisor of advisors) {
    const advice = advisor(notebook, entry, units)
    if (advice) return advice
  }
  return justRide
}
