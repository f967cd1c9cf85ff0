import { descriptions } from '../../../src/core/rules/index'
import { code, table } from './markdown'

/** The README's table of everything a notebook can be told. */
export function rulesTable(): string {
  return table(['Code', 'Severity', 'Says', 'Why'], descriptions.map((each) => [code(each.code), each.severity, each.says, each.why]))
}
