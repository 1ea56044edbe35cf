import { basename } from "node:path";
import { recordingName, recordingPath } from "./recordingName.js";
import type { TrialSource } from "./trialSource.js";

/** Names of files for a person: without their folders where that tells all of them apart. */
export function sourceNames(sources: readonly TrialSource[]): readonly string[] {
  const paths = new Set(sources.map(({ path }) => path));
  const files = new Set([...paths].map((path) => basename(path)));
  const nameOf = files.size < paths.size ? recordingPath : recordingName;
  return sources.map(({ path, own }) => nameOf(path, own));
}
