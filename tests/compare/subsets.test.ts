import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { CATALOGUE, metricById } from "../../src/metrics/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { analyseTrials, type Trial } from "../../src/trial/index.js";
import { baseline, changed, trialOf, typicalStrides } from "./trialOf.js";

const lower = changed({ peakVerticalForce: 0.93 });
const entries = (...ids: string[]) => ids.map((id) => metricById(id));
const without = (trial: Trial, id: string): Trial => ({
  ...trial,
  steps: trial.steps.map((row) => ({
    ...row,
    values: Object.fromEntries(Object.entries(row.values).filter(([one]) => one !== id)),
  })),
});

describe("the primary metric of a component is not among the metrics", () => {
  const { overall, components } = compareTrials(baseline(), lower, {
    metrics: entries("peakVerticalForce", "brakingImpulse"),
  });
  it("it was not compared, which is not the same as not recorded", () => {
    expect(overall.sentence).toContain(
      "The mediolateral force was not compared, since no primary metric for it is among the metrics.",
    );
    expect(overall.sentence).not.toContain("recorded");
    expect(components[2]).toMatchObject({
      metric: null,
      reading: null,
      missing: "not compared",
      sentence: "Mediolateral: not compared, since no primary metric for it is among the metrics.",
    });
  });
  it("no `reduced`, since a recorded component is left open; with it among the metrics there is one", () => {
    expect(overall).toMatchObject({ reading: "unsettled", lower: ["vertical"], unsettled: [] });
    expect(overall.sentence).toContain("load may have moved to a component that was not compared");
    expect(overall.toSettle).toEqual(["a primary metric for every component among the metrics"]);
    const metrics = entries("peakVerticalForce", "brakingImpulse", "mediolateralImpulse");
    expect(compareTrials(baseline(), lower, { metrics }).overall.reading).toBe("reduced");
  });
  it("one component compared: the sentence speaks of it alone", () => {
    const found = compareTrials(baseline(), lower, { metrics: entries("peakVerticalForce") }).overall;
    expect(found.reading).toBe("unsettled");
    expect(found.sentence).toContain(
      "This speaks of the vertical force alone: the anteroposterior (braking) and mediolateral force was not compared",
    );
  });
  it("one not recorded, one not compared: each is said", () => {
    const ids = ["peakVerticalForce", "brakingImpulse"];
    const two = (seed: number, factor: number) =>
      trialOf(
        Object.fromEntries(
          Object.entries(typicalStrides(seed, 40, { peakVerticalForce: factor })).filter(([id]) =>
            ids.includes(id),
          ),
        ),
      );
    const found = compareTrials(two(1, 1), two(2, 0.93), { metrics: entries("peakVerticalForce") });
    expect(found.components.map(({ missing }) => missing)).toEqual([null, "not compared", "not recorded"]);
    expect(found.overall.sentence).toContain(
      "load may have moved to a component that was not compared or not recorded",
    );
    expect(found.overall.toSettle).toHaveLength(2);
  });
});

describe("a trial was analysed without the primary metric of a component", () => {
  it.each([
    ["both", "neither trial has the mediolateral impulse"],
    ["one", "the changed trial does not have the mediolateral impulse"],
  ])("%s: it was not compared, and which trial lacks it", (which, words) => {
    const { overall, components, notCompared } = compareTrials(
      which === "both" ? without(baseline(), "mediolateralImpulse") : baseline(),
      without(lower, "mediolateralImpulse"),
    );
    const why = `not compared, since ${words} (it was not among the metrics analysed)`;
    expect(overall.reading).toBe("unsettled");
    expect(overall.sentence).toContain(`The mediolateral force was ${why}.`);
    expect(components[2]).toMatchObject({ missing: "not compared", sentence: `Mediolateral: ${why}.` });
    expect(overall.toSettle).toEqual([
      "the mediolateral impulse (mediolateralImpulse) computed in both trials",
    ]);
    expect(notCompared.find(({ id }) => id === "mediolateralImpulse")?.message).toContain(
      "(it was not among the metrics analysed)",
    );
  });
  it("a primary that too many contacts lack has no numbers, but the component was recorded", () => {
    const steps = lower.steps.map((row, k) =>
      k % 5 === 0 ? { ...row, values: { ...row.values, brakingImpulse: null } } : row,
    );
    const found = compareTrials(baseline(), { ...lower, steps }).components[1];
    expect(found).toMatchObject({ metric: "brakingImpulse", reading: "unsettled", missing: "not compared" });
  });
});

describe("no component at all", () => {
  it.each([[[]], [entries("contactTime")]])(
    "metrics %#: unsettled, nothing compared, what would settle it",
    (metrics) => {
      const { overall, work, components, metrics: compared } = compareTrials(baseline(), lower, { metrics });
      expect(overall).toMatchObject({
        reading: "unsettled",
        lower: [],
        higher: [],
        unsettled: [],
        toSettle: ["a primary metric for every component among the metrics"],
      });
      expect(overall.sentence).toMatch(
        /^Unsettled: no component of the force can be compared\. The vertical, anteroposterior \(braking\) and mediolateral force was not compared, since no primary metric for it is among the metrics\./,
      );
      expect(components.every(({ missing }) => missing === "not compared")).toBe(true);
      expect(work.sentence).toContain(
        "positive external work cannot be compared (it is not among the metrics)",
      );
      expect(compared.map(({ id }) => id)).not.toContain("peakVerticalForce");
    },
  );
});

describe("whole recordings, analysed with some metrics only", () => {
  const { usual, furtherAhead } = demoRecordings();
  const grounds = [usual, furtherAhead].map((recording) => toGroundReaction(recording));
  const compare = (ids: string[], vertical = false) => {
    const metrics = entries(...ids);
    const own = grounds.map((ground) => (vertical ? { ...ground, force: { up: ground.force.up } } : ground));
    const [one, other] = analyseTrials(own, { metrics });
    if (one === undefined || other === undefined) throw new Error("two trials are analysed");
    return compareTrials(one, other, { metrics: CATALOGUE });
  };
  it("without the step time nothing is known per kilometre nor per metre, for that reason", () => {
    const { overall, work } = compare([
      "peakVerticalForce",
      "brakingImpulse",
      "mediolateralImpulse",
      "positiveExternalWork",
    ]);
    expect(overall.reading).toBe("shifted");
    expect(overall.sentence).toContain(
      "Per kilometre nothing is known, since the step time of both trials was not computed",
    );
    expect(work.sentence).toContain("since the step time of both trials was not computed");
  });
  it("without a mediolateral metric the force was recorded and not compared; without its channel not recorded", () => {
    const ids = ["peakVerticalForce", "stepTime"];
    expect(compare(ids).components.map(({ missing }) => missing)).toEqual([
      null,
      "not compared",
      "not compared",
    ]);
    expect(compare(ids, true).components.map(({ missing }) => missing)).toEqual([
      null,
      "not recorded",
      "not recorded",
    ]);
  });
});
