// A mocha reporter: a dot for each test, then what failed; the sums and what failed go as JSON to the file named in the option `file`.
const { writeFileSync } = require('node:fs')
const { Dot } = require('mocha').reporters
const failureOf = require('./failureOf.cjs')

module.exports = class extends Dot {
  constructor(runner, options) {
    super(runner, options)
    const told = []
    runner.on('fail', (test, error) => told.push(failureOf(test, error)))
    runner.once('end', () => {
      const { passes, failures, pending } = runner.stats
      writeFileSync(options.reporterOptions.file, JSON.stringify({ passed: passes, failed: failures, skipped: pending, told, finished: true }))
    })
  }
}
