import type { ComparisonDesign } from "../../compare/index.js";
import { counted } from "./counted.js";

/** Says how the trials were laid out: `baseline recorded again after the change (2 trials and 1)`. */
export function designWords({ kind, baselineTrials, changedTrials }: ComparisonDesign): string {
  switch (kind) {
    case "one trial each":
      return "one trial of each condition";
    case "baseline again":
      return `the baseline recorded again after the change (${counted(baselineTrials, "trial")} of the baseline, ${changedTrials} of the change)`;
    case "several trials":
      return `several trials of each condition (${baselineTrials} of the baseline, ${changedTrials} of the change)`;
  }
}
