import * as vscode from 'vscode'
import type { Severity } from '../../core/finding'
import { say } from '../../core/words/say'
import type { Sessions } from './sessions'

const icons: Record<Severity, string> = { error: '$(error)', warning: '$(warning)', info: '$(info)' }

/** Two items of the status bar while a grid has the focus: where one stands in it, and what was found in the notebook. */
export function registerStatusBar(sessions: Sessions): vscode.Disposable {
  const place = vscode.window.createStatusBarItem('detent.place', vscode.StatusBarAlignment.Right, 101)
  const findings = vscode.window.createStatusBarItem('detent.findings', vscode.StatusBarAlignment.Right, 100)
  place.name = say('Setup: current cell')
  findings.name = say('Setup: findings')
  place.command = 'detent.editHeader'
  place.tooltip = say('The current cell. Press for the entry’s name, date and reason')
  findings.command = 'detent.showFindings'
  const draw = () => {
    const now = sessions.active?.whereabouts()
    show(place, now?.place)
    if (!now) return findings.hide()
    const counted = (['error', 'warning', 'info'] as const).filter((severity) => now.findings[severity] > 0)
    findings.text = now.unfinished ? '$(ellipsis)' : counted.length === 0 ? '$(pass) 0' : counted.map((severity) => `${icons[severity]} ${now.findings[severity]}`).join(' ')
    const said = now.unfinished ? say('The findings in this notebook are being worked out') : findingsInWords(now.findings)
    findings.tooltip = said
    findings.accessibilityInformation = { label: said, role: 'button' }
    findings.show()
  }
  return vscode.Disposable.from(place, findings, sessions.onDidMove(draw))
}

function show(item: vscode.StatusBarItem, text: string | undefined): void {
  if (!text) return item.hide()
  // An icon's markup in a name is none.
  item.text = text.replaceAll('$(', '$\u200b(')
  item.show()
}

function findingsInWords({ error, warning, info }: Record<Severity, number>): string {
  return say`Findings in this notebook: errors ${error}, warnings ${warning}, notes ${info}. Press to list them`
}
