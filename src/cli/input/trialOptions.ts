import { type AnalyseTrialOptions, TRIAL_FILTER } from "../../trial/index.js";
import type { AnalysisOptions } from "../options/inputOptions.js";

/** The options of the analysis, from those of the command line; what was not typed keeps its default. */
export function trialOptions({ threshold, cutoff, order }: AnalysisOptions): AnalyseTrialOptions {
  const asked = cutoff !== undefined || order !== undefined;
  const filter =
    cutoff === null ? null : { cutoff: cutoff ?? TRIAL_FILTER.cutoff, order: order ?? TRIAL_FILTER.order };
  return {
    ...(asked && { filter }),
    ...(threshold !== undefined && { events: { threshold } }),
  };
}
