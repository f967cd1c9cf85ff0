import { mapThree, type Three } from './threeWay'

/** Texts without what concerns a file as a whole, and the way back for the merged text. */
export interface Even {
  texts: Three<string>
  restore: (merged: string, hasClash: boolean) => string
}

/**
 * Sets aside what concerns a file as a whole and would make every line of it differ: a byte order mark, line ends that
 * are all of one kind, a last line without an end. Each is merged as one thing and put back afterwards.
 */
export function evenOut(texts: Three<string>): Even {
  const mark = choose(mapThree(texts, (text) => text.startsWith('\ufeff')), false)
  const bare = mapThree(texts, (text) => text.replace(/^\ufeff/, ''))
  // Where one text mixes its line ends, nobody can say which it meant: each line then keeps its own.
  const ends = mapThree(bare, lineEndsOf)
  const isEven = [ends.base, ends.ours, ends.theirs].every((end) => end !== 'mixed')
  const windows = isEven ? choose(mapThree(ends, (end) => (end === 'none' ? undefined : end === '\r\n')), false) : false
  const unended = choose(mapThree(bare, (text) => (text === '' ? undefined : !text.endsWith('\n'))), false)
  const ended = mapThree(bare, (text) => {
    const lines = isEven ? text.replaceAll('\r\n', '\n') : text
    return lines === '' || lines.endsWith('\n') ? lines : `${lines}\n`
  })
  return {
    texts: ended,
    restore: (merged, hasClash) => {
      const cut = unended && !hasClash ? merged.replace(/\n$/, '') : merged
      return (mark ? '\ufeff' : '') + (windows ? cut.replaceAll('\n', '\r\n') : cut)
    },
  }
}

/** Three-way, where an unknown says nothing; where the base is one, it is as we have it. */
function choose(three: Three<boolean | undefined>, otherwise: boolean): boolean {
  const { base, ours, theirs } = three
  if (ours === undefined || theirs === undefined) return ours ?? theirs ?? otherwise
  return base === theirs || base === undefined ? ours : theirs
}

function lineEndsOf(text: string): '\n' | '\r\n' | 'mixed' | 'none' {
  const all = text.match(/\r?\n/g) ?? []
  if (all.length === 0) return 'none'
  return all.every((end) => end === all[0]) ? (all[0] as '\n' | '\r\n') : 'mixed'
}
