/**
 * How long `act` kept this process busy, in milliseconds, and never more than it took: what other programs took
 * of the machine meanwhile is not counted, so that a bound holds on a loaded machine too. For bounds on what must not be gone over
 * again and again; how fast something is, is for the benchmarks.
 */
export function busyMs(act: () => void): number {
  const [started, before] = [performance.now(), process.cpuUsage()]
  act()
  const { user, system } = process.cpuUsage(before)
  return Math.min(performance.now() - started, (user + system) / 1000)
}
