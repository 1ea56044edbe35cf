import { type Complete, type Hertz, requireNumber, withDefaults } from "../../units/index.js";
import { type FilterDesign, type Section, sectionsOf } from "./filterDesign.js";

/** What {@link frequencyResponse} may be told. */
export interface FrequencyResponseOptions {
  /** Gives the response of the filter run forward and backward, |H|², instead of one pass. */
  readonly zeroPhase?: boolean | undefined;
}

/** One pass. */
export const FREQUENCY_RESPONSE_DEFAULTS: Complete<FrequencyResponseOptions> = { zeroPhase: false };

/** How a filter changes sines, one entry a frequency. */
export interface FrequencyResponse {
  readonly frequency: Float64Array;
  readonly real: Float64Array;
  readonly imaginary: Float64Array;
  /** Factor on the amplitude. */
  readonly magnitude: Float64Array;
  /** Lead in radians, −π to π; a delay is negative. */
  readonly phase: Float64Array;
}

/**
 * Evaluates the frequency response of a design.
 *
 * Formula: H(f) = Π (b₀ + b₁ z⁻¹ + b₂ z⁻²)/(1 + a₁ z⁻¹ + a₂ z⁻²), z = exp(2πj f/fs); |H|² for the zero-phase run.
 * Units: Hz in; factor and radians out.
 * Limits: written in sin²(π f/fs), so that nothing cancels at low frequencies: what is evaluated are the coefficients as
 * they stand.
 * Source: definition of the response; agrees with SciPy's `freqz_sos`.
 * @param design - From {@link butterworth} or {@link criticallyDamped}.
 * @param frequencies - From 0 to half the sampling rate, Hz.
 * @param options - {@link FREQUENCY_RESPONSE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range` or `not-finite`: a frequency; `wrong-type`: no design; `unknown-option`.
 * @example
 * frequencyResponse(butterworth({ type: "low-pass", order: 2, cutoff: 50, sampleRate: 1000 }), [0]).magnitude[0] // 1
 */
export function frequencyResponse(
  design: FilterDesign,
  frequencies: ArrayLike<Hertz>,
  options: FrequencyResponseOptions = {},
): FrequencyResponse {
  const { zeroPhase } = withDefaults(FREQUENCY_RESPONSE_DEFAULTS, options);
  const sections = sectionsOf(design);
  const frequency = Float64Array.from(frequencies, (value, i) =>
    requireNumber(`frequencies[${i}]`, value, { from: 0, to: design.sampleRate / 2, unit: "Hz" }),
  );
  const [real, imaginary, magnitude, phase] = [0, 1, 2, 3].map(() => new Float64Array(frequency.length)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  frequency.forEach((value, i) => {
    const [x, y] = responseAt(sections, (2 * Math.PI * value) / design.sampleRate);
    const square = x * x + y * y;
    real[i] = zeroPhase ? square : x;
    imaginary[i] = zeroPhase ? 0 : y;
    magnitude[i] = zeroPhase ? square : Math.sqrt(square);
    phase[i] = zeroPhase ? 0 : Math.atan2(y, x);
  });
  return { frequency, real, imaginary, magnitude, phase };
}

/** Response of sections at an angle, radians a sample. */
function responseAt(sections: readonly Section[], angle: number): readonly [number, number] {
  let [x, y] = [1, 0];
  for (const [b0, b1, b2, , a1, a2] of sections) {
    const [p, q] = polynomialAt(b0, b1, b2, angle);
    const [r, s] = polynomialAt(1, a1, a2, angle);
    const size = r * r + s * s;
    const [u, v] = [(p * r + q * s) / size, (q * r - p * s) / size];
    [x, y] = [x * u - y * v, x * v + y * u];
  }
  return [x, y];
}

/** c₀ + c₁ z⁻¹ + c₂ z⁻² on the unit circle, in the sum of the coefficients and sin² of the half angle. */
function polynomialAt(c0: number, c1: number, c2: number, angle: number): readonly [number, number] {
  const half = Math.sin(angle / 2) ** 2;
  const sine = Math.sin(angle);
  return [c0 + c1 + c2 - 2 * c1 * half - 2 * c2 * sine * sine, -sine * (c1 + 2 * c2 - 4 * c2 * half)];
}
