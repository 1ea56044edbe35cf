import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import type { Trial } from "../../src/trial/index.js";
import { baseline, changed, type Strides, stepTimes, trialOf, typicalStrides } from "./trialOf.js";

const N = 60;
const cadence = (factor: number) => stepTimes(N, 0.36 / factor);
/** Mediolateral impulse neither shown to differ nor alike. */
const wide = {
  mediolateralImpulse: typicalStrides(9, N).mediolateralImpulse?.map((value) => 6.6 + 4 * (value - 6)) ?? [],
};
const compare = (factors: Record<string, number>, steps: Strides) =>
  compareTrials(baseline(N), changed(factors, N, {}, steps)).overall;

describe("a component that reads otherwise per kilometre is named, whatever the reading", () => {
  const where = "er kilometre, where the number of steps counts too, ";
  it("no clear change per step, 8 % more steps", () => {
    const found = compare({}, cadence(1.08));
    expect(found).toMatchObject({ reading: "no clear change", lower: [], higher: [] });
    expect(found.perKilometre).toEqual({
      lower: [],
      higher: ["vertical", "anteroposterior"],
      unsettled: ["mediolateral"],
    });
    expect(found.sentence).toMatch(/^No clear change per step: /);
    expect(found.sentence).toContain(
      `P${where}the vertical and anteroposterior (braking) force are higher (+7.7 % and +9.4 %) and the mediolateral force is not settled.`,
    );
    expect(found.toSettle?.[0]).toMatch(/for the mediolateral force per kilometre/);
  });
  it("no clear change per step, 15 % fewer steps", () => {
    const found = compare({}, cadence(0.85));
    expect(found.reading).toBe("no clear change");
    expect(found.sentence).toMatch(/^No clear change per step: /);
    expect(found.sentence).toContain(
      `P${where}the vertical, anteroposterior (braking) and mediolateral force are lower`,
    );
  });
  it("raised", () => {
    const found = compare({ brakingImpulse: 1.2 }, cadence(1.08));
    expect(found.reading).toBe("raised");
    expect(found.sentence).toContain(`P${where}the vertical force is higher (+7.7 %)`);
  });
  it("raised per step, lower per kilometre", () => {
    const found = compare({ peakVerticalForce: 1.05 }, cadence(0.85));
    expect(found).toMatchObject({ reading: "raised", higher: ["vertical"] });
    expect(found.sentence).toMatch(/^Raised per step: the vertical force is higher/);
    expect(found.sentence).toMatch(/Per kilometre, .* force are lower \(-11\.0 %/);
  });
  it("shifted", () => {
    const found = compare({ peakVerticalForce: 0.93, brakingImpulse: 1.2 }, cadence(1.08));
    expect(found.reading).toBe("shifted");
    expect(found.sentence).toContain(
      `P${where}the mediolateral force is not settled and the vertical force is similar`,
    );
  });
  it("unsettled, one lower and another not settled", () => {
    const found = compare({ peakVerticalForce: 0.93 }, { ...wide, ...cadence(1.08) });
    expect(found).toMatchObject({ reading: "unsettled", lower: ["vertical"], unsettled: ["mediolateral"] });
    expect(found.sentence).toContain(`P${where}the anteroposterior (braking) force is higher (+9.4 %)`);
  });
  it("unsettled for what per kilometre says", () => {
    const found = compare({ peakVerticalForce: 0.93 }, cadence(1.08));
    expect(found.reading).toBe("unsettled");
    expect(found.sentence).toContain(
      `per step and none is higher, but p${where}the anteroposterior (braking) force is higher`,
    );
  });
  it("as many steps: the readings are the same, which is said", () => {
    const found = compare({ brakingImpulse: 1.2 }, {});
    expect(found.sentence).toContain("Per kilometre the readings are the same.");
    expect(found.perKilometre).toEqual({ lower: [], higher: found.higher, unsettled: [] });
  });
  it("a component's own sentence says it too, with its change", () =>
    expect(compareTrials(baseline(N), changed({}, N, {}, cadence(1.08))).components[0]?.sentence).toMatch(
      /^Vertical similar: .*; per kilometre higher \(\+7\.7 %\)\.$/,
    ));
  it("law: `no clear change` alone is never said of a comparison that names a component per kilometre", () => {
    for (const factor of [0.85, 0.9, 0.95, 0.98, 1, 1.02, 1.05, 1.1, 1.15]) {
      const { reading, sentence, perKilometre } = compare({}, cadence(factor));
      expect(reading).toBe("no clear change");
      const named = perKilometre.lower.length + perKilometre.higher.length;
      expect(sentence.startsWith("No clear change per step")).toBe(named > 0);
      expect(/Per kilometre, .* (?:higher|lower) \(/.test(sentence)).toBe(named > 0);
    }
  });
});

describe("nothing known per kilometre", () => {
  const untimed = (trial: Trial, notComputed: Trial["notComputed"] = []): Trial => ({
    ...trial,
    notComputed,
    steps: trial.steps.map((row) => ({
      ...row,
      values: Object.fromEntries(Object.entries(row.values).filter(([id]) => id !== "stepTime")),
    })),
  });
  it("without the step time: that it was not among the metrics, not that readings point different ways", () => {
    const { overall, work, components } = compareTrials(
      untimed(baseline()),
      untimed(changed({ peakVerticalForce: 0.93 })),
    );
    const why = "the step time of both trials was not computed (it was not among the metrics analysed)";
    expect(overall.reading).toBe("unsettled");
    expect(overall.sentence).toContain(`nothing is known, since ${why}`);
    expect(overall.toSettle).toEqual([
      "the step time (stepTime) of both trials, computed with the other metrics",
    ]);
    expect(work).toMatchObject({ reading: "unsettled" });
    expect(work.sentence).toContain(why);
    expect(components.every(({ perKilometre }) => perKilometre === null)).toBe(true);
  });
  it("without it in one trial, in its own words where it says why", () => {
    const trial = untimed(changed({ brakingImpulse: 1.2 }), [
      { id: "stepTime", code: "no-next-contact", message: "no contact is followed by another" },
    ]);
    const { overall } = compareTrials(baseline(), trial);
    expect(overall.reading).toBe("raised");
    expect(overall.sentence).toContain(
      "Per kilometre nothing is known, since the step time of the changed trial was not computed (no contact is followed by another).",
    );
  });
  it.each([
    [null, "the speed of the changed trial is not known", "the speed of the changed trial"],
    [0, "the speed of the changed trial is 0 m/s", "both recordings at one speed"],
  ])("without a speed (%s): %s", (speed, why, toSettle) => {
    const { overall, work } = compareTrials(baseline(), changed({ peakVerticalForce: 0.93 }, 40, { speed }));
    expect(work.sentence).toContain(why);
    expect(overall.toSettle).toEqual([toSettle]);
  });
  it("a metric that has no meaning per kilometre is not said to lack it", () => {
    const metrics = CATALOGUE.map(({ perKilometre, ...metric }) => metric);
    const { overall } = compareTrials(untimed(baseline()), untimed(changed({ peakVerticalForce: 0.93 })), {
      metrics,
    });
    expect(overall.reading).toBe("reduced");
    expect(overall.sentence).not.toContain("kilometre");
  });
  it("too few strides with a step time for an interval", () => {
    const few = trialOf({ ...typicalStrides(2, 40), stepTime: [0.36] });
    expect(compareTrials(baseline(), few).overall.sentence).toContain(
      "nothing is known, since too few strides have a step time as well",
    );
  });
});
