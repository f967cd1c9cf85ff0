/**
 * How far an end swings past its rest after a push, as a share of the push, 0 to 1: exp(−π·z / √(1 − z²)).
 * 0 from a damping ratio of 1 on, where nothing swings past; `undefined` for a ratio below 0.
 * Source: step response of a damped oscillator, S. S. Rao, Mechanical Vibrations.
 * @example overshoot(0.3) // 0.372
 */
export function overshoot(ratio: number): number | undefined {
  if (!(ratio >= 0)) return undefined
  return ratio >= 1 ? 0 : Math.exp((-Math.PI * ratio) / Math.sqrt(1 - ratio * ratio))
}

/**
 * The damping ratio that swings past by a share: `overshoot` the other way round. `undefined` unless 0 < share ≤ 1: no
 * overshoot only says that the ratio is 1 or more.
 * @example ratioFromOvershoot(0.25) // 0.4037
 */
export function ratioFromOvershoot(share: number): number | undefined {
  if (!(share > 0 && share <= 1)) return undefined
  const decrement = -Math.log(share)
  return decrement === 0 ? 0 : decrement / Math.hypot(Math.PI, decrement)
}
