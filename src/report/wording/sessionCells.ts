import type { SessionValue } from "../../compare/index.js";
import { decimalsFor } from "./decimalsFor.js";
import { formatDifference } from "./formatDifference.js";
import { formatNumber } from "./formatNumber.js";
import { intervalWords } from "./intervalWords.js";

/** Cells of a session: name, mean, baseline, difference, its interval, smallest detectable change and place. */
export function sessionCells({ name, session, against }: SessionValue): readonly string[] {
  const half = against === null ? session.sd : (against.interval.high - against.interval.low) / 2;
  const decimals = decimalsFor(session.mean, half);
  const value = formatNumber(session.mean, decimals);
  if (against === null) return [name, value, "", "", "", "", ""];
  return [
    name,
    value,
    formatNumber(against.baseline, decimals),
    formatDifference(against.difference, decimals),
    intervalWords(against.interval, decimals),
    formatNumber(against.smallestDetectableChange.value, decimals),
    against.place,
  ];
}
