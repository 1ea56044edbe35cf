import type { Metric } from "../metrics/index.js";
import { meanInterval } from "../statistics/index.js";
import type { MetricSummary, StepRow } from "./trial.js";

/** What values are divided by to compare people; SI units. */
export interface Normalisers {
  readonly mass: number | null;
  readonly gravity: number;
  readonly speed: number | null;
}

/**
 * Summary of one metric over units of one or two rows each: strides or, in a recording too short for one, contacts.
 * `undefined` where no unit has a value.
 */
export function summarise(
  metric: Metric,
  rows: readonly StepRow[],
  units: readonly (readonly number[])[],
  normalisers: Normalisers,
  level: number,
): MetricSummary | undefined {
  const { id, unit, normalised } = metric;
  const values: number[] = [];
  const divided: number[] = [];
  for (const members of units) {
    const value = meanOf(rows, members, id);
    if (value === null) continue;
    values.push(value);
    const divisor = normalised && divisorOf(normalised.by, meanOf(rows, members, "stepTime"), normalisers);
    if (divisor != null) divided.push(value / divisor);
  }
  if (values.length === 0) return undefined;
  const left = valuesOf(rows, id, "left");
  const right = valuesOf(rows, id, "right");
  return {
    unit,
    ...meanInterval(values, level),
    ...(normalised &&
      divided.length > 0 && { normalised: { unit: normalised.unit, ...meanInterval(divided, level) } }),
    ...(left.length > 0 && { left: meanInterval(left, level) }),
    ...(right.length > 0 && { right: meanInterval(right, level) }),
  };
}

function meanOf(rows: readonly StepRow[], members: readonly number[], id: string): number | null {
  let sum = 0;
  for (const k of members) {
    const value = rows[k]?.values[id];
    if (value == null) return null;
    sum += value;
  }
  return sum / members.length;
}

function valuesOf(rows: readonly StepRow[], id: string, side: "left" | "right"): number[] {
  return rows.flatMap((row) => (row.side === side ? (row.values[id] ?? []) : []));
}

function divisorOf(
  by: NonNullable<Metric["normalised"]>["by"],
  stepTime: number | null,
  { mass, gravity, speed }: Normalisers,
): number | null {
  if (mass === null) return null;
  if (by === "body weight") return mass * gravity;
  if (by === "mass") return mass;
  return speed === null || speed === 0 || stepTime === null ? null : mass * speed * stepTime;
}
