/** A notebook of two adjusters up to its entries, and the first of these. */
export const head = `format: 1
machine: {name: Tern 650, use: track}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
entries:
`
export const found = `  - id: as-found
    date: 2026-04-18
    as_found: true
    settings: {fork_rebound: 5 out, shock_rebound: 7 out}   # counted twice
`
