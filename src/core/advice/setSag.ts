import type { End } from '../compute/sag/loadCase'
import { found, isMissing } from '../compute/working/result'
import { slotsFor } from '../derived/countAt'
import { preloadOf, preloadWords, type EndPreload } from '../derived/preloadOf'
import { sagOf, sagTargetOf } from '../derived/sagOf'
import { judgeSag } from '../compute/sag/judgeSag'
import { sagFeel } from '../compute/sag/sagFeel'
import { printShown, sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import type { Advice, Advisor } from './advice'
import { sagEvidence } from './sagEvidence'

/** The rider’s sag of the front, then of the rear, by preload or air. */
export const setSag: Advisor = (notebook, entry, units) => sagAt(notebook, entry, 'front', units) ?? sagAt(notebook, entry, 'rear', units)

function sagAt(notebook: Notebook, entry: Entry, end: End, units: DisplayUnits): Advice | undefined {
  const on = end === 'front' ? 'fork' : 'shock'
  const onAir = slotsFor(notebook, 'air_pressure', on).length > 0
  if (!onAir && slotsFor(notebook, 'preload', on).length === 0) return undefined
  const read = sagEvidence(notebook, entry, end, 'rider')
  if (!read) return measureSag(notebook, entry, end)
  const window = sagTargetOf(notebook, end, 'rider')
  if (isMissing(window)) return ask(end, say`note ${window.missing.map((fact) => say(fact)).join(say(' and '))}, or a window of this machine’s own under \`targets\``, read)
  const sag = found(sagOf(notebook, read, end, 'rider'))
  if (!sag) return undefined
  const { where, byMm } = judgeSag(sag, window)
  if (where === 'within') return undefined
  const figure = sayIn(units)
  const said = say`${read.key}: rider sag of the ${say(end)} is ${figure(sag.value, 'mm')}, ${figure(byMm, 'mm')} ${say(where)} the window of ${printShown({ value: window.lowMm }, 'mm', 1, units)} to ${figure(window.highMm, 'mm')} (${say(window.source)})`
  return onAir ? byAir(end, where, said) : byPreload(notebook, { entry, read, end, said }, units)
}

function byPreload(notebook: Notebook, { entry, read, end, said }: { entry: Entry; read: Entry; end: End; said: string }, units: DisplayUnits): Advice | undefined {
  const preload = preloadOf(notebook, read, end, units)
  const figure = sayIn(units)
  if (isMissing(preload)) return ask(end, say`note ${preload.missing.map((fact) => say(fact)).join(say(' and '))}`, read)
  // A range that ends before the window is reached is the spring's matter.
  if (isStuck(preload)) return undefined
  const { bikeMm, riderMm } = preload.plan.after
  const label = preload.moves[0]?.slot.adjuster.label ?? say`the ${say(end)}’s preload`
  return {
    topic: 'sag', kind: 'change', step: say`turn ${label}: ${preloadWords(preload, units)}`, evidence: [said],
    expect: [say`rider sag about ${figure(riderMm ?? 0, 'mm')}${bikeMm === undefined ? '' : say`, bike alone about ${figure(bikeMm, 'mm')}`}; the rate stays as it is`, ...feelOf(end, preload.plan.needed), ...preload.plan.limits],
    assumes: [...preload.plan.toMiddle.working.assumptions, ...(read === entry ? [] : [say`what carries this end stands as in ${read.key}`])],
  }
}

/** How it will steer, as far as anyone has printed it. More preload is less sag. */
function feelOf(end: End, preload: 'none' | 'more' | 'less'): string[] {
  const feel = preload === 'none' ? undefined : sagFeel(end, preload === 'more' ? 'less' : 'more')
  return feel ? [`${feel.words} (${say(feel.source)})`] : []
}

/** True where the adjuster is at its end already. */
export function isStuck({ plan, moves }: EndPreload): boolean {
  return plan.needed !== 'none' && moves.length > 0 && moves.every(({ move }) => move.byCounts === 0)
}

function byAir(end: End, where: 'below' | 'above', said: string): Advice {
  const more = where === 'above'
  return {
    topic: 'sag', kind: 'change', step: say`${more ? say('add') : say('let off')} a little air at the ${say(end)}, cold and with the wheel off the ground, and measure the sag again`, evidence: [said],
    expect: [say`${more ? say('less') : say('more')} sag; how much for a bar this notebook does not tell yet`], assumes: [say('pressures in the range that the manual allows')],
  }
}

function measureSag(notebook: Notebook, entry: Entry, end: End): Advice {
  const alone = sagEvidence(notebook, entry, end, 'bike')
  return {
    topic: 'sag', kind: 'measure', step: say`measure the ${say(end)}: its length with the wheel off the ground, and with the rider aboard after lifting and after pushing${alone ? '' : say('; the same with the bike alone')}`,
    evidence: [say`no rider sag of the ${say(end)} was measured with what carries it standing as it does`], expect: [say('sag, friction and the rate that both sags imply')], assumes: [],
  }
}

function ask(end: End, step: string, read: Entry): Advice {
  return { topic: 'sag', kind: 'measure', step, evidence: [say`${read.key}: the sag of the ${say(end)} was measured, and cannot be judged without`], expect: [], assumes: [] }
}
