import type { Alternative } from "./alternative.js";
import { moved } from "./moved.js";
import { said, type TrialPair } from "./pair.js";

const ARELLANO = "Arellano & Kram 2011 (abstract)";

/** The baseline's step width, where the changed trial's was another. */
export function stepWidthAgain(trials: TrialPair): Alternative | null {
  const change = moved(trials, "stepWidth");
  if (change === null) return null;
  const [from, to] = [change.to, change.from].map((metres) => said(100 * metres));
  return {
    id: "baseline-step-width",
    name: `the step width of the baseline (${from} to ${to} cm)`,
    sentence: `To try and to measure again: the change with the feet as far apart as in the baseline. They came down ${change.direction === "higher" ? "further apart" : "closer together"} in the changed trial, and runners pay for a width that is not their own; what it does to the mediolateral force was not found in print.`,
    effects: [
      {
        metric: null,
        quantity: "net metabolic power",
        kind: "cost",
        direction: "lower",
        finding:
          "step widths of 0, 15, 20 and 25 % of leg length cost 3, 9, 12 and 15 % more than the preferred one (10 runners, 3 m/s)",
        source: ARELLANO,
      },
      {
        metric: "stepWidth",
        quantity: "step width",
        kind: "motion",
        direction: change.direction === "higher" ? "lower" : "higher",
        finding: "what is tried: the width of these two recordings taken back",
        source: "these two recordings",
        estimate: { unit: "m", from: change.to, low: change.from, high: change.from },
      },
    ],
    sources: [ARELLANO],
  };
}
