import type { Chart } from './chart'
import { forceChart } from './forceChart'
import { rakeChart, trailChart } from './geometryChart'
import { logFrontRear } from './logFrontRear'
import { logHistograms } from './logHistograms'
import { logTrace } from './logTrace'
import { sagChart } from './sagChart'

/** Every chart, in the order they are shown. A new one is a file and a line here. */
export const charts: readonly Chart[] = [sagChart('front'), sagChart('rear'), forceChart('front'), forceChart('rear'), rakeChart, trailChart, logTrace, logFrontRear, ...logHistograms]
