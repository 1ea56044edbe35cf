import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runnersFigure, sessionsFigure } from "../../../src/report/index.js";
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
import { exampleRunners, exampleSessions } from "./examples.js";

/** Middle of a mark's filled rectangle, circle or path. */
function middleOf(mark: Drawn): { readonly x: number; readonly y: number } {
  const shape = mark.children
    .filter(
      ({ tag, attributes }) =>
        (tag !== "title" && tag !== "line" && attributes.fill !== "none") ||
        attributes["stroke-width"] === "1.4",
    )
    .at(-1);
  if (shape?.tag === "circle") return { x: numberAt(shape, "cx"), y: numberAt(shape, "cy") };
  if (shape?.tag === "rect") {
    return {
      x: numberAt(shape, "x") + numberAt(shape, "width") / 2,
      y: numberAt(shape, "y") + numberAt(shape, "height") / 2,
    };
  }
  const points = [...(shape?.attributes.d ?? "").matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  );
  return { x: points[0]?.[0] ?? Number.NaN, y: points[1]?.[1] ?? Number.NaN };
}

describe("the forest of runners", () => {
  const svg = runnersFigure(exampleRunners(["Ada", "Bo", "Cy", "Di"]));
  const root = drawingOf(svg);

  it("is one well-formed image", () => expect(faultsOf(svg)).toEqual([]));

  it("reads each runner in the order given, then the average", () => {
    expect(marksOf(root).map(readOf)).toEqual([
      "Ada: 0.00 N s",
      "Bo: +1.00 N s, 95 % interval +0.50 to +1.50",
      "Cy: +2.00 N s, 95 % interval +1.50 to +2.50",
      "Di: +3.00 N s, 95 % interval +2.50 to +3.50",
      "average runner: +1.25 N s (+7.8 %), 95 % interval +0.50 to +2.00",
    ]);
  });

  it("sets runners and average on one scale, with intervals and margin as wide as they are", () => {
    const places = marksOf(root).map((mark) => middleOf(mark).x);
    const unit = ((places[3] ?? 0) - (places[0] ?? 0)) / 3;
    places.forEach((x, i) => {
      expect((x - (places[0] ?? 0)) / unit).toBeCloseTo([0, 1, 2, 3, 1.25][i] ?? 0, 1);
    });
    const lines = marksOf(root)[4]?.children.filter(({ tag }) => tag === "line") ?? [];
    const widths = lines.map((line) => (numberAt(line, "x2") - numberAt(line, "x1")) / unit);
    expect(widths[0]).toBeCloseTo(2, 1);
    expect(widths[1]).toBeCloseTo(1.5, 1);
    const shade = elementsOf(root).find(
      ({ tag, attributes }) => tag === "rect" && attributes["fill-opacity"] === "0.16",
    );
    expect(numberAt(shade, "width") / unit).toBeCloseTo(3.2, 1);
    expect((numberAt(shade, "x") + numberAt(shade, "width") / 2 - (places[0] ?? 0)) / unit).toBeCloseTo(0, 1);
  });

  it("draws a runner without an interval as a mark alone", () => {
    expect(marksOf(root)[0]?.children.some(({ tag }) => tag === "line")).toBe(false);
  });

  it("shows names as text, cut to their column", () => {
    const long = runnersFigure(
      exampleRunners(["<script>alert(1)</script> & a very long name of a runner", "B"]),
    );
    expect(faultsOf(long)).toEqual([]);
    expect(
      elementsOf(drawingOf(long)).some(({ tag, text }) => tag === "text" && /^<script.*…$/.test(text)),
    ).toBe(true);
  });

  it("draws independent groups by their average alone, and says so", () => {
    const groups = runnersFigure(exampleRunners([]));
    expect(faultsOf(groups)).toEqual([]);
    expect(marksOf(drawingOf(groups))).toHaveLength(1);
    expect(wordsOf(drawingOf(groups))).toContain("Independent groups");
  });

  it("refuses a metric that was not compared, and a comparison without any", () => {
    const own = exampleRunners(["A", "B"]);
    expect(() => runnersFigure(own, { metric: "cadence" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => runnersFigure({ ...own, metrics: [] })).toThrow(
      expect.objectContaining({ code: "missing-value" }),
    );
    expect(() => runnersFigure(own, { width: 100 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });

  it("property: no broken number, whatever the differences", () => {
    const any = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e200, max: 1e200 });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 12 }), any, (values, average) => {
        const runners = values.map((difference, i) => ({ runner: String(i), difference, interval: null }));
        const svg = runnersFigure(
          exampleRunners(
            runners.map(({ runner }) => runner),
            { runners, difference: average },
          ),
        );
        expect(faultsOf(svg)).toEqual([]);
      }),
    );
  });
});

describe("session by session", () => {
  const means = [98, 102, 100, 104, 115, 83];
  const svg = sessionsFigure(exampleSessions(means.map((mean, i) => ({ name: `S${i + 1}`, mean }))));
  const root = drawingOf(svg);

  it("is one well-formed image that counts what lies outside", () => {
    expect(faultsOf(svg)).toEqual([]);
    expect(wordsOf(root)).toContain(
      "6 sessions, 2 outside: beyond the smallest detectable change with an interval clear of zero.",
    );
  });

  it("reads each session with its place", () => {
    expect(marksOf(root).map(readOf)).toEqual([
      "1, S1: 98.0 N (96.0 to 100.0), makes the baseline",
      "2, S2: 102.0 N (100.0 to 104.0), makes the baseline",
      "3, S3: 100.0 N (98.0 to 102.0), makes the baseline",
      "4, S4: 104.0 N (102.0 to 106.0), within 100.0 ± 10.0",
      "5, S5: 115.0 N (113.0 to 117.0), above 100.0 ± 10.0",
      "6, S6: 83.0 N (81.0 to 85.0), below 100.0 ± 10.0",
    ]);
  });

  it("sets each at its mean, with the band where the smallest detectable change is", () => {
    const ticks = [...ticksOf(root, { x: 43 })];
    const [a, b] = [ticks[0], ticks.at(-1)];
    const value = (y: number): number =>
      (a?.[0] ?? 0) +
      ((y + 4 - numberAt(a?.[1], "y")) * ((b?.[0] ?? 0) - (a?.[0] ?? 0))) /
        (numberAt(b?.[1], "y") - numberAt(a?.[1], "y"));
    expect(value(middleOf(marksOf(root)[3] as Drawn).y)).toBeCloseTo(104, 0);
    const bands = elementsOf(root).filter(
      ({ tag, attributes }) => tag === "rect" && attributes["fill-opacity"] === "0.16",
    );
    expect(bands).toHaveLength(3);
    for (const band of bands) {
      expect(value(numberAt(band, "y"))).toBeCloseTo(110, 0);
      expect(value(numberAt(band, "y") + numberAt(band, "height"))).toBeCloseTo(90, 0);
    }
  });

  it("tells places apart by shape", () => {
    const paths = marksOf(root).map((mark) =>
      mark.children.filter(({ tag }) => tag === "path" || tag === "circle").at(-1),
    );
    expect(paths.map((path) => path?.tag)).toEqual(["path", "path", "path", "circle", "path", "path"]);
    expect(wordsOf(root)).toMatch(/makes the baseline.*within.*above.*below/s);
  });

  it("numbers sessions whose names are too long, and lists those outside by name", () => {
    const long = sessionsFigure(
      exampleSessions(
        Array.from({ length: 60 }, (_, i) => ({
          name: `<i>evening ${i}</i> & on`,
          mean: i === 30 ? 130 : 100,
        })),
      ),
    );
    expect(faultsOf(long)).toEqual([]);
    expect(wordsOf(drawingOf(long))).toContain("31: above, +30");
    expect(elementsOf(drawingOf(long)).some(({ tag }) => tag === "i")).toBe(false);
  });

  it("draws a single session", () => {
    expect(faultsOf(sessionsFigure(exampleSessions([{ name: "first", mean: 100 }])))).toEqual([]);
  });

  it("refuses a metric that is not in the series, and a series without a session", () => {
    const own = exampleSessions([{ name: "a", mean: 1 }]);
    expect(() => sessionsFigure(own, { metric: "cadence" })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
    expect(() => sessionsFigure(exampleSessions([]))).toThrow(
      expect.objectContaining({ code: "missing-value" }),
    );
    expect(() => sessionsFigure(own, { height: 10 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });

  it("property: no broken number, whatever the means", () => {
    const mean = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e200, max: 1e200 });
    fc.assert(
      fc.property(
        fc.array(fc.record({ name: fc.string(), mean }), { minLength: 1, maxLength: 30 }),
        (sessions) => {
          expect(faultsOf(sessionsFigure(exampleSessions(sessions)))).toEqual([]);
        },
      ),
    );
  });
});
