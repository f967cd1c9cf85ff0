import type { Leg } from '../core/adjusters/adjuster'
import type { Control } from '../core/adjusters/controls'
import { addAdjuster } from '../core/notebook/edits/addAdjuster'
import { guessAdjuster } from '../core/notebook/guessAdjuster'
import type { Notebook } from '../core/notebook/notebook'
import { say } from '../core/words/say'
import { blank, leaveBlank, type Filled } from './leaveBlank'

/** One way to define an adjuster. */
export interface Definition extends Filled {
  title: string
}

/**
 * The ways to define an adjuster that is set but not defined: one for each thing it can be by its name and its uses.
 * What these leave in doubt is left to be written, with the cursor there. Empty where there is no doubt at all: then
 * the finding itself carries the fix.
 */
export function definitionsOf(notebook: Notebook, name: string): Definition[] {
  const { on, legs, control, counts, possible } = guessAdjuster(notebook, name)
  if (on && legs && control && counts) return []
  const define = (controls: Control, among: readonly Leg[], where: string): Definition => {
    const facts = { id: name, on: on ?? blank, legs: among, controls: controls.name }
    // One thing is asked at a time: where it sits, else what it counts in.
    const asked = counts?.symbol ?? (facts.on === blank ? undefined : blank)
    return { title: say`Define ‘${name}’${where} as ${controls.words}`, ...leaveBlank(addAdjuster(notebook, { ...facts, ...(asked === undefined ? {} : { counts: asked }) }), false) }
  }
  return possible.flatMap((each) => {
    if (legs || on !== 'fork' || !control) return [define(each, legs ?? [], '')]
    return [define(each, ['left', 'right'], say(', in both legs,')), define(each, [], say(', just one,'))]
  })
}
