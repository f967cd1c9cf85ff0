/** The bytes that mean something in a table of numbers. */
export const lineFeed = 10
export const carriageReturn = 13
export const space = 32
export const quote = 34
export const hash = 35
export const minus = 45

/** The bytes of ASCII text. @example bytesOf(',')[0] // 44 */
export function byteOf(character: string): number {
  return character.charCodeAt(0)
}

/**
 * Text from bytes: UTF-8, or Latin-1 where they are not UTF-8, as old programs write `°`. Core has no TextDecoder, which
 * belongs to the host; headings are short, so this need not be quick.
 */
export function decodeText(bytes: Uint8Array, from: number, to: number): string {
  return decodeAscii(bytes, from, to) ?? decodeUtf8(bytes, from, to) ?? Array.from(bytes.subarray(from, to), (byte) => String.fromCharCode(byte)).join('')
}

/** Nearly all of a log is so. Short enough to be handed over as arguments, or not at all. */
function decodeAscii(bytes: Uint8Array, from: number, to: number): string | undefined {
  if (to - from > 1000) return undefined
  for (let at = from; at < to; at++) if (bytes[at]! >= 0x80) return undefined
  return String.fromCharCode(...bytes.subarray(from, to))
}

function decodeUtf8(bytes: Uint8Array, from: number, to: number): string | undefined {
  const pieces: string[] = []
  for (let at = from; at < to;) {
    const first = bytes[at]!
    const more = first < 0x80 ? 0 : first >= 0xc2 && first < 0xe0 ? 1 : first >= 0xe0 && first < 0xf0 ? 2 : first >= 0xf0 && first < 0xf5 ? 3 : -1
    if (more < 0 || at + more >= to) return undefined
    let point = more === 0 ? first : first & (0x3f >> more)
    for (let step = 1; step <= more; step++) {
      const next = bytes[at + step]!
      if ((next & 0xc0) !== 0x80) return undefined
      point = (point << 6) | (next & 0x3f)
    }
    if (point > 0x10ffff || (point >= 0xd800 && point < 0xe000)) return undefined
    pieces.push(String.fromCodePoint(point))
    at += more + 1
  }
  return pieces.join('')
}
