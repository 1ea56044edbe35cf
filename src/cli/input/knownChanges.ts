import type { SourcedChange } from "../../compare/index.js";
import { readReliability } from "../../exchange/index.js";
import type { AnalysisOptions } from "../options/inputOptions.js";
import type { TypedChange } from "../options/smallestChanges.js";
import { naming } from "./naming.js";
import { readUtf8 } from "./readUtf8.js";
import { sourced } from "./sourced.js";

/** Where smallest detectable changes come from. */
export interface ChangeOptions {
  readonly smallestChange?: Readonly<Record<string, TypedChange>> | undefined;
  readonly smallestChangeSource?: string | undefined;
  readonly reliability?: string | undefined;
}

/**
 * Smallest detectable changes by metric: those of a reliability that was measured, and in their place those that were
 * typed, with their source.
 *
 * @throws InvalidArgumentError: changes without a source, or a source without changes. GaitKineticsError
 * `unreadable-file`: the file holds no reliability.
 */
export function knownChanges({
  smallestChange,
  smallestChangeSource,
  reliability,
  metrics,
}: ChangeOptions & Pick<AnalysisOptions, "metrics">): Readonly<Record<string, SourcedChange>> | undefined {
  const typed = sourced(
    smallestChange,
    smallestChangeSource,
    "--smallest-change",
    "--smallest-change-source",
    metrics,
  );
  if (reliability === undefined) return typed;
  return { ...measuredChanges(reliability), ...typed };
}

function measuredChanges(path: string): Readonly<Record<string, SourcedChange>> {
  const text = readUtf8(path);
  return naming(path, () => readReliability(text).smallestDetectableChange);
}
