import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import { baseline, changed, PRIMARY_IDS, stepTimes, trialOf, typicalStrides } from "./trialOf.js";

describe("secondary metrics", () => {
  const rate = (factor: number) => ({
    earlyLoadingRate: typicalStrides(5, 40).peakVerticalForce?.map((value) => 30 * value * factor) ?? [],
  });
  it("one that rose is named in the sentence and makes no reading", () => {
    const one = trialOf({ ...typicalStrides(1, 40), ...rate(1) });
    const { overall } = compareTrials(one, changed({}, 40, {}, rate(1.1)));
    expect(overall.reading).toBe("no clear change");
    expect(overall.sentence).toContain(
      "Also more load by its 95 % interval, without a reading (of metrics that did not change, about one in 40 rises like this by chance, and more where strides resemble each other or drift): early loading rate (+10.0 %).",
    );
  });
  it("nor is any named where nothing could be read: the speed may have raised it", () => {
    const one = trialOf({ ...typicalStrides(1, 40), ...rate(1) });
    const { overall } = compareTrials(one, changed({}, 40, { speed: 3.5 }, rate(1.1)));
    expect(overall.sentence).not.toContain("early loading rate");
  });
  it("one that fell is not", () => {
    const one = trialOf({ ...typicalStrides(1, 40), ...rate(1) });
    expect(compareTrials(one, changed({}, 40, {}, rate(0.9))).overall.sentence).not.toContain(
      "early loading rate",
    );
  });
  it("one that is no load is not, whichever way it goes", () => {
    expect(CATALOGUE.find(({ id }) => id === "contactTime")?.moreLoad).toBe("none");
    const one = trialOf({
      ...typicalStrides(1, 40),
      contactTime: Array.from({ length: 40 }, (_, i) => 0.25 + 0.002 * (i % 2)),
    });
    const other = changed(
      {},
      40,
      {},
      { contactTime: Array.from({ length: 40 }, (_, i) => 0.3 + 0.002 * (i % 2)) },
    );
    expect(compareTrials(one, other).overall.sentence).not.toContain("contact time");
  });
});

describe("work", () => {
  it.each([
    [0.93, "less work"],
    [1.08, "more work"],
    [1, "no clear change"],
  ])("times %d: %s, and that it is not oxygen uptake", (factor, reading) => {
    const { work, overall } = compareTrials(baseline(), changed({ positiveExternalWork: factor }));
    expect(work.reading).toBe(reading);
    expect(work.sentence).toContain("is not oxygen uptake");
    expect(overall.reading).toBe("no clear change");
  });
  it("is per metre: the same work on a shorter step is more", () =>
    expect(compareTrials(baseline(), changed({}, 40, {}, stepTimes(40, 0.33))).work.reading).toBe(
      "more work",
    ));
  it("is per kilogram: the same work of a heavier runner is less", () =>
    expect(compareTrials(baseline(), changed({}, 40, { mass: 77, massByForce: 77 })).work.reading).toBe(
      "less work",
    ));
  it("not computed: unsettled, with the reason", () => {
    const ids = PRIMARY_IDS as readonly string[];
    const none = (seed: number) => ({
      ...trialOf(
        Object.fromEntries(Object.entries(typicalStrides(seed, 40)).filter(([id]) => ids.includes(id))),
      ),
      notComputed: [
        { id: "positiveExternalWork", code: "missing-speed", message: "the speed is not stated" },
      ],
    });
    const { work } = compareTrials(none(1), none(2));
    expect(work).toMatchObject({ reading: "unsettled" });
    expect(work.sentence).toContain("neither trial has it (the speed is not stated)");
    expect(work.perMetre).toBeUndefined();
  });
});
