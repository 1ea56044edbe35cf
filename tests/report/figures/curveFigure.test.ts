import { describe, expect, it } from "vitest";
import { curveFigure } from "../../../src/report/index.js";
import { curve, exampleCurves, exampleTrial } from "../examples.js";
import { isBalanced, textOf } from "../tags.js";

/** The points of the drawn mean curves, in the drawing's own units. */
const curvesOf = (svg: string): number[][][] =>
  [...svg.matchAll(/<path d="([^"]*)" fill="none"/g)].map(([, path = ""]) =>
    path
      .slice(1)
      .split("L")
      .map((point) => point.split(",").map(Number)),
  );

describe("mean curves of one trial", () => {
  const svg = curveFigure(exampleTrial());

  it("is one well-formed SVG element with a title and a description", () => {
    expect(isBalanced(svg)).toBe(true);
    expect(svg).toMatch(
      /^<svg [^>]*role="img" aria-labelledby="vertical-both-title vertical-both-description"/,
    );
    expect(svg).toContain('<title id="vertical-both-title">Vertical force: mean curve over stance</title>');
    expect(textOf(svg)).toMatch(/left, mean of 37 contacts: highest 2\.103 BW at 50 % of stance/);
  });

  it("tells left and right apart by line style and label, not by colour alone", () => {
    const styles = [...svg.matchAll(/<path [^>]*fill="none"[^>]*>/g)].map(([path]) =>
      /stroke-dasharray/.test(path),
    );
    expect(styles).toEqual([false, true]);
    expect(textOf(svg)).toMatch(/left, 37 contacts.*right, 37 contacts/s);
  });

  it("draws the curve of the trial: 101 points, the peak where and as high as the mean says", () => {
    const [left = []] = curvesOf(svg);
    expect(left).toHaveLength(101);
    const highest = left.reduce((best, point) => ((point[1] ?? 0) < (best[1] ?? 0) ? point : best));
    expect(left[50]?.[1]).toBe(highest[1]);
    // The height between the ticks 0 and 2 BW stands for 2 BW: 1650 N of 80 kg are 2.103 BW.
    const tick = (label: string) =>
      Number(new RegExp(`<text x="39" y="([\\d.]+)"[^>]*>${label}</text>`).exec(svg)?.[1]) - 4;
    const perUnit = (tick("0.0") - tick("2.0")) / 2;
    expect((tick("0.0") - (highest[1] ?? 0)) / perUnit).toBeCloseTo(1650 / (80 * 9.80665), 2);
  });

  it("takes colours and fonts from CSS variables, with fallbacks", () => {
    expect(svg).toContain("var(--figure-first, #2f7ab8)");
    expect(svg).toContain("var(--figure-font, system-ui, sans-serif)");
  });
});

it("draws newtons on request", () => {
  expect(textOf(curveFigure(exampleTrial(), { unit: "N" }))).toMatch(/Vertical force, N.*1500/s);
});

it("draws one foot of two trials, baseline solid and changed dashed, both labelled", () => {
  const svg = curveFigure(exampleTrial(), {
    changed: exampleTrial(),
    side: "left",
    component: "mediolateral",
    labels: { baseline: "usual", changed: "further <ahead>" },
  });
  expect(isBalanced(svg)).toBe(true);
  expect(textOf(svg)).toMatch(/usual, 37 contacts.*further <ahead>, 37 contacts/s);
  expect(curvesOf(svg)).toHaveLength(2);
});

it("says which way is medial for each foot, and which is left and right for both", () => {
  const text = (side: "left" | "right" | null) =>
    textOf(curveFigure(exampleTrial(), { component: "mediolateral", side }));
  const order = (words: string, first: string, second: string) =>
    words.lastIndexOf(first) < words.lastIndexOf(second);
  // The word for the positive direction is written first.
  expect(order(text("right"), "lateral", "medial")).toBe(true);
  expect(order(text("left"), "medial", "lateral")).toBe(true);
  expect(text(null)).toMatch(/to the right\s+to the left/);
});

it("gives panels of both feet one scale", () => {
  const ticks = (side: "left" | "right") =>
    [
      ...curveFigure(exampleTrial(), { side, component: "mediolateral" }).matchAll(
        /text-anchor="end" font-size="12">([^<]*)</g,
      ),
    ].map(([, label]) => label);
  expect(ticks("left")).toEqual(ticks("right"));
});

it("draws contacts whose sides are not told apart", () => {
  const own = exampleTrial();
  const trial = {
    ...own,
    curves: { percent: own.curves.percent, up: { unknown: curve((part) => part, 1000, 74) } },
  };
  expect(textOf(curveFigure(trial))).toContain("both feet, 74 contacts");
});

it("draws a single contact without a band, and says no band", () => {
  const own = exampleTrial();
  const one = { ...curve((part) => part, 1000, 1), sd: null };
  const trial = {
    ...own,
    curves: { percent: own.curves.percent, up: { left: one, right: own.curves.up.right! } },
  };
  const svg = curveFigure(trial, { side: "left" });
  expect(curvesOf(svg)).toHaveLength(1);
  expect(svg).not.toContain("fill-opacity");
  expect(textOf(svg)).toContain("left, 1 contact");
  expect(textOf(svg)).not.toMatch(/1 contacts|Bands/);
  expect(curveFigure(trial).match(/fill-opacity/g)).toHaveLength(1);
  expect(textOf(curveFigure(trial))).toContain("Bands show one standard deviation between contacts.");
});

describe("refuses", () => {
  const code = (named: string) => expect.objectContaining({ code: named });
  const own = exampleTrial();
  const vertical = { ...own, curves: { percent: own.curves.percent, up: own.curves.up } };

  it("a component that was not recorded", () =>
    expect(() => curveFigure(vertical, { component: "mediolateral" })).toThrow(code("missing-channel")));
  it("two trials without a side", () =>
    expect(() => curveFigure(own, { changed: own })).toThrow(code("missing-value")));
  it("body weights without a mass", () =>
    expect(() => curveFigure({ ...own, settings: { ...own.settings, mass: null } })).toThrow(
      code("missing-value"),
    ));
  it("an unknown component", () =>
    expect(() => curveFigure(own, { component: "up" as "vertical" })).toThrow(code("out-of-range")));
  it("a width nobody can read", () =>
    expect(() => curveFigure(own, { width: 100 })).toThrow(code("out-of-range")));
  it("an option it does not know", () =>
    expect(() => curveFigure(own, { colour: "red" } as object)).toThrow(code("unknown-option")));
});

it("2026-11-25: bands of one standard deviation were hardly seen: they are filled and edged in their trial's colour", () => {
  const bands = [
    ...curveFigure(exampleTrial(), { side: "left" }).matchAll(/<path[^>]*fill-opacity="([\d.]+)"[^>]*>/g),
  ];
  expect(bands).toHaveLength(1);
  expect(Number(bands[0]?.[1])).toBeGreaterThanOrEqual(0.3);
  expect(bands[0]?.[0]).toMatch(/stroke-opacity="0\.75"/);
  expect(bands[0]?.[0]).toMatch(/stroke="/);
});

it("2026-11-25: a line of clusters broke between a number and its unit", () => {
  const clusters = {
    ...exampleCurves().clusters[0]!,
    from: 61,
    to: 100,
    fromTime: 0.153,
    toTime: 0.252,
    difference: 0.05,
  };
  const svg = curveFigure(exampleTrial(), {
    side: "left",
    changed: exampleTrial(),
    clusters: exampleCurves({ clusters: [clusters] }),
    width: 300,
  });
  expect(svg).toContain("+0.050\u00a0BW");
});
