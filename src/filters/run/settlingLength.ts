import type { Section } from "../design/filterDesign.js";

/**
 * Gives the number of samples after which a filter has forgotten the state it started from, to within 2⁻⁶⁰.
 *
 * Formula: (42 + 6 S) / −ln r, r the largest pole radius of S sections; e⁻⁴² is 2⁻⁶⁰·⁶, and 6 a section more than
 * outweighs the polynomial before rⁿ where poles lie together.
 */
export function settlingLength(sections: readonly Section[]): number {
  const radius = Math.max(...sections.map(poleRadius));
  return Math.ceil((42 + 6 * sections.length) / -Math.log(radius)) + 2 * sections.length;
}

/** Distance from the origin of the outer pole of a section. */
function poleRadius([, , , , a1, a2]: Section): number {
  const under = (a1 * a1) / 4 - a2;
  return under < 0 ? Math.sqrt(a2) : Math.abs(a1) / 2 + Math.sqrt(under);
}
