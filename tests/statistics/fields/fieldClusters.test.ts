import { expect, it } from "vitest";
import { fieldClusters } from "../../../src/statistics/index.js";

it("by hand: ends on the straight line between points, sides apart, open at the curve's ends", () =>
  expect(fieldClusters([4, 2, 0, 4, 6, -6, 0, 3.5], 3)).toEqual([
    { from: 0, to: 0.5, peak: 4, peakAt: 0 },
    { from: 2.75, to: 4.25, peak: 6, peakAt: 4 },
    { from: 4.75, to: 5.5, peak: -6, peakAt: 5 },
    { from: 6 + 3 / 3.5, to: 7, peak: 3.5, peakAt: 7 },
  ]));
it("none where nothing leaves the threshold; a value on it is not beyond it", () =>
  expect(fieldClusters([3, -3, 0], 3)).toEqual([]));
it("the whole curve", () =>
  expect(fieldClusters([-4, -5, -4], 3)).toEqual([{ from: 0, to: 2, peak: -5, peakAt: 1 }]));
it.each([
  ["too-short", [1], 3],
  ["not-finite", [1, Number.NaN], 3],
  ["out-of-range", [1, 2], 0],
])("refuses with %s", (code, statistic, threshold) =>
  expect(() => fieldClusters(statistic as number[], threshold as number)).toThrow(
    expect.objectContaining({ code }),
  ),
);
