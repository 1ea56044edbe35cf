import type { Section } from "./filterDesign.js";

/**
 * Designs one pass of a Butterworth low-pass from the tangent of its half angle, tan(π f/fs), the prewarped cutoff.
 *
 * Formula: bilinear transform of the poles exp(jθ); with t the tangent and q = 2 sin θ of a pole pair,
 * a₁ = 2 (t² − 1)/(1 + q t + t²), a₂ = (1 − q t + t²)/(1 + q t + t²), zeros at the Nyquist frequency.
 * The gain is taken from the rounded a₁, a₂ so that a constant passes unchanged however low the cutoff: 1 + a₁ + a₂ is
 * computed without rounding, while t² divided by the denominator would differ from it by up to 2⁻⁵³/t² relative.
 */
export function lowPassSections(order: number, tangent: number): Section[] {
  const sections: [number, number, number, number, number, number][] = [];
  let gain = 1;
  if (order % 2 === 1) {
    const a1 = (tangent - 1) / (tangent + 1);
    gain *= (1 + a1) / 2;
    sections.push([1, 1, 0, 1, a1, 0]);
  }
  for (let pair = Math.floor(order / 2) - 1; pair >= 0; pair--) {
    const damping = 2 * Math.sin((Math.PI * (2 * pair + 1)) / (2 * order)) * tangent;
    const denominator = 1 + damping + tangent * tangent;
    const a1 = (2 * (tangent - 1) * (tangent + 1)) / denominator;
    const a2 = (1 - damping + tangent * tangent) / denominator;
    gain *= (1 + a1 + a2) / 4;
    sections.push([1, 2, 1, 1, a1, a2]);
  }
  const first = sections[0];
  if (first !== undefined) for (let i = 0; i < 3; i++) first[i] = (first[i] as number) * gain;
  return sections;
}
