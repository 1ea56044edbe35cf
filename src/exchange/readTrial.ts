import type { Trial } from "../trial/index.js";
import { fail } from "../units/index.js";
import { readJson } from "./readJson.js";

/**
 * Reads a trial from JSON, as {@link readJson} does, and refuses a comparison.
 *
 * Units: those of the result: SI, or the unit named beside a metric.
 * Limits: as {@link readJson}.
 * Source: format of this library.
 * @param text - The file's text; a byte order mark passes.
 * @throws GaitKineticsError as {@link readJson}; `unreadable-file` where the text holds a comparison.
 * @example
 * readTrial(writeJson(trial)).cautions.length >= 0 // true
 * readTrial(writeJson(compareTrials(baseline, changed))) // throws unreadable-file
 */
export function readTrial(text: string): Trial {
  const result = readJson(text);
  if (result.schema !== "gait-kinetics/trial/1") {
    fail("unreadable-file", "the text holds a comparison; a trial is needed", {
      argument: "text",
      values: { given: result.schema, allowed: "gait-kinetics/trial/1" },
    });
  }
  return result;
}
