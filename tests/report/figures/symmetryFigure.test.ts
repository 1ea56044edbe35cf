import { describe, expect, it } from "vitest";
import { symmetryFigure } from "../../../src/report/index.js";
import { type Symmetry, symmetryOf, type Trial } from "../../../src/trial/index.js";
import { exampleTrial } from "../examples.js";
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
const found = (trial: Trial, id: string): Symmetry => {
  const result = symmetryOf(trial, id);
  if (!("index" in result)) throw new Error(result.message);
  return result;
};

describe("left and right of one trial", () => {
  const ids = ["peakVerticalForce", "brakingImpulse", "contactTime"];
  const svg = symmetryFigure(usual, { ids }) ?? "";
  const root = drawingOf(svg);

  it("is one well-formed image", () => expect(faultsOf(svg)).toEqual([]));

  it("reads both means and the index as symmetryOf gives them", () => {
    const reads = marksOf(root).map(readOf);
    expect(reads).toHaveLength(3);
    ids.forEach((id, i) => {
      const { left, right, index } = found(usual, id);
      const [, l, r, percent] =
        /left ([\d.]+), right ([\d.]+).*index ([−+\d.]+) %/.exec(reads[i] ?? "") ?? [];
      expect(Number(l) / left.mean).toBeCloseTo(1, 2);
      expect(Number(r) / right.mean).toBeCloseTo(1, 2);
      expect(Number(percent?.replace("−", "-"))).toBeCloseTo(index, 1);
    });
  });

  it("sets marks and intervals on one scale", () => {
    const axis = elementsOf(root).find(
      ({ tag, text, attributes }) => tag === "text" && text === "0" && attributes["text-anchor"] === "middle",
    );
    const ticks = [...ticksOf(root, { y: numberAt(axis, "y") })];
    const [a, b] = [ticks[0], ticks.at(-1)];
    const x = (value: number): number =>
      numberAt(a?.[1], "x") +
      ((value - (a?.[0] ?? 0)) * (numberAt(b?.[1], "x") - numberAt(a?.[1], "x"))) /
        ((b?.[0] ?? 0) - (a?.[0] ?? 0));
    ids.forEach((id, i) => {
      const { index, interval } = found(usual, id);
      const { children } = marksOf(root)[i] as Drawn;
      expect(
        numberAt(
          children.find(({ tag }) => tag === "circle"),
          "cx",
        ),
      ).toBeCloseTo(x(index), 0);
      expect(
        numberAt(
          children.find(({ tag }) => tag === "line"),
          "x1",
        ),
      ).toBeCloseTo(x(interval.low), 0);
      expect(
        numberAt(
          children.find(({ tag }) => tag === "line"),
          "x2",
        ),
      ).toBeCloseTo(x(interval.high), 0);
    });
  });
});

it("draws what speaks for the components and for work where no metric is named, in both trials", () => {
  const svg =
    symmetryFigure(usual, { changed: furtherAhead, labels: { baseline: "a", changed: "b <b>" } }) ?? "";
  expect(faultsOf(svg)).toEqual([]);
  const reads = marksOf(drawingOf(svg)).map(readOf);
  expect(reads.filter((read) => read.startsWith("a: "))).toHaveLength(4);
  expect(reads.filter((read) => read.startsWith("b <b>: "))).toHaveLength(4);
});

it("gives the reason where a metric has no index", () => {
  const svg = symmetryFigure(usual, { ids: ["netForwardImpulse", "peakVerticalForce"] }) ?? "";
  expect(faultsOf(svg)).toEqual([]);
  expect(wordsOf(drawingOf(svg))).toContain("no index, it is a small difference of large values");
});

it("is null where no metric has one", () => {
  expect(symmetryFigure(exampleTrial())).toBeNull();
  expect(symmetryFigure(usual, { ids: [] })).toBeNull();
});

it.each([{ width: 200 }, { ids: ["nothing"] }, { colour: "red" }])("refuses %o", (wrong) =>
  expect(() => symmetryFigure(usual, wrong as object)).toThrow(),
);
