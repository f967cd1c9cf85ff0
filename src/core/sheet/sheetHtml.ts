import { language, phrase, say } from '../words/say'
import { sentence } from '../words/sentence'
import type { Sheet, SheetGroup, SheetMeasure, SheetPosition } from './sheet'
import { sheetSize } from './sheetSize'
import { sheetStyle } from './sheetStyle'

/** A sheet as a page that stands by itself: no script, nothing loaded, all that was written escaped. Ends in a line feed. */
export function sheetHtml(sheet: Sheet): string {
  const title = [sheet.machine, sheet.entry, sheet.date].filter(Boolean).join(' · ')
  return `<!doctype html>
<html lang="${language()}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escape(title)}</title>
<style>
${sheetStyle}
</style>
</head>
<body class="${sheetSize(sheet)}">
${head(sheet)}
<main>
${[positions(sheet), measures(sheet), watch(sheet), said(sheet), hand()].filter(Boolean).join('\n')}
</main>
${cautions(sheet)}
</body>
</html>
`
}

function head({ machine, about, entry, date, marks }: Sheet): string {
  const state = [date, ...marks].filter(Boolean).map((words) => escape(words!)).join(' · ')
  return `<header><div><h1>${escape(machine)}</h1><p>${about.map(escape).join(' · ')}</p></div><div class="state"><p class="entry">${escape(entry)}</p><p>${state}</p></div></header>`
}

function positions({ positions: groups }: Sheet): string {
  if (groups.length === 0) return `<p>${escape(say('Nothing on this machine can be adjusted.'))}</p>`
  const body = groups.map(({ label, rows }) => `<tbody><tr class="group"><th colspan="3" scope="rowgroup">${escape(label)}</th></tr>\n${rows.map(positionRow).join('\n')}</tbody>`).join('\n')
  return `<table class="positions"><thead><tr>${columns.map((column) => `<th scope="col">${escape(say(column))}</th>`).join('')}</tr></thead>\n${body}</table>`
}

const columns = [phrase('Adjuster'), phrase('Stands at'), phrase('How it is counted, and which way it turns')]

function positionRow({ label, where, stands, counted, way, changed }: SheetPosition): string {
  const uneven = stands.length > 1 ? ' class="uneven"' : ''
  const at = stands.map(({ leg, text }) => `<div><b>${escape(text)}</b>${leg ? ` <span>${escape(leg)}</span>` : ''}</div>`).join('')
  const how = sentence([counted, way].filter(Boolean).join('; '))
  const since = changed === undefined ? '' : `<small>${escape(changed)}</small>`
  return `<tr><th scope="row">${escape(label)}${where ? `<small>${escape(where)}</small>` : ''}</th><td${uneven}>${at}${since}</td><td>${escape(how)}</td></tr>`
}

function measures({ measures: groups }: Sheet): string {
  return groups.length === 0 ? '' : `<div class="measures">\n${groups.map(measureGroup).join('\n')}\n</div>`
}

function measureGroup({ label, rows, note }: SheetGroup<SheetMeasure>): string {
  const lines = rows.map(({ label: name, text }) => `<dt>${escape(name)}</dt><dd>${escape(text)}</dd>`)
  return `<section><h2>${escape(label)}</h2><dl>${lines.join('')}</dl>${note === undefined ? '' : `<small>${escape(note)}</small>`}</section>`
}

const severities = { error: phrase('Fault'), warning: phrase('Watch'), info: phrase('Note') } as const

function watch({ watch: findings }: Sheet): string {
  const lines = findings.map(({ severity, message }) => `<li><b>${escape(say(severities[severity]))}:</b> ${escape(message)}</li>`)
  return `<section class="watch"><h2>${escape(say('Watch for'))}</h2>${lines.length === 0 ? `<p>${escape(say('Nothing stands open in the notebook.'))}</p>` : `<ul>${lines.join('')}</ul>`}</section>`
}

function said({ reason, notes }: Sheet): string {
  const part = (heading: string, text: string | undefined) => (text === undefined ? '' : `<section><h2>${escape(heading)}</h2><p class="said">${escape(text)}</p></section>`)
  return [part(say('Reason'), reason), part(say('From the notebook'), notes)].filter(Boolean).join('\n')
}

const signed = [phrase('Set by'), phrase('Checked by'), phrase('Rider'), phrase('Date')]

function hand(): string {
  return `<section class="hand"><h2>${escape(say('Notes'))}</h2><div class="space"></div><p class="sign">${signed.map((who) => `<span>${escape(say(who))}</span>`).join('')}</p></section>`
}

function cautions({ cautions: all }: Sheet): string {
  return `<footer><h2>${escape(say('Take care'))}</h2><ul>${all.map((caution) => `<li>${escape(caution)}</li>`).join('')}</ul></footer>`
}

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
/** What prints nothing and could hide or turn round what stands beside it. */
const unprinted = /[\x00-\x08\x0b-\x1f\x7f-\x9f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g

function escape(text: string): string {
  return text.replace(unprinted, '').replace(/[&<>"']/g, (character) => entities[character]!)
}
