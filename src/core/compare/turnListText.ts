import { say } from '../words/say'
import type { CompareSide } from './comparison'
import { oneLine } from './oneLine'
import type { Turn, TurnGroup, TurnList, TurnStep, Unreachable } from './turns'

/** The turn list as plain text, to be copied, printed or read on a phone. Ends in a line feed. */
export function turnListText(list: TurnList): string {
  const head = [say`Turn list: ${list.to.title}`, say`From ${nameOf(list.from)}`, say`To   ${nameOf(list.to)}`]
  if (list.refused !== undefined) return lines([...head, '', list.refused])
  if (list.cannot.length + list.groups.length === 0) return lines([...head, '', say('Nothing to turn: it stands there already.')])
  const said = new Set(list.cautions)
  return lines([
    ...head,
    ...section(say('Cannot be reached by turning'), list.cannot.flatMap(cannotLines)),
    ...section(say('Take care'), list.cautions.map((caution) => `- ${caution}`)),
    ...list.groups.flatMap((group) => section(group.label, groupLines(group, said))),
    ...(list.groups.length === 0 ? ['', say('Nothing else to turn.')] : []),
  ])
}

const lines = (all: readonly string[]) => `${all.join('\n')}\n`
const section = (heading: string, body: readonly string[]) => (body.length === 0 ? [] : ['', heading, ...body.map((line) => `  ${line}`)])

/** An entry's day and file, on one line. */
function nameOf({ file, entry }: CompareSide): string {
  return oneLine([entry?.key, entry?.date, file].filter(Boolean).join(' · '))
}

function cannotLines({ label, legWords, place, why, instead }: Unreachable): string[] {
  return [`! ${oneLine(named(label, legWords, place))}: ${oneLine(why)}.`, `    ${oneLine(instead)}`]
}

const named = (label: string, legWords: string, place: string | undefined) => `${label}${legWords ? `, ${legWords}` : ''}${place ? ` (${place})` : ''}`

function groupLines({ first, steps }: TurnGroup, said: ReadonlySet<string>): string[] {
  return [...first.map((sentence) => `[ ] ${sentence}`), ...steps.flatMap((step) => stepLines(step, said))]
}

function stepLines(step: TurnStep, said: ReadonlySet<string>): string[] {
  const { label, place, tool, alike, turns, cautions } = step
  const head = oneLine([label, place, tool].filter(Boolean).join(' · '))
  const shared = alike ? howLines(turns[0]!) : []
  return [
    head,
    ...turns.flatMap((turn) => [`  [ ] ${turn.legWords ? `${turn.legWords}: ` : ''}${turn.amount}${turn.also ? ` (${turn.also})` : ''}, ${say`from ${turn.from} to ${turn.to}`}`, ...(alike ? [] : howLines(turn))]),
    ...shared,
    ...cautions.filter((caution) => !said.has(caution)).map((caution) => `      ${say`Care: ${caution}`}`),
  ]
}

const howLines = ({ how, check }: Turn) => [`      ${how}`, `      ${check}`]
