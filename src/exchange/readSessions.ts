import type { SessionSeries } from "../compare/index.js";
import { readAs } from "./readAs.js";

/**
 * Reads a series of sessions from JSON, as {@link readJson} does, and refuses every other result.
 *
 * Units: those of the result: SI, or the unit named beside a metric.
 * Limits: as {@link readJson}.
 * Source: format of this library.
 * @param text - The file's text; a byte order mark passes.
 * @throws GaitKineticsError as {@link readJson}; `unreadable-file` where the text holds another result.
 * @example
 * readSessions(writeJson(compareSessions([{ name: "May", trials: trial }]))).settings.baselineSessions // 5
 * readSessions(writeJson(trial)) // throws unreadable-file
 */
export function readSessions(text: string): SessionSeries {
  return readAs(text, "gait-kinetics/sessions/1");
}
