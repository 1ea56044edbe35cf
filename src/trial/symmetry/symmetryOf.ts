import type { Metric } from "../../metrics/index.js";
import {
  effectiveNumberOf,
  type Interval,
  mean,
  meanInterval,
  ratioInterval,
  SYMMETRY_REFERENCES,
  standardDeviation,
  studentTQuantile,
  symmetryAngle,
  symmetryIndex,
} from "../../statistics/index.js";
import { requireNumber, requireOneOf, withDefaults } from "../../units/index.js";
import { absentFrom } from "../absentFrom.js";
import { metricOf } from "../metricOf.js";
import { oneFootLacks } from "../oneFoot/notOfOneFoot.js";
import { requireTrial } from "../requireTrial.js";
import { sidesAreRelative } from "../sidesAreRelative.js";
import { stridePairs } from "../strideValues.js";
import { tooFewContacts } from "../tooFewContacts.js";
import type { NotComputed, StepRow, Trial } from "../trial.js";
import { type BetweenFeet, SYMMETRY_DEFAULTS, type Symmetry, type SymmetryOptions } from "./symmetry.js";

/** Metrics of a whole stride, which holds one contact of each foot: what is said of one foot's is said of the other's. */
const OF_BOTH_FEET: readonly string[] = [
  "strideTime",
  "strideLength",
  "mediolateralExcursion",
  "energyRecovery",
];
/** Metrics that are the small difference of two large ones, which a share of their mean would blow up. */
const BALANCES: readonly string[] = ["netForwardImpulse"];
/** Cautions of a trial that make left and right doubtful. */
const DOUBTS: readonly string[] = ["sides-uncertain", "sides-from-force"];

/**
 * Sets the right foot against the left in one metric: symmetry index, ratio, symmetry angle and difference, each with its
 * interval, or the reason why there are none.
 *
 * Formula: with the means R and L of the strides of which both feet have the metric, {@link symmetryIndex},
 * {@link symmetryAngle} and R ÷ L. Intervals of all three are Fieller's of the ratio ({@link ratioInterval}), carried over,
 * since each grows with the ratio; that of the difference is Student's of the differences stride by stride. Both take the
 * effective number of strides with r₁ freed of its bias in short series.
 * Units: per cent; the ratio has none; the difference has the metric's unit.
 * Limits: no index, but the reason, where left and right are relative or not known (`sides-relative`,
 * `side-unknown`), values of both signs occur (`mixed-sign`), the mean of a foot is not told from 0 at the level
 * asked for (`near-zero`), fewer than 90 % of a foot's contacts have the metric (`too-few-contacts`), there is no
 * interval (`no-interval`), the metric spans a stride of both feet (`both-feet`) or is a balance (`balance`). Of
 * simulated trials of 20, 40 and 80 strides, 95 to 97 % of the 95 % intervals held the true ratio without
 * correlation of successive strides, 94 to 95 % at 0.3, 93 to 95 % at 0.6 with 40 and 80 strides, 89 to 93 % with
 * 20 (10 000 each), whatever the correlation between the feet; taken as independent the feet would give 78 to 100
 * %. Metrics of a step, such as step time, are of the foot that it begins with. A difference between the feet is no
 * illness and no cause of one: healthy runners differ by 2 to 35 % according to the metric, and no bound tells what
 * is much.
 * Source: as {@link symmetryIndex}, {@link symmetryAngle}, {@link ratioInterval}; healthy runners: symmetry angles of
 * Girard et al. 2019, Front. Sports Act. Living 1:36, times π.
 * @param trial - As `analyseTrial` gives it.
 * @param metric - Id of the catalogue, or an entry of one's own.
 * @param options - {@link SYMMETRY_DEFAULTS} where left out.
 * @throws GaitKineticsError `wrong-type`: no trial, no metric; `out-of-range`: no such metric, form or level;
 *   `not-finite`: the level; `unknown-option`.
 * @example
 * "index" in symmetryOf(trial, "netForwardImpulse") // false
 */
export function symmetryOf(
  trial: Trial,
  metric: string | Metric,
  options: SymmetryOptions = {},
): Symmetry | NotComputed {
  requireTrial(trial);
  const entry = metricOf(metric);
  const { of, level } = withDefaults<SymmetryOptions>(SYMMETRY_DEFAULTS, options);
  requireOneOf("of", of, SYMMETRY_REFERENCES);
  requireNumber("level", level, { above: 0, below: 1 });
  const { id, unit } = entry;
  const not = (code: string, message: string): NotComputed => ({ id, code, message });

  const refused = refusalOf(entry, trial);
  if (refused !== null) return refused;
  const { right, left } = valuesOfFeet(trial, id);
  if (right.length < 2) return not("no-interval", "fewer than two strides have it of both feet");
  const ratio = ratioInterval(right, left, level, { correctBias: true });
  if (ratio.ratio === null)
    return not("near-zero", "the mean of the left foot is 0: a share of it has no meaning");
  const difference = differenceOf(right, left, level);
  if (ratio.degreesOfFreedom === null || difference === null) {
    return not(
      "no-interval",
      "the strides resemble each other so much that they are worth fewer than two independent ones",
    );
  }
  const { interval } = ratio;
  if (interval === null || interval.low <= 0) {
    return not(
      "near-zero",
      `the mean of a foot is not told from 0 with ${right.length} strides: a share of it has no meaning`,
    );
  }
  const carried = (to: (ratio: number) => number): Interval => ({
    low: to(interval.low),
    high: to(interval.high),
    level,
  });
  return {
    id,
    unit,
    n: right.length,
    left: meanInterval(left, level),
    right: meanInterval(right, level),
    difference,
    of,
    index: symmetryIndex(mean(right), mean(left), { of }),
    interval: carried((q) => symmetryIndex(q, 1, { of })),
    ratio: { value: ratio.ratio, interval },
    angle: { value: symmetryAngle(mean(right), mean(left)), interval: carried((q) => symmetryAngle(q, 1)) },
    cautions: trial.cautions.filter(({ code }) => DOUBTS.includes(code)),
  };
}

/** Why there can be no index whatever the numbers of the strides; `null` where there can. */
function refusalOf(metric: Metric, trial: Trial): NotComputed | null {
  const { id } = metric;
  const not = (code: string, message: string): NotComputed => ({ id, code, message });
  if (OF_BOTH_FEET.includes(id)) return not("both-feet", "it is of a whole stride, which both feet share");
  if (BALANCES.includes(id)) {
    return not(
      "balance",
      "it is a small difference of large values; a share of it has no meaning: compare the braking and the propulsive impulse",
    );
  }
  const absent = absentFrom(trial, metric);
  if (absent !== null) return absent;
  const lacking = oneFootLacks(trial, id);
  if (lacking !== null) return lacking;
  if (trial.steps.some(({ side }) => side === "unknown")) {
    return not("side-unknown", "left and right are not told apart at every contact");
  }
  if (sidesAreRelative(trial)) {
    return not(
      "sides-relative",
      "which foot is called right is arbitrary, or may change within the trial; state the first foot",
    );
  }
  for (const side of ["left", "right"] as const) {
    if (trial.steps.every((row) => row.side !== side)) {
      return not("one-foot", `no contact of the ${side} foot is complete`);
    }
    const few = tooFewContacts(trial, metric, side);
    if (few !== null) return few;
  }
  const values = trial.steps.flatMap((row) => row.values[id] ?? []);
  const negative = values.filter((value) => value < 0).length;
  const positive = values.filter((value) => value > 0).length;
  if (negative === 0 || positive === 0) return null;
  return not(
    "mixed-sign",
    `${Math.min(negative, positive)} of ${values.length} contacts have the other sign than the rest; between values of both signs a share has no meaning`,
  );
}

/** Values of both feet of the strides that have both, in the order of time. */
function valuesOfFeet(trial: Trial, id: string): { right: number[]; left: number[] } {
  const right: number[] = [];
  const left: number[] = [];
  for (const pair of stridePairs(trial.steps, trial)) {
    const [a, b] = pair.map((k) => trial.steps[k]) as [StepRow, StepRow];
    const ofRight = (a.side === "right" ? a : b).values[id] ?? null;
    const ofLeft = (a.side === "right" ? b : a).values[id] ?? null;
    if (ofRight === null || ofLeft === null) continue;
    right.push(ofRight);
    left.push(ofLeft);
  }
  return { right, left };
}

/** Mean of the differences stride by stride, with Student's interval; `null` where they are worth fewer than two. */
function differenceOf(right: readonly number[], left: readonly number[], level: number): BetweenFeet | null {
  const differences = right.map((value, k) => value - (left[k] as number));
  const effective = effectiveNumberOf(differences, { correctBias: true });
  if (effective < 2) return null;
  const value = mean(differences);
  const reach =
    studentTQuantile((1 + level) / 2, effective - 1) *
    (standardDeviation(differences) / Math.sqrt(effective));
  return { value, interval: { low: value - reach, high: value + reach, level } };
}
