import type { Alternative } from "./alternative.js";
import { moved } from "./moved.js";
import { said, type TrialPair } from "./pair.js";

const LIEBERMAN = "Lieberman et al. 2015, J Exp Biol 218:3406 (abstract)";
const WILLE = "Wille et al. 2014, J Orthop Sports Phys Ther 44:825 (abstract)";

/** The baseline's landing, where the changed trial's foot came down further ahead of the centre of mass. */
export function landingAgain(trials: TrialPair): Alternative | null {
  const change = moved(trials, "touchdownDistance");
  if (change === null || change.direction === "lower") return null;
  const [from, to] = [change.to, change.from].map((metres) => said(100 * metres));
  return {
    id: "baseline-landing",
    name: `the foot down as near to the body as in the baseline (${from} to ${to} cm ahead of the centre of mass)`,
    sentence:
      "To try and to measure again: landing where the baseline landed. The foot came down further ahead of the centre of mass in the changed trial; what the change lowered may come back with the landing.",
    effects: [
      {
        metric: "peakBrakingForce",
        quantity: "peak braking force",
        kind: "load",
        direction: "lower",
        finding:
          "landing further ahead of the hip went with a higher braking force (P = 0.0005; 14 runners, 3.0 m/s); the distance to the hip is not that to the centre of mass",
        source: LIEBERMAN,
      },
      {
        metric: "brakingImpulse",
        quantity: "braking impulse",
        kind: "load",
        direction: "unclear",
        finding:
          "the heel's distance ahead of the centre of mass, with vertical excursion, foot and knee angles and step rate, accounts for half of the differences between runners (R² 0.50; 45 runners); the abstract gives no direction",
        source: WILLE,
      },
      {
        metric: "touchdownDistance",
        quantity: "distance of the foot ahead of the centre of mass at touchdown",
        kind: "motion",
        direction: "lower",
        finding: "what is tried: the distance of these two recordings taken back",
        source: "these two recordings",
        estimate: { unit: "m", from: change.to, low: change.from, high: change.from },
      },
      {
        metric: "impactPeak",
        quantity: "impact peak and loading rates",
        kind: "cost",
        direction: "unclear",
        finding:
          "no sign holds for all foot strikes: a smaller share of the step ahead of the centre of mass went with higher loading rates (r −0.56) and impact peaks (r −0.80) in the 6 of 18 women who did not land on the heel, a smaller distance with lower loading rates (r +0.62) in the others",
        source: "a conference abstract on eighteen women",
      },
    ],
    sources: [LIEBERMAN, WILLE],
  };
}
