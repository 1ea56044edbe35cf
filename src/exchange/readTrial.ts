import type { Trial } from "../trial/index.js";
import { readAs } from "./readAs.js";

/**
 * Reads a trial from JSON, as {@link readJson} does, and refuses every other result.
 *
 * Units: those of the result: SI, or the unit named beside a metric.
 * Limits: as {@link readJson}.
 * Source: format of this library.
 * @param text - The file's text; a byte order mark passes.
 * @throws GaitKineticsError as {@link readJson}; `unreadable-file` where the text holds another result.
 * @example
 * readTrial(writeJson(trial)).cautions.length >= 0 // true
 * readTrial(writeJson(compareTrials(baseline, changed))) // throws unreadable-file
 */
export function readTrial(text: string): Trial {
  return readAs(text, "gait-kinetics/trial/1");
}
