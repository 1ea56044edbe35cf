import { publishedCadenceChanges } from "../../models/index.js";
import type { Alternative, AlternativeEffect } from "./alternative.js";
import { moved } from "./moved.js";
import { said, type TrialPair } from "./pair.js";

/** The baseline's cadence, where the changed trial's was lower: its steps were longer at the same speed. */
export function cadenceAgain(trials: TrialPair): Alternative | null {
  const change = moved(trials, "cadence");
  if (change === null || change.direction === "higher") return null;
  const published = publishedCadenceChanges("lower");
  const metrics = ["peakVerticalForce", "peakBrakingForce"];
  return {
    id: "baseline-cadence",
    name: `the baseline's cadence at the same speed (${said(change.to)} to ${said(change.from)} steps/min)`,
    sentence:
      "To try and to measure again: the change with the step rate of the baseline. The changed trial took fewer steps a minute, so that each was longer; longer steps alone raise the force.",
    effects: [
      ...published.map(
        ({ quantity, condition, participants, source }, place): AlternativeEffect => ({
          metric: metrics[place] ?? null,
          quantity,
          kind: "load",
          direction: "lower",
          finding: `higher with ${condition} (${participants}; no numbers in the abstract)`,
          source: `${source} (abstract)`,
        }),
      ),
      {
        metric: "cadence",
        quantity: "steps for the same distance",
        kind: "cost",
        direction: "higher",
        finding: `${said(100 * (change.from / change.to - 1))} % more steps a kilometre at the same speed than in the changed trial`,
        source: "definition of cadence",
        estimate: { unit: "steps/min", from: change.to, low: change.from, high: change.from },
      },
    ],
    sources: [...new Set(published.map(({ source }) => `${source} (abstract)`))],
  };
}
