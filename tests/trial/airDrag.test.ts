import { describe, expect, it } from "vitest";
import { toGroundReaction } from "../../src/force/index.js";
import { CATALOGUE, metricById, positiveExternalWork } from "../../src/metrics/index.js";
import { airDrag } from "../../src/models/index.js";
import { syntheticRun } from "../../src/synthetic/index.js";
import { analyseTrial, type Trial } from "../../src/trial/index.js";

const fast = { contacts: 24, speed: 5, stance: { stepTime: 0.31, contactTime: 0.19 } } as const;
const ground = toGroundReaction(syntheticRun({ ...fast, surface: "ground" }).recording);
const codes = ({ cautions }: Trial) => cautions.map(({ code }) => code);
const mean = (trial: Trial, id: string) => trial.summary.metrics[id]?.mean ?? Number.NaN;

describe("air drag over ground at 5 m/s, 70 kg, 1.75 m", () => {
  const still = analyseTrial(ground);
  const estimated = analyseTrial(ground, { airDrag: "estimated" });
  it("is said to be left out, and not where it is stated, 0 N too", () => {
    expect(codes(still)).toContain("air-drag");
    expect(still.settings.airDrag).toBeNull();
    for (const option of [0, 6, "estimated"] as const) {
      expect(codes(analyseTrial(ground, { airDrag: option }))).not.toContain("air-drag");
    }
    expect(codes(analyseTrial(ground, { metrics: [metricById("contactTime")] }))).not.toContain("air-drag");
    expect(codes(analyseTrial(ground, { speed: 3.5 }))).not.toContain("air-drag");
  });
  it("estimated, it is the model's for speed, mass and height", () =>
    expect(estimated.settings.airDrag).toBe(airDrag(5, { mass: 70, height: 1.75 })));
  it("adds to the forward work what the drag takes on the way of a step, or less where energy falls (law: D × way)", () => {
    const drag = estimated.settings.airDrag ?? Number.NaN;
    const way = mean(still, "stepLength");
    const more = mean(estimated, "positiveWorkForward") - mean(still, "positiveWorkForward");
    expect(more).toBeGreaterThan(0);
    expect(more).toBeLessThan(drag * way);
  });
  it("is what the metric gives with the drag as its option, and moves no metric but those three", () => {
    const plain = analyseTrial(ground, { airDrag: "estimated", filter: null });
    const value = positiveExternalWork(
      { ...ground, massByForce: plain.settings.massByForce as number },
      {
        contact: plain.contacts[0] as never,
        next: plain.contacts[1] as never,
        nextSameSide: plain.contacts[2] as never,
      },
      { drag: plain.settings.airDrag as number },
    );
    expect(plain.steps[0]?.values.positiveExternalWork).toBe(value);
    const moved = CATALOGUE.map(({ id }) => id).filter(
      (id) => estimated.summary.metrics[id]?.mean !== still.summary.metrics[id]?.mean,
    );
    expect(moved.sort()).toEqual(["positiveExternalWork", "positiveWorkForward", "pushToBrakeTimeRatio"]);
  });
  it("an entry of the caller's own keeps its own function", () => {
    const own = { ...metricById("positiveWorkForward"), id: "own", compute: () => 1 };
    expect(analyseTrial(ground, { airDrag: 6, metrics: [own] }).steps[0]?.values.own).toBe(1);
  });
});

describe("on a belt", () => {
  const belt = toGroundReaction(syntheticRun(fast).recording);
  it("there is none to be estimated, and nothing is said", () => {
    const trial = analyseTrial(belt, { airDrag: "estimated" });
    expect(trial.settings.airDrag).toBe(0);
    expect(codes(analyseTrial(belt))).not.toContain("air-drag");
  });
});

describe("refuses", () => {
  it.each([
    ["much" as never, "out-of-range"],
    [1000, "out-of-range"],
    [Number.NaN, "not-finite"],
  ])("airDrag %s", (option, code) =>
    expect(() => analyseTrial(ground, { airDrag: option })).toThrow(expect.objectContaining({ code })),
  );
  it("to estimate it without a height, saying what is missing", () => {
    const { height: _, ...subject } = ground.subject;
    expect(() => analyseTrial({ ...ground, subject }, { airDrag: "estimated" })).toThrow(
      expect.objectContaining({
        code: "missing-value",
        argument: "airDrag",
        values: { missing: ["height"] },
      }),
    );
  });
});
