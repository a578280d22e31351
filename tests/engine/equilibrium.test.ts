// The moisture that wood settles at, backwards: the humidity that is found gives the moisture back, by the handbook’s equation written out anew.
// S. V. Glass, S. L. Zelinka, Wood Handbook (FPL–GTR–282), equation 4–5.
import { describe, expect, it } from 'vitest'
import { humidityFor } from '../../engine/equilibrium.ts'
import { about, isExact, toNumber } from '../../engine/quantities/amount.ts'

const fitAt = (T: number) => ({
  W: 330 + 0.452 * T + 0.00415 * T ** 2,
  K: 0.791 + 0.000463 * T - 0.000000844 * T ** 2,
  K1: 6.34 + 0.000775 * T - 0.0000935 * T ** 2,
  K2: 1.09 + 0.0284 * T - 0.0000904 * T ** 2,
})
/** As a share of one. */
function settles(T: number, humidity: number): number {
  const { W, K, K1, K2 } = fitAt(T)
  const k = K * humidity
  return (18 / W) * (k / (1 - k) + (K1 * k + 2 * K1 * K2 * k ** 2) / (1 + K1 * k + K1 * K2 * k ** 2))
}
function found(T: number, moisture: number) {
  const { W, K, K1, K2 } = fitAt(T)
  return humidityFor(moisture, { W: about(W), K: about(K), K1: about(K1), K2: about(K2) })
}

describe('the humidity for a moisture', () => {
  it.each([20, 40, 70, 100, 130])('at %d °F gives the moisture back', (T) => {
    for (let share = 0.02; share < 1; share += 0.07) {
      const humidity = found(T, settles(T, share))
      expect(humidity && toNumber(humidity)).toBeCloseTo(share, 10)
      expect(humidity && !isExact(humidity) && humidity.error).toBe(1e-12)
    }
  })

  it('is none where air that is saturated leaves the wood drier', () => {
    for (const T of [20, 70, 130]) {
      expect(found(T, settles(T, 1) + 1e-6)).toBeUndefined()
      expect(toNumber(found(T, settles(T, 1) - 1e-6) ?? about(0))).toBeCloseTo(1, 4)
    }
  })

  it('is nought for wood that is bone dry', () => expect(toNumber(found(70, 0) ?? about(1))).toBeCloseTo(0, 12))
})
