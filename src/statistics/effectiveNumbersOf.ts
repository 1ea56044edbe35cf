import { type Complete, withDefaults } from "../units/index.js";
import { type CorrelationOptions, effectiveNumberOf } from "./effectiveNumberOf.js";
import type { Values } from "./requireValues.js";

/** How the correlation of successive values is taken for two series that are set against each other. */
export interface SharedCorrelationOptions extends CorrelationOptions {
  /** Whether both series take the larger of their two correlations. */
  readonly shared?: boolean | undefined;
}

/** Each series by itself, by the plain textbook formula. */
export const SHARED_CORRELATION_DEFAULTS: Complete<SharedCorrelationOptions> = {
  correctBias: false,
  shared: false,
};

/**
 * Gives how many independent values each of two series of correlated ones is worth.
 *
 * Formula: {@link effectiveNumberOf} each; with `shared`, the smaller of the two shares nₑ / n times each count. A short
 * series tells little of its correlation, and by chance it comes out too low as often as too high; where both series come
 * from one and the same person, the larger of two estimates errs on the careful side.
 * Units: none.
 * Limits: at least two values in each. With both options, of differences between two series of 20 to 80 values with a
 * first-order correlation of 0 to 0.6 and no true difference, at most one in a hundred leaves the 99 % interval and exceeds 0.8
 * standard deviations; the tests hold them to it.
 * Source: as {@link effectiveNumberOf}; the sharing is a rule of this library, checked by simulation.
 * @param first - Finite numbers in their order of time, at least two.
 * @param second - The same.
 * @param options - {@link SHARED_CORRELATION_DEFAULTS} where left out.
 * @throws GaitKineticsError `too-short`: fewer than two values; `not-finite`, `wrong-type`: a value that is no finite
 *   number; `unknown-option`.
 * @example
 * effectiveNumbersOf([4, 6, 4, 6], [1, 2, 3, 4, 5], { shared: true })[0].toFixed(3) // "1.714"
 */
export function effectiveNumbersOf(
  first: Values,
  second: Values,
  options: SharedCorrelationOptions = {},
): readonly [number, number] {
  const { correctBias, shared } = withDefaults<SharedCorrelationOptions>(
    SHARED_CORRELATION_DEFAULTS,
    options,
  );
  const n1 = effectiveNumberOf(first, { correctBias });
  const n2 = effectiveNumberOf(second, { correctBias });
  if (!shared) return [n1, n2];
  const share = Math.min(n1 / first.length, n2 / second.length);
  return [share * first.length, share * second.length];
}
