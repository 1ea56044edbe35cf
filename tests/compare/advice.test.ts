import { expect, it } from "vitest";
import { type CompareTrialsOptions, compareTrials } from "../../src/compare/index.js";
import { metricById } from "../../src/metrics/index.js";
import { mean, type SeededRandom, seededRandom, standardDeviation } from "../../src/statistics/index.js";
import { trialOf } from "./trialOf.js";

const compare = (
  before: readonly number[],
  after: readonly number[],
  options: Omit<CompareTrialsOptions, "metrics"> = {},
) =>
  compareTrials(
    trialOf({ mediolateralImpulse: before }, { speed: null }),
    trialOf({ mediolateralImpulse: after }, { speed: null }),
    { metrics: [metricById("mediolateralImpulse")], resamples: 100, ...options },
  );
const advised = (text = "") => Number(/^about (\d+) or more further strides/.exec(text)?.[1] ?? Number.NaN);

/** Independent strides with exactly this mean and standard deviation. */
function strides(random: SeededRandom, n: number, centre: number, sd: number): number[] {
  const values = Array.from({ length: n }, () => random.normal());
  const [own, spread] = [mean(values), standardDeviation(values)];
  return values.map((value) => centre + (sd * (value - own)) / spread);
}

/** Of trials whose advice is followed in both, with mean and spread kept: the share that reads something. */
function shareSettled(n1: number, n2: number, sd: number): number {
  const random = seededRandom(31);
  let settled = 0;
  const cases = 50;
  for (let k = 0; k < cases; ) {
    const before = strides(random, n1, 6 + 0.1 * random.normal(), 0.6);
    const after = strides(random, n2, 6.2 + 1.3 * random.uniform(), 0.6 * sd);
    const first = compare(before, after);
    if (first.components[2]?.reading !== "unsettled") continue;
    const more = advised(first.overall.toSettle?.[0]);
    if (Number.isNaN(more)) continue;
    k++;
    const again = compare(
      strides(random, n1 + more, mean(before), standardDeviation(before)),
      strides(random, n2 + more, mean(after), standardDeviation(after)),
    );
    if (again.components[2]?.reading !== "unsettled") settled++;
  }
  return settled / cases;
}

it.each([
  [20, 200, 3],
  [30, 300, 2],
])(
  "2026-11-25: trials of %d and %d strides were told a number that settled four in ten: the longer one was taken to grow in proportion",
  (n1, n2, sd) => expect(shareSettled(n1, n2, sd)).toBeGreaterThan(0.7),
);

it("2026-11-25: a difference beyond the margin and below a given smallest detectable change was called at the edge of what counts", () => {
  const random = seededRandom(5);
  const [before, after] = [strides(random, 60, 6, 0.3), strides(random, 60, 6.8, 0.3)];
  const limits = (change: number, margin: number): CompareTrialsOptions => ({
    smallestDetectableChange: { mediolateralImpulse: { value: change, unit: "N s", source: "own repeats" } },
    margins: { mediolateralImpulse: { value: margin, unit: "N s", source: "own margin" } },
  });
  const between = compare(before, after, limits(1, 0.5));
  expect(between.components[2]?.reading).toBe("unsettled");
  expect(between.overall.toSettle).toContain(
    "another margin or smallest detectable change for the mediolateral force: its difference lies beyond what reads similar and below what counts, which no recording settles while it stays as it is",
  );
  // Neither number of strides moves a given limit: the same with twenty times as many.
  const [long, later] = [strides(random, 1200, 6, 0.3), strides(random, 1200, 6.8, 0.3)];
  expect(compare(long, later, limits(1, 0.5)).components[2]?.reading).toBe("unsettled");
  // Beyond both limits, and within the margin, it is read.
  expect(compare(before, after, limits(0.5, 0.5)).components[2]?.reading).toBe("higher");
  expect(compare(before, after, limits(1, 1)).components[2]?.reading).toBe("similar");
});
