import type { Alternative, AlternativeEffect } from "./alternative.js";

const FEEDBACK = "PMC3014399 (abstract)";

/** Landing more softly with the shin's acceleration shown live, where the vertical force rose. */
export function shockFeedback(): Alternative {
  return {
    id: "shock-feedback",
    name: "softer landings, practised with the shock at the shin shown live",
    sentence:
      "To try and to measure again: runs in which the runner sees the peak acceleration of the shin at each landing and seeks to lower it. It needs a sensor at the shin and practice over several runs; nothing is known of what it does to braking and mediolateral force.",
    effects: [
      effect(null, "peak acceleration along the shin", "lower by nearly 50 %"),
      effect("averageLoadingRate", "vertical loading rates", "lower by about 30 %"),
      effect("impactPeak", "vertical impact peak", "lower by about 20 %"),
    ],
    sources: [FEEDBACK],
  };
}

function effect(metric: string | null, quantity: string, change: string): AlternativeEffect {
  return {
    metric,
    quantity,
    kind: "load",
    direction: "lower",
    finding: `${change} (10 runners, each above 8 g before)`,
    source: FEEDBACK,
  };
}
