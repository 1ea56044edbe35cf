import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { impactPeak, timeToImpactPeak } from "../../../src/metrics/index.js";
import { contactOver, groundOf } from "../../helpers.js";

const BW = 70 * 9.80665;
const contact = contactOver(0, 0.24);
/** A force at 1 kHz that joins the points given, in ms and body weights, by straight lines. */
function through(...points: [number, number][]): Float64Array {
  return Float64Array.from({ length: 241 }, (_, i) => {
    const k = Math.max(
      1,
      points.findIndex(([ms]) => ms >= i),
    );
    const [[a, fa], [b, fb]] = [points[k - 1] as [number, number], points[k] as [number, number]];
    return BW * (fa + ((i - a) / (b - a)) * (fb - fa));
  });
}
const timeIn = (up: Float64Array, options = {}): number | null => {
  const time = timeToImpactPeak(groundOf({ up, sampleRate: 1000 }), { contact }, options);
  return time === null ? null : Math.round(time * 1000);
};

describe("the rule by hand (first local maximum is common practice, the numbers are the library's own)", () => {
  it("peak of 1.5 BW at 30 ms, trough of 1.2 BW: 1.5 BW at 30 ms", () => {
    const up = through([0, 0], [30, 1.5], [50, 1.2], [110, 2.5], [240, 0]);
    expect(timeIn(up)).toBe(30);
    expect(impactPeak(groundOf({ up, sampleRate: 1000 }), { contact })).toBeCloseTo(1.5 * BW, 9);
  });
  it("a drop of exactly 0.02 BW counts, one of 0.019 BW does not", () => {
    expect(timeIn(through([0, 0], [30, 1.5], [50, 1.48 - 1e-9], [110, 2.5], [240, 0]))).toBe(30);
    expect(timeIn(through([0, 0], [30, 1.5], [50, 1.481], [110, 2.5], [240, 0]))).toBeNull();
  });
  it("a wiggle before it, exceeded before it dropped, is passed over", () => {
    expect(timeIn(through([0, 0], [12, 0.7], [14, 0.69], [30, 1.5], [50, 1.2], [110, 2.5], [240, 0]))).toBe(
      30,
    );
  });
  it("a drop made of two, with a lower bump between, belongs to the first maximum", () => {
    expect(timeIn(through([0, 0], [30, 1.5], [36, 1.485], [40, 1.49], [50, 1.4], [110, 2.5], [240, 0]))).toBe(
      30,
    );
  });
  it("a spike at 4 ms does not count, a peak at 6 ms does", () => {
    expect(timeIn(through([0, 0], [4, 0.9], [10, 0.5], [110, 2.5], [240, 0]))).toBeNull();
    expect(timeIn(through([0, 0], [6, 0.9], [10, 0.5], [110, 2.5], [240, 0]))).toBe(6);
    expect(timeIn(through([0, 0], [5, 0.9], [10, 0.5], [110, 2.5], [240, 0]))).toBeNull();
  });
  it("a maximum at 83 ms of 240 counts (34.6 %), at 84 ms (35 %) not", () => {
    expect(timeIn(through([0, 0], [83, 1.5], [100, 1.2], [140, 2], [240, 0]))).toBe(83);
    expect(timeIn(through([0, 0], [84, 1.5], [100, 1.2], [140, 2], [240, 0]))).toBeNull();
  });
  it("before half of 240 ms: 119 ms counts, 120 ms not; a drop at the last sample in contact counts", () => {
    expect(timeIn(through([0, 0], [119, 1.5], [130, 1.2], [240, 0]), { before: 0.5 })).toBe(119);
    expect(timeIn(through([0, 0], [120, 1.5], [130, 1.2], [240, 0]), { before: 0.5 })).toBeNull();
    expect(timeIn(through([0, 0], [30, 1.5], [239, 1.5], [240, 0]))).toBe(30);
  });
  it("a drop of 1 N counts where 0.02 body weights are 1 N", () => {
    const up = [0, 10, 20, 19, 30, 40, 50, 40, 30, 20, 10];
    const ground = groundOf({ up, sampleRate: 100, mass: 5, gravity: 10 });
    expect(impactPeak(ground, { contact: contactOver(0, 0.1) })).toBe(20);
  });
  it("a plateau counts from its first sample where it is left downward, and not where it is left upward", () => {
    expect(timeIn(through([0, 0], [30, 1.5], [34, 1.5], [50, 1.2], [110, 2.5], [240, 0]))).toBe(30);
    expect(timeIn(through([0, 0], [30, 1.5], [34, 1.5], [110, 2.5], [240, 0]))).toBeNull();
  });
  it("options: another drop, another window", () => {
    const up = through([0, 0], [30, 1.5], [50, 1.481], [110, 2.5], [240, 0]);
    expect(timeIn(up, { drop: 0.01 })).toBe(30);
    expect(timeIn(up, { drop: 0.01, after: 0.03 })).toBeNull();
    expect(timeIn(up, { drop: 0.01, before: 0.1 })).toBeNull();
    expect(timeIn(up, { drop: undefined })).toBeNull();
  });
});

it("null on a rise without an impact peak, as under most forefoot landings (common practice)", () => {
  const up = Float64Array.from({ length: 241 }, (_, i) => 2.4 * BW * Math.sin((Math.PI * i) / 240));
  expect(impactPeak(groundOf({ up, sampleRate: 1000 }), { contact })).toBeNull();
});

describe("body weight is by force", () => {
  // A drop of 16 N: 0.02 BW of 70 kg is 13.7 N, of 90 kg 17.7 N.
  const up = through([0, 0], [30, 1.5], [50, 1.5 - 16 / BW], [110, 2.5], [240, 0]);
  it("the trial's before the stated one", () => {
    const record = { up, sampleRate: 1000 };
    expect(impactPeak(groundOf({ ...record, mass: 70 }), { contact })).not.toBeNull();
    expect(impactPeak(groundOf({ ...record, mass: 90 }), { contact })).toBeNull();
    expect(impactPeak(groundOf({ ...record, mass: 90, massByForce: 70 }), { contact })).not.toBeNull();
  });
  it("the stride's where the trial has none: mean over 0.24 s of contact and a flight as long as makes 70 kg", () => {
    const mean = up.reduce((sum, f) => sum + f / 1000, 0) / BW;
    const longer = new Float64Array(1001);
    longer.set(up);
    const nextSameSide = contactOver(mean, mean + 0.2);
    expect(
      impactPeak(groundOf({ up: longer, sampleRate: 1000, mass: 90 }), { contact, nextSameSide }),
    ).not.toBeNull();
    expect(impactPeak(groundOf({ up: longer, sampleRate: 1000, mass: 90 }), { contact })).toBeNull();
  });
  it("refuses to guess where there is none", () => {
    expect(() => impactPeak(groundOf({ up, sampleRate: 1000, mass: null }), { contact })).toThrow(
      expect.objectContaining({ code: "missing-value", argument: "mass" }),
    );
  });
});

it("property: against the rule word for word, on random forces, wherever the contact begins", () =>
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 30, maxLength: 60 }),
      fc.double({ min: 0, max: 0.02, noNaN: true }),
      fc.double({ min: 0.5, max: 1, noNaN: true }),
      (values, from, part) => {
        const up = values.map((f) => f * 2);
        const sampleRate = 250;
        const to = from + ((up.length - 1) / sampleRate - from) * part;
        const at = (i: number): number => i / sampleRate - from;
        const f = (i: number): number => up[i] as number;
        const inside = up.map((_, i) => i).filter((i) => i / sampleRate <= to);
        const rule = inside.find((i) => {
          if (!(at(i) > 0.005 && at(i) < 0.35 * (to - from) && i > 0 && f(i) > f(i - 1))) return false;
          const later = inside.filter((j) => j > i);
          const exceeded = later.find((j) => f(j) > f(i)) ?? Number.POSITIVE_INFINITY;
          return later.some((j) => j < exceeded && f(i) - f(j) >= 0.02 * BW);
        });
        const found = impactPeak(groundOf({ up, sampleRate }), { contact: contactOver(from, to) });
        const time = timeToImpactPeak(groundOf({ up, sampleRate }), { contact: contactOver(from, to) });
        expect(found).toBe(rule === undefined ? null : up[rule]);
        expect(time).toBe(rule === undefined ? null : rule / sampleRate - from);
      },
    ),
    { numRuns: 1000 },
  ));

it.each([
  ["a drop of 0", { drop: 0 }, "out-of-range"],
  ["a start before contact", { after: -0.01 }, "out-of-range"],
  ["an end in per cent", { before: 35 }, "out-of-range"],
  ["NaN", { drop: Number.NaN }, "not-finite"],
  ["an option it does not know", { dropp: 0.1 }, "unknown-option"],
])("refuses %s", (_what, options, code) => {
  const ground = groundOf({
    up: through([0, 0], [30, 1.5], [50, 1.2], [110, 2.5], [240, 0]),
    sampleRate: 1000,
  });
  expect(() => impactPeak(ground, { contact }, options as object)).toThrow(expect.objectContaining({ code }));
});
