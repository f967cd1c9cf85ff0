import { make } from '../../page/dom'
import { columns, columnsOf, type ChangeText, type ColumnName, type Line, type Value } from '../model/lines'
import { say } from '../strings'
import { drawBar } from './barDrawing'

/** The elements of a line: its row and its cells by column. */
export interface LineElements {
  row: HTMLElement
  cells: ReadonlyMap<ColumnName, HTMLElement>
}

/** Makes the row of a line, with only the sides that can be read. */
export function makeLine(line: Line, sides: readonly ColumnName[]): LineElements {
  const row = make('div', `row row-${line.kind}${line.different ? ' is-different' : ''}${line.change ? '' : ' is-wide'}`, { role: 'row' })
  const cells = new Map<ColumnName, HTMLElement>()
  for (const column of columnsOf(line).filter((each) => sides.includes(each))) {
    const cell = make('div', `cell cell-${column}`, { role: column === 'label' ? 'rowheader' : 'gridcell', 'aria-colindex': String(columns.indexOf(column) + 1), tabindex: '-1' }, ...contentOf(line, column))
    cell.dataset.column = column
    cells.set(column, cell)
    row.append(cell)
  }
  if (line.kind === 'group') {
    cells.get('label')?.setAttribute('aria-colspan', String(sides.length))
    cells.get('label')?.removeAttribute('tabindex')
  }
  return { row, cells }
}

function contentOf(line: Line, column: ColumnName): Node[] {
  switch (column) {
    case 'label': return [make('span', 'label-name', {}, line.label), ...(line.detail ? [document.createTextNode(' '), make('span', 'label-detail', {}, line.detail)] : [])]
    case 'change': return line.change ? changeContent(line.change) : []
    default: return valueContent(line[column])
  }
}

function valueContent({ text, more, mark }: Value): Node[] {
  if (text === '') return [make('span', 'nothing', { 'aria-hidden': 'true' }, '–'), make('span', 'unseen', {}, say('cell.empty'))]
  return [
    ...(mark ? [make('span', `mark mark-${mark}`, { 'aria-hidden': 'true' })] : []),
    make('span', 'value', {}, text), ...(more ? [make('span', 'more', {}, more)] : []),
  ]
}

/** Filled: beyond its uncertainty; hollow: within it. The words say both as well. */
const signs = { more: { sure: '▲', unsure: '△' }, less: { sure: '▼', unsure: '▽' } } as const

function changeContent({ words, more, quiet, bar, sign }: ChangeText): Node[] {
  const drawn = bar ? drawBar(bar) : sign ? make('span', 'sign', { 'aria-hidden': 'true' }, signs[sign.more ? 'more' : 'less'][sign.sure ? 'sure' : 'unsure']) : undefined
  const text = make('span', 'change-words', {}, make('span', quiet ? 'quiet' : 'value', {}, words), ...(more ? [make('span', 'more', {}, more)] : []))
  return [...(drawn ? [drawn] : []), text]
}
