import { InvalidArgumentError } from "commander";
import { type AnalyseTrialOptions, TRIAL_FILTER } from "../../trial/index.js";
import type { AnalysisOptions } from "../options/inputOptions.js";

/**
 * The options of the analysis, from those of the command line; what was not typed keeps its default.
 *
 * @throws InvalidArgumentError an order for no filter.
 */
export function trialOptions(options: AnalysisOptions): AnalyseTrialOptions {
  const { gait, threshold, eventCutoff, airDrag, metrics, cutoff, order } = options;
  return {
    ...filterOf(cutoff, order),
    gait,
    events: { ...threshold, cutoff: eventCutoff },
    airDrag,
    metrics,
  };
}

function filterOf(
  cutoff: AnalysisOptions["cutoff"],
  order: AnalysisOptions["order"],
): Pick<AnalyseTrialOptions, "filter"> {
  if (cutoff === "none") {
    if (order !== undefined) {
      throw new InvalidArgumentError("--order is given with --cutoff none; an order needs a cutoff");
    }
    return { filter: null };
  }
  if (cutoff === undefined && order === undefined) return {};
  return { filter: { cutoff: cutoff ?? TRIAL_FILTER.cutoff, order: order ?? TRIAL_FILTER.order } };
}
