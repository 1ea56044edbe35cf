import type { Reliability } from "../compare/index.js";
import { readAs } from "./readAs.js";

/**
 * Reads from JSON how well trials repeat, as {@link readJson} does, and refuses every other result; its
 * `smallestDetectableChange` goes into `compareTrials` as it is.
 *
 * Units: those of the result: SI, or the unit named beside a metric.
 * Limits: as {@link readJson}.
 * Source: format of this library.
 * @param text - The file's text; a byte order mark passes.
 * @throws GaitKineticsError as {@link readJson}; `unreadable-file` where the text holds another result.
 * @example
 * readReliability(writeJson(trial)) // throws unreadable-file
 */
export function readReliability(text: string): Reliability {
  return readAs(text, "gait-kinetics/reliability/1");
}
