import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { curveFigure, statisticFigure } from "../../../src/report/index.js";
import { exampleTrial } from "../examples.js";
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
import { exampleCurves } from "./examples.js";

/** The bars of clusters, as from and to in per cent of stance by the labels of the axis. */
function barsOf(root: Drawn, end: number): readonly (readonly [number, number])[] {
  const perCent = (x: number): number => (100 * (x - 46)) / (end - 14 - 46);
  return elementsOf(root)
    .filter(({ tag, attributes }) => tag === "rect" && attributes.height === "5")
    .map((bar) => {
      const from = numberAt(bar, "x");
      return [perCent(from), perCent(from + numberAt(bar, "width"))] as const;
    });
}

describe("t over stance", () => {
  const svg = statisticFigure(exampleCurves());
  const root = drawingOf(svg);

  it("is one well-formed image that names both thresholds", () => {
    expect(faultsOf(svg)).toEqual([]);
    expect(wordsOf(root)).toContain("±3.00 by random field theory, α = 0.05");
    expect(wordsOf(root)).toContain("±3.50 by permutation");
    expect(wordsOf(root)).toContain(
      "Two-sample t of changed less baseline, of 40 and 41 contacts: 5.00 at 100 % of stance to -5.00 at 0 % of stance".replace(
        " -",
        " −",
      ),
    );
  });

  it("draws t and the thresholds on one scale", () => {
    const ticks = [...ticksOf(root, { x: 39 })];
    const [a, b] = [ticks[0], ticks.at(-1)];
    const y = (value: number): number =>
      numberAt(a?.[1], "y") -
      4 +
      ((value - (a?.[0] ?? 0)) * (numberAt(b?.[1], "y") - numberAt(a?.[1], "y"))) /
        ((b?.[0] ?? 0) - (a?.[0] ?? 0));
    const lines = elementsOf(root).filter(
      ({ tag, attributes }) =>
        tag === "line" && attributes.x1 === "46" && attributes["stroke-width"] === "1.4",
    );
    const heights = lines.map((one) => numberAt(one, "y1"));
    [3, -3, 3.5, -3.5].forEach((level, i) => {
      expect(heights[i]).toBeCloseTo(y(level), 0);
    });
    const path = elementsOf(root).find(({ tag }) => tag === "path");
    const points = (path?.attributes.d ?? "")
      .slice(1)
      .split("L")
      .map((point) => Number(point.split(",")[1]));
    expect(points).toHaveLength(101);
    expect(points[0]).toBeCloseTo(y(-5), 0);
    expect(points[75]).toBeCloseTo(y(2.5), 0);
  });

  it("draws and lists the stretches beyond the thresholds, in per cent and ms", () => {
    const [first, second] = barsOf(root, 321);
    expect(first?.[0]).toBeCloseTo(0, 1);
    expect(first?.[1]).toBeCloseTo(15, 1);
    expect(second?.[0]).toBeCloseTo(85, 1);
    expect(wordsOf(root)).toContain("a: 0–15 % of stance, 0–38 ms: −0.425 BW");
    expect(wordsOf(root)).toContain("b: 85–100 % of stance, 213–250 ms: +0.425 BW");
    expect(marksOf(root).map(readOf)).toContain(
      "0–15 % of stance, 0–38 ms: changed less baseline −0.425 BW in the mean, largest t −5.0 at 0 %, p < 0.001",
    );
  });

  it("reads t at every tenth of stance", () => {
    expect(marksOf(root).map(readOf)).toContain("70 % of stance: t = 2.00");
  });

  it("says so where no stretch lies beyond, and where there is no permutation", () => {
    const none = wordsOf(
      drawingOf(statisticFigure(exampleCurves({ clusters: [], permutationThreshold: null }))),
    );
    expect(none).toContain("No stretch differs beyond the threshold of the whole curve.");
    expect(none).not.toContain("permutation");
  });

  it.each([{ width: 200 }, { height: 100 }, { colour: "red" }])("refuses %o", (wrong) =>
    expect(() => statisticFigure(exampleCurves(), wrong as object)).toThrow(),
  );

  it("property: no broken number, whatever t is", () => {
    const t = fc.double();
    fc.assert(
      fc.property(
        fc.array(t, { minLength: 101, maxLength: 101 }),
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        (statistic, threshold) => {
          expect(faultsOf(statisticFigure(exampleCurves({ statistic, threshold })))).toEqual([]);
        },
      ),
      { numRuns: 50 },
    );
  });
});

describe("curves with the stretches in which they differ", () => {
  const options = { changed: exampleTrial(), side: "left" } as const;
  const svg = curveFigure(exampleTrial(), { ...options, clusters: exampleCurves() });
  const root = drawingOf(svg);

  it("have a bar under the axis for each, below the curves", () => {
    expect(faultsOf(svg)).toEqual([]);
    const bars = barsOf(root, 321);
    expect(bars).toHaveLength(2);
    expect(bars[1]?.[0]).toBeCloseTo(85, 1);
    expect(bars[1]?.[1]).toBeCloseTo(100, 1);
    expect(wordsOf(root)).toContain("b: 85–100 % of stance, 213–250 ms: +0.425 BW");
  });

  it("list no more than six, and how many more there are", () => {
    const [one] = exampleCurves().clusters;
    if (one === undefined) throw new Error("there is a cluster");
    const clusters = exampleCurves({ clusters: Array.from({ length: 9 }, () => one) });
    expect(wordsOf(drawingOf(curveFigure(exampleTrial(), { ...options, clusters })))).toContain("and 3 more");
  });

  it("read both trials at every tenth of stance", () => {
    expect(marksOf(root).map(readOf)).toContain(
      "50 % of stance: baseline 2.103 BW (SD 0.1052), changed 2.103 BW (SD 0.1052)",
    );
  });

  it.each([{ component: "mediolateral" }, { side: "right" }] as const)("refuse those of %o", (other) =>
    expect(() => curveFigure(exampleTrial(), { ...options, clusters: exampleCurves(other) })).toThrow(
      expect.objectContaining({ code: "not-comparable" }),
    ),
  );
});
