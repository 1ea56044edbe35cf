import type { Metric } from "../../metrics/index.js";
import type { NotComputed } from "../../trial/index.js";
import { capitalised } from "../wording/capitalised.js";
import { metricName } from "../wording/metricName.js";
import { reasonGroups } from "../wording/reasonGroups.js";
import { bulletList } from "./bulletList.js";

/** Lists metrics that are not there, by reason. */
export function missingList(missing: readonly NotComputed[], metrics: readonly Metric[]): string {
  const groups = reasonGroups(missing, (id) => metricName(id, metrics));
  return bulletList(groups.map(({ reason, names }) => capitalised(`${names.join(", ")}: ${reason}.`)));
}
