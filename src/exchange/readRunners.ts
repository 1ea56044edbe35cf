import type { RunnersComparison } from "../compare/index.js";
import { readAs } from "./readAs.js";

/**
 * Reads a comparison over many runners from JSON, as {@link readJson} does, and refuses every other result.
 *
 * Units: those of the result: SI, or the unit named beside a metric.
 * Limits: as {@link readJson}.
 * Source: format of this library.
 * @param text - The file's text; a byte order mark passes.
 * @throws GaitKineticsError as {@link readJson}; `unreadable-file` where the text holds another result.
 * @example
 * readRunners(writeJson(compareRunners([{ runner: "Ida", baseline, changed }]))).runners.baseline // 1
 * readRunners(writeJson(trial)) // throws unreadable-file
 */
export function readRunners(text: string): RunnersComparison {
  return readAs(text, "gait-kinetics/runners/1");
}
