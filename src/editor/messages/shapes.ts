/** Whether a value that came from a page has a shape. A page shows what strangers wrote, so nothing it says is taken as it comes. */
export type Shape = (value: unknown) => boolean

/** More than a person types, and no more than a notebook takes. */
const longestText = 4_000_000
const mostItems = 400_000

export const text: Shape = (value) => typeof value === 'string' && value.length <= longestText
export const count: Shape = (value) => typeof value === 'number' && Number.isSafeInteger(value) && value >= 0
export const whole: Shape = (value) => typeof value === 'number' && Number.isSafeInteger(value)
export const truth: Shape = (value) => typeof value === 'boolean'

/** From one number up to another. */
export const stretch: Shape = (value) => Array.isArray(value) && value.length === 2 && value.every(Number.isFinite) && value[0] < value[1]

export function oneOf(...values: readonly unknown[]): Shape {
  return (value) => values.includes(value)
}

export function maybe(shape: Shape): Shape {
  return (value) => value === undefined || shape(value)
}

export function listOf(shape: Shape): Shape {
  return (value) => Array.isArray(value) && value.length <= mostItems && value.every(shape)
}

/** A group with these fields, each of its shape. What stands beside them is not looked at, and not used. */
export function group(fields: Readonly<Record<string, Shape>>): Shape {
  return (value) => typeof value === 'object' && value !== null && !Array.isArray(value) && Object.entries(fields).every(([name, shape]) => shape(Object.hasOwn(value, name) ? (value as Record<string, unknown>)[name] : undefined))
}

/** A group whose field `by` says which of several it is. */
export function kindOf(by: string, kinds: Readonly<Record<string, Readonly<Record<string, Shape>>>>): Shape {
  const shapes = new Map(Object.entries(kinds).map(([kind, fields]) => [kind, group({ [by]: text, ...fields })]))
  return (value) => group({ [by]: text })(value) && shapes.get((value as Record<string, string>)[by]!)?.(value) === true
}
