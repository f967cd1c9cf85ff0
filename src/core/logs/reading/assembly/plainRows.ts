// AssemblyScript: TypeScript with the types of WebAssembly, compiled by `node build.mjs --generate`. What it may read is laid
// out by `plainRows.ts` beside this folder: powers of ten at 0, then where each column goes, the columns, the bytes.

const lineFeed: u32 = 10
const carriageReturn: u32 = 13
const space: u32 = 32
const quote: u32 = 34
const hash: u32 = 35
const minus: u32 = 45
const zero: u32 = 48

/** Where the places of the columns stand, four bytes each: where a column's first number goes, or 0 where it is not wanted. */
const columnsAt: usize = 128

/** How many rows there are after the last call. */
export let rows: i32 = 0

let width: i32 = 0
let separator: u32 = 0
let decimal: u32 = 0

/** How the table is written: its columns, and the bytes between fields and inside numbers. */
export function setUp(columns: i32, betweenFields: u32, insideNumbers: u32): void {
  width = columns
  separator = betweenFields
  decimal = insideNumbers
}

/**
 * Reads rows of plain decimal numbers from `at` on, until `most` rows are there or one is not plain; returns where the first
 * row begins that was not read. The bytes must be followed by a 0, which is in no row.
 */
export function readRows(at: usize, row: i32, most: i32): usize {
  while (row < most) {
    const first = <u32>load<u8>(at)
    if (first === lineFeed || first === hash || first === carriageReturn) break
    const end = readRow(at, row)
    if (end === 0) break
    at = end + 1
    row++
  }
  rows = row
  return at
}

/** Reads one row; returns the place of its line end, or 0 where it is not plain. */
// @ts-ignore: a decorator of AssemblyScript.
@inline
function readRow(begin: usize, row: i32): usize {
  let at = begin
  for (let column = 0; column < width; column++) {
    const into = <usize>load<u32>(columnsAt + (<usize>column << 2))
    at = into === 0 ? skipField(at) : readField(at, into + (<usize>row << 3))
    if (at === 0) return 0
    if (<u32>load<u8>(at) === lineFeed) return column === width - 1 ? at : 0
    at++
  }
  // A separator at the very end of a line opens no column.
  if (<u32>load<u8>(at) === carriageReturn) at++
  return <u32>load<u8>(at) === lineFeed ? at : 0
}

// @ts-ignore: a decorator of AssemblyScript.
@inline
function skipField(begin: usize): usize {
  let at = begin
  let byte = <u32>load<u8>(at)
  while (byte !== separator && byte !== lineFeed && byte !== quote && byte !== 0) byte = <u32>load<u8>(++at)
  return byte === quote || byte === 0 ? 0 : at
}

/**
 * The digits as a whole number, divided once by a power of ten: as `Number` reads up to 15 digits, to the last bit. Returns
 * the place of the separator or line end behind the field, or 0 where it is not plain.
 */
// @ts-ignore: a decorator of AssemblyScript.
@inline
function readField(begin: usize, into: usize): usize {
  let at = begin
  let byte = <u32>load<u8>(at)
  while (byte === space) byte = <u32>load<u8>(++at)
  const negative = byte === minus
  if (negative) byte = <u32>load<u8>(++at)
  let from = at
  let whole: i64 = 0
  for (let digit = byte - zero; digit < 10; digit = byte - zero) {
    whole = whole * 10 + digit
    byte = <u32>load<u8>(++at)
  }
  let digits = at - from
  let decimals: usize = 0
  if (byte === decimal) {
    from = at + 1
    byte = <u32>load<u8>(++at)
    for (let digit = byte - zero; digit < 10; digit = byte - zero) {
      whole = whole * 10 + digit
      byte = <u32>load<u8>(++at)
    }
    decimals = at - from
    digits += decimals
  }
  if (byte === carriageReturn && <u32>load<u8>(at, 1) === lineFeed) byte = <u32>load<u8>(++at)
  if ((byte !== separator && byte !== lineFeed) || digits === 0 || digits > 15) return 0
  const value = decimals === 0 ? <f64>whole : <f64>whole / load<f64>(decimals << 3)
  store<f64>(into, negative ? -value : value)
  return at
}
