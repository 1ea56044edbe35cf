import { fail, requireNumber } from "../../units/index.js";

/** Which weights {@link savitzkyGolayWeights} gives. */
export interface SavitzkyGolayWeightsOptions {
  /** Number of samples, odd, from 3. */
  readonly window: number;
  /** Degree of the polynomial, from 0 and below the window. */
  readonly degree: number;
  /** Which derivative, from 0 to the degree; 0 where left out. */
  readonly derivative?: number | undefined;
  /** Where in the window it is taken, from −(window − 1)/2 at its start to (window − 1)/2; 0, the middle, where left out. */
  readonly position?: number | undefined;
}

/**
 * Gives the weights by which a window of samples is summed to the value or derivative of its least-squares polynomial.
 *
 * Formula: Σₖ (2k + 1) (2m)↓ᵏ/(2m + k + 1)↓ᵏ⁺¹ Pₖ(i) Pₖ⁽ˢ⁾(t), window 2m + 1, P the Gram polynomials by their three-term
 * recurrence, n↓ᵏ the falling factorial.
 * Units: per sample to the power of the derivative.
 * Limits: none of the digits are lost to powers of the position, as they are in normal equations.
 * Source: Gorry PA 1990, Anal. Chem. 62:570 (from memory); agrees with SciPy's `savgol_coeffs`.
 * @param options - Window, degree, derivative and position.
 * @throws GaitKineticsError `out-of-range`, `wrong-type` or `not-finite`: window even or below 3, degree not below it,
 * derivative above the degree, position outside the window.
 * @example
 * savitzkyGolayWeights({ window: 3, degree: 1, derivative: 1 })[2] // 0.5
 */
export function savitzkyGolayWeights(options: SavitzkyGolayWeightsOptions): Float64Array {
  const window = requireNumber("window", options?.window, { from: 3, whole: true });
  if (window % 2 === 0) {
    fail("out-of-range", `window is ${window}; it must be odd, so that it has a middle sample`, {
      argument: "window",
    });
  }
  const degree = requireNumber("degree", options.degree, { from: 0, below: window, whole: true });
  const derivative = requireNumber("derivative", options.derivative ?? 0, {
    from: 0,
    to: degree,
    whole: true,
  });
  const half = (window - 1) / 2;
  const position = requireNumber("position", options.position ?? 0, { from: -half, to: half });
  const there = gram(position, half, degree, derivative)[derivative] as readonly number[];
  return Float64Array.from({ length: window }, (_, j) => {
    const here = gram(j - half, half, degree, 0)[0] as readonly number[];
    let factor = 1 / (2 * half + 1);
    let sum = 0;
    for (let k = 0; k <= degree; k++) {
      sum += (2 * k + 1) * factor * (here[k] as number) * (there[k] as number);
      factor *= (2 * half - k) / (2 * half + k + 2);
    }
    return sum;
  });
}

/** Gram polynomials 0 to `degree` on −m to m at a place, with their derivatives 0 to `derivative`: [derivative][degree]. */
function gram(place: number, m: number, degree: number, derivative: number): number[][] {
  const table = Array.from({ length: derivative + 1 }, (_, s) => [s === 0 ? 1 : 0]);
  for (let k = 1; k <= degree; k++) {
    const divisor = k * (2 * m - k + 1);
    table.forEach((row, s) => {
      const lower = s === 0 ? 0 : s * (table[s - 1]?.[k - 1] as number);
      const forward = ((4 * k - 2) / divisor) * (place * (row[k - 1] as number) + lower);
      row[k] = forward - (((k - 1) * (2 * m + k)) / divisor) * (row[k - 2] ?? 0);
    });
  }
  return table;
}
