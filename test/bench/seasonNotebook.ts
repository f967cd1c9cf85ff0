const head = `format: 1
# A season with one machine, as long as wanted.
machine:
  name: Curlew 900
  use: track
  front: {travel: 120, spring_rate: 9.5}
  rear: {travel: 130, spring_rate: 95, motion_ratio: 0.45}
  geometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}
rider: {kitted_mass: 84}
`
const paired = ['preload', 'rebound', 'low_speed_compression', 'high_speed_compression'] as const
const single = ['preload', 'rebound', 'low_speed_compression', 'high_speed_compression'] as const

/** Twelve adjusters, eight of them in two legs: twenty positions. */
function adjusters(): string {
  const rows = [
    ...paired.flatMap((controls) => ['front', 'lower'].map((part) => `  ${part}_fork_${controls}: {on: fork, legs: [left, right], controls: ${controls}, counts: clicks, range: 24, place: ${part} caps, faces: up}`)),
    ...single.map((controls) => `  shock_${controls}: {on: shock, controls: ${controls}, counts: clicks, range: 30, place: shock body, faces: rear}`),
  ]
  return `adjusters:\n${rows.join('\n')}\n`
}

function entry(index: number): string {
  const at = (step: number, most: number) => (index * step + step) % most
  const settings = [
    ...paired.flatMap((controls, row) => ['front', 'lower'].map((part, which) => {
      const unit = controls === 'preload' ? 'in' : 'out'
      return `      ${part}_fork_${controls}: {left: ${at(row + 3, 20)} ${unit}, right: ${at(row + 3, 20)} ${unit}}${which === 0 ? '   # counted twice' : ''}`
    })),
    ...single.map((controls, row) => `      shock_${controls}: ${at(row + 5, 28)} ${controls === 'preload' ? 'in' : 'out'}`),
  ]
  return `  - id: run-${index + 1}
    date: 2026-${String(1 + (Math.floor(index / 28) % 12)).padStart(2, '0')}-${String(1 + (index % 28)).padStart(2, '0')}
    settings:
${settings.join('\n')}
    sag:
      front: {extended: 152, bike: [${128 + (index % 3)}, 122], rider: [118, ${110 + (index % 2)}]}
      rear: {extended: 560, bike: [${548 + (index % 3)}, 545], rider: [528, ${523 + (index % 2)}]}
    reason: one step on, to see what it does   # as planned
    ride: {laps: ${4 + (index % 6)}, front_travel_used: ${96 + (index % 14)}, felt: steadier on the brakes}
    verdict: keep
`
}

/** The same with two positions an entry, of which ten thousand entries are no longer than a notebook may be. */
export function longSeason(entries: number): string {
  return seasonNotebook(entries).replace(/^ {6}(?:lower_fork|shock|front_fork_(?:preload|high|low)).*\n/gm, '').replace(/ +# (?:counted twice|as planned)/g, '')
}

/** A valid notebook of one machine with as many entries as wanted: twenty positions and eight lengths in each. */
export function seasonNotebook(entries: number): string {
  return `${head}${adjusters()}entries:\n${Array.from({ length: entries }, (_, index) => entry(index)).join('')}`
}
