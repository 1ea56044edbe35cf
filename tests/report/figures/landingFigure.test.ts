import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { landingFigure } from "../../../src/report/index.js";
import type { Trial } from "../../../src/trial/index.js";
import { exampleTrial, summary } from "../examples.js";
import { drawingOf, elementsOf, faultsOf, marksOf, numberAt, readOf, ticksOf, wordsOf } from "./drawing.js";

/** A trial that lands and leaves at these distances, m, with a standard deviation of 20 mm. */
function landing(touchdown: number, takeOff: number, changes: Partial<Trial> = {}): Trial {
  const own = exampleTrial();
  return {
    ...own,
    summary: {
      ...own.summary,
      metrics: {
        ...own.summary.metrics,
        touchdownDistance: summary(touchdown, 0.02, "m"),
        takeOffDistance: summary(takeOff, 0.02, "m"),
      },
    },
    ...changes,
  };
}

/** Units of the drawing per metre along the ground, and up from it, from the rulers. */
function scalesOf(svg: string): { readonly along: number; readonly up: number; readonly zero: number } {
  const root = drawingOf(svg);
  const upright = [...ticksOf(root, { x: 32 })];
  const [low, high] = [upright[0], upright.at(-1)];
  const ruler = elementsOf(root).find(({ tag, text }) => tag === "text" && text === "← take-off");
  const places = elementsOf(root)
    .filter(({ tag, attributes }) => tag === "text" && Number(attributes.y) === numberAt(ruler, "y") - 15)
    .map((one) => ({ value: Number(one.text), x: numberAt(one, "x") }));
  const zero = places.find(({ value }) => value === 0)?.x ?? Number.NaN;
  // Both ways from zero the labels count up.
  const last = places.reduce((far, place) => (place.value > far.value ? place : far));
  expect(last.value).toBeGreaterThan(0);
  return {
    along: Math.abs(last.x - zero) / last.value,
    up: (numberAt(low?.[1], "y") - numberAt(high?.[1], "y")) / ((high?.[0] ?? 0) - (low?.[0] ?? 0)),
    zero,
  };
}

describe("landing of one trial", () => {
  const svg = landingFigure(landing(0.25, 0.4)) ?? "";

  it("is one well-formed image with words for its numbers", () => {
    expect(faultsOf(svg)).toEqual([]);
    const text = wordsOf(drawingOf(svg));
    expect(text).toContain(
      "The foot lands 0.250 ± 0.020 m ahead of the centre of mass and leaves the ground 0.400 ± 0.020 m behind it",
    );
    expect(text).toContain("Distances may be off as a whole by 0.02 m (touchdown) and 0.04 m (take-off).");
  });

  it("has one scale in both directions", () => {
    const { along, up } = scalesOf(svg);
    expect(up / along).toBeCloseTo(1, 2);
  });

  it("sets feet and centre of mass where the numbers say", () => {
    const { along, zero } = scalesOf(svg);
    const feet = elementsOf(drawingOf(svg))
      .filter(({ tag, attributes }) => tag === "circle" && attributes.r === "4.5")
      .map((foot) => (numberAt(foot, "cx") - zero) / along);
    expect(feet).toHaveLength(2);
    expect(feet[0]).toBeCloseTo(0.25, 2);
    expect(feet[1]).toBeCloseTo(-0.4, 2);
    const centre = elementsOf(drawingOf(svg)).find(({ attributes }) => attributes.r === "7");
    expect(numberAt(centre, "cx")).toBeCloseTo(zero, 1);
    // 0.55 of 1.83 m above the ground.
    const ground = numberAt(
      elementsOf(drawingOf(svg)).find(({ attributes }) => attributes.r === "4.5"),
      "cy",
    );
    expect((ground - numberAt(centre, "cy")) / along).toBeCloseTo(0.55 * 1.83, 2);
  });

  it("whiskers span one standard deviation to both sides", () => {
    const { along } = scalesOf(svg);
    const whiskers = marksOf(drawingOf(svg)).map(
      (mark) => mark.children.filter(({ tag }) => tag === "line")[0],
    );
    expect(whiskers).toHaveLength(2);
    for (const whisker of whiskers) {
      expect(Math.abs(numberAt(whisker, "x2") - numberAt(whisker, "x1")) / along).toBeCloseTo(0.04, 3);
    }
  });

  it("reads out the numbers", () => {
    expect(marksOf(drawingOf(svg)).map(readOf)).toEqual([
      "take-off: 0.400 ± 0.020 m behind the centre of mass",
      "touchdown: 0.250 ± 0.020 m ahead of the centre of mass",
    ]);
  });

  it("gives the travel of the centre of pressure by the closing law", () => {
    // Speed 2.5 m/s × contact time 0.3141 s − 0.25 m − 0.4 m.
    expect(wordsOf(drawingOf(svg))).toContain(
      "Centre of pressure under the foot travels 0.14 m, by difference.",
    );
  });
});

it("draws the changed trial over the first, with another shape and line", () => {
  const svg =
    landingFigure(landing(0.25, 0.4), {
      changed: landing(0.3, 0.42),
      labels: { baseline: "usual", changed: "further <ahead> & on" },
    }) ?? "";
  expect(faultsOf(svg)).toEqual([]);
  const reads = marksOf(drawingOf(svg)).map(readOf);
  expect(reads).toContain("further <ahead> & on, touchdown: 0.300 ± 0.020 m ahead of the centre of mass");
  expect(
    marksOf(drawingOf(svg))[2]?.children.some(
      ({ tag, attributes }) => tag === "rect" && attributes.fill !== "none",
    ),
  ).toBe(true);
  expect(
    elementsOf(drawingOf(svg)).filter(({ attributes }) => attributes["stroke-dasharray"] === "7 4").length,
  ).toBe(3);
});

it("says that the height of the centre of mass is not known where no body height is stated", () => {
  expect(landingFigure(landing(0.25, 0.4, { subject: {} }))).toContain("not known, drawn at 1");
});

it("draws one distance alone, and is null without either or where the changed trial lacks both", () => {
  const own = landing(0.25, 0.4);
  const { takeOffDistance: _, ...metrics } = own.summary.metrics;
  const svg = landingFigure({ ...own, summary: { ...own.summary, metrics } }) ?? "";
  expect(faultsOf(svg)).toEqual([]);
  expect(wordsOf(drawingOf(svg))).toContain("not known");
  expect(landingFigure(exampleTrial())).toBeNull();
  expect(landingFigure(own, { changed: exampleTrial() })).toBeNull();
});

it("property: whatever the distances, one scale and no broken number", () => {
  const metres = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(metres, metres, fc.constantFrom(300, 321, 500), (touchdown, takeOff, width) => {
      const svg = landingFigure(landing(touchdown, takeOff), { width }) ?? "";
      expect(faultsOf(svg)).toEqual([]);
      const { along, up } = scalesOf(svg);
      expect(up / along).toBeCloseTo(1, 1);
    }),
    { numRuns: 60 },
  );
});

it("property: no broken number for distances of any size", () => {
  const any = fc.double({ noNaN: true, noDefaultInfinity: true });
  fc.assert(
    fc.property(any, any, (touchdown, takeOff) => {
      const svg = landingFigure(landing(touchdown, takeOff));
      // From 100 m on, the standard deviation of 0.02 m with it, a distance is taken as not known.
      if (svg === null)
        expect(Math.min(Math.abs(touchdown), Math.abs(takeOff)) + 0.02).toBeGreaterThanOrEqual(100);
      else expect(faultsOf(svg)).toEqual([]);
    }),
  );
});

it.each([{ width: 299 }, { width: Number.NaN }, { colour: "red" }])("refuses %o", (options) =>
  expect(() => landingFigure(landing(0.25, 0.4), options)).toThrow(),
);

it("2026-11-25: marks under the ground had no entry that says what they are", () => {
  const words = wordsOf(drawingOf(landingFigure(landing(0.25, 0.31)) ?? ""));
  expect(words).toContain("Marks under the ground: means; whiskers: one standard deviation between");
});
