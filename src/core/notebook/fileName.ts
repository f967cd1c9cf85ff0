const ending = /\.setup\.ya?ml$/i
const halfEnding = /\.(?:setup|ya?ml)$/i

/** Whether a path names a notebook: `*.setup.yaml` or `*.setup.yml`. */
export const isNotebookPath = (path: string): boolean => ending.test(path)

/** A file's name without its folders and without a notebook's ending. @example 'bikes/tern-650.setup.yaml' gives 'tern-650' */
export function bareName(path: string): string {
  return path.replace(/^.*[/\\]/, '').replace(ending, '')
}

/**
 * A path as that of a notebook. A dialog for files puts the ending of its filter, or half of it, behind whatever was typed.
 * @example 'bikes/tern', 'bikes/tern.yaml' and 'bikes/tern.yaml.setup.yaml' give 'bikes/tern.setup.yaml'
 */
export function asNotebookPath(path: string): string {
  let name = path
  while (halfEnding.test(name)) name = name.replace(halfEnding, '')
  return `${name}.setup.${/\.yml$/i.test(path) ? 'yml' : 'yaml'}`
}
