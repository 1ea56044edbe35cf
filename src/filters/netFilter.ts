import { type Complete, fail, type Hertz, requireNumber, requireOneOf } from "../units/index.js";
import { correctionFor } from "./design/passCorrection.js";
import type { EndOptions } from "./run/zeroPhase.js";

/** What the zero-phase Butterworth filters may be told. */
export interface ZeroPhaseOptions extends EndOptions {
  /** Net order, even: forward and backward run together. The default, 4, is a second-order filter run twice. */
  readonly order?: number | undefined;
  /**
   * What `cutoff` means. `net`, the default: where both passes together are −3 dB. `each-pass`: where each pass is
   * −3 dB and both together −6 dB, as software without a correction for the second pass has it. Take it to reproduce a
   * paper that designed its filter at the stated cutoff and ran it forward and backward.
   */
  readonly cutoffMeaning?: "net" | "each-pass" | undefined;
}

/** Net fourth order with the net cutoff and odd ends: common practice in biomechanics. */
export const ZERO_PHASE_DEFAULTS: Complete<ZeroPhaseOptions> = {
  order: 4,
  cutoffMeaning: "net",
  ends: "odd",
  padLength: null,
  inPlace: false,
};

/** Checks a net order and what the cutoff means; gives the order of one pass and the factor on the tangent. */
export function onePassOf({
  order,
  cutoffMeaning,
}: Complete<ZeroPhaseOptions>): readonly [order: number, correction: number] {
  requireNumber("order", order, { from: 2, to: 100, whole: true });
  if (order % 2 === 1) {
    fail("out-of-range", `order is ${order}; it must be even, as both passes share it`, {
      argument: "order",
      values: { given: order },
    });
  }
  const net = requireOneOf("cutoffMeaning", cutoffMeaning, ["net", "each-pass"]) === "net";
  return [order / 2, net ? correctionFor(2, order / 2) : 1];
}

/**
 * Gives how far a cutoff keeps from 0, a ten-millionth of it, Hz. The rounding of the coefficients, 2⁻⁵³ over
 * the squared tangent, moves the gain there by some thousandths, and nearer by as much as the gain itself.
 */
export const nearest = (sampleRate: Hertz): Hertz => sampleRate / 1e7;

/** Checks a cutoff against its sampling rate and gives the tangent of its half angle. */
export function tangentOf(cutoff: Hertz, sampleRate: Hertz, argument = "cutoff"): number {
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  requireNumber(argument, cutoff, { above: nearest(sampleRate), below: sampleRate / 2, unit: "Hz" });
  return Math.tan((Math.PI * cutoff) / sampleRate);
}
