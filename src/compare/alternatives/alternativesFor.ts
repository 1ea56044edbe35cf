import type { ComponentName, OverallReading } from "../comparison.js";
import type { Alternative } from "./alternative.js";
import { cadenceAgain } from "./cadenceAgain.js";
import { higherCadence } from "./higherCadence.js";
import { landingAgain } from "./landingAgain.js";
import type { TrialPair } from "./pair.js";
import { shockFeedback } from "./shockFeedback.js";
import { stepWidthAgain } from "./stepWidthAgain.js";

/** Cadence 5 and 10 % above the baseline's: the changes that the experiments made. */
const CADENCE_CHANGES: readonly number[] = [0.05, 0.1];

/**
 * Lists what published experiments support trying instead, where a change shifted or raised the load.
 *
 * Formula: first what the change itself moved and can be taken back, each told by the 95 % interval of the difference of
 * stride means: the foot's landing further ahead, a lower cadence, another step width. Then a cadence 5 and 10 % above the
 * baseline's at the same speed, left out where the changed trial had that cadence already; then, where the vertical force
 * rose, live feedback of the shock at the shin. Estimates of this runner are those of `cadenceWhatIf`, with
 * the baseline's means.
 * Units: those of the metrics.
 * Limits: for running; other gaits have no such list. Groups' means: one runner may answer otherwise. Where speed, mass,
 * height, cadence or contact time is not known, published findings stand alone. No experiment was found that measured
 * what a cadence does to the mediolateral force.
 * Source: each effect names its own.
 * @param trials - The usual technique and the changed one.
 * @param reading - Of the load as a whole; the list is empty but for `shifted` and `raised`.
 * @param higher - Components of which the load rose.
 */
export function alternativesFor(
  trials: TrialPair,
  reading: OverallReading,
  higher: readonly ComponentName[],
): readonly Alternative[] {
  if (reading !== "shifted" && reading !== "raised") return [];
  const gaits = [trials.baseline, trials.changed].map(({ settings }) => settings.gait ?? "running");
  if (gaits.some((gait) => gait !== "running")) return [];
  return [
    landingAgain(trials),
    cadenceAgain(trials),
    stepWidthAgain(trials),
    ...CADENCE_CHANGES.map((change) => higherCadence(trials, change, higher)),
    higher.includes("vertical") ? shockFeedback() : null,
  ].filter((alternative) => alternative !== null);
}
