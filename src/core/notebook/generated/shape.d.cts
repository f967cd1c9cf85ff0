/** The schema check, compiled from schemas/setup.schema.json by build.mjs. */
interface ShapeError {
  /** JSON pointer to the value that is wrong. */
  instancePath: string
  keyword: string
  params: Record<string, unknown>
  message?: string
}
declare const check: { (value: unknown): boolean; errors?: ShapeError[] | null }
export = check
