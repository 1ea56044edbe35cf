import {
  type Curves,
  type FieldTTest,
  fieldClusterProbability,
  fieldClusters,
  fieldPermutation,
  fieldThreshold,
  fieldTTest,
  median,
  type StudentField,
} from "../../statistics/index.js";
import { type Caution, type Complete, fail } from "../../units/index.js";
import { digits } from "../wording.js";
import type { CurveCluster, CurveComparison } from "./curveComparison.js";
import type { CurveTestOptions } from "./options.js";

/** Two sets of curves and what is known of them. */
export interface CurveSets {
  readonly component: CurveComparison["component"];
  readonly side: CurveComparison["side"];
  readonly unit: CurveComparison["unit"];
  readonly of: CurveComparison["of"];
  readonly paired: boolean;
  /** Whether curves follow one another in time. */
  readonly correlated: boolean;
  readonly baseline: Curves;
  readonly changed: Curves;
  /** Mean contact time of each set, s; `null` where it is not known. */
  readonly contactTimes: readonly [baseline: number, changed: number] | null;
  readonly cautions: readonly Caution[];
}

/**
 * Share of the curves, at the points worth least, below which it is said how many independent ones they are worth.
 */
const WORTH_SAYING = 0.9;

/** Below this share of what neighbours alone would make of the curves, their memory is said to be long. */
const LONG_MEMORY = 0.35;

/** Tests two sets of curves point by point and finds the stretches in which they differ. */
export function testCurves(sets: CurveSets, options: Complete<CurveTestOptions>): CurveComparison {
  const { baseline, changed, paired, correlated, contactTimes } = sets;
  const { level, permutations, seed } = options;
  // Successive contacts of one runner: a change of technique may change the spread, and trials differ in length.
  const form = { paired, correlated, pooled: !correlated };
  const test = spreading(() => fieldTTest(changed, baseline, form));
  const field: StudentField = {
    kind: "t",
    degreesOfFreedom: test.degreesOfFreedom,
    nodes: Math.max(2, test.formed.filter((formed) => formed).length),
    fullWidthAtHalfMaximum: test.fullWidthAtHalfMaximum,
  };
  const { threshold, rule } = fieldThreshold(field, { level });
  const permuted = fieldPermutation(changed, baseline, { ...form, level, permutations, seed });
  const points = test.formed.length;
  const percentOf = (place: number) => (100 * place) / (points - 1);
  const mean = contactTimes === null ? null : (contactTimes[0] + contactTimes[1]) / 2;
  const timeOf = (place: number) => (mean === null ? null : (place / (points - 1)) * mean);
  const used = Math.max(threshold, permuted.threshold ?? 0);
  const clusters = fieldClusters(test.statistic, used).map(({ from, to, peak, peakAt }): CurveCluster => {
    return {
      from: percentOf(from),
      to: percentOf(to),
      fromTime: timeOf(from),
      toTime: timeOf(to),
      peak,
      peakAt: percentOf(peakAt),
      difference: meanOver(test.difference, from, to),
      p: fieldClusterProbability(to - from, used, field),
    };
  });
  return {
    schema: "gait-kinetics/curves/1",
    component: sets.component,
    side: sets.side,
    unit: sets.unit,
    test: paired ? "paired" : "two-sample",
    of: sets.of,
    curves: { baseline: baseline.length, changed: changed.length },
    degreesOfFreedom: test.degreesOfFreedom,
    fullWidthAtHalfMaximum: test.fullWidthAtHalfMaximum,
    level,
    percent: Array.from({ length: points }, (_, q) => percentOf(q)),
    baseline: meanCurve(baseline, points),
    changed: meanCurve(changed, points),
    difference: Array.from(test.difference),
    statistic: Array.from(test.statistic),
    threshold,
    thresholdRule: rule,
    permutationThreshold: permuted.threshold,
    clusters,
    cautions: [...sets.cautions, ...testCautions(test, permuted.threshold === null, sets, percentOf)],
  };
}

/** A refusal in the words of a comparison where the curves of a set do not differ among themselves. */
function spreading(test: () => FieldTTest): FieldTTest {
  try {
    return test();
  } catch (caught) {
    if ((caught as { code?: string }).code !== "out-of-range") throw caught;
    fail(
      "not-comparable",
      "the curves of each set are all alike: without a spread between them no difference can be judged",
      { argument: "baseline" },
    );
  }
}

function testCautions(
  test: FieldTTest,
  withoutPermutation: boolean,
  { of, baseline, changed }: CurveSets,
  percentOf: (place: number) => number,
): Caution[] {
  const cautions: Caution[] = [];
  if (test.lowShare < WORTH_SAYING) {
    const worth = [baseline, changed].map(({ length }) => Math.max(1, test.lowShare * length)) as [
      number,
      number,
    ];
    cautions.push({
      code: "curves-correlated",
      message: `successive curves resemble each other: the ${baseline.length} of the baseline count as ${digits(Math.round(worth[0]))} independent ones, the ${changed.length} of the changed trial as ${digits(Math.round(worth[1]))}`,
      values: { baseline: worth[0], changed: worth[1] },
    });
  }
  const share = shareOfNeighbours(test);
  if (share < LONG_MEMORY) {
    cautions.push({
      code: "curves-long-memory",
      message: `curves resemble not only the next but later ones as well, as where a trial settles in or wanders slowly: their means vary ${digits(Number((1 / share).toPrecision(2)))} times as much as neighbours alone would tell, and what one trial cannot show of such change may still pass for a difference; record longer trials, or several`,
      values: { times: 1 / share },
    });
  }
  if (withoutPermutation) {
    cautions.push({
      code: "too-few-permutations",
      message: `${baseline.length} and ${changed.length} ${of === "runners" ? "runners" : "curves"} have too few different permutations for this level: the threshold is that of random field theory alone`,
      values: { baseline: baseline.length, changed: changed.length },
    });
  }
  const left = test.formed.flatMap((formed, q) => (formed ? [] : [percentOf(q)]));
  if (left.length > 0) {
    const [first = 0, last = 0] = [left[0], left[left.length - 1]];
    cautions.push({
      code: "points-without-statistic",
      message: `at ${left.length} of ${test.formed.length} points of stance the curves hardly spread, as where they begin and end at the contact threshold: nothing is tested there`,
      values: { points: left.length, first, last },
    });
  }
  return cautions;
}

/** Median over the points of what curves are worth, over what the correlation of neighbours alone makes of it. */
function shareOfNeighbours({ effectiveShare, neighbourShare, formed }: FieldTTest): number {
  const ratios = Array.from(effectiveShare, (share, q) => share / (neighbourShare[q] as number));
  return median(ratios.filter((_, q) => formed[q]));
}

function meanCurve(curves: Curves, points: number): number[] {
  return Array.from({ length: points }, (_, q) => {
    let sum = 0;
    for (const curve of curves) sum += curve[q] as number;
    return sum / curves.length;
  });
}

/** Mean of the straight lines between points over a stretch; at its middle where it has no width. */
function meanOver(values: Float64Array, from: number, to: number): number {
  const at = (place: number) => {
    const q = Math.min(Math.floor(place), values.length - 2);
    const low = values[q] as number;
    return low + (place - q) * ((values[q + 1] as number) - low);
  };
  if (!(to > from)) return at(from);
  let area = 0;
  let left = from;
  while (left < to) {
    const right = Math.min(Math.floor(left) + 1, to);
    area += ((at(left) + at(right)) / 2) * (right - left);
    left = right;
  }
  return area / (to - from);
}
