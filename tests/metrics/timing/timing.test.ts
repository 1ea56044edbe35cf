import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  aerialTime,
  brakingTime,
  cadence,
  contactTime,
  dutyFactor,
  propulsiveTime,
  stepTime,
  strideTime,
} from "../../../src/metrics/index.js";
import { contactOver, groundOf } from "../../helpers.js";

const ground = groundOf({ up: new Float64Array(2001), sampleRate: 1000 });
const contact = contactOver(0.1, 0.35, "left");
const step = {
  contact,
  next: contactOver(0.475, 0.73, "right"),
  nextSameSide: contactOver(0.9, 1.15, "left"),
};

describe("common practice, by hand: contacts at 0.1–0.35, 0.475–0.73 and 0.9–1.15 s", () => {
  it.each([
    ["contact time 0.25 s", contactTime, 0.25],
    ["aerial time 0.125 s", aerialTime, 0.125],
    ["step time 0.375 s", stepTime, 0.375],
    ["stride time 0.8 s", strideTime, 0.8],
    ["cadence 160 steps/min, not 75 strides/min", cadence, 160],
    ["duty factor 0.3125, over the stride", dutyFactor, 0.3125],
  ] as const)("%s", (_what, metric, value) => expect(metric(ground, step)).toBeCloseTo(value, 12));
});

it("published (Murray, Drought & Kory 1964, table): 117 steps/min is a step of 0.513 s", () => {
  const next = contactOver(0.1 + 60 / 117, 1);
  expect(cadence(ground, { contact, next })).toBeCloseTo(117, 9);
});

describe("braking and propulsive time: split at the last crossing from − to +", () => {
  const along = (forward: number[]): ReturnType<typeof groundOf> =>
    groundOf({ up: forward.map(() => 900), forward, sampleRate: 10 });
  const over = (from: number, to: number): { contact: ReturnType<typeof contactOver> } => ({
    contact: contactOver(from, to),
  });
  it.each([
    ["linear between samples", [0, -30, 10, 20], 0, 0.3, 0.175],
    ["the last of two", [-10, 10, -10, 10, 5], 0, 0.4, 0.25],
    ["through samples of 0: where it first is 0", [-10, -10, 0, 0, 10], 0, 0.4, 0.2],
    ["touching 0 from below is none", [-10, 10, -10, 0, -10], 0, 0.4, 0.05],
    ["in the fractional first piece", [-10, 10, 10, 10], 0.04, 0.3, 0.01],
    ["in the fractional last piece", [-10, -10, -10, 30], 0, 0.29, 0.225],
    ["a positive force that fades to 0 at the end", [-10, -10, 10, 0], 0, 0.3, 0.15],
  ])("%s", (_what, forward, from, to, time) => {
    expect(brakingTime(along(forward), over(from, to))).toBeCloseTo(time, 12);
    expect(propulsiveTime(along(forward), over(from, to))).toBeCloseTo(to - from - time, 12);
  });
  it.each([
    ["only braking", [-10, -20, -10, -5]],
    ["only propulsion", [10, 20, 10, 5]],
    ["propulsion, then braking", [10, 20, -10, -5]],
    ["braking that ends at 0", [-10, -20, -10, 0]],
    ["nothing", [0, 0, 0, 0]],
    ["a crossing before the contact", [-10, 10, 10, 10], 0.06],
  ])("null: %s", (_what, forward, from = 0) => {
    expect(brakingTime(along(forward), over(from, 0.3))).toBeNull();
    expect(propulsiveTime(along(forward), over(from, 0.3))).toBeNull();
  });
  it("property: against a search from the front on the same straight lines", () =>
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -3, max: 3 }), { minLength: 4, maxLength: 30 }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (forward, start, part) => {
          const from = start / 10;
          const to = from + ((forward.length - 1) / 10 - from) * part;
          fc.pre(Math.ceil(from * 10) <= to * 10);
          const value = (time: number): number => {
            const i = Math.min(Math.floor(time * 10), forward.length - 2);
            return (
              (forward[i] as number) + (time * 10 - i) * ((forward[i + 1] as number) - (forward[i] as number))
            );
          };
          const knots = [
            from,
            ...forward.map((_, i) => i / 10).filter((time) => time > from && time < to),
            to,
          ];
          let crossing: number | null = null;
          let turn: number | null = null;
          for (let k = 0; k + 1 < knots.length; k++) {
            const [a, b] = [value(knots[k] as number), value(knots[k + 1] as number)];
            if (a < 0 && b >= 0)
              turn = (knots[k] as number) - (a / (b - a)) * ((knots[k + 1] as number) - (knots[k] as number));
            if (b < 0) turn = null;
            if (b > 0 && turn !== null) crossing = turn;
          }
          const ours = brakingTime(along(forward), over(from, to));
          if (crossing === null) expect(ours).toBeNull();
          else expect(ours).toBeCloseTo(crossing - from, 9);
        },
      ),
      { numRuns: 500 },
    ));
});

describe("null where a neighbour is missing, and in double support", () => {
  it.each([aerialTime, stepTime, strideTime, cadence, dutyFactor])("%o", (metric) => {
    expect(metric(ground, { contact })).toBeNull();
  });
  it("walking has no aerial time; a foot that lands as the other leaves has one of 0", () => {
    expect(aerialTime(ground, { contact, next: contactOver(0.35, 0.6) })).toBe(0);
    expect(aerialTime(ground, { contact, next: contactOver(0.3, 0.6) })).toBeNull();
  });
});

describe("refuses", () => {
  it.each([
    ["a contact that falls", contactOver(0.35, 0.1)],
    ["a contact of no length", contactOver(0.1, 0.1)],
    ["a contact before the recording", contactOver(-0.1, 0.1)],
    ["a contact behind the recording", contactOver(1.9, 2.1)],
    ["NaN", contactOver(Number.NaN, 0.1)],
    ["a contact between two samples", contactOver(0.1002, 0.1008)],
  ])("%s", (_what, wrong) => {
    expect(() => contactTime(ground, { contact: wrong })).toThrow(
      expect.objectContaining({ code: "out-of-range", argument: "contact" }),
    );
  });
  it.each([
    ["next", stepTime],
    ["nextSameSide", strideTime],
  ] as const)("a %s that does not begin later", (name, metric) => {
    expect(() => metric(ground, { contact, [name]: contact })).toThrow(
      expect.objectContaining({ code: "out-of-range", argument: name }),
    );
  });
  it("braking time without a forward force, by name", () => {
    expect(() => brakingTime(ground, { contact })).toThrow(
      expect.objectContaining({ code: "missing-channel", argument: "force.forward" }),
    );
  });
});
