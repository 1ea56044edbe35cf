import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  footAngularRateEvents,
  peakTibialAcceleration,
  tibialAccelerationContacts,
} from "../../../src/events/index.js";
import { seededRandom } from "../../../src/statistics/index.js";

const RATE = 1000;
const STRIDE = 0.7;
const wave = (seconds: number, value: (t: number) => number) =>
  Float64Array.from({ length: Math.round(seconds * RATE) }, (_, i) => value(i / RATE));
const bump = (t: number, at: number, width: number) =>
  Math.abs(t - at) < width ? 0.5 * (1 + Math.cos((Math.PI * (t - at)) / width)) : 0;

describe("footAngularRateEvents", () => {
  // Invented: push-off at 0.10 s of each stride, mid-swing at 0.30, slap of the foot at 0.50.
  const rate = wave(20 * STRIDE, (t) => {
    const u = t % STRIDE;
    return -9 * bump(u, 0.1, 0.08) + 8 * bump(u, 0.3, 0.15) - 6 * bump(u, 0.5, 0.05);
  });
  const at = (offset: number) => Array.from({ length: 20 }, (_, k) => k * STRIDE + offset);
  it("finds the minimum before and the one after mid-swing where they were put", () => {
    const { initialContacts, toeOffs, side, cautions } = footAngularRateEvents(rate, RATE, { side: "left" });
    expect(side).toBe("left");
    expect(initialContacts).toHaveLength(20);
    expect(toeOffs).toHaveLength(20);
    initialContacts.forEach((time, k) => {
      expect(Math.abs(time - (at(0.5)[k] ?? NaN))).toBeLessThan(1e-3);
    });
    toeOffs.forEach((time, k) => {
      expect(Math.abs(time - (at(0.1)[k] ?? NaN))).toBeLessThan(1e-3);
    });
    expect(cautions.map(({ code }) => code)).toEqual(["events-from-sensor"]);
  });
  it("the zero lies between mid-swing and the minimum", () => {
    const zeros = footAngularRateEvents(rate, RATE, { contactFeature: "zero" }).initialContacts;
    const minima = footAngularRateEvents(rate, RATE).initialContacts;
    expect(zeros).toHaveLength(20);
    zeros.forEach((time, k) => {
      expect(time).toBeLessThan(minima[k] ?? NaN);
      expect(time).toBeGreaterThan(at(0.3)[k] ?? NaN);
    });
  });
  it("an axis that points the other way gives other events, a sensor at rest none: both are told", () => {
    const still = footAngularRateEvents(new Float64Array(2000), RATE);
    expect([still.initialContacts, still.toeOffs]).toEqual([[], []]);
    expect(still.cautions.map(({ code }) => code)).toEqual(["no-events"]);
  });
  it("a low rate is a caution", () => {
    const slow = rate.filter((_, i) => i % 10 === 0);
    expect(footAngularRateEvents(slow, 100).cautions.map(({ code }) => code)).toEqual([
      "events-from-sensor",
      "low-rate",
    ]);
  });
  it.each([
    [{ contactFeature: "slap" }, "out-of-range"],
    [{ side: "middle" }, "out-of-range"],
    [{ shortestStride: 0 }, "out-of-range"],
    [{ shortestStride: 100 }, "too-short"],
    [{ cutoff: 600 }, "out-of-range"],
    [{ cut: 1 }, "unknown-option"],
  ])("refuses %o", (options, code) =>
    expect(() => footAngularRateEvents(rate, RATE, options as object)).toThrow(
      expect.objectContaining({ code }),
    ),
  );
  it("refuses a gap and 20 Hz", () => {
    expect(() =>
      footAngularRateEvents(
        rate.map((v, i) => (i === 3 ? Number.NaN : v)),
        RATE,
      ),
    ).toThrow(expect.objectContaining({ code: "not-finite", where: "sample 3" }));
    expect(() => footAngularRateEvents(rate, 20)).toThrow(expect.objectContaining({ code: "out-of-range" }));
  });
});

describe("tibialAccelerationContacts", () => {
  // Invented: a dip to −10 m/s² at contact, a peak of 60 m/s² 25 ms later, a push of 15 m/s² in late stance.
  const impact = (t: number) => {
    const u = t % STRIDE;
    return 9.80665 - 20 * bump(u, 0.2, 0.015) + 50 * bump(u, 0.225, 0.015) + 5 * bump(u, 0.4, 0.08);
  };
  const signal = wave(20 * STRIDE, impact);
  it("contact at the dip and its peak 25 ms later, each stride once", () => {
    const { initialContacts, peakTimes, toeOffs } = tibialAccelerationContacts(signal, RATE, {
      cutoff: null,
    });
    expect(initialContacts).toHaveLength(20);
    expect(toeOffs).toEqual([]);
    initialContacts.forEach((time, k) => {
      expect(Math.abs(time - (k * STRIDE + 0.2))).toBeLessThan(2e-3);
      expect((peakTimes[k] ?? NaN) - time).toBeCloseTo(0.025, 2);
    });
  });
  it("the rise comes after the dip and before the peak", () => {
    const dips = tibialAccelerationContacts(signal, RATE).initialContacts;
    const { initialContacts, peakTimes } = tibialAccelerationContacts(signal, RATE, {
      contactFeature: "rise",
    });
    expect(initialContacts).toHaveLength(20);
    initialContacts.forEach((time, k) => {
      expect(time).toBeGreaterThan(dips[k] ?? NaN);
      expect(time).toBeLessThan(peakTimes[k] ?? NaN);
    });
  });
  it("noise of 2 m/s² moves contacts by a few milliseconds, none is lost or added", () => {
    const { normal } = seededRandom(5);
    const noisy = signal.map((value) => value + 2 * normal());
    const { initialContacts } = tibialAccelerationContacts(noisy, RATE);
    expect(initialContacts).toHaveLength(20);
    initialContacts.forEach((time, k) => {
      expect(Math.abs(time - (k * STRIDE + 0.2))).toBeLessThan(0.006);
    });
  });
  it("a leg at rest has no contacts", () =>
    expect(tibialAccelerationContacts(new Float64Array(2000).fill(9.80665), RATE)).toMatchObject({
      initialContacts: [],
      cautions: [{ code: "no-events" }],
    }));
  it.each([
    [{ contactFeature: "peak" }, "out-of-range"],
    [{ riseShare: 1 }, "out-of-range"],
    [{ lookBack: 0 }, "out-of-range"],
    [{ side: "both" }, "out-of-range"],
    [{ shortestStride: 100 }, "too-short"],
    [{ cut: 1 }, "unknown-option"],
  ])("refuses %o", (options, code) =>
    expect(() => tibialAccelerationContacts(signal, RATE, options as object)).toThrow(
      expect.objectContaining({ code }),
    ),
  );
  it("refuses a gap and 50 Hz", () => {
    expect(() =>
      tibialAccelerationContacts(
        signal.map((v, i) => (i === 3 ? Number.NaN : v)),
        RATE,
      ),
    ).toThrow(expect.objectContaining({ code: "not-finite" }));
    expect(() => tibialAccelerationContacts(signal, 50)).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});

describe("peakTibialAcceleration", () => {
  it("by hand: the largest sample of the window, in m/s² and in standard gravity (ISO 80000-3)", () => {
    const samples = new Float64Array([0, 9.80665, 39.2266, 88.25985, 20, 100]);
    expect(peakTibialAcceleration(samples, 1000, 0, 0.004)).toEqual({
      time: 0.003,
      acceleration: 88.25985,
      gravities: 9,
    });
    expect(peakTibialAcceleration(samples, 1000, 0, 0.004, { standing: 9.80665 })?.gravities).toBeCloseTo(
      8,
      12,
    );
  });
  it("a largest sample at the window's edge is no peak", () => {
    const rising = new Float64Array([0, 1, 2, 3, 4]);
    expect(peakTibialAcceleration(rising, 100, 0, 0.04)).toBeNull();
    expect(peakTibialAcceleration(Float64Array.from([4, 3, 2, 1, 0]), 100, 0, 0.04)).toBeNull();
  });
  it("property: proportional to the acceleration", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (k) => {
        const samples = new Float64Array([0, 5, 30, 7, 1]);
        const peak = peakTibialAcceleration(
          samples.map((v) => k * v),
          100,
          0,
          0.04,
        );
        expect((peak?.acceleration ?? NaN) / (30 * k)).toBeCloseTo(1, 12);
        expect((peak?.gravities ?? NaN) * 9.80665).toBeCloseTo(30 * k, 9);
      }),
    ));
  it.each([
    [0.04, 0.02],
    [-0.1, 0.02],
    [0, 1],
    [0, Number.NaN],
  ])("refuses the window %d to %d s", (from, to) =>
    expect(() => peakTibialAcceleration(new Float64Array(10), 100, from, to)).toThrow(
      expect.objectContaining({ code: Number.isNaN(to) ? "not-finite" : "out-of-range" }),
    ),
  );
  it("refuses a gap and a gravity of 0", () => {
    expect(() => peakTibialAcceleration(new Float64Array([0, Number.NaN, 0]), 100, 0, 0.02)).toThrow(
      expect.objectContaining({ code: "not-finite" }),
    );
    expect(() => peakTibialAcceleration(new Float64Array(10), 100, 0, 0.02, { gravity: 0 })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});
