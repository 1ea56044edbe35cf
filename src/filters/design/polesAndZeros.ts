import { type FilterDesign, isFirstOrder, type Section, sectionsOf } from "./filterDesign.js";

/** A complex number. */
export interface Complex {
  readonly real: number;
  readonly imaginary: number;
}

/** A filter by the roots of its transfer function. */
export interface PolesAndZeros {
  /** Inside the unit circle where the filter is stable. */
  readonly poles: readonly Complex[];
  readonly zeros: readonly Complex[];
  /** Factor before the product of (1 − zero z⁻¹) over the product of (1 − pole z⁻¹). */
  readonly gain: number;
}

/**
 * Gives the poles and zeros of one pass of a design in the z-plane.
 *
 * Formula: roots of z² + a₁ z + a₂ and of b₀ z² + b₁ z + b₂, section by section.
 * Units: none.
 * Limits: a double root is known to 10⁻⁸ only, the square root of the rounding of its coefficients.
 * Source: definition.
 * @param design - From {@link butterworth} or {@link criticallyDamped}.
 * @throws GaitKineticsError `wrong-type`: no design.
 * @example
 * polesAndZeros(butterworth({ type: "low-pass", order: 2, cutoff: 50, sampleRate: 1000 })).poles.length // 2
 */
export function polesAndZeros(design: FilterDesign): PolesAndZeros {
  const sections = sectionsOf(design);
  return {
    poles: sections.flatMap((section) => roots(section[4], section[5], section)),
    zeros: sections.flatMap((section) => roots(section[1] / section[0], section[2] / section[0], section)),
    gain: sections.reduce((product, [b0]) => product * b0, 1),
  };
}

/** Roots of z² + b z + c, or of z + b where the section is of first order. */
function roots(b: number, c: number, section: Section): Complex[] {
  if (isFirstOrder(section)) return [{ real: 0 - b, imaginary: 0 }];
  const under = (b * b) / 4 - c;
  if (under < 0) return [1, -1].map((sign) => ({ real: -b / 2, imaginary: sign * Math.sqrt(-under) }));
  const larger = -b / 2 - Math.sign(b || 1) * Math.sqrt(under);
  return [larger, larger === 0 ? 0 : c / larger].map((real) => ({ real, imaginary: 0 }));
}
