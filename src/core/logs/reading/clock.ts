const clock = /^(?:(\d{4})-(\d\d)-(\d\d)[T ]+)?(?:(\d{1,2}):)?(\d{1,2}):(\d{1,2})(?:[.,](\d+))?(?:Z|[+-]\d\d:?\d\d)?$/

/**
 * A time of day in seconds after midnight, or with a date (ISO 8601) in seconds since 1970. Two parts are minutes and
 * seconds and need a fraction: `12:34` alone could be either. An offset from UTC is left out: only differences matter.
 *
 * @example clockSeconds('14:03:22.125') // 50602.125
 */
export function clockSeconds(field: string): number | undefined {
  const match = clock.exec(field)
  if (!match || (match[4] === undefined && (match[7] === undefined || match[1] !== undefined))) return undefined
  const [hours, minutes, seconds] = [Number(match[4] ?? 0), Number(match[5]), Number(match[6])]
  if (hours > 24 || minutes > 59 || seconds > 60) return undefined
  const days = match[1] === undefined ? 0 : Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3])) / 86_400_000
  return days * 86_400 + hours * 3600 + minutes * 60 + seconds + Number(`0.${match[7] ?? 0}`)
}
