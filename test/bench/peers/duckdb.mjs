// DuckDB does all of it in SQL, which is what it is good at: percentiles, velocity by a window, histogram, bottoming by lag.
import { createRequire } from 'node:module'
import { join } from 'node:path'

const [folder, file] = process.argv.slice(2)
const { DuckDBInstance } = createRequire(join(folder, 'package.json'))('@duckdb/node-api')
const connection = await (await DuckDBInstance.create(':memory:')).connect()
await connection.run(`create table log as select row_number() over () as n, Fork, Shock from read_csv('${file.replaceAll("'", "''")}')`)
const weights = [1, 2, 3, 4, 5, 6, 7]
const norm = 2 * weights.reduce((sum, weight) => sum + weight * weight, 0)
const found = { rows: Number((await connection.runAndReadAll('select count(*) from log')).getRows()[0][0]) }
for (const [end, column, limit] of [['front', 'Fork', 118], ['rear', 'Shock', 128]]) {
  const slope = weights.map(weight => `${weight} * (lead(${column}, ${weight}) over w - lag(${column}, ${weight}) over w)`).join(' + ')
  const positions = await connection.runAndReadAll(`select quantile_cont(${column}, [0.01, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.99]) from log`)
  const velocities = await connection.runAndReadAll(`with v as (select (${slope}) / ${norm} * 1000 as v from log window w as (order by n))
    select floor(v / 50) as bin, count(*), count(*) filter (v >= 150) from v where v is not null group by bin`)
  const bottomed = await connection.runAndReadAll(`with s as (select n, case when ${column} >= ${limit} then 1 when ${column} < ${limit - 5} then 0 end as state from log),
    known as (select state, lag(state) over (order by n) as before from s where state is not null) select count(*) from known where state = 1 and (before is null or before = 0)`)
  const rows = velocities.getRows()
  const sum = at => rows.reduce((total, row) => total + Number(row[at]), 0)
  found[end] = { median: Number(positions.getRows()[0][0].items[4]), high: (100 * sum(2)) / sum(1), bottomed: Number(bottomed.getRows()[0][0]) }
}
console.log(JSON.stringify(found))
