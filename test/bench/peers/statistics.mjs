// What every peer in JavaScript works out of its columns, as directly as it goes there; prints it for the comparison.
const half = 7

/** Statistics of columns that are in memory as a whole: medians, share of fast compression, bottoming. */
export function printStatistics(columns) {
  const found = { rows: columns.fork.length }
  for (const [end, values, limit] of [['front', columns.fork, 118], ['rear', columns.shock, 128]]) {
    const sorted = Float64Array.from(values).sort()
    const at = percent => sorted[Math.round((percent / 100) * (sorted.length - 1))]
    const percentiles = [1, 5, 10, 25, 50, 75, 90, 95, 99].map(at)
    const bins = new Uint32Array(4000)
    let [high, all, bottomed, on] = [0, 0, 0, false]
    let norm = 0
    for (let i = 1; i <= half; i++) norm += 2 * i * i
    for (let row = 0; row < values.length; row++) {
      if (on) on = values[row] >= limit - 5
      else if (values[row] >= limit) {
        on = true
        bottomed++
      }
      if (row < half || row >= values.length - half) continue
      let sum = 0
      for (let step = 1; step <= half; step++) sum += step * (values[row + step] - values[row - step])
      const velocity = (sum / norm) * 1000
      bins[Math.max(0, Math.min(3999, Math.floor(velocity / 5) + 2000))]++
      if (velocity >= 150) high++
      all++
    }
    found[end] = { median: percentiles[4], high: (100 * high) / all, bottomed }
  }
  console.log(JSON.stringify(found))
}
