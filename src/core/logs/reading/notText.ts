import { say } from '../../words/say'
import { isParquet } from './parquet/isParquet'

/** Why these bytes are no text that can be read here, in words for the person; `undefined` for text. */
export function notText(head: Uint8Array): string | undefined {
  if (head.length === 0) return say('the file is empty')
  if ((head[0] === 0xff && head[1] === 0xfe) || (head[0] === 0xfe && head[1] === 0xff)) return say('this is text in UTF-16; save it as UTF-8')
  if (head[0] === 0x1f && head[1] === 0x8b) return say('this is packed (gzip); unpack it first')
  const columns = columnFile(head)
  if (columns) return say`this is a file of ${columns}, whose columns are not read here; save it as CSV`
  if (head[0] === 0x50 && head[1] === 0x4b) return say('this is a packed file or a workbook of a spreadsheet program; export it as CSV')
  let strange = 0
  for (let at = 0; at < head.length; at++) if (isControl(head[at]!)) strange++
  if (strange > 0 && strange * 200 > head.length) return say('this is not text but a binary file; export it from the logger’s program as CSV')
  return head.includes(10) || !head.includes(13) ? undefined : say('its lines end with a carriage return alone, as on very old computers; save it with usual line ends')
}

/** What the columns of a data frame are kept in, by the first bytes; a heading may well begin with the same letters, but goes on as text. */
function columnFile(head: Uint8Array): string | undefined {
  const begins = (mark: string) => Array.from(mark, (letter) => letter.charCodeAt(0)).every((byte, at) => head[at] === byte) && isControl(head[mark.length] ?? 32)
  if (isParquet(head)) return 'Parquet'
  return begins('ARROW1') || begins('\u00ff\u00ff\u00ff\u00ff') || begins('FEA1') ? 'Arrow' : undefined
}

const isControl = (byte: number) => byte < 9 || (byte > 13 && byte < 32)
