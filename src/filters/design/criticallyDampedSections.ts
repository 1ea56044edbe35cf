import { withGain } from "./edgeSections.js";
import type { Section } from "./filterDesign.js";

/** Designs one pass of a low-pass whose poles all lie at one place on the real axis, from tan(π f/fs) of that corner. */
export function criticallyDampedSections(order: number, tangent: number): Section[] {
  const pole = (1 - tangent) / (1 + tangent);
  const first: Section = [1, 1, 0, 1, -pole, 0];
  const second: Section = [1, 2, 1, 1, -2 * pole, pole * pole];
  const sections = [...(order % 2 === 1 ? [first] : []), ...Array.from({ length: order >> 1 }, () => second)];
  const gain = sections.reduce(
    (product, [b0, b1, b2, , a1, a2]) => (product * (1 + a1 + a2)) / (b0 + b1 + b2),
    1,
  );
  return withGain(sections, gain);
}
