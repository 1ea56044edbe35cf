import type { Metric } from "../../metrics/index.js";
import { type MeanInterval, mean, meanInterval } from "../../statistics/index.js";
import { fail } from "../../units/index.js";
import { absentFrom } from "../absentFrom.js";
import { oneFootLacks } from "../oneFoot/notOfOneFoot.js";
import { sidesAreRelative } from "../sidesAreRelative.js";
import { stridePairs } from "../strideValues.js";
import { tooFewContacts } from "../tooFewContacts.js";
import type { NotComputed, StepRow, Trial } from "../trial.js";
import type { CumulativeLoad, LoadSum } from "./load.js";

/** What is summed: the value of a contact, its unit, and what it is divided by to compare people. */
export interface Summand {
  readonly value: (value: number) => number;
  readonly unit: string;
  readonly normalised: { readonly unit: string; readonly divisor: number } | null;
}

/** The contacts of one stride with what each adds, and the mean of both step times. */
interface Stride {
  readonly first: number;
  readonly second: number;
  /** Of the right foot; `null` where the feet are not told apart. */
  readonly right: number | null;
  readonly stepTime: number;
}

/** Refuses metrics whose sum over steps has no meaning. */
export function requireLoad({ id, perKilometre }: Metric): void {
  if (perKilometre === true) return;
  fail("out-of-range", `${id} is no load: summed over steps it has no meaning`, {
    argument: "metric",
    values: { given: id },
  });
}

/** Sums over the steps of a kilometre and a minute, or says why not. */
export function sumOverSteps(
  trial: Trial,
  metric: Metric,
  summand: Summand,
  level: number,
): CumulativeLoad | NotComputed {
  const { id } = metric;
  const lack = absentFrom(trial, metric) ?? oneFootLacks(trial, id) ?? tooFewContacts(trial, metric);
  if (lack !== null) return lack;
  const strides = stridesOf(trial, id, summand);
  if (strides.length === 0) {
    return {
      id,
      code: "no-stride",
      message: "no stride has it and the step time (stepTime) of both contacts",
    };
  }
  const { speed } = trial.settings;
  const known = speed !== null && speed > 0;
  const toKilometre = ({ stepTime }: Stride) => 1000 / ((speed ?? 0) * stepTime);
  const toMinute = ({ stepTime }: Stride) => 60 / stepTime;
  return {
    id,
    stepsPerKilometre: known ? mean(strides.map(toKilometre)) : null,
    stepsPerMinute: mean(strides.map(toMinute)),
    perKilometre: known ? sumOf(strides, summand, "km", toKilometre, level) : null,
    noKilometre: known
      ? null
      : {
          id,
          code: "missing-speed",
          message: "no speed above 0 is stated, so the length of a step is not known",
        },
    perMinute: sumOf(strides, summand, "min", toMinute, level),
  };
}

function stridesOf(trial: Trial, id: string, { value }: Summand): Stride[] {
  const relative = sidesAreRelative(trial);
  return stridePairs(trial.steps, trial).flatMap((pair): Stride[] => {
    const [a, b] = pair.map((k) => trial.steps[k]) as [StepRow, StepRow];
    const [first, second] = [a.values[id] ?? null, b.values[id] ?? null];
    const [before, after] = [a.values.stepTime ?? null, b.values.stepTime ?? null];
    if (first === null || second === null || before === null || after === null) return [];
    const sums = { first: value(first), second: value(second), stepTime: (before + after) / 2 };
    const right = a.side === "right" ? sums.first : b.side === "right" ? sums.second : null;
    return [{ ...sums, right: relative ? null : right }];
  });
}

/** A mean's interval of values of any size: peaks to a high power have squares that are no finite numbers. */
function spreadOf(values: readonly number[], level: number): MeanInterval {
  const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  if (largest < 1e60) return meanInterval(values, level);
  const {
    n,
    mean: middle,
    sd,
    interval,
  } = meanInterval(
    values.map((value) => value / largest),
    level,
  );
  return {
    n,
    mean: middle * largest,
    sd: sd === null ? null : sd * largest,
    interval: interval && { ...interval, low: interval.low * largest, high: interval.high * largest },
  };
}

/** Mean over strides of the stride's own mean × steps per kilometre or minute. */
function sumOf(
  strides: readonly Stride[],
  { unit, normalised }: Summand,
  per: string,
  steps: (stride: Stride) => number,
  level: number,
): LoadSum {
  const both = strides.map((stride) => ((stride.first + stride.second) / 2) * steps(stride));
  const sided = strides.every(({ right }) => right !== null);
  const right = strides.map((stride) => ((stride.right ?? 0) / 2) * steps(stride));
  const left = both.map((sum, k) => sum - (right[k] as number));
  return {
    unit: `${unit}/${per}`,
    ...spreadOf(both, level),
    ...(normalised !== null && {
      normalised: {
        unit: `${normalised.unit}/${per}`,
        ...spreadOf(
          both.map((sum) => sum / normalised.divisor),
          level,
        ),
      },
    }),
    ...(sided && { left: spreadOf(left, level), right: spreadOf(right, level) }),
  };
}
