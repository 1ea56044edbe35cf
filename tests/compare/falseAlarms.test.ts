import { expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { seededRandom } from "../../src/statistics/index.js";
import { TYPICAL, trialOf, typicalStrides } from "./trialOf.js";

const metrics = CATALOGUE.filter(({ id }) => id in TYPICAL);
const none = { value: 0, unit: "%", source: "the t rule alone" };
const PAIRS = 500;

interface Alarms {
  /** Component readings `lower` or `higher`, %. */
  readonly component: number;
  /** Verdicts that name a component lower or higher, %. */
  readonly overall: number;
}

/** Pairs of trials of one condition, the three components independent of each other: the worst case for the verdict. */
function falseAlarms(r: number, strides: number, floor: boolean): Alarms {
  const random = seededRandom(1000 * strides + 10 * r);
  let component = 0;
  let overall = 0;
  for (let pair = 0; pair < PAIRS; pair++) {
    const baseline = trialOf(typicalStrides(random, strides, {}, r));
    const changed = trialOf(typicalStrides(random, strides, {}, r));
    const comparison = compareTrials(baseline, changed, {
      metrics,
      ...(floor ? {} : { smallestDetectableChange: Object.fromEntries(metrics.map(({ id }) => [id, none])) }),
    });
    component += comparison.components.filter(
      ({ reading }) => reading === "lower" || reading === "higher",
    ).length;
    if (comparison.overall.lower.length + comparison.overall.higher.length > 0) overall++;
  }
  return { component: (100 * component) / (3 * PAIRS), overall: (100 * overall) / PAIRS };
}

// A seeded part of a study of 4000 pairs a cell, whose figures were, in this order, 0.41 and 1.20 %, 0.12 and 0.35, 0.44 and
// 1.32, 0 and 0, 0.79 and 2.33, 0.82 and 2.42, 0.05 and 0.15, 0.85 and 2.52. The bounds are those plus three standard errors
// of this part, and at least one in five hundred.
it.each([
  { r: 0, strides: 20, floor: true, component: 0.9, overall: 2.7 },
  { r: 0, strides: 30, floor: true, component: 0.4, overall: 1.2 },
  { r: 0, strides: 30, floor: false, component: 1, overall: 2.9 },
  { r: 0, strides: 80, floor: true, component: 0.2, overall: 0.2 },
  { r: 0.3, strides: 30, floor: true, component: 1.5, overall: 4.4 },
  { r: 0.3, strides: 30, floor: false, component: 1.5, overall: 4.5 },
  { r: 0.3, strides: 80, floor: true, component: 0.2, overall: 0.7 },
  { r: 0.6, strides: 40, floor: true, component: 1.6, overall: 4.6 },
])(
  "correlation $r, $strides strides, floor $floor: at most $component % of components, $overall % of verdicts",
  (cell) => {
    const found = falseAlarms(cell.r, cell.strides, cell.floor);
    expect(found.component).toBeLessThanOrEqual(cell.component);
    expect(found.overall).toBeLessThanOrEqual(cell.overall);
  },
);

it("is no rule that never speaks: a change of 2 standard deviations in one component of 30 strides is found", () => {
  const random = seededRandom(77);
  let found = 0;
  for (let pair = 0; pair < 200; pair++) {
    const baseline = trialOf(typicalStrides(random, 30));
    const changed = trialOf(typicalStrides(random, 30, { peakVerticalForce: 1 - 80 / 1650 }));
    if (compareTrials(baseline, changed, { metrics }).overall.lower.includes("vertical")) found++;
  }
  expect(found).toBeGreaterThanOrEqual(198);
});
