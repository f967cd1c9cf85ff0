import { controls } from '../../../src/core/adjusters/controls'
import { code, table } from './markdown'

const counted = { closed: 'out from fully closed', open: 'in from fully backed off' }

/** What an adjuster may control, how it is counted by custom, and what more of it does. */
export function controlsTable(): string {
  return table(['`controls`', 'Counted by custom', 'Turned in, or a higher figure'], controls.map((control) => [
    code(control.name), control.counted ? counted[control.counted] : 'measured', `${control.more}: ${control.moreDoes}`,
  ]))
}
