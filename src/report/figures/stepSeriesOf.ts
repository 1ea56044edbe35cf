import type { Metric, Normalisation } from "../../metrics/index.js";
import { type Spread, type StepRow, stridePairs, type Trial } from "../../trial/index.js";
import { bodyWeight } from "../../units/index.js";

/** One value of a metric over time. */
export interface SeriesPoint {
  readonly side: "left" | "right" | "unknown";
  readonly time: number;
  readonly value: number;
}

/** A metric of one trial over time. */
export interface StepSeries {
  /** Empty where there is one trial alone. */
  readonly label: string;
  readonly unit: string;
  readonly duration: number;
  readonly points: readonly SeriesPoint[];
  readonly summary: Spread;
  /** The straight line from the first stride's start to the last one's; `null` with fewer than two strides. */
  readonly line: { readonly from: Place; readonly to: Place } | null;
}

/** A place on a line over time. */
export interface Place {
  readonly time: number;
  readonly value: number;
}

/** What is drawn of a trial. */
export interface AskedSeries {
  readonly id: string;
  readonly entry: Metric | undefined;
  readonly unit: "SI" | "normalised";
  readonly label: string;
}

/** Takes a metric's values from a trial; `null` where there are none in this unit. */
export function stepSeriesOf(trial: Trial, { id, entry, unit, label }: AskedSeries): StepSeries | null {
  const metric = Object.hasOwn(trial.summary.metrics, id) ? trial.summary.metrics[id] : undefined;
  const summary = unit === "SI" ? metric : metric?.normalised;
  if (metric === undefined || summary === undefined) return null;
  const by = unit === "SI" ? null : entry?.normalised?.by;
  if (by === undefined) return null;
  const measured = (
    values: readonly (number | null)[],
    stepTimes: readonly (number | null)[],
  ): number | null => {
    const [value, stepTime] = [meanOf(values), meanOf(stepTimes)];
    const divisor = by === null ? 1 : divisorOf(by, stepTime, trial);
    return value === null || divisor === null || !Number.isFinite(value / divisor) ? null : value / divisor;
  };
  const column = (rows: readonly (StepRow | undefined)[], of: string) =>
    rows.map((row) => row?.values[of] ?? null);
  const measuredOf = (rows: readonly (StepRow | undefined)[]): number | null =>
    measured(column(rows, id), column(rows, "stepTime"));
  const points = trial.steps.flatMap((row): SeriesPoint[] => {
    const value = measuredOf([row]);
    return value === null ? [] : [{ side: row.side, time: row.initialContact, value }];
  });
  if (points.length === 0) return null;
  const strides = stridePairs(trial.steps, trial).flatMap((pair): Place[] => {
    const rows = pair.map((k) => trial.steps[k]);
    const value = measuredOf(rows);
    const time = rows[0]?.initialContact;
    return value === null || time === undefined ? [] : [{ time, value }];
  });
  return {
    label,
    unit: summary.unit,
    duration: trial.settings.duration,
    points,
    summary,
    line: lineThrough(strides),
  };
}

/** `null` where one of them is not there. */
function meanOf(values: readonly (number | null)[]): number | null {
  let sum = 0;
  for (const value of values) {
    if (value === null) return null;
    sum += value;
  }
  return sum / values.length;
}

function divisorOf(by: Normalisation, stepTime: number | null, { settings }: Trial): number | null {
  const { mass, gravity, speed } = settings;
  if (mass === null) return null;
  if (by === "body weight") return bodyWeight(mass, gravity);
  if (by === "mass") return mass;
  return speed === null || stepTime === null ? null : mass * speed * stepTime;
}

/** Least squares against the number of the stride. */
function lineThrough(strides: readonly Place[]): StepSeries["line"] {
  const [first, last] = [strides[0], strides.at(-1)];
  const n = strides.length;
  if (first === undefined || last === undefined || n < 2) return null;
  const middle = (n - 1) / 2;
  const centre = strides.reduce((sum, { value }) => sum + value / n, 0);
  let products = 0;
  let squares = 0;
  strides.forEach(({ value }, i) => {
    products += (i - middle) * (value - centre);
    squares += (i - middle) ** 2;
  });
  const half = (products / squares) * middle;
  if (!Number.isFinite(half)) return null;
  return { from: { time: first.time, value: centre - half }, to: { time: last.time, value: centre + half } };
}
