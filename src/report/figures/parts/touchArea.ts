import { element } from "../../markup/element.js";

/** A rectangle that is not seen and takes the pointer for thin shapes in it. */
export function touchArea(x: number, y: number, width: number, height: number): string {
  return element("rect", { x, y, width, height, fill: "none", stroke: "none", "pointer-events": "all" });
}
