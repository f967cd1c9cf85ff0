import type { Resolved } from './mapping/resolveMapping'
import type { Count, Tally } from './reading/tally'
import type { RowPipe } from './rowPipe'

const counted = (times: number, one: string, more = `${one}s`) => `${times} ${times === 1 ? one : more}`

/** All that was mended or left out, a sentence each with its count and, where there is one, the first line. */
export function notesOf(tally: Tally, pipe: RowPipe, resolved: Resolved): string[] {
  return [...ofLines(tally), ...ofFields(tally, slotNames(resolved)), ...ofReadings(pipe, resolved), ...ofTimes(pipe), ...ofSamples(pipe)]
}

function slotNames({ time, ends, brake, lap }: Resolved): string[] {
  return [time, ends.front, ends.rear, brake, lap].flatMap((each) => (each ? [each.name] : []))
}

function ofLines({ ragged, cutLastLine }: Tally): string[] {
  return [
    ...(ragged.times > 0 ? [`${counted(ragged.times, 'line')} with another number of fields left out${first(ragged)}`] : []),
    ...(cutLastLine ? ['the last line has no line end and may be cut short; it is left out'] : []),
  ]
}

function first({ firstLine, times }: Count): string {
  return firstLine === undefined ? '' : times === 1 ? ` (line ${firstLine})` : ` (the first in line ${firstLine})`
}

function ofFields({ missing, notNumbers, infinite, otherMark }: Tally, names: readonly string[]): string[] {
  const of = (counts: readonly Count[], what: string, more: string) => counts.flatMap((count, slot) => (count.times > 0 ? [`${names[slot]}: ${counted(count.times, what, more)} left out${first(count)}`] : []))
  return [
    ...of(missing, 'missing sample', 'missing samples'), ...of(notNumbers, 'field that is no number', 'fields that are no numbers'),
    ...of(infinite, 'infinite value', 'infinite values'), ...of(otherMark, 'number with the other decimal mark', 'numbers with the other decimal mark'),
  ]
}

function ofReadings({ rows }: RowPipe, { ends }: Resolved): string[] {
  const names = [ends.front, ends.rear].flatMap((end) => (end ? [end.name] : []))
  return rows.implausible.flatMap((count, at) => (count.times > 0 ? [`${names[at]}: ${counted(count.times, 'reading')} further away than any suspension goes left out${first(count)}; look at the sensor, or the scale`] : []))
}

function ofTimes({ rows, run, timeline }: RowPipe): string[] {
  const { interpolated = 0, gaps = 0, gapS = 0, backwards = 0, repeated = 0 } = run?.even ?? {}
  return [
    ...(rows.withoutTime > 0 ? [`${counted(rows.withoutTime, 'row')} without a time left out`] : []),
    ...(rows.withoutSample > 0 ? [`${counted(rows.withoutSample, 'row')} without a position passed over`] : []),
    ...(repeated > 0 ? [`${counted(repeated, 'row')} with the time of the row before left out`] : []),
    ...(backwards > 0 ? [`time runs backwards ${counted(backwards, 'time')}; each part is looked at by itself`] : []),
    ...(timeline.midnights > 0 ? ['the clock passes midnight'] : []),
    ...(gaps > 0 ? [`${counted(gaps, 'gap')} in time, ${gapS.toFixed(2)} s together; nothing is drawn across`] : []),
    ...(interpolated > 0 ? [`${counted(interpolated, 'sample')} drawn straight between rows that were not at their time`] : []),
  ]
}

function ofSamples({ run, brakeUnknown }: RowPipe): string[] {
  if (!run) return []
  const { beyondTable, withoutVelocity, lapsLeftOut } = run.counts
  return [
    ...(beyondTable > 0 ? [`${counted(beyondTable, 'sample')} beyond the leverage table, taken on in its last direction`] : []),
    ...(withoutVelocity > 0 ? [`${counted(withoutVelocity, 'sample')} in stretches too short for a velocity`] : []),
    ...(lapsLeftOut > 0 ? [`${counted(lapsLeftOut, 'lap')} beyond the first thousand left out of the table`] : []),
    ...(brakeUnknown ? ['braking is not looked for: say from which reading `on` the brake is on'] : []),
  ]
}

