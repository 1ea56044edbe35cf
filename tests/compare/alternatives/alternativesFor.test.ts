import { expect, it } from "vitest";
import type { Alternative } from "../../../src/compare/alternatives/alternative.js";
import { alternativesFor } from "../../../src/compare/alternatives/alternativesFor.js";
import { directionOf } from "../../../src/compare/alternatives/directionOf.js";
import { cadenceWhatIf } from "../../../src/models/index.js";
import { seededRandom } from "../../../src/statistics/index.js";
import type { Trial } from "../../../src/trial/index.js";
import { type TrialParts, trialOf } from "../trialOf.js";

/** Means of a 70 kg runner at 3 m/s and the standard deviations of strides. */
const RUNNER: Readonly<Record<string, readonly [number, number]>> = {
  cadence: [166.67, 1],
  contactTime: [0.245, 0.004],
  peakVerticalForce: [1650, 40],
  brakingImpulse: [16, 0.9],
  mediolateralImpulse: [6, 0.6],
  verticalOscillation: [0.085, 0.003],
  touchdownDistance: [0.26, 0.01],
  stepWidth: [0.05, 0.01],
};

function runner(means: Readonly<Record<string, number>> = {}, parts: TrialParts = {}, seed = 1): Trial {
  const random = seededRandom(seed);
  const strides = Object.fromEntries(
    Object.entries(RUNNER).map(([id, [mean, sd]]) => [
      id,
      Array.from({ length: 40 }, () => (means[id] ?? mean) + sd * random.normal()),
    ]),
  );
  const trial = trialOf(strides, parts);
  return { ...trial, subject: { ...trial.subject, height: 1.75 } };
}

const ids = (list: readonly Alternative[]) => list.map(({ id }) => id);
const effectOf = (list: readonly Alternative[], id: string, quantity: string) =>
  list.find((one) => one.id === id)?.effects.find((effect) => effect.quantity === quantity);
const pair = { baseline: runner(), changed: runner({}, {}, 2) };

it("names alternatives only where the load shifted or was raised", () => {
  for (const reading of ["reduced", "unsettled", "no clear change"] as const)
    expect(alternativesFor(pair, reading, [])).toEqual([]);
  for (const reading of ["shifted", "raised"] as const)
    expect(ids(alternativesFor(pair, reading, ["anteroposterior"]))).toEqual([
      "cadence-5-percent-higher",
      "cadence-10-percent-higher",
    ]);
});

it("has no list for walking", () => {
  const walking = runner({}, { settings: { gait: "walking" } }, 2);
  expect(alternativesFor({ baseline: pair.baseline, changed: walking }, "raised", ["vertical"])).toEqual([]);
});

it("says the numbers of the experiments: hip flexor moment +5.8 % and landing distance −5.9 % (Lieberman et al. 2015), metabolic cost 0.84 on very limited evidence (Anderson et al. 2022)", () => {
  const list = alternativesFor(pair, "shifted", ["anteroposterior"]);
  for (const id of ["cadence-5-percent-higher", "cadence-10-percent-higher"]) {
    const hip = effectOf(list, id, "hip flexor moment");
    expect(hip).toMatchObject({ kind: "cost", direction: "higher" });
    expect(hip?.finding).toContain("+5.8 % of itself");
    const cost = effectOf(list, id, "metabolic cost (very limited evidence)");
    expect(cost).toMatchObject({ kind: "cost", direction: "higher" });
    expect(cost?.finding).toContain("+0.84 standardised mean difference");
    expect(effectOf(list, id, "distance of the foot ahead of the hip at landing")?.finding).toContain(
      "−5.9 %",
    );
    expect(effectOf(list, id, "braking impulse")?.source).toContain("Heiderscheit et al. 2011");
    expect(list.find((one) => one.id === id)?.sources).toEqual(
      expect.arrayContaining([expect.stringContaining("Lieberman"), expect.stringContaining("Anderson")]),
    );
  }
});

it("gives this runner the estimate of the model with the baseline's own means", () => {
  const list = alternativesFor(pair, "shifted", ["anteroposterior"]);
  const { steps } = pair.baseline;
  const meanOf = (id: string) =>
    steps.reduce((sum, { values }) => sum + (values[id] ?? Number.NaN), 0) / steps.length;
  const own = Object.fromEntries(
    ["cadence", "contactTime", "peakVerticalForce", "brakingImpulse", "verticalOscillation"].map((id) => [
      id,
      meanOf(id),
    ]),
  ) as Record<
    "cadence" | "contactTime" | "peakVerticalForce" | "brakingImpulse" | "verticalOscillation",
    number
  >;
  const [five] = cadenceWhatIf({ mass: 70, speed: 3, height: 1.75, ...own }, { changes: [0.05] }).changes;
  for (const [quantity, metric] of [
    ["braking impulse", "brakingImpulse"],
    ["vertical excursion of the centre of mass", "verticalOscillation"],
    ["peak vertical force", "peakVerticalForce"],
  ] as const) {
    const range = five?.quantities.find(({ id }) => id === metric);
    const estimate = effectOf(list, "cadence-5-percent-higher", quantity)?.estimate;
    expect(estimate?.from).toBeCloseTo(own[metric], 9);
    expect(estimate?.low).toBeCloseTo(range?.low as number, 9);
    expect(estimate?.high).toBeCloseTo(range?.high as number, 9);
  }
});

it.each([
  [90, 99, { kind: "load", direction: "lower" }],
  [90, 100 + 1e-10, { kind: "load", direction: "lower" }],
  [98, 101, { kind: "load", direction: "unclear" }],
  [100, 103, { kind: "cost", direction: "higher" }],
] as const)(
  "2026-11-25: a modelled force from 100 to %d to %d was called lower, or a cost, even where the range held both signs",
  (low, high, kind) => expect(directionOf({ unit: "N", from: 100, low, high })).toEqual(kind),
);

it("definition: 10 % more steps a kilometre, steps shorter by 1/1.1", () => {
  const list = alternativesFor(pair, "raised", ["vertical"]);
  const more = effectOf(list, "cadence-10-percent-higher", "steps a kilometre");
  expect(more?.kind).toBe("cost");
  expect((more?.estimate?.low ?? 0) / (more?.estimate?.from ?? 0)).toBeCloseTo(1.1, 12);
  const length = effectOf(list, "cadence-10-percent-higher", "step length")?.estimate;
  expect(length?.from).toBeCloseTo((60 * 3) / 166.67, 1);
  expect((length?.high ?? 0) * 1.1).toBeCloseTo(length?.from as number, 12);
});

it("names costs beside loads in every cadence, and a force that the model lets rise is a cost", () => {
  const list = alternativesFor(pair, "shifted", ["anteroposterior"]);
  for (const { effects } of list) {
    expect(effects.filter(({ kind }) => kind === "cost").length).toBeGreaterThanOrEqual(3);
    expect(effects.some(({ kind }) => kind === "load")).toBe(true);
    for (const { estimate, direction } of effects) {
      if (estimate === undefined) continue;
      if (direction !== "higher") expect(estimate.low).toBeLessThan(estimate.from);
      if (direction !== "lower") expect(estimate.high).toBeGreaterThan(estimate.from);
    }
  }
});

it.each([
  ["speed", { speed: null }],
  ["height", {}],
])("has the published findings alone where %s is not known, and says so", (name, parts) => {
  const full = runner({}, parts);
  const baseline = name === "height" ? { ...full, subject: {} } : full;
  const [five] = alternativesFor({ baseline, changed: pair.changed }, "raised", ["anteroposterior"]);
  expect(five?.sentence).toContain(`${name} not known`);
  expect(five?.effects.find(({ quantity }) => quantity === "braking impulse")).not.toHaveProperty("estimate");
  expect(five?.effects.some(({ quantity }) => quantity === "hip flexor moment")).toBe(true);
});

it("leaves out a cadence that the changed trial had already", () => {
  const quicker = { baseline: pair.baseline, changed: runner({ cadence: 166.67 * 1.06 }, {}, 2) };
  expect(ids(alternativesFor(quicker, "raised", ["anteroposterior"]))).toEqual(["cadence-10-percent-higher"]);
});

it("takes back what the change moved: a landing further ahead, a lower cadence, another step width", () => {
  const moved = runner({ touchdownDistance: 0.3, cadence: 158, stepWidth: 0.09 }, {}, 2);
  const list = alternativesFor({ baseline: pair.baseline, changed: moved }, "shifted", ["mediolateral"]);
  expect(ids(list)).toEqual([
    "baseline-landing",
    "baseline-cadence",
    "baseline-step-width",
    "cadence-5-percent-higher",
    "cadence-10-percent-higher",
  ]);
  expect(list[0]?.name).toMatch(/\((29\.[5-9]|30(\.[0-4])?) to (25\.[5-9]|26(\.[0-4])?) cm /);
  expect(effectOf(list, "baseline-cadence", "peak horizontal force")?.source).toContain(
    "Thompson et al. 2022",
  );
  expect(effectOf(list, "baseline-step-width", "net metabolic power")?.finding).toContain(
    "3, 9, 12 and 15 %",
  );
});

it("does not send back a foot that landed nearer, or a cadence that rose", () => {
  const nearer = runner({ touchdownDistance: 0.22, cadence: 170 }, {}, 2);
  const list = ids(alternativesFor({ baseline: pair.baseline, changed: nearer }, "raised", ["vertical"]));
  expect(list).toEqual(["cadence-5-percent-higher", "cadence-10-percent-higher", "shock-feedback"]);
});

it("says that nothing is known of the mediolateral force where that rose", () => {
  const of = (component: "mediolateral" | "vertical") =>
    alternativesFor(pair, "shifted", [component])[0]?.sentence;
  expect(of("mediolateral")).toContain(
    "None of these experiments tells what it does to the mediolateral force",
  );
  expect(of("vertical")).not.toContain("mediolateral");
});

it("is something to try and to measure, never a treatment or a verdict", () => {
  const moved = runner({ touchdownDistance: 0.3, cadence: 158, stepWidth: 0.09 }, {}, 2);
  const list = alternativesFor({ baseline: pair.baseline, changed: moved }, "shifted", ["vertical"]);
  for (const { sentence, effects, sources } of list) {
    expect(sentence).toMatch(/^To try and to measure again: /);
    expect(sources.length).toBeGreaterThan(0);
    for (const { source } of effects) expect(source).not.toBe("");
  }
  expect(JSON.stringify(list)).not.toMatch(/treat|therap|heal|cure|injur|excellent|optimal|should/i);
});
