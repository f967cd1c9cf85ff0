import * as vscode from 'vscode'
import { controls, type Control } from '../../core/adjusters/controls'
import { units } from '../../core/notation/units'
import { say } from '../../core/words/say'
import type { GridSession } from '../grid/gridSession'

const ignoreFocusOut = { ignoreFocusOut: true }

/** Asks what must be known of an adjuster, and adds it. Leaving any question leaves the notebook as it is. */
export async function addAdjuster(session: GridSession): Promise<void> {
  const control = await vscode.window.showQuickPick(
    controls.map((each) => ({ label: capital(say(each.words)), control: each })), { title: say('Add adjuster: what does it change?'), ...ignoreFocusOut })
  if (!control) return
  const place = await vscode.window.showQuickPick([
    { label: say('Fork, both legs'), on: 'fork', legs: ['left', 'right'] }, { label: say('Fork, left leg only'), on: 'fork', legs: ['left'] },
    { label: say('Fork, right leg only'), on: 'fork', legs: ['right'] }, { label: say('Shock'), on: 'shock', legs: [] },
    { label: say('Chassis'), on: 'chassis', legs: [] }, { label: say('Tyres'), on: 'tyres', legs: [] },
  ], { title: say('Add adjuster: where is it?'), ...ignoreFocusOut })
  if (!place) return
  const unit = await vscode.window.showQuickPick(countsFor(control.control), { title: say('Add adjuster: what is it counted in?'), ...ignoreFocusOut })
  if (!unit) return
  const id = await vscode.window.showInputBox({
    title: say('Add adjuster: its short name'), value: `${place.on === 'tyres' ? 'front' : place.on}_${control.control.name.replace(/^(fork|tyre)_/, '')}`,
    prompt: say('Letters, digits and _, such as fork_rebound'), ...ignoreFocusOut,
  })
  if (id === undefined) return
  const range = await vscode.window.showInputBox({
    title: say('Add adjuster: its range'), prompt: say`How many ${unit} from end to end, if someone counted; may stay empty`, ...ignoreFocusOut,
  })
  if (range === undefined) return
  await session.perform({ kind: 'addAdjuster', id, on: place.on, legs: place.legs, controls: control.control.name, counts: unit, range })
}

/** The units that suit, the usual one first. Those the format does not count in are left out. */
function countsFor({ suits }: Control): string[] {
  const known = ['clicks', 'turns', 'flats', 'rings', 'lines', 'mm', 'steps', 'dial', 'bar', 'psi', 'kPa', 'N/mm', 'kgf/mm', 'lbf/in', 'ml']
  return suits.flatMap((dimension) => units.filter((unit) => unit.dimension === dimension && known.includes(unit.symbol)).map(({ symbol }) => symbol))
}

function capital(text: string): string {
  return text[0]!.toUpperCase() + text.slice(1)
}
