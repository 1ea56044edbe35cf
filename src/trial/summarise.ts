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
  const column = columnOf(rows, id);
  const stepTimes = normalised?.by === "mass and distance" ? columnOf(rows, "stepTime") : null;
  const values: number[] = [];
  const divided: number[] = [];
  for (const members of units) {
    const value = meanOf(column, members);
    if (Number.isNaN(value)) continue;
    values.push(value);
    const stepTime = stepTimes && meanOf(stepTimes, members);
    const divisor = normalised && divisorOf(normalised.by, stepTime, normalisers);
    if (divisor != null) divided.push(value / divisor);
  }
  if (values.length === 0) return undefined;
  const left = valuesOf(rows, column, "left");
  const right = valuesOf(rows, column, "right");
  return {
    unit,
    ...meanInterval(values, level),
    ...(normalised &&
      divided.length > 0 && { normalised: { unit: normalised.unit, ...meanInterval(divided, level) } }),
    ...(left.length > 0 && { left: meanInterval(left, level) }),
    ...(right.length > 0 && { right: meanInterval(right, level) }),
  };
}

/** A metric's values in the order of the rows; NaN where a row has none. */
function columnOf(rows: readonly StepRow[], id: string): Float64Array {
  const column = new Float64Array(rows.length);
  for (let k = 0; k < rows.length; k++) column[k] = rows[k]?.values[id] ?? Number.NaN;
  return column;
}

/** NaN where a member has none. */
function meanOf(column: Float64Array, members: readonly number[]): number {
  let sum = 0;
  for (const k of members) sum += column[k] as number;
  return sum / members.length;
}

function valuesOf(rows: readonly StepRow[], column: Float64Array, side: "left" | "right"): number[] {
  const values: number[] = [];
  for (let k = 0; k < rows.length; k++) {
    const value = column[k] as number;
    if (rows[k]?.side === side && !Number.isNaN(value)) values.push(value);
  }
  return values;
}

function divisorOf(
  by: NonNullable<Metric["normalised"]>["by"],
  stepTime: number | null,
  { mass, gravity, speed }: Normalisers,
): number | null {
  if (mass === null) return null;
  if (by === "body weight") return mass * gravity;
  if (by === "mass") return mass;
  return speed === null || speed === 0 || stepTime === null || Number.isNaN(stepTime)
    ? null
    : mass * speed * stepTime;
}
