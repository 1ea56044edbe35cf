import { rule } from "./rule.js";

/** Draws a line of the grid: hairline, and stronger at zero. */
export function gridRule(
  from: readonly [number, number],
  to: readonly [number, number],
  zero: boolean,
): string {
  return rule(from, to, zero ? "ink" : "rule", {
    "stroke-width": zero ? 1.2 : 0.6,
    "stroke-opacity": zero ? 1 : 0.5,
  });
}
