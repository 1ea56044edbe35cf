import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import type { Trial } from "../../src/trial/index.js";
import { baseline, changed, type TrialParts, trialOf, typicalStrides } from "./trialOf.js";

const all = (factor: number) => ({
  peakVerticalForce: factor,
  brakingImpulse: factor,
  mediolateralImpulse: factor,
  positiveExternalWork: factor,
});

describe("forces on different scales: the same mass stated, another one by force", () => {
  const compared = compareTrials(baseline(), changed(all(0.9), 40, { massByForce: 63 }));
  it("nothing is read: components, the whole, work", () => {
    expect(compared.overall).toMatchObject({
      reading: "unsettled",
      lower: [],
      unsettled: ["vertical", "anteroposterior", "mediolateral"],
      perKilometre: { lower: [], higher: [], unsettled: [] },
    });
    expect(compared.components.map(({ reading, perKilometre }) => [reading, perKilometre])).toEqual([
      ["unsettled", null],
      ["unsettled", null],
      ["unsettled", null],
    ]);
    expect(compared.work.reading).toBe("unsettled");
  });
  it("the sentences say why, with the numbers, and what would settle it", () => {
    const why =
      "mass by force over stated mass is 1 in the baseline and 0.9 in the changed trial, 11.1 % apart";
    expect(compared.overall.sentence).toContain(`Unsettled: ${why} where 1 % is allowed`);
    expect(compared.work.sentence).toContain(`Work is unsettled: ${why}`);
    expect(compared.components[0]?.sentence).toContain(
      "Vertical unsettled (force scales apart): peak vertical force",
    );
    expect(compared.overall.toSettle).toEqual([
      "the platform zeroed and its scale checked, or the right mass stated, so that both recordings are on one scale",
    ]);
    expect(compared.cautions.map(({ code }) => code)).toContain("mass-ratios-differ");
  });
  it("either way round, and where a stated mass is the odd one", () => {
    for (const parts of [{ massByForce: 71 }, { massByForce: 69 }, { mass: 71 }, { mass: 69 }]) {
      const one = compareTrials(baseline(), changed(all(0.9), 40, parts));
      const other = compareTrials(baseline(40, parts), changed(all(0.9)));
      expect([one.overall.reading, other.overall.reading]).toEqual(["unsettled", "unsettled"]);
    }
  });
  it("speeds apart as well: both are said, and what would settle both", () => {
    const { overall } = compareTrials(baseline(), changed(all(0.9), 40, { massByForce: 63, speed: 3.3 }));
    expect(overall.sentence).toContain("the speeds, 3 and 3.3 m/s");
    expect(overall.sentence).toContain("the forces are not on one scale");
    expect(overall.toSettle).toHaveLength(2);
  });
  it("0.9 % apart, or both short alike, is read", () => {
    expect(compareTrials(baseline(), changed(all(0.8), 40, { massByForce: 70.63 })).overall.reading).toBe(
      "reduced",
    );
    const short = { massByForce: 67.5 };
    expect(compareTrials(baseline(40, short), changed(all(0.8), 40, short)).overall.reading).toBe("reduced");
  });
  it("without two stated masses there are no two ratios: read, and the masses by force are said", () => {
    const parts = (massByForce: number): TrialParts => ({
      mass: massByForce,
      massByForce,
      massStated: false,
    });
    const { overall } = compareTrials(baseline(40, parts(70)), changed(all(0.8), 40, parts(63)));
    expect(overall.reading).toBe("reduced");
    expect(overall.sentence).toContain(
      "The trials differ in more than the technique: the masses by force are 70 and 63 kg, 11.1 % apart",
    );
  });
});

describe("what else differs is said by the answer itself, and the readings stay", () => {
  const plain = compareTrials(baseline(), changed({ brakingImpulse: 1.2 }));
  it.each<[string, TrialParts, string]>([
    ["slope", { settings: { grade: 0.02 } }, "the slopes are 0 and 2 %, and slope alone moves braking"],
    [
      "surface",
      { settings: { surface: "ground" } },
      "the baseline was recorded on a belt and the changed trial on the ground",
    ],
    ["mass", { mass: 75, massByForce: 75 }, "the stated masses are 70 and 75 kg, 7.14 % apart"],
  ])("%s", (_, parts, words) => {
    const { overall, work } = compareTrials(baseline(), changed({ brakingImpulse: 1.2 }, 40, parts));
    expect(overall.reading).toBe(plain.overall.reading);
    expect(overall.sentence).toContain(`The trials differ in more than the technique: ${words}`);
    expect(work.sentence).toContain(words);
    expect(plain.overall.sentence).not.toContain("The trials differ");
  });
  it("all of them in one sentence", () => {
    const parts = { mass: 75, massByForce: 75, settings: { grade: 0.02, surface: "ground" as const } };
    const { sentence } = compareTrials(baseline(), changed({}, 40, parts)).overall;
    expect(sentence).toMatch(
      /The trials differ in more than the technique: [^.]*on the ground; the slopes [^.]*; the stated masses [^.]*\.14 %[^.]*\./,
    );
  });
  it("a surface that one trial leaves open is a caution only", () => {
    const { overall, cautions } = compareTrials(baseline(), changed({}, 40, { settings: { surface: null } }));
    expect(overall.sentence).not.toContain("The trials differ");
    expect(cautions.map(({ code }) => code)).toContain("surfaces-differ");
  });
});

describe("a component recorded in one trial only (read `reduced`, as if in neither, on 2026-11-25)", () => {
  const curve = { left: { mean: [0], sd: [0], n: 2 } };
  const withRight = (trial: Trial): Trial => ({
    ...trial,
    curves: { ...trial.curves, forward: curve, right: curve },
  });
  const withoutRight = (trial: Trial): Trial => ({
    ...trial,
    curves: { percent: trial.curves.percent, up: trial.curves.up, forward: curve },
  });
  it("leaves `reduced` unproven and names the trial that has it", () => {
    const all = typicalStrides(1, 40);
    const { mediolateralImpulse: _, ...two } = typicalStrides(2, 40, { peakVerticalForce: 0.93 });
    const { overall } = compareTrials(withRight(trialOf(all)), withoutRight(trialOf(two)));
    expect(overall.reading).toBe("unsettled");
    expect(overall.sentence).toContain("only the baseline recorded it");
  });
});

it("too few strides for different reasons: each component has its own (three correlations stood side by side)", () => {
  const slow = (n: number, period: number) => Array.from({ length: n }, (_, i) => 16 + Math.sin(i / period));
  const strides = {
    ...typicalStrides(1, 30),
    peakVerticalForce: slow(30, 4).map((value) => 100 * value),
    brakingImpulse: slow(30, 3),
    mediolateralImpulse: slow(30, 5),
  };
  const { overall } = compareTrials(trialOf(strides), trialOf(strides));
  expect(overall.reading).toBe("unsettled");
  for (const name of [
    "the vertical force",
    "the anteroposterior (braking) force",
    "the mediolateral force",
  ]) {
    expect(overall.sentence).toContain(`for ${name}, each trial has 30 strides of the 40 needed`);
  }
  expect(overall.toSettle).toEqual(["at least 40 strides in each recording: 10 more"]);
});
