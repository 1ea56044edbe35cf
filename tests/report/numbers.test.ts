import fc from "fast-check";
import { expect, it } from "vitest";
import { comparedRow } from "../../src/report/wording/comparedRow.js";
import { decimalsFor } from "../../src/report/wording/decimalsFor.js";
import { formatDifference } from "../../src/report/wording/formatDifference.js";
import { formatNumber } from "../../src/report/wording/formatNumber.js";
import { formatPercent } from "../../src/report/wording/formatPercent.js";
import { measuredCells } from "../../src/report/wording/measuredCells.js";
import { compared, spread } from "./examples.js";

it.each([
  [1658.4, 31.7, "1658 ± 32"],
  [16.284, 0.94, "16.28 ± 0.94"],
  [0.31411, 0.0061, "0.3141 ± 0.0061"],
  [150.114, 1.23, "150.1 ± 1.2"],
  [0.17, 1.21, "0.2 ± 1.2"],
  [45_678.1, 3456.7, "45678 ± 3457"],
])("two digits of the spread, no more than four of the number: %d ± %d", (mean, sd, text) => {
  expect(measuredCells(spread(mean, sd)).meanAndSd).toBe(text);
});

it("writes a mean without a spread by itself", () => {
  expect(measuredCells(spread(1658.4, null))).toMatchObject({ meanAndSd: "1658", interval: "" });
});

it("gives every cell of a row the same decimals", () => {
  expect(comparedRow(compared("brakingImpulse", "N s", 16.3, 19.123, 0.6))).toEqual({
    baseline: "16.30",
    changed: "19.12",
    difference: "+2.82",
    interval: "+2.22 to +3.42",
    percent: "+17.3",
  });
});

it("leaves the per cent empty where the baseline is zero", () => {
  expect(comparedRow(compared("netForwardImpulse", "N s", 0, 0.2, 0.4)).percent).toBe("");
});

it("never writes minus zero", () => {
  expect([formatNumber(-0.00001, 2), formatDifference(-0.001, 1), formatPercent(-0.01)]).toEqual([
    "0.00",
    "0.0",
    "0.0",
  ]);
});

it("signs what rose and what fell", () => {
  expect([
    formatDifference(1.5, 1),
    formatDifference(-1.5, 1),
    formatPercent(12.34),
    formatPercent(-123.4),
  ]).toEqual(["+1.5", "-1.5", "+12.3", "-123"]);
});

it("property: what is written is the number to half a unit of its last digit", () =>
  fc.assert(
    fc.property(fc.double({ min: -9e6, max: 9e6, noNaN: true }), (value) => {
      const decimals = decimalsFor(value);
      expect(Math.abs(Number(formatNumber(value)) - value)).toBeLessThanOrEqual(0.5000001 * 10 ** -decimals);
    }),
  ));
