import { cautions } from '../../../src/core/grid/cautions'
import { commandExample } from './commandExamples'
import { commandList } from './commandList'
import { controlsTable } from './controlsTable'
import { gridKeysTable } from './gridKeysTable'
import { keysTable } from './keysTable'
import { positionsTable, quantitiesTable, refusedTable } from './notationTables'
import { rulesTable } from './rulesTable'
import { settingsTable } from './settingsTable'
import { countsTable, unitsTable } from './unitsTable'

/** The groups of the format that have a table of their own in its reference, by their path. */
export const groups: readonly string[] = [
  '', 'machine', 'machine.front', 'machine.rear', 'machine.front.air', 'machine.front.spring', 'machine.front.stack', 'machine.front.targets', 'machine.geometry', 'machine.axle_loads', 'machine.axle_loads.bike', 'machine.logger', 'machine.logger.time', 'machine.logger.front', 'machine.logger.brake', 'rider', 'adjusters.*',
  'entries.*', 'entries.*.sag', 'entries.*.sag.front', 'entries.*.sag.front.bike', 'entries.*.bounce', 'entries.*.bounce.front', 'entries.*.tyres', 'entries.*.conditions', 'entries.*.ride', 'accepted.*',
]

export function pathOfGroup(group: string): string[] {
  return group === '' ? [] : group.split('.')
}

/** What is generated in which document: it stands between `<!-- name:begin -->` and `<!-- name:end -->`. */
export const generated: Readonly<Record<string, Readonly<Record<string, () => string>>>> = {
  'README.md': {
    rules: rulesTable,
    commands: commandList,
    compare: () => commandExample('compare', 'samples/tern-650.setup.yaml#run-1', 'samples/tern-650.setup.yaml#run-2'),
    turns: () => commandExample('turns', 'samples/tern-650.setup.yaml#run-2', 'samples/tern-650.setup.yaml#run-1'),
    settings: settingsTable,
    'grid-keys': gridKeysTable,
    cautions: () => cautions.map((caution) => `- ${caution}`).join('\n'),
  },
  'schemas/FORMAT.md': {
    ...Object.fromEntries(groups.map((group) => [`keys${group === '' ? '' : `:${group}`}`, () => keysTable(pathOfGroup(group))])),
    controls: controlsTable, counts: countsTable, units: unitsTable,
    positions: positionsTable, quantities: quantitiesTable, refused: refusedTable,
  },
}

/**
 * A document with its generated sections as they must be.
 *
 * @throws Error where a section has no markers, or more than one pair of them
 */
export function withSections(document: string, sections: Readonly<Record<string, () => string>>): string {
  return Object.entries(sections).reduce((text, [name, make]) => {
    const [begin, end] = [`<!-- ${name}:begin -->\n`, `<!-- ${name}:end -->`]
    const parts = text.split(begin)
    const [, after, ...more] = parts
    const at = after?.indexOf(end) ?? -1
    if (after === undefined || more.length > 0 || at < 0) throw new Error(`the section ‘${name}’ needs one pair of markers`)
    return `${parts[0]}${begin}${make()}\n${after.slice(at)}`
  }, document)
}
