import type { Metric } from "../../metrics/index.js";
import type { Trial } from "../trial.js";

/** Body weight or mass, by which a metric is divided to compare people; `null` where there is none. */
export function divisorOf({ normalised }: Metric, { settings: { mass, gravity } }: Trial): number | null {
  if (normalised === undefined || mass === null) return null;
  return normalised.by === "body weight" ? mass * gravity : mass;
}
