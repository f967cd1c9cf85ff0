import { say } from '../words/say'
import type { Resolved } from './mapping/resolveMapping'
import type { Dialect } from './reading/dialect'
import type { Count, Tally } from './reading/tally'
import type { PipeEnd } from './rowPipe'
import type { EvenSamples } from './series/evenSamples'
import type { LogRun } from './statistics/logRun'

/** How many there are, as a whole sentence each: languages differ in what changes with a number. */
type Counted = readonly [one: string, more: string]

const counted = (times: number, [one, more]: Counted): string[] => (times === 0 ? [] : [times === 1 ? one : more])

/** All that was mended or left out, a sentence each with its count and, where there is one, the first line. */
export function notesOf({ tally, pipe, run }: Told, resolved: Resolved): string[] {
  return [...ofLines(tally), ...ofFields(tally, slotNames(resolved)), ...ofReadings(pipe, resolved), ...ofTimes(pipe, run?.even), ...(run ? ofSamples(run.counts, pipe) : [])]
}

/** What the reading, the rows and the statistics counted. */
interface Told {
  tally: Tally
  pipe: PipeEnd
  /** Absent where there was no row to begin with. */
  run: LogRun | undefined
}

/** What of a file's columns is not looked at, whoever asks. */
export function ofColumns({ unread = [] }: Dialect): string[] {
  return unread.length === 0 ? [] : [say`columns that hold several values a row are not read: ${unread.join(', ')}`]
}

function slotNames({ time, ends, brake, lap }: Resolved): string[] {
  return [time, ends.front, ends.rear, brake, lap].flatMap((each) => (each ? [each.name] : []))
}

function ofLines({ ragged, cutLastLine }: Tally): string[] {
  return [
    ...counted(ragged.times, [say('1 line with another number of fields left out'), say`${ragged.times} lines with another number of fields left out`]).map((note) => note + first(ragged)),
    ...(cutLastLine ? [say('the last line has no line end and may be cut short; it is left out')] : []),
  ]
}

function first({ firstLine, times }: Count): string {
  return firstLine === undefined ? '' : times === 1 ? say` (line ${firstLine})` : say` (the first in line ${firstLine})`
}

function ofFields({ missing, notNumbers, infinite, otherMark }: Tally, names: readonly string[]): string[] {
  const of = (counts: readonly Count[], words: (times: number) => Counted) => counts.flatMap((count, slot) => counted(count.times, words(count.times)).map((note) => `${names[slot]}: ${note}${first(count)}`))
  return [
    ...of(missing, (times) => [say('1 missing sample left out'), say`${times} missing samples left out`]),
    ...of(notNumbers, (times) => [say('1 field that is no number left out'), say`${times} fields that are no numbers left out`]),
    ...of(infinite, (times) => [say('1 infinite value left out'), say`${times} infinite values left out`]),
    ...of(otherMark, (times) => [say('1 number with the other decimal mark left out'), say`${times} numbers with the other decimal mark left out`]),
  ]
}

function ofReadings({ implausible }: PipeEnd, { ends }: Resolved): string[] {
  const names = [ends.front, ends.rear].flatMap((end) => (end ? [end.name] : []))
  return implausible.flatMap((count, at) => counted(count.times, [
    say('1 reading further away than any suspension goes left out'), say`${count.times} readings further away than any suspension goes left out`,
  ]).map((note) => `${names[at]}: ${note}${first(count)}; ${say('look at the sensor, or the scale')}`))
}

function ofTimes({ withoutTime, withoutSample, midnights }: PipeEnd, even: Partial<EvenSamples> = {}): string[] {
  const { interpolated = 0, gaps = 0, gapS = 0, backwards = 0, repeated = 0 } = even
  return [
    ...counted(withoutTime, [say('1 row without a time left out'), say`${withoutTime} rows without a time left out`]),
    ...counted(withoutSample, [say('1 row without a position passed over'), say`${withoutSample} rows without a position passed over`]),
    ...counted(repeated, [say('1 row with the time of the row before left out'), say`${repeated} rows with the time of the row before left out`]),
    ...counted(backwards, [say('time runs backwards once; each part is looked at by itself'), say`time runs backwards ${backwards} times; each part is looked at by itself`]),
    ...(midnights > 0 ? [say('the clock passes midnight')] : []),
    ...counted(gaps, [say`1 gap in time, ${gapS.toFixed(2)} s; nothing is drawn across`, say`${gaps} gaps in time, ${gapS.toFixed(2)} s together; nothing is drawn across`]),
    ...counted(interpolated, [say('1 sample drawn straight between rows that were not at their time'), say`${interpolated} samples drawn straight between rows that were not at their time`]),
  ]
}

function ofSamples({ beyondTable, withoutVelocity, lapsLeftOut }: LogRun['counts'], { brakeUnknown }: PipeEnd): string[] {
  return [
    ...counted(beyondTable, [say('1 sample beyond the leverage table, taken on in its last direction'), say`${beyondTable} samples beyond the leverage table, taken on in its last direction`]),
    ...counted(withoutVelocity, [say('1 sample in a stretch too short for a velocity'), say`${withoutVelocity} samples in stretches too short for a velocity`]),
    ...counted(lapsLeftOut, [say('1 lap beyond the first thousand left out of the table'), say`${lapsLeftOut} laps beyond the first thousand left out of the table`]),
    ...(brakeUnknown ? [say('braking is not looked for: say from which reading `on` the brake is on')] : []),
  ]
}
