import type { Trial } from "../trial/index.js";
import type { MetricPair } from "./compareMetric.js";
import type { ComponentName } from "./comparison.js";
import type { Absence } from "./readComponent.js";
import type { OfBoth, PairedTrial } from "./strideSeries.js";
import { whyAbsent } from "./whyAbsent.js";

/**
 * Says why a component has no reading: it was not recorded in both trials, no primary metric for it is compared, or a
 * trial does not have that metric.
 *
 * @param pair - Its primary metric, which a trial lacks; `null` where none is among the metrics.
 */
export function absenceOf(
  component: ComponentName,
  pair: MetricPair | null,
  trials: OfBoth<PairedTrial>,
): Absence {
  const before = isRecorded(component, trials.baseline.trial);
  const after = isRecorded(component, trials.changed.trial);
  if (before !== after) {
    return {
      kind: "not compared",
      words: `not compared, since only the ${before ? "baseline" : "changed trial"} recorded it`,
      toSettle: "all three components of the force recorded in both trials",
    };
  }
  if (!before) {
    return {
      kind: "not recorded",
      words: "recorded in neither trial",
      toSettle: "all three components of the force recorded in both trials",
    };
  }
  if (pair === null) {
    return {
      kind: "not compared",
      words: "not compared, since no primary metric for it is among the metrics",
      toSettle: "a primary metric for every component among the metrics",
    };
  }
  const { id, name } = pair.metric;
  return {
    kind: "not compared",
    words: `not compared, since ${whyAbsent(id, `the ${name}`, trials, pair)}`,
    toSettle: `the ${name} (${id}) computed in both trials`,
  };
}

/** A trial has mean curves of every component that was recorded. */
function isRecorded(component: ComponentName, { curves }: Trial): boolean {
  if (component === "vertical") return true;
  return (component === "anteroposterior" ? curves.forward : curves.right) !== undefined;
}
