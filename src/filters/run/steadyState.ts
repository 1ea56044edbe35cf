import type { Section } from "../design/filterDesign.js";

/**
 * Finds the states of every section once a constant 1 has been coming in for ever: two a section, one after the other.
 *
 * Formula: per section in transposed direct form II, with gain g = Σb/Σa: s₁ = g − b₀, s₂ = b₂ − a₂ g; each times the
 * gains of the sections before it.
 */
export function steadyState(sections: readonly Section[]): readonly number[] {
  let input = 1;
  return sections.flatMap(([b0, b1, b2, , a1, a2]) => {
    const before = input;
    const gain = (b0 + b1 + b2) / (1 + a1 + a2);
    input *= gain;
    return [before * (gain - b0), before * (b2 - a2 * gain)];
  });
}
