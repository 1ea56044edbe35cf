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

// A seeded part of a study of 4000 pairs a cell, whose figures were, in this order, 0.62 and 1.85 %, 0.24 and 0.72, 0.52 and
// 1.55, 0 and 0, 1.04 and 3.13, 1.18 and 3.52, 0.04 and 0.13, 1.06 and 3.17. The bounds are those plus three standard errors
// of this part, and at least one in five hundred.
it.each([
  { r: 0, strides: 20, floor: true, component: 1.2, overall: 3.7 },
  { r: 0, strides: 30, floor: true, component: 0.6, overall: 1.9 },
  { r: 0, strides: 30, floor: false, component: 1.1, overall: 3.2 },
  { r: 0, strides: 80, floor: true, component: 0.2, overall: 0.2 },
  { r: 0.3, strides: 30, floor: true, component: 1.8, overall: 5.5 },
  { r: 0.3, strides: 30, floor: false, component: 2, overall: 6 },
  { r: 0.3, strides: 80, floor: true, component: 0.2, overall: 0.6 },
  { r: 0.6, strides: 40, floor: true, component: 1.9, overall: 5.5 },
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
