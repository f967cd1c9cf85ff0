/** A notebook of three adjusters with these positions, each as it is written. */
export const text = (positions: string[]) => `format: 1
machine: {name: Tern 650, use: track}   # a comment
adjusters:
  fork_compression: {on: fork, controls: compression, counts: clicks, range: 200}
  fork_rebound: {on: fork, controls: rebound, counts: clicks, range: 200}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 200}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings: {fork_compression: ${positions[0]}, fork_rebound: ${positions[1]}, shock_rebound: ${positions[2]}}   # counted twice
`

export const before = text(['7 out', '8 out', '9 out'])
