import assert from 'node:assert/strict'
import { isMissing, type Outcome, type Result } from '../../../src/core/compute/working/result'

/** Asserts that two numbers differ by no more than `within`. */
export function near(actual: number | undefined, expected: number, within: number, what = 'number'): void {
  assert.ok(
    actual !== undefined && Math.abs(actual - expected) <= within,
    `${what}: ${actual} is not within ${within} of ${expected}`,
  )
}

/** Asserts that two numbers differ by no more than `relative` of the expected one. */
export function nearRelative(actual: number | undefined, expected: number, relative: number, what?: string): void {
  near(actual, expected, Math.abs(expected) * relative, what)
}

/** The thing itself, where nothing was missing. */
export function get<T extends object>(outcome: Outcome<T>): T {
  if (isMissing(outcome)) assert.fail(`missing: ${outcome.missing.join('; ')}`)
  return outcome
}

export function valueOf(outcome: Outcome<Result>): number {
  return get(outcome).value
}

/** What is missing; fails where nothing is. */
export function missingOf(outcome: unknown): string[] {
  if (!isMissing(outcome)) assert.fail(`nothing is missing from ${JSON.stringify(outcome)}`)
  return outcome.missing
}
