import { phrase } from '../../words/say'

/**
 * What stood on the wheels when a length was read. The trade says ‘static sag’ for either of them, so we never do:
 * `bike` is the machine alone, `rider` the machine with its rider aboard and kitted.
 */
export type LoadCase = 'bike' | 'rider'

/** The two ends of a machine. */
export type End = 'front' | 'rear'

/** What a machine is used for; the published windows and zones go by it. */
export type Use = 'road' | 'track' | 'motocross' | 'enduro' | 'adventure' | 'touring'

export const loadCaseNames: Record<LoadCase, string> = { bike: phrase('bike alone'), rider: phrase('rider aboard') }
