import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Contact, detectEvents, type Step, stepsOf } from "../../../src/events/index.js";
import { toGroundReaction } from "../../../src/force/index.js";
import {
  CATALOGUE,
  doubleSupportTime,
  energyRecovery,
  firstVerticalPeak,
  midstanceTrough,
  peakVerticalForce,
  secondVerticalPeak,
  singleSupportTime,
  stanceShare,
  stepWidth,
} from "../../../src/metrics/index.js";
import { contactOver, groundOf } from "../../helpers.js";
import { walking, walkOnBelts } from "../../walking.js";

const BW = walking.massKg * 9.80665;
const ground = toGroundReaction(walkOnBelts());
// At 1 N the events are those of the formula within a fifth of a millisecond.
const { contacts } = detectEvents(ground, { threshold: 1 });
const steps = stepsOf(contacts);
const inner = steps.slice(1, -2);
const { plates: _plates, ...onePlate } = ground;
const shared = stepsOf(detectEvents(onePlate, { threshold: 1 }).contacts).slice(0, -2);

describe("independent library: the fixture's walk, truth by its formulas on a grid of 0.4 million (NumPy 2.4.6)", () => {
  const { metrics, work } = walking;
  it.each(inner.map((step, k) => [k, step] as const))("contact %i on its own belt", (_, step) => {
    // The largest sample of 1 kHz lies below the peak of the curve by less than 1e-6 of it.
    expect((firstVerticalPeak(ground, step) ?? 0) / BW).toBeCloseTo(metrics.F1.BW, 5);
    expect((midstanceTrough(ground, step) ?? 0) / BW).toBeCloseTo(metrics.F2trough.BW, 5);
    expect((secondVerticalPeak(ground, step) ?? 0) / BW).toBeCloseTo(metrics.F3.BW, 5);
    expect(Math.abs((doubleSupportTime(ground, step) ?? 0) - metrics.doubleSupportEach)).toBeLessThan(3e-4);
    const single = (metrics.singleSupportPercent / 100) * metrics.strideTime;
    expect(Math.abs((singleSupportTime(ground, step) ?? 0) - single)).toBeLessThan(3e-4);
    expect(stanceShare(ground, step)).toBeCloseTo(metrics.stancePercent / 100, 3);
    expect(100 * (energyRecovery(ground, step) ?? 0)).toBeCloseTo(work.perStrideJ.recoveryPercent, 1);
  });
  it.each(shared.map((step, k) => [k, step] as const))("contact %i, both feet on one plate", (_, step) => {
    expect((firstVerticalPeak(onePlate, step) ?? 0) / BW).toBeCloseTo(metrics.F1.BW, 5);
    expect((midstanceTrough(onePlate, step) ?? 0) / BW).toBeCloseTo(metrics.F2trough.BW, 5);
    expect((secondVerticalPeak(onePlate, step) ?? 0) / BW).toBeCloseTo(metrics.F3.BW, 5);
    expect(Math.abs((doubleSupportTime(onePlate, step) ?? 0) - metrics.doubleSupportEach)).toBeLessThan(3e-4);
    expect(stanceShare(onePlate, step)).toBeCloseTo(metrics.stancePercent / 100, 3);
    expect(100 * (energyRecovery(onePlate, step) ?? 0)).toBeCloseTo(work.perStrideJ.recoveryPercent, 1);
    expect(stepWidth(onePlate, step)).toBeCloseTo(metrics.stepWidthFromCop, 9);
  });
});

describe("open recording: one step each over a plate, Duarte & Watanabe (2021), doi:10.5281/zenodo.4599319", () => {
  // Check values by NumPy, unfiltered, 20 N.
  it.each([
    ["walk-d", 0.5942123, 737.38],
    ["walk-n", 0.6514557, 773.44],
  ])("%s", (name, time, peak) => {
    const [header, ...rows] = readFileSync(
      new URL(`../../fixtures/markers/${name}.txt`, import.meta.url),
      "utf8",
    )
      .trim()
      .split(/\r?\n/)
      .map((line) => line.split("\t"));
    const up = rows.map((row) => Number(row[header?.indexOf("Fy") ?? -1]));
    const plate = groundOf({ up, sampleRate: 150, mass: null });
    const [contact] = detectEvents(plate, { threshold: 20 }).contacts;
    const step = { contact: contact as Contact };
    expect(step.contact.toeOff - step.contact.initialContact).toBeCloseTo(time, 6);
    const [first, trough, second] = [firstVerticalPeak, midstanceTrough, secondVerticalPeak].map((metric) =>
      metric(plate, step),
    ) as [number, number, number];
    expect(Math.max(first, second)).toBeCloseTo(peak, 2);
    expect(peakVerticalForce(plate, step)).toBe(Math.max(first, second));
    expect(trough).toBeLessThan(0.9 * Math.min(first, second));
    // Samples of the file, by hand: each is a turning point of its neighbours.
    for (const [value, sign] of [
      [first, 1],
      [trough, -1],
      [second, 1],
    ] as const) {
      const at = up.indexOf(value);
      expect(sign * value).toBeGreaterThanOrEqual(sign * (up[at - 1] ?? 0));
      expect(sign * value).toBeGreaterThanOrEqual(sign * (up[at + 1] ?? 0));
    }
  });
});

describe("laws", () => {
  it.each([
    ["on two belts", ground, steps],
    ["on one", onePlate, stepsOf(detectEvents(onePlate).contacts)],
  ] as const)("both double and both single supports make up the stride, %s", (_, record, all) => {
    let counted = 0;
    all.forEach((step, k) => {
      const next = all[k + 1];
      if (next === undefined || step.nextSameSide === undefined) return;
      const parts = [
        singleSupportTime(record, step),
        doubleSupportTime(record, step),
        singleSupportTime(record, next),
        doubleSupportTime(record, next),
      ];
      if (parts.includes(null)) return;
      counted++;
      // From this foot's single support to its next one.
      const sum = parts.reduce<number>((total, part) => total + (part ?? 0), 0);
      const from = step.contact.singleSupport?.from ?? 0;
      const to = all[k + 2]?.contact.singleSupport?.from ?? next.contact.toeOff;
      expect(sum).toBeCloseTo(to - from, 12);
    });
    expect(counted).toBeGreaterThan(2);
  });
  it("contact = single support + the double supports at both ends", () => {
    for (const [k, step] of steps.entries()) {
      const before = steps[k - 1];
      const [single, behind, first] = [
        singleSupportTime(ground, step),
        doubleSupportTime(ground, step),
        before && doubleSupportTime(ground, before),
      ];
      if (single === null || behind === null || first == null) continue;
      expect(first + single + behind).toBeCloseTo(step.contact.toeOff - step.contact.initialContact, 12);
    }
  });
  it("stance + swing = stride: this foot's swing is the other's single support", () => {
    const [, step, next] = steps as [Step, Step, Step];
    const swing = (step.nextSameSide?.initialContact ?? 0) - step.contact.toeOff;
    expect(singleSupportTime(ground, next)).toBeCloseTo(swing, 12);
  });
  it("property: peaks and trough grow with the force", () => {
    const step = inner[0] as Step;
    fc.assert(
      fc.property(fc.double({ min: 0.2, max: 5, noNaN: true }), (k) => {
        const scaled = {
          ...ground,
          plates: (ground.plates ?? []).map((plate) => ({
            ...plate,
            force: { ...plate.force, up: plate.force.up.map((force) => k * force) },
          })),
        };
        for (const metric of [firstVerticalPeak, midstanceTrough, secondVerticalPeak]) {
          expect((metric(scaled, step) ?? Number.NaN) / (metric(ground, step) ?? 1)).toBeCloseTo(k, 9);
        }
      }),
    );
  });
});

describe("null", () => {
  const peaksOf = (up: readonly number[], options = {}) =>
    [firstVerticalPeak, midstanceTrough, secondVerticalPeak].map((metric) =>
      metric(groundOf({ up, sampleRate: 10 }), { contact: contactOver(0, (up.length - 1) / 10) }, options),
    );
  it.each([
    ["one hump, as in running", [0, 300, 900, 1500, 900, 300, 0]],
    ["a plateau, as in slow walking", [0, 500, 700, 700, 700, 700, 500, 0]],
    ["a trough of 1 %", [0, 500, 700, 693, 700, 500, 0]],
    ["no rise behind the middle", [0, 700, 600, 500, 400, 300, 0]],
  ])("%s", (_, up) => expect(peaksOf(up)).toEqual([null, null, null]));
  it("by hand, and the least drop is an option", () => {
    expect(peaksOf([0, 500, 710, 600, 690, 500, 0])).toEqual([710, 600, 690]);
    expect(peaksOf([0, 500, 700, 693, 700, 500, 0], { leastDrop: 0.005 })).toEqual([700, 693, 700]);
    expect(peaksOf([0, 500, 710, 600, 690, 500, 0], { leastDrop: 0.2 })).toEqual([null, null, null]);
  });
  it("of a foot that shares its plate, where a peak falls into double support", () => {
    const step = shared[1] as Step;
    const { initialContact, singleSupport } = step.contact;
    const late = { from: initialContact + 0.25, to: singleSupport?.to ?? 0 };
    expect(firstVerticalPeak(onePlate, { contact: { ...step.contact, singleSupport: late } })).toBeNull();
    const { singleSupport: _single, ...unknown } = step.contact;
    expect(firstVerticalPeak(onePlate, { contact: unknown })).toBeNull();
    expect(stepWidth(onePlate, { ...step, contact: unknown })).toBeNull();
  });
  it("double support where the next contact follows a flight, single support without neighbours, recovery without a stride", () => {
    const step = { contact: contactOver(0.1, 0.3), next: contactOver(0.4, 0.6) };
    expect(doubleSupportTime(ground, step)).toBeNull();
    expect(doubleSupportTime(ground, { contact: contactOver(0.1, 0.3) })).toBeNull();
    expect(singleSupportTime(ground, step)).toBeNull();
    expect(energyRecovery(ground, step)).toBeNull();
    expect(stanceShare(ground, step)).toBeNull();
  });
});

describe("refuses", () => {
  it("the force under a foot that shares its plate, in words", () =>
    expect(() => peakVerticalForce(onePlate, shared[0] as Step)).toThrow(
      expect.objectContaining({
        code: "missing-channel",
        message: expect.stringContaining("both feet shared a plate"),
      }),
    ));
  it.each([{ leastDrop: 1 }, { leastDrop: -0.1 }, { leastDrop: Number.NaN }])("%o", (options) =>
    expect(() => firstVerticalPeak(ground, inner[0] as Step, options)).toThrow(
      expect.objectContaining({ code: expect.stringMatching(/out-of-range|not-finite/) }),
    ),
  );
  it("a drag that is no number", () =>
    expect(() => energyRecovery(ground, inner[0] as Step, { drag: Number.NaN })).toThrow(
      expect.objectContaining({ code: "not-finite" }),
    ));
});

it("every entry of the family is of walking alone, and none carries a reading", () => {
  const entries = CATALOGUE.filter(({ family }) => family === "walking");
  expect(entries.length).toBe(7);
  for (const { gaits, primary } of entries) expect([gaits, primary]).toEqual([["walking"], undefined]);
});
