import { type Metric, metricById } from "../metrics/index.js";
import { fail } from "../units/index.js";

/** The entry that is meant by an id of the catalogue, or by an entry itself. */
export function metricOf(given: string | Metric): Metric {
  if (typeof given === "string") return metricById(given);
  if (typeof given?.id === "string" && Array.isArray(given.needs)) return given;
  fail("wrong-type", "metric is neither an id nor a catalogue entry with id and needs", {
    argument: "metric",
  });
}
