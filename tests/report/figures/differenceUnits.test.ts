import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Comparison } from "../../../src/compare/index.js";
import { differenceFigure } from "../../../src/report/index.js";
import { compared, exampleComparison } from "../examples.js";
import {
  type Drawn,
  drawingOf,
  elementsOf,
  faultsOf,
  marksOf,
  numberAt,
  readOf,
  ticksOf,
  wordsOf,
} from "./drawing.js";

/** The dot, the thick and the thin line of a mark. */
function shapesOf(mark: Drawn): {
  readonly dot: number;
  readonly lines: readonly (readonly [number, number])[];
} {
  const dot = numberAt(
    mark.children.find(({ tag }) => tag === "circle"),
    "cx",
  );
  const lines = mark.children
    .filter(({ tag }) => tag === "line")
    .map((line) => [numberAt(line, "x1"), numberAt(line, "x2")] as const);
  return { dot, lines };
}

/** The value at a horizontal place, by the labels of one axis. */
function reader(root: Drawn, y: number): (x: number) => number {
  const ticks = [...ticksOf(root, { y })];
  const [a, b] = [ticks[0], ticks.at(-1)];
  if (a === undefined || b === undefined || a === b) throw new Error(`no axis at ${y}`);
  const [from, to] = [numberAt(a[1], "x"), numberAt(b[1], "x")];
  return (x) => a[0] + ((x - from) * (b[0] - a[0])) / (to - from);
}

/** Heights of the words that are axes: numbers in the middle of their place. */
function axesOf(root: Drawn): readonly number[] {
  const heights = elementsOf(root)
    .filter(
      ({ tag, attributes, text }) =>
        tag === "text" && attributes["text-anchor"] === "middle" && /^[−+\d.]+$/.test(text),
    )
    .map((one) => numberAt(one, "y"));
  return [...new Set(heights)];
}

describe("in per cent", () => {
  const svg = differenceFigure(exampleComparison());
  const root = drawingOf(svg);
  const read = reader(root, axesOf(root)[0] ?? 0);

  it("is one well-formed image", () => expect(faultsOf(svg)).toEqual([]));

  it("draws shown and reading interval as wide as they are", () => {
    // Peak vertical force: −107 of 1710 N, half widths 11 and 14.3 N.
    const [{ lines = [] } = {}] = marksOf(root).map(shapesOf);
    const [deciding, shown] = lines;
    expect(read(shown?.[0] ?? 0)).toBeCloseTo((100 * -118) / 1710, 0);
    expect(read(shown?.[1] ?? 0)).toBeCloseTo((100 * -96) / 1710, 0);
    expect(read(deciding?.[0] ?? 0)).toBeCloseTo((100 * -121.3) / 1710, 0);
    expect(read(deciding?.[1] ?? 0)).toBeCloseTo((100 * -92.7) / 1710, 0);
  });

  it("shades the margin of similar around zero, and names it", () => {
    const shades = elementsOf(root).filter(
      ({ tag, attributes }) =>
        tag === "rect" && attributes["fill-opacity"] === "0.16" && Number(attributes.x) > 100,
    );
    expect(shades).toHaveLength(6);
    for (const shade of shades) {
      const from = numberAt(shade, "x");
      expect(read(from)).toBeCloseTo(-10, 0);
      expect(read(from + numberAt(shade, "width"))).toBeCloseTo(10, 0);
    }
    expect(wordsOf(root)).toContain("within the margin of similar");
  });

  it("reads out each line: metric, unit of distance, number, interval, reading", () => {
    expect(marksOf(root).map(readOf)).toEqual([
      "peak vertical force, per step: −6.3 %, 95 % interval −6.9 to −5.6, lower",
      "peak vertical force, per km: −6.3 %, 95 % interval −6.9 to −5.6, lower",
      "braking impulse, per step: +17.2 %, 95 % interval +13.5 to +20.9, higher",
      "braking impulse, per km: +17.2 %, 95 % interval +13.5 to +20.9, higher",
      "mediolateral impulse, per step: +15.5 %, 95 % interval +8.4 to +22.6, higher",
      "mediolateral impulse, per km: +15.5 %, 95 % interval +8.4 to +22.6, unsettled",
    ]);
  });

  it("fills the drawing with a margin far beyond all differences, without its edges", () => {
    const own = exampleComparison();
    const [first, ...rest] = own.metrics;
    if (first === undefined) throw new Error("metrics are compared");
    const margin = { value: 1e6, source: "a table" };
    const wide = differenceFigure({ ...own, metrics: [{ ...first, margin }, ...rest] });
    expect(faultsOf(wide)).toEqual([]);
    const axis = axesOf(drawingOf(wide))[0] ?? 0;
    expect(Math.max(...ticksOf(drawingOf(wide), { y: axis }).keys())).toBeLessThan(100);
  });
});

describe("in SI units", () => {
  const svg = differenceFigure(exampleComparison(), { unit: "si" });
  const root = drawingOf(svg);

  it("gives each row its own axis, in the unit its heading names", () => {
    expect(faultsOf(svg)).toEqual([]);
    expect(axesOf(root)).toHaveLength(6);
    expect(wordsOf(root)).toContain(": peak vertical force, N");
  });

  it("sets dot and intervals at the differences", () => {
    const differences = [-107, -107, 2.8, 2.8, 1.09, 1.09];
    const halves = [11, 11, 0.6, 0.6, 0.5, 0.5];
    marksOf(root).forEach((mark, i) => {
      const read = reader(root, axesOf(root)[i] ?? 0);
      const { dot, lines } = shapesOf(mark);
      const [difference = 0, half = 0] = [differences[i], halves[i]];
      expect(Math.abs(read(dot) - difference)).toBeLessThan(0.1 * half);
      expect(Math.abs(read(lines[1]?.[0] ?? 0) - (difference - half))).toBeLessThan(0.1 * half);
      expect(Math.abs(read(lines[0]?.[1] ?? 0) - (difference + 1.3 * half))).toBeLessThan(0.1 * half);
    });
    expect(readOf(marksOf(root)[0] as Drawn)).toBe(
      "peak vertical force, per step: −107 N, 95 % interval −118 to −96, lower",
    );
  });
});

describe("normalised", () => {
  const svg = differenceFigure(exampleComparison(), { unit: "normalised" });
  it("draws the shown interval alone, per step", () => {
    expect(faultsOf(svg)).toEqual([]);
    const marks = marksOf(drawingOf(svg));
    expect(marks).toHaveLength(3);
    for (const mark of marks) expect(shapesOf(mark).lines).toHaveLength(1);
    expect(wordsOf(drawingOf(svg))).not.toContain("for readings");
    expect(readOf(marks[0] as Drawn)).toBe(
      "peak vertical force, per step: −0.156 BW, 95 % interval −0.172 to −0.140, lower",
    );
  });
  it("says of a metric that has no normalised value", () => {
    const own = exampleComparison();
    const metrics = own.metrics.map(({ normalised: _, ...metric }, i) =>
      i === 0 && own.metrics[0] !== undefined ? own.metrics[0] : metric,
    );
    const text = wordsOf(drawingOf(differenceFigure({ ...own, metrics }, { unit: "normalised" })));
    expect(text).toContain("not normalised in both trials");
  });
});

describe("of metrics of choice", () => {
  it("draws them in the order given, with the reading of those that speak for a component", () => {
    const svg = differenceFigure(exampleComparison(), { ids: ["contactTime", "brakingImpulse"] });
    expect(faultsOf(svg)).toEqual([]);
    const reads = marksOf(drawingOf(svg)).map(readOf);
    expect(reads[0]).toBe("contact time, per step: +4.8 %, 95 % interval +3.6 to +6.0");
    expect(reads[2]).toMatch(/^braking impulse, per step: .*, higher$/);
  });
  it("says why one has no per cent", () => {
    const svg = differenceFigure(exampleComparison(), { ids: ["netForwardImpulse", "contactTime"] });
    expect(wordsOf(drawingOf(svg))).toContain("baseline near zero, no share of it");
  });
  it("shows an own metric's name as text, cut to its place", () => {
    const own = exampleComparison();
    const id = `<img src=x onerror="alert(1)"> ${"long ".repeat(40)}`;
    const metrics = [compared(id, "N & m", 10, 11, 0.2)];
    const svg = differenceFigure({ ...own, metrics } as Comparison, { ids: [id], unit: "si" });
    expect(faultsOf(svg)).toEqual([]);
    expect(wordsOf(drawingOf(svg))).toContain("…");
  });
  it("refuses one that was not compared", () =>
    expect(() => differenceFigure(exampleComparison(), { ids: ["cadence"] })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    ));
});

it("property: no broken number, whatever the differences", () => {
  const any = fc.double({ noNaN: true, noDefaultInfinity: true });
  const unit = fc.constantFrom("percent", "si", "normalised" as const);
  fc.assert(
    fc.property(any, any, any, unit, (before, after, half, unit) => {
      const own = exampleComparison();
      const metrics = [compared("peakVerticalForce", "N", before, after, Math.abs(half))];
      fc.pre(
        metrics.every(
          ({ difference, percent }) => Number.isFinite(difference) && Number.isFinite(percent ?? 0),
        ),
      );
      fc.pre(Number.isFinite(100 / Math.abs(before)) && Math.abs(half) < 1e150 && Math.abs(before) > 1e-150);
      expect(faultsOf(differenceFigure({ ...own, metrics }, { unit }))).toEqual([]);
    }),
  );
});

it.each([{ unit: "SI" }, { width: 200 }, { colour: "red" }])("refuses %o", (wrong) =>
  expect(() => differenceFigure(exampleComparison(), wrong as object)).toThrow(),
);
