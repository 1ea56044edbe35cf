import type { Metric } from "../metrics/index.js";
import { fail } from "../units/index.js";
import type { ChangeAt } from "./detectableChange.js";
import type { SourcedChange } from "./options.js";

/**
 * Takes a sourced change into a metric's unit, for the baseline's mean.
 *
 * @param argument - The option it is from.
 */
export function changeIn(
  metric: Metric,
  { value, unit, source }: SourcedChange,
  mass: number | null,
  gravity: number,
  argument: string,
): ChangeAt {
  if (unit === "%") return (baselineMean) => ({ value: (value / 100) * Math.abs(baselineMean), source });
  if (unit === metric.unit) return () => ({ value, source });
  if (mass === null) {
    fail("missing-value", `${argument}.${metric.id} is in ${unit}, and the baseline has no mass`, {
      argument: `${argument}.${metric.id}`,
    });
  }
  return () => ({ value: value * mass * (metric.normalised?.by === "body weight" ? gravity : 1), source });
}
