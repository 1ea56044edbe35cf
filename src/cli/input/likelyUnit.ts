import type { WrittenColumn } from "./tableColumns.js";

/** No place on a platform or of a marker lies farther from the origin, m: beyond it lengths are in mm. A judgement. */
const FARTHEST = 10;
/** No free moment of a runner is larger, N m: beyond it moments are in N mm. A judgement. */
const LARGEST_MOMENT = 300;

/**
 * The unit that the size of a column's numbers suggests.
 *
 * @param word - What it is read as, or its own name.
 */
export function likelyUnit(word: string, { least, most, first }: WrittenColumn, rows: number): string {
  const size = Math.max(Math.abs(least ?? 0), Math.abs(most ?? 0));
  if (/^t(?:ime)?$/i.test(word))
    return ((most ?? 0) - (first ?? 0)) / Math.max(1, rows - 1) >= 1 ? "ms" : "s";
  if (/^marker:|^cop/i.test(word)) return size > FARTHEST ? "mm" : "m";
  if (/^(?:t_?[xyz]|free.?moment)/i.test(word)) return size > LARGEST_MOMENT ? "N mm" : "N m";
  return "N";
}
