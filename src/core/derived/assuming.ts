import { isMissing, type Outcome } from '../compute/working/result'

/** An outcome that also rests on what its inputs assumed. */
export function assuming(outcome: Outcome, more: readonly string[]): Outcome {
  if (isMissing(outcome)) return outcome
  const { working } = outcome
  return { ...outcome, working: { ...working, assumptions: [...new Set([...working.assumptions, ...more])] } }
}
