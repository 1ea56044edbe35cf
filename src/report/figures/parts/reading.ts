import { element } from "../../markup/element.js";
import { mark } from "./mark.js";
import { touchArea } from "./touchArea.js";

/** Where a curve can be read. */
export interface ReadingPlace {
  readonly at: number;
  /** Of the area that takes the pointer. */
  readonly from: number;
  readonly to: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * Makes a place of a curve readable: an upright line and a ring on each curve, which have no stroke of their own and are seen
 * where a page gives the mark one.
 *
 * @param read - What the place says.
 * @param place - Where.
 * @param heights - Of the curves there.
 */
export function reading(
  read: string,
  { at, from, to, top, bottom }: ReadingPlace,
  heights: readonly number[],
): string {
  return mark(
    read,
    touchArea(from, top, to - from, bottom - top),
    element("line", { x1: at, x2: at, y1: top, y2: bottom }),
    ...heights.map((height) => element("circle", { cx: at, cy: height, r: 3, fill: "none" })),
  );
}
