import { requireNumber } from "../../units/index.js";
import type { Section } from "./filterDesign.js";

/**
 * Designs one pass of a Butterworth low-pass (side 1) or high-pass (side −1) from the tangent of its half angle,
 * tan(π f/fs), the prewarped cutoff.
 *
 * Formula: bilinear transform of the poles exp(jθ); with t the tangent and q = 2 sin θ of a pole pair,
 * a₁ = 2 (t² − 1)/(1 + q t + t²), a₂ = (1 − q t + t²)/(1 + q t + t²); zeros at the Nyquist frequency for low-pass, at
 * 0 Hz for high-pass. The gain is taken from the rounded a₁, a₂ so that a constant passes the low-pass unchanged however
 * low the cutoff: 1 + a₁ + a₂ is computed without rounding, while t² divided by the denominator would differ from it by
 * up to 2⁻⁵³/t² relative.
 */
export function edgeSections(order: number, tangent: number, side: 1 | -1): Section[] {
  const sections: Section[] = [];
  let gain = 1;
  if (order % 2 === 1) {
    const a1 = (tangent - 1) / (tangent + 1);
    gain *= (1 + side * a1) / 2;
    sections.push([1, side, 0, 1, a1, 0]);
  }
  for (let pair = order >> 1; pair > 0; pair--) {
    const damping = 2 * Math.sin((Math.PI * (2 * pair - 1)) / (2 * order)) * tangent;
    const square = tangent * tangent;
    const denominator = 1 + damping + square;
    const a1 = (2 * (square - 1)) / denominator;
    const a2 = (1 - damping + square) / denominator;
    gain *= (1 + side * a1 + a2) / 4;
    sections.push([1, 2 * side, 1, 1, a1, a2]);
  }
  return withGain(sections, gain);
}

/** Puts a gain into the first section, after checking that samples times it stay clear of the smallest numbers. */
export function withGain([first, ...rest]: readonly Section[], gain: number): Section[] {
  requireNumber("gain", gain, { from: 1e-280, hint: "order is too high" });
  const [b0, b1, b2, ...denominator] = first as Section;
  return [[b0 * gain, b1 * gain, b2 * gain, ...denominator], ...rest];
}
