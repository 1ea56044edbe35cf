import type { Comparison } from "../compare/index.js";
import { fail } from "../units/index.js";
import { readJson } from "./readJson.js";

/**
 * Reads a comparison from JSON, as {@link readJson} does, and refuses a trial.
 *
 * Units: those of the result: SI, or the unit named beside a metric.
 * Limits: as {@link readJson}.
 * Source: format of this library.
 * @param text - The file's text; a byte order mark passes.
 * @throws GaitKineticsError as {@link readJson}; `unreadable-file` where the text holds a trial.
 * @example
 * readComparison(writeJson(compareTrials(baseline, changed))).cautions.length >= 0 // true
 * readComparison(writeJson(trial)) // throws unreadable-file
 */
export function readComparison(text: string): Comparison {
  const result = readJson(text);
  if (result.schema !== "gait-kinetics/comparison/1") {
    fail("unreadable-file", "the text holds a trial; a comparison is needed", {
      argument: "text",
      values: { given: result.schema, allowed: "gait-kinetics/comparison/1" },
    });
  }
  return result;
}
