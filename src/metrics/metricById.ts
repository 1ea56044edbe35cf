import { fail } from "../units/index.js";
import { CATALOGUE } from "./catalogue.js";
import type { Metric } from "./metric.js";

/**
 * Gives the catalogue's entry of a metric.
 *
 * @param id - As in {@link CATALOGUE}.
 * @throws GaitKineticsError `out-of-range`: no such metric; the message lists those there are.
 * @example
 * metricById("brakingImpulse").unit // "N s"
 */
export function metricById(id: string): Metric {
  const found = CATALOGUE.find((metric) => metric.id === id);
  if (found !== undefined) return found;
  const known = CATALOGUE.map((metric) => metric.id);
  fail("out-of-range", `"${id}" is no metric; known are ${known.join(", ")}`, {
    argument: "id",
    values: { given: id, allowed: known },
  });
}
