import { type Attributes, element } from "../../markup/element.js";
import { paint, type Role } from "../paint.js";

/** Draws a straight line. */
export function rule(
  [x1, y1]: readonly [number, number],
  [x2, y2]: readonly [number, number],
  role: Role,
  attributes: Attributes = {},
): string {
  return element("line", { x1, y1, x2, y2, ...paint("stroke", role), ...attributes });
}
