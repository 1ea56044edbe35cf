import { fail, type Hertz, requireNumber, requireOneOf } from "../../units/index.js";
import { nearest, tangentOf } from "../netFilter.js";
import { bandSections } from "./bandSections.js";
import { edgeSections } from "./edgeSections.js";
import type { FilterDesign, FilterType } from "./filterDesign.js";
import { passCorrection } from "./passCorrection.js";

/** What {@link butterworth} needs and may be told. */
export interface ButterworthOptions {
  readonly type: FilterType;
  /** Order of one pass, a whole number from 1 to 100. A band filter has twice as many poles. */
  readonly order: number;
  /** Where the net response of all passes is −3 dB, Hz; for a band its two edges, rising. */
  readonly cutoff: Hertz | readonly [low: Hertz, high: Hertz];
  /** Samples per second, Hz; above 0. */
  readonly sampleRate: Hertz;
  /** How often the filter will run; 1 where left out, 2 for {@link filterZeroPhase}. */
  readonly passes?: number | undefined;
}

/**
 * Designs a Butterworth filter as second-order sections by the bilinear transform with prewarped cutoff.
 *
 * Formula: net |H|² = 1/(1 + (C′ x)^(2N))ⁿ, n passes of order N, C′ = C of {@link passCorrection}; with t = tan(π f/fs)
 * x is t/tc for low-pass, tc/t for high-pass, |t² − t₁t₂|/((t₂ − t₁) t) for band-pass and its inverse for band-stop, so
 * that |H| = 1/√2 at every cutoff. One pass has C′ = 1.
 * Units: Hz.
 * Limits: sections are stable at any order; below a cutoff of about 10⁻⁴ of the rate the rounding of their coefficients
 * moves the gain by 2⁻⁵³ (fs/(π f))², and so it is as near to half the rate. Cutoffs and the width of a band must be above
 * 10⁻⁷ of the rate, at a high order further still. Gain and, but for bands, section order as SciPy's; a first-order
 * section keeps its own zero.
 * Source: Winter DA 2009, Biomechanics and Motor Control of Human Movement, 4th ed., eq. 2.19 (low-pass of order 2 and its
 * correction); agrees with SciPy's `butter` in every type.
 * @param options - Type, order, cutoff, sampling rate and passes.
 * @throws GaitKineticsError `out-of-range`, `wrong-type` or `not-finite`: unknown type, order or passes no whole number in
 * range, cutoff not between 0 and half the sampling rate or too near to 0 for the order, edges that do not rise or are given for no band.
 * @example
 * butterworth({ type: "low-pass", order: 2, cutoff: 6, sampleRate: 60 }).sections[0][0] // 0.0674552738890719
 */
export function butterworth(options: ButterworthOptions): FilterDesign {
  const { cutoff, sampleRate } = { ...options };
  const type = requireOneOf("type", options?.type, ["low-pass", "high-pass", "band-pass", "band-stop"]);
  const order = requireNumber("order", options.order, { from: 1, to: 100, whole: true });
  const passes = requireNumber("passes", options.passes ?? 1, { from: 1, whole: true });
  const correction = passCorrection(passes, order);
  const common = { family: "butterworth", type, order, passes, sampleRate } as const;
  const frequencyOf = (tangent: number): Hertz => (Math.atan(tangent) * sampleRate) / Math.PI;
  if (type === "low-pass" || type === "high-pass") {
    if (typeof cutoff !== "number") {
      fail("wrong-type", `cutoff is ${String(cutoff)}; a ${type} filter needs one number in Hz`, {
        argument: "cutoff",
      });
    }
    const side = type === "low-pass" ? 1 : -1;
    const tangent = tangentOf(cutoff, sampleRate) * correction ** -side;
    const sections = edgeSections(order, tangent, side);
    return { ...common, cutoff, designCutoff: frequencyOf(tangent), sections };
  }
  const { width, square, edges } = bandOf(type, cutoff, sampleRate, correction);
  const low = (2 * square) / (width + Math.sqrt(width * width + 4 * square));
  return {
    ...common,
    cutoff: edges,
    designCutoff: [frequencyOf(low), frequencyOf(low + width)],
    sections: bandSections(type, order, width, square),
  };
}

/** Checks the edges of a band; gives its corrected width and the product of its edges on the axis tan(π f/fs). */
export function bandOf(
  type: "band-pass" | "band-stop",
  cutoff: unknown,
  sampleRate: Hertz,
  correction: number,
): { width: number; square: number; edges: readonly [Hertz, Hertz] } {
  if (!Array.isArray(cutoff) || cutoff.length !== 2) {
    fail(
      "wrong-type",
      `cutoff is ${String(cutoff)}; a ${type} filter needs its two edges, [low, high], in Hz`,
      {
        argument: "cutoff",
      },
    );
  }
  const edges = [cutoff[0], cutoff[1]] as const;
  const low = tangentOf(edges[0], sampleRate, "cutoff[0]");
  const high = tangentOf(edges[1], sampleRate, "cutoff[1]");
  if (!(low < high)) {
    fail("out-of-range", `cutoff is ${edges[0]} to ${edges[1]} Hz; the edges must rise`, {
      argument: "cutoff",
    });
  }
  if (!(edges[1] - edges[0] > nearest(sampleRate))) {
    fail(
      "out-of-range",
      `cutoff is ${edges[0]} to ${edges[1]} Hz; the edges must lie more than ${nearest(sampleRate)} Hz apart`,
      { argument: "cutoff" },
    );
  }
  const width = (high - low) * (type === "band-pass" ? 1 / correction : correction);
  return { width, square: low * high, edges };
}
