import assert from 'node:assert/strict'
import * as vscode from 'vscode'
import { say } from './report'
import { settings } from './settings'
import { until } from './waiting'
import { activate } from './workspace'

/** A line of the editor's own table: identifier, eager, load, call and finish of the activation in ms, event, by whom. */
const row = /^\|\s*detent\.detent\s*\|\s*\w+\s*\|\s*(\d+)\s*\|\s*(\d+)\s*\|\s*(\d+)\s*\|/m

describe('the activation', () => {
  it('is told by the editor’s startup performance, and is no matter of tenths of a second', async function () {
    // A browser's host is told apart, and starts us with the whole at once.
    if (settings().web) this.skip()
    await activate()
    await vscode.commands.executeCommand('perfview.show')
    let found: RegExpExecArray | null = null
    await until('the editor tells how long we took', () => {
      const report = vscode.workspace.textDocuments.find(({ uri }) => uri.scheme === 'perf')
      found = report ? row.exec(report.getText()) : null
      return found !== null
    })
    const [load, call, finish] = found!.slice(1).map(Number) as [number, number, number]
    say(`activation: load ${load} ms, call ${call} ms, finish ${finish} ms`)
    assert.ok(load + call < 250)
  })
})
