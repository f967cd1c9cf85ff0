/** An invented machine for the tests of the language: a pair of clicks, a pair of turns, a set length, a dial, a pressure. */
export const aNotebook = `format: 1
machine: {name: Teal 500, use: track}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10, place: fork caps, tool: flat screwdriver}
  fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns, range: 15, mm_per_turn: 1}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22, clicks_per_turn: 8}
  shock_length: {on: shock, controls: ride_height, counts: mm}
  shock_cam: {on: shock, controls: preload, counts: steps, range: 7}
  left_air: {on: fork, legs: [left], controls: air_pressure, counts: psi}
entries:
  - id: found
    date: 2026-04-18
    as_found: true
    settings:
      fork_rebound: {left: 3 out, right: 6 out}
      fork_preload: 4 turns in
      shock_rebound: 7
  - id: run-1
    date: 2026-04-18
    settings: {fork_rebound: {right: 3 out}}
    reason: brought to the left
`
