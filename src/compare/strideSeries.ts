import type { Metric } from "../metrics/index.js";
import {
  type ContactsWith,
  contactsWith,
  type StepRow,
  type StridePair,
  stridePairs,
  type Trial,
} from "../trial/index.js";

/** The same of the baseline and of the changed trial. */
export interface OfBoth<T> {
  readonly baseline: T;
  readonly changed: T;
}

/** A trial with its strides paired once for all metrics. */
export interface PairedTrial {
  readonly trial: Trial;
  readonly pairs: readonly StridePair[];
}

/** A metric's stride values in one trial, in the order of time. */
export interface StrideSeries {
  readonly values: readonly number[];
  /** Value ÷ (speed × the stride's mean step time); empty where either is not known. */
  readonly perMetre: readonly number[];
  /** In the metric's normalised unit; empty where the divisor is not known. */
  readonly normalised: readonly number[];
  /** How many contacts have the metric. */
  readonly contacts: ContactsWith;
}

/** Pairs a trial's contacts into strides. */
export function paired(trial: Trial): PairedTrial {
  return { trial, pairs: stridePairs(trial.steps, trial) };
}

/** Forms the stride values of a metric: the mean of its contacts, a stride that lacks one left out. */
export function strideSeries({ trial, pairs }: PairedTrial, metric: Metric): StrideSeries {
  const { steps, settings } = trial;
  const { speed, mass, gravity } = settings;
  const values: number[] = [];
  const perMetre: number[] = [];
  const normalised: number[] = [];
  const by = metric.normalised?.by;
  for (const pair of pairs) {
    const value = meanOf(steps, pair, metric.id);
    if (value === null) continue;
    values.push(value);
    const stepTime = meanOf(steps, pair, "stepTime");
    const distance = speed === null || stepTime === null ? 0 : speed * stepTime;
    if (distance > 0) perMetre.push(value / distance);
    if (by === undefined || mass === null) continue;
    const divisor = by === "body weight" ? mass * gravity : by === "mass" ? mass : mass * distance;
    if (divisor > 0) normalised.push(value / divisor);
  }
  return { values, perMetre, normalised, contacts: contactsWith(steps, metric) };
}

function meanOf(steps: readonly StepRow[], pair: StridePair, id: string): number | null {
  let sum = 0;
  for (const k of pair) {
    const value = steps[k]?.values[id] ?? null;
    if (value === null) return null;
    sum += value;
  }
  return sum / pair.length;
}
