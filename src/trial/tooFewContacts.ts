import type { Metric } from "../metrics/index.js";
import type { Side } from "../recording/index.js";
import { contactsWith, LEAST_SHARE_OF_CONTACTS } from "./contactsWith.js";
import type { NotComputed, Trial } from "./trial.js";

/** Why a metric that too few contacts have, of both feet or of one, says nothing of the trial; `null` where it does. */
export function tooFewContacts(trial: Trial, metric: Metric, side?: Side): NotComputed | null {
  const { having, counted, share } = contactsWith(trial.steps, metric, side);
  if (share >= LEAST_SHARE_OF_CONTACTS) return null;
  return {
    id: metric.id,
    code: "too-few-contacts",
    message: `${having} of ${counted} contacts${side === undefined ? "" : ` of the ${side} foot`} have it; ${100 * LEAST_SHARE_OF_CONTACTS} % are needed`,
  };
}
