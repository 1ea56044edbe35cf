import type { Comparison } from "../compare/index.js";
import { readAs } from "./readAs.js";

/**
 * Reads a comparison from JSON, as {@link readJson} does, and refuses every other result.
 *
 * Units: those of the result: SI, or the unit named beside a metric.
 * Limits: as {@link readJson}.
 * Source: format of this library.
 * @param text - The file's text; a byte order mark passes.
 * @throws GaitKineticsError as {@link readJson}; `unreadable-file` where the text holds another result.
 * @example
 * readComparison(writeJson(compareTrials(baseline, changed))).cautions.length >= 0 // true
 * readComparison(writeJson(trial)) // throws unreadable-file
 */
export function readComparison(text: string): Comparison {
  return readAs(text, "gait-kinetics/comparison/1");
}
