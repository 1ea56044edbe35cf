import { describe, expect, it } from "vitest";
import { compareTrials } from "../../../src/compare/index.js";
import { workFigure } from "../../../src/report/index.js";
import type { Trial } from "../../../src/trial/index.js";
import { exampleComparison, exampleTrial } from "../examples.js";
import { demoTrials } from "./demo.js";
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

const { usual, furtherAhead } = demoTrials();
const IDS = [
  "positiveWorkVertical",
  "positiveWorkForward",
  "positiveWorkLateral",
  "positiveExternalWork",
] as const;

/** The mean that a mark reads out, J/kg/m. */
const meanOf = (mark: Drawn): number => Number(/: ([\d.]+) \(/.exec(readOf(mark))?.[1]);

describe("the account of one trial", () => {
  const svg = workFigure(usual) ?? "";
  const root = drawingOf(svg);

  it("is one well-formed image and says that work is not oxygen uptake", () => {
    expect(faultsOf(svg)).toEqual([]);
    expect(wordsOf(root)).toContain("Mechanical work on the centre of mass is not oxygen uptake.");
  });

  it("reads the trial's means per mass and distance", () => {
    const means = IDS.map((id) => usual.summary.metrics[id]?.normalised?.mean ?? Number.NaN);
    marksOf(root).forEach((mark, i) => {
      expect(meanOf(mark)).toBeCloseTo(means[i] ?? 0, 3);
    });
    expect(marksOf(root)).toHaveLength(4);
  });

  it("makes the bars as long as the means", () => {
    const bars = marksOf(root).map((mark) =>
      numberAt(
        elementsOf(mark).find(({ attributes }) => attributes.height === "11"),
        "width",
      ),
    );
    const means = marksOf(root).map(meanOf);
    expect((bars[0] ?? 0) / (bars[3] ?? 1)).toBeCloseTo((means[0] ?? 0) / (means[3] ?? 1), 2);
  });
});

describe("the account of both trials", () => {
  const comparison = compareTrials(usual, furtherAhead);
  const svg = workFigure(comparison, { labels: { baseline: "usual <i>", changed: "further & ahead" } }) ?? "";
  const root = drawingOf(svg);

  it("agrees with the comparison's own work per metre, which is had another way", () => {
    const { perMetre } = comparison.work;
    const [before, after] = marksOf(root).slice(6).map(meanOf);
    expect(before).toBeCloseTo(perMetre?.baseline.mean ?? 0, 3);
    expect(after).toBeCloseTo(perMetre?.changed.mean ?? 0, 3);
  });

  it("agrees with each trial's means", () => {
    IDS.forEach((id, i) => {
      expect(meanOf(marksOf(root)[2 * i] as Drawn)).toBeCloseTo(
        usual.summary.metrics[id]?.normalised?.mean ?? 0,
        2,
      );
      expect(meanOf(marksOf(root)[2 * i + 1] as Drawn)).toBeCloseTo(
        furtherAhead.summary.metrics[id]?.normalised?.mean ?? 0,
        2,
      );
    });
  });

  it("is well-formed, names both trials as text and gives the difference", () => {
    expect(faultsOf(svg)).toEqual([]);
    expect(wordsOf(root)).toContain("usual <i>");
    expect(wordsOf(root)).toMatch(/External work: \+\d+\.\d % \(\+\d+\.\d to \+\d+\.\d\)\./);
    expect(ticksOf(root, {}).size).toBeGreaterThan(1);
  });
});

it("names what is not known, and is null where nothing is", () => {
  const metrics = { ...usual.summary.metrics, positiveWorkLateral: undefined };
  const svg = workFigure({ ...usual, summary: { ...usual.summary, metrics } } as Trial) ?? "";
  expect(faultsOf(svg)).toEqual([]);
  expect(wordsOf(drawingOf(svg))).toContain("lateral: not known");
  const own = exampleTrial();
  expect(workFigure({ ...own, summary: { ...own.summary, metrics: {} } })).toBeNull();
  expect(workFigure({ ...exampleComparison(), metrics: [] })).toBeNull();
});

it.each([{ width: 200 }, { colour: "red" }])("refuses %o", (wrong) =>
  expect(() => workFigure(usual, wrong as object)).toThrow(),
);
