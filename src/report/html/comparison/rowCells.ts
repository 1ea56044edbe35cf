import type { Comparison } from "../../../compare/index.js";
import { type Compared, comparedRow } from "../../wording/comparedRow.js";
import { levelWords } from "../../wording/intervalWords.js";

/** Headings over {@link rowCells}. */
export function differenceHeadings({ settings }: Comparison): readonly string[] {
  return ["baseline", "changed", "difference", `${levelWords(settings.shownLevel)} interval`, "%"];
}

/** Cells of a difference: both means, the difference, its interval, and per cent. */
export function rowCells(compared: Compared): readonly string[] {
  const { baseline, changed, difference, interval, percent } = comparedRow(compared);
  return [baseline, changed, difference, interval, percent];
}
