import type { CompareTrialsOptions } from "../../compare/index.js";
import type { AnalysisOptions } from "../options/inputOptions.js";
import type { Margin } from "../options/margin.js";
import { sourced } from "./sourced.js";

/** Within what a load counts as alike. */
export interface MarginOptions {
  readonly margin?: Margin | undefined;
  readonly marginSource?: string | undefined;
}

/**
 * The margins as the library takes them.
 *
 * @throws InvalidArgumentError: margins of metrics without a source, or a source without them.
 */
export function knownMargins({
  margin,
  marginSource,
  metrics,
}: MarginOptions & Pick<AnalysisOptions, "metrics">): Pick<
  CompareTrialsOptions,
  "similarMargin" | "margins"
> {
  const byMetric = margin !== undefined && "byMetric" in margin ? margin.byMetric : undefined;
  return {
    similarMargin: margin !== undefined && "share" in margin ? margin.share : undefined,
    margins: sourced(byMetric, marginSource, "--margin", "--margin-source", metrics),
  };
}
