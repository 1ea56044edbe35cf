import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitted } from "../../../src/report/figures/parts/fitted.js";
import { scaleOver } from "../../../src/report/figures/parts/scaleOver.js";
import { textWidth } from "../../../src/report/figures/parts/textWidth.js";
import { wrapped } from "../../../src/report/figures/parts/wrapped.js";

describe("words in a place", () => {
  it("are left alone where they fit, and else cut with an ellipsis", () => {
    expect(fitted("short", 100, 12)).toBe("short");
    expect(fitted("a name that is much too long", 100, 12)).toMatch(/^a name.*…$/);
  });

  it("break at spaces, and the last line allowed holds the rest", () => {
    expect(wrapped("one two three four", 60, 12, 9).join(" ")).toBe("one two three four");
    expect(wrapped("one two three four five six", 60, 12, 2)).toHaveLength(2);
  });

  it("property: no line is wider than its place, down to one letter", () =>
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), fc.integer({ min: 40, max: 400 }), (text, width) => {
        for (const line of wrapped(text, width, 12)) expect(textWidth(line, 12)).toBeLessThanOrEqual(width);
      }),
    ));

  it("are taken as wide as a wide sans-serif font sets them: digits of DejaVu Sans are 0.636 of its size", () => {
    expect(textWidth("0123456789", 10)).toBeGreaterThanOrEqual(63.6);
    expect(textWidth("0123456789", 10)).toBeLessThan(70);
  });
});

describe("a scale over values", () => {
  it("sets lowest and highest within its range, at places in proportion", () => {
    const { place } = scaleOver([0, 1, 4], [0, 100], 4);
    expect(place(2) - place(1)).toBeCloseTo(place(4) - place(3), 10);
    expect(place(0)).toBeGreaterThanOrEqual(0);
    expect(place(4)).toBeLessThanOrEqual(100);
  });

  it("2026-11-25: ticks of differences that are rounding alone all read 0.00000000", () => {
    const labels = scaleOver([-4e-14, 5e-14], [0, 100], 4).ticks.map(({ label }) => label);
    expect(labels).toContain("0");
    expect(labels).toContain("4e−14");
    expect(new Set(labels).size).toBe(labels.length);
  });

  it("labels its ticks with the decimals that tell them apart", () => {
    const { ticks } = scaleOver([-0.25, 0.25], [0, 100], 5);
    expect(ticks.map(({ label }) => label)).toEqual(["−0.3", "−0.2", "−0.1", "0.0", "0.1", "0.2", "0.3"]);
  });

  it("property: every place is finite, whatever the values", () =>
    fc.assert(
      fc.property(fc.array(fc.double()), fc.double({ noNaN: true }), (values, value) => {
        const { place, ticks } = scaleOver(values, [10, 200], 4);
        expect(Number.isFinite(place(value))).toBe(true);
        for (const { at, label } of ticks) {
          expect(Number.isFinite(at)).toBe(true);
          expect(label).not.toContain("NaN");
        }
      }),
    ));
});
