import type { ComparisonDesign } from "../../compare/index.js";

/** Says how the trials were laid out: `one trial of each condition`; in which order they were recorded is not known. */
export function designWords({ kind, baselineTrials, changedTrials }: ComparisonDesign): string {
  switch (kind) {
    case "one trial each":
      return "one trial of each condition";
    case "baseline again":
      return "two trials of the baseline, one of the change; meant for a baseline recorded before and after it";
    case "several trials":
      return `several trials of each condition (${baselineTrials} of the baseline, ${changedTrials} of the change)`;
  }
}
