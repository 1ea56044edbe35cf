import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stepSeriesFigure } from "../../../src/report/index.js";
import type { Trial } from "../../../src/trial/index.js";
import { exampleTrial, summary } from "../examples.js";
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

/** A trial whose contacts follow each other every 0.4 s with these values of the braking impulse. */
function seriesOf(
  values: readonly (number | null)[],
  side: (i: number) => "left" | "right" | "unknown" = sideOf,
): Trial {
  const own = exampleTrial();
  const known = values.flatMap((value) => value ?? []);
  const mean = known.reduce((sum, value) => sum + value / known.length, 0);
  return {
    ...own,
    steps: values.map((value, i) => ({
      side: side(i),
      initialContact: 0.4 * i,
      toeOff: 0.4 * i + 0.25,
      values: { brakingImpulse: value, stepTime: 0.4 },
    })),
    partialContacts: [],
    summary: {
      ...own.summary,
      metrics: { brakingImpulse: summary(mean, known.length > 1 ? 1 : null, "N s", "BW s") },
    },
  };
}

function sideOf(i: number): "left" | "right" {
  return i % 2 === 0 ? "left" : "right";
}

/** Place of a mark's shape. */
function placeOf(mark: Drawn): { readonly x: number; readonly y: number } {
  const [shape] = mark.children.filter(({ tag }) => tag !== "title");
  if (shape?.tag === "circle") return { x: numberAt(shape, "cx"), y: numberAt(shape, "cy") };
  const points = [...(shape?.attributes.d ?? "").matchAll(/(-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [
    Number(x),
    Number(y),
  ]);
  const [top, right] = points as [[number, number], [number, number]];
  // A triangle: 1.2 radii above the middle, 0.8 below it.
  return { x: top[0], y: top[1] + 0.6 * (right[1] - top[1]) };
}

const options = { metric: "brakingImpulse" } as const;

describe("a metric step by step", () => {
  const values = [16, 17, 15, 18, 16.5, 17.5, 15.5, 18.5];
  const svg = stepSeriesFigure(seriesOf(values), options) ?? "";
  const root = drawingOf(svg);

  it("is one well-formed image", () => expect(faultsOf(svg)).toEqual([]));

  it("has a mark for every contact that says side, time and value", () => {
    expect(marksOf(root).map(readOf)).toEqual(
      values.map((value, i) => `${sideOf(i)}, ${(0.4 * i).toFixed(1)} s: ${value.toFixed(2)} N s`),
    );
  });

  it("sets each mark at its value on the scale and at its time", () => {
    const ticks = [...ticksOf(root, { x: 43 })];
    const [a, b] = [ticks[0], ticks.at(-1)];
    const perUnit = (numberAt(b?.[1], "y") - numberAt(a?.[1], "y")) / ((b?.[0] ?? 0) - (a?.[0] ?? 0));
    const places = marksOf(root).map(placeOf);
    places.forEach(({ y }, i) => {
      // Words stand 4 below the line of their tick.
      const value = (a?.[0] ?? 0) + (y + 4 - numberAt(a?.[1], "y")) / perUnit;
      expect(value).toBeCloseTo(values[i] ?? 0, 1);
    });
    const gaps = places.slice(1).map(({ x }, i) => x - (places[i]?.x ?? 0));
    for (const gap of gaps) expect(gap).toBeCloseTo(gaps[0] ?? 0, 0);
  });

  it("tells left from right by shape, not by colour alone", () => {
    const shapes = marksOf(root).map((mark) => mark.children.find(({ tag }) => tag !== "title")?.tag);
    expect(shapes).toEqual(values.map((_, i) => (i % 2 === 0 ? "circle" : "path")));
    expect(wordsOf(root)).toMatch(/left.*right.*mean.*straight line/s);
  });

  it("draws the mean, and a straight line that rises as least squares over strides say", () => {
    // Strides 16.5, 16.5, 17, 17 against 0, 1, 2, 3: slope 0.2, last less first 0.6.
    expect(wordsOf(root)).toContain("mean 16.8, drift +0.6");
    expect(wordsOf(root)).toContain("by the straight line +0.6 N s from 0.0 to 2.4 s");
  });
});

it("draws both trials on one scale of values", () => {
  const svg =
    stepSeriesFigure(seriesOf([10, 11, 10, 11]), { ...options, changed: seriesOf([20, 21, 20, 21]) }) ?? "";
  const root = drawingOf(svg);
  expect(faultsOf(svg)).toEqual([]);
  const ys = marksOf(root).map((mark) => placeOf(mark).y);
  // A unit is as high in one panel as in the other, and 10 units lie between them.
  const unit = (ys[0] ?? 0) - (ys[1] ?? 0);
  expect((ys[4] ?? 0) - (ys[5] ?? 0)).toBeCloseTo(unit, 0);
  expect(((ys[0] ?? 0) - (ys[4] ?? 0)) / 10).toBeCloseTo(unit, 0);
  expect(
    Math.min(
      ...marksOf(root)
        .slice(4)
        .map((mark) => placeOf(mark).x),
    ),
  ).toBeGreaterThan(
    Math.max(
      ...marksOf(root)
        .slice(0, 4)
        .map((mark) => placeOf(mark).x),
    ),
  );
});

it("divides by body weight, and by mass and the distance of the step", () => {
  const weight = 80 * 9.80665;
  const reads = (svg: string | null) => marksOf(drawingOf(svg ?? "")).map(readOf);
  expect(
    reads(stepSeriesFigure(seriesOf([weight / 50, weight / 40]), { ...options, unit: "normalised" })),
  ).toEqual(["left, 0.0 s: 0.0200 BW s", "right, 0.4 s: 0.0250 BW s"]);
  const own = seriesOf([80, 80]);
  const work = {
    ...own,
    steps: own.steps.map((row) => ({ ...row, values: { ...row.values, positiveExternalWork: 88 } })),
    summary: { ...own.summary, metrics: { positiveExternalWork: summary(88, 1, "J", "J/kg/m") } },
  };
  // 88 J ÷ (80 kg × 2.5 m/s × 0.4 s) = 1.1 J/kg/m.
  expect(reads(stepSeriesFigure(work, { metric: "positiveExternalWork", unit: "normalised" }))[0]).toBe(
    "left, 0.0 s: 1.100 J/kg/m",
  );
});

describe("is null", () => {
  const own = seriesOf([1, 2]);
  it("without the metric, in either trial", () => {
    expect(stepSeriesFigure(own, { metric: "contactTime" })).toBeNull();
    expect(stepSeriesFigure(own, { ...options, changed: exampleTrial() })).toBeNull();
    expect(stepSeriesFigure(own, { metric: "toString" })).toBeNull();
  });
  it("normalised without a mass or a normalised unit", () => {
    const { normalised: _, ...plain } = own.summary.metrics.brakingImpulse ?? summary(1, 1, "N s");
    const metrics = { brakingImpulse: plain };
    expect(
      stepSeriesFigure({ ...own, summary: { ...own.summary, metrics } }, { ...options, unit: "normalised" }),
    ).toBeNull();
    const settings = { ...own.settings, mass: null };
    expect(stepSeriesFigure({ ...own, settings }, { ...options, unit: "normalised" })).toBeNull();
  });
});

it("draws a single step, without a straight line", () => {
  const svg = stepSeriesFigure(seriesOf([16]), options) ?? "";
  expect(faultsOf(svg)).toEqual([]);
  expect(marksOf(drawingOf(svg))).toHaveLength(1);
  expect(wordsOf(drawingOf(svg))).not.toContain("straight line");
});

it("leaves out contacts without a value", () => {
  const svg = stepSeriesFigure(seriesOf([16, null, 17, 18, null, 16]), options) ?? "";
  expect(marksOf(drawingOf(svg))).toHaveLength(4);
});

describe("10 000 steps", () => {
  const values = Array.from({ length: 10_000 }, (_, i) => 16 + (i % 7) / 10 + i / 10_000);
  const trial = seriesOf(values);
  const one = stepSeriesFigure(trial, options) ?? "";
  const two = stepSeriesFigure(trial, { ...options, changed: trial }) ?? "";

  it("stay below 150 kB and 300 marks, in one trial and in two", () => {
    for (const svg of [one, two]) {
      expect(faultsOf(svg)).toEqual([]);
      expect(svg.length).toBeLessThan(150_000);
      expect(marksOf(drawingOf(svg)).length).toBeLessThanOrEqual(300);
      expect(marksOf(drawingOf(svg)).length).toBeGreaterThan(50);
    }
  });

  it("are drawn in runs, which the figure says", () => {
    expect(wordsOf(drawingOf(one))).toMatch(/Drawn in \d+ runs of \d+ contacts/);
    expect(wordsOf(drawingOf(one))).toMatch(/Marks are means of runs of/);
  });

  it("give each foot's mean and the range of each run", () => {
    const size = Number(/runs of (\d+) contacts/.exec(wordsOf(drawingOf(one)))?.[1]);
    const run = values.slice(0, size);
    const left = run.filter((_, i) => i % 2 === 0);
    const mean = left.reduce((sum, value) => sum + value, 0) / left.length;
    expect(marksOf(drawingOf(one)).map(readOf)[0]).toBe(
      `left, 0.0 to ${(0.4 * (size - 1)).toFixed(1)} s: mean of ${left.length} contacts ${mean.toFixed(2)} N s; all from ${Math.min(...run).toFixed(2)} to ${Math.max(...run).toFixed(2)}`,
    );
  });
});

it("shows names from files as text", () => {
  const svg =
    stepSeriesFigure(seriesOf([1, 2, 3, 4]), {
      ...options,
      changed: seriesOf([1, 2, 3, 4]),
      labels: { baseline: "<script>alert(1)</script>", changed: `"a" & 'b'\u0007` },
    }) ?? "";
  expect(faultsOf(svg)).toEqual([]);
  expect(elementsOf(drawingOf(svg)).some(({ tag }) => tag === "script")).toBe(false);
});

it("property: no broken number, whatever the values, sides and gaps", () => {
  const value = fc.option(fc.double({ noNaN: true, noDefaultInfinity: true }), { freq: 5 });
  const side = fc.constantFrom("left", "right", "unknown" as const);
  fc.assert(
    fc.property(fc.array(fc.tuple(value, side), { minLength: 1, maxLength: 40 }), (contacts) => {
      const trial = seriesOf(
        contacts.map(([one]) => one),
        (i) => contacts[i]?.[1] ?? "unknown",
      );
      const svg = stepSeriesFigure(trial, { ...options, changed: trial });
      if (svg === null) expect(contacts.every(([one]) => one === null)).toBe(true);
      else expect(faultsOf(svg)).toEqual([]);
    }),
  );
});

it.each([{ unit: "BW" }, { width: 299 }, { height: 100 }, { colour: "red" }])("refuses %o", (wrong) =>
  expect(() => stepSeriesFigure(seriesOf([1, 2]), { ...options, ...(wrong as object) })).toThrow(),
);
