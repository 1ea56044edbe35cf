import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  brakingImpulse,
  brakingLoadingRate,
  netForwardImpulse,
  peakBrakingForce,
  peakPropulsiveForce,
  propulsiveImpulse,
} from "../../../src/metrics/index.js";
import { contactOver, groundOf } from "../../helpers.js";

const along = (forward: ArrayLike<number>, sampleRate = 1000): ReturnType<typeof groundOf> =>
  groundOf({ up: new Float64Array(forward.length).fill(900), forward, sampleRate });

describe("common practice, by hand: magnitudes are positive, the net has its sign", () => {
  const ground = along([0, -200, 0, 160, 0], 8);
  const step = { contact: contactOver(0, 0.5) };
  it.each([
    ["braking impulse 25 N·s", brakingImpulse, 25],
    ["propulsive impulse 20 N·s", propulsiveImpulse, 20],
    ["net forward impulse −5 N·s", netForwardImpulse, -5],
    ["peak braking force 200 N", peakBrakingForce, 200],
    ["peak propulsive force 160 N", peakPropulsiveForce, 160],
  ] as const)("%s", (_what, metric, value) => expect(metric(ground, step)).toBeCloseTo(value, 12));
  it("a line is split where it crosses zero between samples: −30 to 10 N in 0.1 s", () => {
    const crossing = along([-30, 10], 10);
    const whole = { contact: contactOver(0, 0.1) };
    expect(brakingImpulse(crossing, whole)).toBeCloseTo((30 * 0.075) / 2, 12);
    expect(propulsiveImpulse(crossing, whole)).toBeCloseTo((10 * 0.025) / 2, 12);
  });
  it("a force that never points that way gives 0, not −0 and not null", () => {
    const pushing = along([0, 5, 5, 0], 10);
    expect(Object.is(brakingImpulse(pushing, { contact: contactOver(0, 0.3) }), 0)).toBe(true);
    expect(Object.is(peakBrakingForce(along([3, 5, 5, 3], 10), { contact: contactOver(0, 0.3) }), 0)).toBe(
      true,
    );
    expect(peakPropulsiveForce(along([-3, -5, -3], 10), { contact: contactOver(0, 0.2) })).toBe(0);
  });
});

describe("published worked examples", () => {
  it("OpenStax College Physics, m42132: 650 N for 0.800 s on 70 kg give 7.43 m/s", () => {
    const start = along(new Float64Array(901).fill(650));
    expect(netForwardImpulse(start, { contact: contactOver(0.05, 0.85) }) / 70).toBeCloseTo(7.43, 2);
  });
  it("sprint's first step (assignmentexpert 30163): −3.2 and +56.0 N·s on 64 kg are 21.78 J", () => {
    // Constant −160 N for 20 ms and 560 N for 100 ms, joined within one sample so that neither area changes.
    const forward = Float64Array.from({ length: 122 }, (_, i) => (i <= 20 ? -160 : 560));
    const step = { contact: contactOver(0, 0.121) };
    const ground = along(forward);
    const joint = 1e-3;
    const braking = brakingImpulse(ground, step) - (160 * joint * 160) / (2 * 720);
    const propulsive = propulsiveImpulse(ground, step) - (560 * joint * 560) / (2 * 720);
    expect(braking).toBeCloseTo(3.2, 9);
    expect(propulsive).toBeCloseTo(56, 9);
    expect((propulsive - braking) ** 2 / (2 * 64)).toBeCloseTo(21.78, 2);
  });
});

it("property: braking and propulsion turned round change places", () =>
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -500, max: 500, noNaN: true }), { minLength: 3, maxLength: 40 }),
      (forward) => {
        const step = { contact: contactOver(0.0003, (forward.length - 1.4) / 1000) };
        const [there, back] = [along(forward), along(forward.map((f) => -f))];
        expect(brakingImpulse(there, step)).toBe(propulsiveImpulse(back, step));
        expect(peakBrakingForce(there, step)).toBe(peakPropulsiveForce(back, step));
        expect(netForwardImpulse(there, step)).toBeCloseTo(
          propulsiveImpulse(there, step) - brakingImpulse(there, step),
          9,
        );
      },
    ),
  ));

describe("brakingLoadingRate: largest slope in 20 to 80 % of the rise to the first minimum of at least half the peak", () => {
  const step = { contact: contactOver(0, 0.2) };
  /** −forward through points in ms and N, at 1 kHz. */
  const through = (...points: [number, number][]): ReturnType<typeof groundOf> =>
    along(
      Float64Array.from({ length: 201 }, (_, i) => {
        const k = Math.max(
          1,
          points.findIndex(([ms]) => ms >= i),
        );
        const [[a, fa], [b, fb]] = [points[k - 1] as [number, number], points[k] as [number, number]];
        return -(fa + ((i - a) / (b - a)) * (fb - fa));
      }),
    );
  it("by hand: a straight 300 N in 50 ms is 6000 N/s", () => {
    expect(brakingLoadingRate(through([0, 0], [50, 300], [100, 0], [200, -200]), step)).toBeCloseTo(6000, 6);
  });
  it("the first of two that reach half: 160 N at 20 ms before 300 N at 60 ms", () => {
    expect(
      brakingLoadingRate(through([0, 0], [20, 160], [30, 100], [60, 300], [200, -200]), step),
    ).toBeCloseTo(8000, 6);
  });
  it("one that does not is passed over: 140 N at 20 ms; then the steepest of 12 to 48 ms", () => {
    expect(
      brakingLoadingRate(through([0, 0], [20, 140], [30, 100], [60, 300], [200, -200]), step),
    ).toBeCloseTo(7000, 6);
    expect(
      brakingLoadingRate(through([0, 0], [10, 140], [20, 100], [60, 300], [200, -200]), step),
    ).toBeCloseTo(5000, 6);
  });
  it("options: another share, another window", () => {
    const ground = through([0, 0], [20, 160], [30, 100], [60, 300], [200, -200]);
    expect(brakingLoadingRate(ground, step, { share: 0.6, from: 0.55, to: 0.9 })).toBeCloseTo(200 / 0.03, 6);
  });
  it("a plateau that then deepens is no minimum: the steepest of 24 to 54 ms, not of 8 to 18 ms", () => {
    const ground = through([0, 0], [20, 160], [30, 160], [60, 460], [200, -200]);
    expect(brakingLoadingRate(ground, step, { from: 0.4, to: 0.9 })).toBeCloseTo(10_000, 6);
  });
  it("exactly half the peak counts", () => {
    expect(
      brakingLoadingRate(through([0, 0], [20, 150], [30, 100], [60, 300], [200, -200]), step),
    ).toBeCloseTo(7500, 6);
  });
  it("braking that deepens until toe-off ends at the last sample in contact", () => {
    const ground = through([0, 0], [199, 199], [200, 300]);
    expect(brakingLoadingRate(ground, step, { from: 0.9, to: 1 })).toBeCloseTo(101_000, 6);
    expect(brakingLoadingRate(ground, { contact: contactOver(0, 0.1995) }, { from: 0.9, to: 1 })).toBeCloseTo(
      1000,
      6,
    );
  });
  it("property: proportional to force and to the sampling rate", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 9, noNaN: true }), (k) => {
        const ground = through([0, 0], [20, 160], [30, 100], [60, 300], [200, -200]);
        const scaled = along((ground.force.forward as Float64Array).map((f) => k * f));
        expect((brakingLoadingRate(scaled, step) as number) / k).toBeCloseTo(8000, 6);
      }),
    ));
  it.each([
    ["where the force never points backward", through([0, 0], [100, -50], [200, 0])],
    ["where it only fades from initial contact on", through([0, 200], [100, 0], [200, -100])],
    ["where it fades and comes back to less than half", through([0, 200], [100, 20], [150, 90], [200, 40])],
    ["where it fades and comes back to less than half at toe-off", through([0, 200], [100, 20], [200, 90])],
  ])("null %s", (_what, ground) => expect(brakingLoadingRate(ground, step)).toBeNull());
  it.each([{ from: 0.8, to: 0.2 }, { to: 1.2 }, { share: 0 }, { share: 50 }])("refuses %o", (options) => {
    expect(() => brakingLoadingRate(through([0, 0], [50, 300], [200, -200]), step, options)).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});

describe.each([
  brakingImpulse,
  propulsiveImpulse,
  netForwardImpulse,
  peakBrakingForce,
  peakPropulsiveForce,
  brakingLoadingRate,
])("%o refuses", (metric) => {
  it("a recording without a forward force", () => {
    const ground = groundOf({ up: [0, 900, 0], sampleRate: 10 });
    expect(() => metric(ground, { contact: contactOver(0, 0.2) })).toThrow(
      expect.objectContaining({ code: "missing-channel", message: expect.stringContaining(metric.name) }),
    );
  });
  it("a contact outside the recording", () => {
    expect(() => metric(along([0, -1, 1], 10), { contact: contactOver(0, 0.3) })).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    );
  });
});
