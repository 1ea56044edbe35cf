import type { Section } from "../design/filterDesign.js";

/**
 * Finds the states of every section once a constant 1 has been coming in for ever: two a section, one after the other.
 *
 * Formula: per section in transposed direct form II, with gain g = Σb/Σa: s₁ = g − b₀, s₂ = b₂ − a₂ g; each times the
 * gains of the sections before it.
 */
export function steadyState(sections: readonly Section[]): Float64Array {
  const state = new Float64Array(2 * sections.length);
  let input = 1;
  sections.forEach(([b0, b1, b2, , a1, a2], index) => {
    const gain = (b0 + b1 + b2) / (1 + a1 + a2);
    state[2 * index] = input * (gain - b0);
    state[2 * index + 1] = input * (b2 - a2 * gain);
    input *= gain;
  });
  return state;
}
