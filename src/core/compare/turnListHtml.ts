import { headSvg } from '../card/headSvg'
import { language, say } from '../words/say'
import type { CompareSide } from './comparison'
import type { Turn, TurnGroup, TurnList, TurnStep, Unreachable } from './turns'

/**
 * The turn list as a page to be printed: black on white, with boxes to tick by pen. It loads nothing and runs nothing;
 * what a person wrote stands in it as text.
 */
export function turnListHtml(list: TurnList): string {
  const title = say`Turn list: ${list.to.title}`
  return [
    '<!DOCTYPE html>', `<html lang="${language()}">`, '<head>', '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    `<title>${text(title)}</title>`, `<style>${style}</style>`, '</head>', '<body>',
    `<h1>${text(title)}</h1>`, `<p>${text(say`From ${nameOf(list.from)}`)}<br>${text(say`To ${nameOf(list.to)}`)}</p>`,
    ...body(list), '</body>', '</html>', '',
  ].join('\n')
}

const style = `
  body { margin: 12mm; color: black; background: white; font: 14pt/1.35 sans-serif; }
  h1 { font-size: 20pt; margin: 0 0 2mm; } h2 { font-size: 16pt; margin: 6mm 0 2mm; border-bottom: 1px solid black; } h3 { font-size: 14pt; margin: 4mm 0 1mm; }
  p { margin: 0 0 1mm; } ul { margin: 0; padding: 0 0 0 6mm; } ul.ticks { list-style: none; padding: 0; }
  section, li.step { break-inside: avoid; }
  .box { display: inline-block; width: 5mm; height: 5mm; margin-right: 3mm; border: 1.5px solid black; vertical-align: -0.8mm; }
  .cannot { border: 2px solid black; padding: 2mm 4mm; } .amount { font-weight: bold; } .care { font-size: 12pt; }
  svg { display: block; width: 60mm; height: auto; }
  @page { margin: 12mm; } @media print { body { margin: 0; } }
`

function body(list: TurnList): string[] {
  if (list.refused !== undefined) return [paragraph(list.refused)]
  if (list.cannot.length + list.groups.length === 0) return [paragraph(say('Nothing to turn: it stands there already.'))]
  const said = new Set(list.cautions)
  return [
    ...(list.cannot.length === 0 ? [] : [`<section class="cannot"><h2>${text(say('Cannot be reached by turning'))}</h2><ul>${list.cannot.map(cannot).join('')}</ul></section>`]),
    ...(list.cautions.length === 0 ? [] : [`<section><h2>${text(say('Take care'))}</h2><ul class="care">${list.cautions.map((caution) => `<li>${text(caution)}</li>`).join('')}</ul></section>`]),
    ...list.groups.map((group) => groupHtml(group, said)),
    ...(list.groups.length === 0 ? [paragraph(say('Nothing else to turn.'))] : []),
  ]
}

const box = '<span class="box"></span>'
const paragraph = (words: string, kind = '') => `<p${kind && ` class="${kind}"`}>${text(words)}</p>`
const nameOf = ({ file, entry }: CompareSide) => [entry?.key, entry?.date, file].filter(Boolean).join(' · ')

function cannot({ label, legWords, place, why, instead }: Unreachable): string {
  const name = `${label}${legWords ? `, ${legWords}` : ''}${place ? ` (${place})` : ''}`
  return `<li><b>${text(name)}</b>: ${text(why)}. ${text(instead)}</li>`
}

function groupHtml({ label, first, steps }: TurnGroup, said: ReadonlySet<string>): string {
  const ticks = [...first.map((sentence) => `<li>${box}${text(sentence)}</li>`), ...steps.map((step) => stepHtml(step, said))]
  return `<section><h2>${text(label)}</h2><ul class="ticks">${ticks.join('\n')}</ul></section>`
}

function stepHtml({ label, place, tool, alike, turns, cautions }: TurnStep, said: ReadonlySet<string>): string {
  const own = cautions.filter((caution) => !said.has(caution))
  return [
    `<li class="step"><h3>${text([label, place, tool].filter(Boolean).join(' · '))}</h3>`,
    ...turns.flatMap((turn) => [turnHtml(turn), ...(alike ? [] : [wayHtml(turn)])]), ...(alike ? [wayHtml(turns[0]!)] : []),
    ...own.map((caution) => paragraph(say`Care: ${caution}`, 'care')), '</li>',
  ].join('')
}

function turnHtml({ legWords, amount, also, from, to }: Turn): string {
  return `<p>${box}${legWords ? `${text(legWords)}: ` : ''}<span class="amount">${text(amount)}</span>${also ? ` (${text(also)})` : ''}, ${text(say`from ${from} to ${to}`)}</p>`
}

function wayHtml({ how, check, drawing }: Turn): string {
  return `${drawing ? headSvg(drawing, 'black') : ''}${paragraph(how)}${paragraph(check)}`
}

function text(words: string): string {
  return words.replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`)
}
