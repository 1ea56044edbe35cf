import { describe, expect, it } from "vitest";
import { type CompareTrialsOptions, compareTrials } from "../../src/compare/index.js";
import { metricById } from "../../src/metrics/index.js";
import { lagOneCorrelation } from "../../src/statistics/index.js";
import { baseline, changed, type Strides, stepTimes, trialOf, typicalStrides } from "./trialOf.js";

/** Mediolateral impulse with four times the spread and 10 % more in the mean: neither shown to differ nor alike. */
const wide = {
  mediolateralImpulse: typicalStrides(9, 40).mediolateralImpulse?.map((value) => 6.6 + 4 * (value - 6)) ?? [],
};

describe("the load as a whole", () => {
  it("shifted: vertical lower, braking and mediolateral higher", () => {
    const { overall } = compareTrials(
      baseline(),
      changed({ peakVerticalForce: 0.93, brakingImpulse: 1.2, mediolateralImpulse: 1.25 }),
    );
    expect(overall).toMatchObject({
      reading: "shifted",
      lower: ["vertical"],
      higher: ["anteroposterior", "mediolateral"],
      unsettled: [],
    });
    expect(overall.toSettle).toBeUndefined();
    expect(overall.sentence).toMatch(
      /^Shifted, not reduced: the vertical force is lower \(-6\.8 %\), and the anteroposterior/,
    );
  });
  it("reduced: one lower, the others similar, per kilometre too", () => {
    const { overall, components } = compareTrials(baseline(), changed({ peakVerticalForce: 0.93 }));
    expect(overall.reading).toBe("reduced");
    expect(components.map(({ reading }) => reading)).toEqual(["lower", "similar", "similar"]);
    expect(components.map(({ perKilometre }) => perKilometre)).toEqual(["lower", "similar", "similar"]);
  });
  it("raised: one higher, none lower", () => {
    const { overall } = compareTrials(baseline(), changed({ brakingImpulse: 1.2 }));
    expect(overall).toMatchObject({ reading: "raised", lower: [], higher: ["anteroposterior"] });
    expect(overall.sentence).toMatch(/^Raised: the anteroposterior \(braking\) force is higher/);
  });
  it("raised names the component that is not settled", () => {
    const { overall } = compareTrials(baseline(), changed({ brakingImpulse: 1.2 }, 40, {}, wide));
    expect(overall).toMatchObject({ reading: "raised", unsettled: ["mediolateral"] });
    expect(overall.sentence).toContain(
      "The mediolateral force is not settled: the interval of its difference holds zero",
    );
    expect(overall.toSettle).toHaveLength(1);
    expect(overall.toSettle?.[0]).toMatch(
      /^about \d+ or more further strides in each recording for the mediolateral force/,
    );
  });
  it("unsettled: one lower, another not settled", () => {
    const { overall } = compareTrials(baseline(), changed({ peakVerticalForce: 0.93 }, 40, {}, wide));
    expect(overall).toMatchObject({ reading: "unsettled", lower: ["vertical"], unsettled: ["mediolateral"] });
    expect(overall.sentence).toMatch(
      /^Unsettled: the vertical force is lower \(-6\.8 %\), but load may have moved\./,
    );
  });
  it("no clear change, also where a component is not settled, which is named", () => {
    expect(compareTrials(baseline(), changed()).overall.reading).toBe("no clear change");
    const { overall } = compareTrials(baseline(), changed({}, 40, {}, wide));
    expect(overall).toMatchObject({ reading: "no clear change", unsettled: ["mediolateral"] });
    expect(overall.sentence).toContain("The mediolateral force is not settled");
  });
  it("a trial against itself: no clear change, all similar, no difference", () => {
    const { overall, components, metrics } = compareTrials(baseline(), baseline());
    expect(overall.reading).toBe("no clear change");
    expect(components.map(({ reading }) => reading)).toEqual(["similar", "similar", "similar"]);
    expect(metrics.every(({ difference, effectSize }) => difference === 0 && (effectSize ?? 0) === 0)).toBe(
      true,
    );
  });
  it("every verdict says that it speaks of the force between foot and ground", () => {
    for (const factors of [{}, { peakVerticalForce: 0.9 }, { brakingImpulse: 1.3 }]) {
      const { sentence } = compareTrials(baseline(), changed(factors)).overall;
      expect(sentence).toContain(
        "the load on a joint, bone or tendon can move the other way (Matijevich et al. 2019",
      );
    }
  });
});

describe("per kilometre", () => {
  it("lower per step, but more steps: not reduced, and the sentence says why", () => {
    const { overall, components } = compareTrials(
      baseline(60),
      changed({ peakVerticalForce: 0.93, brakingImpulse: 1 }, 60, {}, stepTimes(60, 0.33)),
    );
    expect(components[0]).toMatchObject({ reading: "lower", perKilometre: "similar" });
    expect(components[1]).toMatchObject({ reading: "similar", perKilometre: "higher" });
    expect(overall).toMatchObject({ reading: "unsettled", lower: ["vertical"], higher: [] });
    expect(overall.sentence).toContain(
      "but per kilometre, where the number of steps counts too, the anteroposterior (braking) force is higher",
    );
  });
  it("without the speed there is none, and so no `reduced`", () => {
    const { overall, metrics, cautions, work } = compareTrials(
      baseline(40, { speed: null }),
      changed({ peakVerticalForce: 0.93 }, 40, { speed: null }),
    );
    expect(overall).toMatchObject({ reading: "unsettled", toSettle: ["the speed of both trials"] });
    expect(metrics.every(({ perKilometre }) => perKilometre === undefined)).toBe(true);
    expect(cautions.map(({ code }) => code)).toContain("speed-not-stated");
    expect(work.reading).toBe("unsettled");
  });
});

describe("recorded components", () => {
  const only = (strides: Strides, ids: readonly string[]) =>
    Object.fromEntries(Object.entries(strides).filter(([id]) => ids.includes(id)));
  it("vertical alone: lower is not `reduced`, and the sentence says so", () => {
    const { overall, components } = compareTrials(
      trialOf(only(typicalStrides(1, 40), ["peakVerticalForce"])),
      trialOf(only(typicalStrides(2, 40, { peakVerticalForce: 0.93 }), ["peakVerticalForce"])),
    );
    expect(overall).toMatchObject({ reading: "unsettled", lower: ["vertical"] });
    expect(overall.sentence).toContain("of the vertical force alone");
    expect(components[1]).toEqual({
      component: "anteroposterior",
      metric: null,
      moreLoad: null,
      reading: null,
      perKilometre: null,
      missing: "not recorded",
      sentence: "Anteroposterior: not recorded in both trials.",
    });
  });
  it("vertical alone: higher is `raised`, like is `no clear change`, both of the vertical force alone", () => {
    const one = trialOf(only(typicalStrides(1, 40), ["peakVerticalForce"]));
    for (const [factor, reading] of [
      [1.08, "raised"],
      [1, "no clear change"],
    ] as const) {
      const other = trialOf(
        only(typicalStrides(2, 40, { peakVerticalForce: factor }), ["peakVerticalForce"]),
      );
      const { overall } = compareTrials(one, other);
      expect(overall.reading).toBe(reading);
      expect(overall.sentence).toContain("of the vertical force alone");
    }
  });
  it("two recorded: `reduced` of these, and the third is named", () => {
    const ids = ["peakVerticalForce", "brakingImpulse"];
    const { overall } = compareTrials(
      trialOf(only(typicalStrides(1, 40), ids)),
      trialOf(only(typicalStrides(2, 40, { peakVerticalForce: 0.93 }), ids)),
    );
    expect(overall.reading).toBe("reduced");
    expect(overall.sentence).toContain("The mediolateral force was recorded in neither trial.");
  });
  it("recorded in one trial only: listed with the trial's own reason", () => {
    const one = trialOf(typicalStrides(1, 40));
    const other = {
      ...trialOf(only(typicalStrides(2, 40), ["peakVerticalForce"])),
      notComputed: [
        { id: "brakingImpulse", code: "missing-channel", message: "the forward force was not recorded" },
      ],
    };
    expect(compareTrials(one, other).notCompared.find(({ id }) => id === "brakingImpulse")).toEqual({
      id: "brakingImpulse",
      code: "not-in-both",
      message: "the changed trial does not have it (the forward force was not recorded)",
    });
  });
  it("none of the primaries asked for: unsettled, and no component", () => {
    const { overall, components } = compareTrials(baseline(), changed(), {
      metrics: [metricById("contactTime")],
    });
    expect(overall.reading).toBe("unsettled");
    expect(components.every(({ metric }) => metric === null)).toBe(true);
  });
});

describe("what stands in the way of a reading", () => {
  it("18 strides of 20: everything unsettled, and how many more", () => {
    const { overall, components, work } = compareTrials(
      baseline(18),
      changed({ peakVerticalForce: 0.9 }, 18),
    );
    expect(overall).toMatchObject({
      reading: "unsettled",
      lower: [],
      unsettled: ["vertical", "anteroposterior", "mediolateral"],
      toSettle: ["at least 20 strides in each recording: 2 more"],
    });
    expect(overall.sentence).toMatch(/^Unsettled: each trial has 18 strides of the 20 needed\./);
    expect(components.every(({ reading }) => reading === "unsettled")).toBe(true);
    expect(work.reading).toBe("unsettled");
  });
  it.each([0, 1, 2])("%d contacts in one trial: unsettled, no verdict and no failure", (contacts) => {
    const whole = baseline();
    const cut = {
      ...whole,
      steps: whole.steps.slice(0, contacts),
      summary: { ...whole.summary, strides: contacts === 2 ? 1 : 0 },
    };
    const { overall, metrics } = compareTrials(cut, whole);
    expect(overall.reading).toBe("unsettled");
    expect(metrics).toEqual([]);
  });
  it("one stride is said in the singular", () =>
    expect(compareTrials(baseline(1), changed({}, 1)).overall.sentence).toContain(
      "each trial has 1 stride of the 20 needed",
    ));
  it("one trial short is enough", () =>
    expect(compareTrials(baseline(19), changed()).overall.sentence).toContain(
      "the baseline has 19 strides of the 20 needed",
    ));
  it("with the minimum lowered to 15 the same strides are read", () => {
    const options: CompareTrialsOptions = { minimumStrides: 15 };
    expect(
      compareTrials(baseline(18), changed({ peakVerticalForce: 0.9 }, 18), options).overall.lower,
    ).toEqual(["vertical"]);
    expect(compareTrials(baseline(18), changed({}, 18), options).overall.reading).toBe("no clear change");
  });
  it("20 strides are enough", () =>
    expect(compareTrials(baseline(20), changed({}, 20)).overall.reading).toBe("no clear change"));
  it("30 strides that resemble each other in one component leave that one unsettled; 40 do not", () => {
    const slow = (n: number) => Array.from({ length: n }, (_, i) => 16 + Math.sin(i / 3) + (i % 2) * 0.4);
    expect(lagOneCorrelation(slow(30))).toBeGreaterThan(0.5);
    const one = trialOf({ ...typicalStrides(1, 30), brakingImpulse: slow(30) });
    const { overall, components } = compareTrials(one, changed({ peakVerticalForce: 0.9 }, 30));
    expect(components.map(({ reading }) => reading).slice(0, 2)).toEqual(["lower", "unsettled"]);
    expect(components.map(({ sentence }) => sentence.includes("too few strides"))).toEqual([
      false,
      true,
      false,
    ]);
    expect(overall.sentence).toMatch(
      /the baseline has 30 strides of the 40 needed where strides resemble each other \(correlation 0\.\d\d\)/,
    );
    expect(overall.toSettle).toContain("at least 40 strides in the baseline's recording: 10 more");
    const longer = trialOf({ ...typicalStrides(1, 40), brakingImpulse: slow(40) });
    const { metric, sentence } = compareTrials(longer, changed({}, 40)).components[1] ?? {};
    expect(metric).toBe("brakingImpulse");
    expect(sentence).not.toContain("too few strides");
  });
  it("a secondary metric's correlation does not count", () => {
    const slow = Array.from({ length: 38 }, (_, i) => 40_000 + 5000 * Math.sin(i / 3));
    const one = trialOf({ ...typicalStrides(1, 38), earlyLoadingRate: slow });
    expect(compareTrials(one, changed({ peakVerticalForce: 0.93 }, 38)).overall.reading).toBe("reduced");
  });
  it.each([
    [3, 3.07, "unsettled"],
    [3.07, 3, "unsettled"],
    [3, 3.06, "reduced"],
    [3.06, 3, "reduced"],
    [3, 3.0600001, "unsettled"],
  ])("speeds %d and %d m/s: %s (2 %% is allowed)", (one, other, reading) => {
    const { overall, cautions, components } = compareTrials(
      baseline(40, { speed: one }),
      changed({ peakVerticalForce: 0.9 }, 40, { speed: other }),
    );
    expect(overall.reading).toBe(reading);
    expect(cautions.some(({ code }) => code === "speeds-differ")).toBe(reading === "unsettled");
    if (reading === "unsettled") {
      expect(overall.toSettle).toEqual(["both recordings at one speed"]);
      expect(components[0]?.sentence).toContain("Vertical unsettled (speeds apart)");
    }
  });
  it("a primary that more than a tenth of the contacts lack is not read", () => {
    const one = baseline(40);
    const steps = one.steps.map((row, k) =>
      k % 9 === 0 ? { ...row, values: { ...row.values, brakingImpulse: null } } : row,
    );
    const { components, notCompared } = compareTrials({ ...one, steps }, changed());
    expect(components[1]).toMatchObject({ metric: "brakingImpulse", reading: "unsettled" });
    expect(notCompared.find(({ id }) => id === "brakingImpulse")?.code).toBe("too-few-contacts");
  });
  it("the last two contacts may lack what needs a neighbour", () => {
    const short = trialOf(typicalStrides(1, 12));
    const steps = short.steps.map((row, k) =>
      k >= 22 ? { ...row, values: { ...row.values, brakingImpulse: null } } : row,
    );
    const { metrics } = compareTrials({ ...short, steps }, short);
    expect(metrics.find(({ id }) => id === "brakingImpulse")?.baseline.n).toBe(11);
  });
  it("strides worth fewer than two: no difference without an interval", () => {
    const wave = Array.from({ length: 44 }, (_, i) => 1650 + 40 * Math.sin((2 * Math.PI * i) / 44));
    const { components, notCompared, overall } = compareTrials(
      trialOf({ ...typicalStrides(1, 44), peakVerticalForce: wave }),
      changed(),
    );
    expect(notCompared.find(({ id }) => id === "peakVerticalForce")?.code).toBe("no-interval");
    expect(components[0]).toMatchObject({ metric: "peakVerticalForce", reading: "unsettled" });
    expect(overall).toMatchObject({ reading: "no clear change", unsettled: ["vertical"] });
  });
});
