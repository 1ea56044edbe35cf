import { element } from "../../markup/element.js";
import { paint } from "../paint.js";
import { rule } from "./rule.js";

/** A range of values on a level axis and where it is drawn. */
export interface ShadedRange {
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly bottom: number;
}

/** Shades a range, with dotted edges where they lie within the drawing's own ends. */
export function marginShade(
  { from, to, top, bottom }: ShadedRange,
  [left, right]: readonly [number, number],
): string {
  const [start, end] = [Math.min(Math.max(from, left), right), Math.max(Math.min(to, right), left)];
  const area = { x: start, y: top, width: Math.max(end - start, 0), height: bottom - top };
  const edges = [from, to].filter((x) => x >= left && x <= right);
  return (
    element("rect", { ...area, "fill-opacity": 0.16, ...paint("fill", "rule") }) +
    edges
      .map((x) => rule([x, top], [x, bottom], "rule", { "stroke-width": 1, "stroke-dasharray": "2 2" }))
      .join("")
  );
}

/** A small piece of it for the key, beside a line of words at a base line. */
export function marginSample(y: number): string {
  return marginShade({ from: 2, to: 30, top: y - 10, bottom: y + 2 }, [0, 32]);
}
