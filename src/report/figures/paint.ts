import type { Attributes } from "../markup/element.js";

/** What a line or an area of a figure stands for. */
export type Role = "first" | "second" | "rule" | "ink";

/** Colours where a page sets none: seen on white and on near-black alike (contrast 3.9 and more for lines, 3.2 for rules). */
const FALLBACKS: Readonly<Record<Role, string>> = {
  first: "#2f7ab8",
  second: "#b5652a",
  rule: "#8a8f98",
  ink: "currentColor",
};

/**
 * Gives the attributes that paint a stroke or a fill in a role's colour, which a page may set as `--figure-first`,
 * `--figure-second`, `--figure-rule` or `--figure-ink`; programs that know no CSS variables take the fallback.
 */
export function paint(property: "stroke" | "fill", role: Role): Attributes {
  const colour = FALLBACKS[role];
  return { [property]: colour, style: `${property}: var(--figure-${role}, ${colour})` };
}
