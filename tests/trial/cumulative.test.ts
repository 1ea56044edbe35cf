import { describe, expect, it } from "vitest";
import { compareTrials } from "../../src/compare/index.js";
import { type Metric, metricById } from "../../src/metrics/index.js";
import { mean, seededRandom } from "../../src/statistics/index.js";
import {
  type CumulativeLoad,
  cumulativeLoad,
  type NotComputed,
  type Trial,
  type WeightedLoad,
  weightedLoad,
} from "../../src/trial/index.js";
import { stepTimes, trialOf } from "../compare/trialOf.js";

function found<T extends CumulativeLoad>(result: T | NotComputed): T {
  if ("perMinute" in result) return result;
  throw new Error(result.message);
}

const random = seededRandom(12);
const n = 25;
const same = (value: number) => Array.from({ length: n }, () => value);
const varied = Array.from({ length: n }, () => 16 + 0.9 * random.normal());
const strides = {
  brakingImpulse: varied,
  peakVerticalForce: same(1600),
  positiveExternalWork: same(90),
  contactTime: same(0.25),
  earlyLoadingRate: same(40000),
};
/** 0.4 s a step at 2.5 m/s: 1000 steps a kilometre, 150 a minute; the feet told apart. */
function told(more: Readonly<Record<string, readonly number[]>> = {}, speed: number | null = 2.5): Trial {
  const trial = trialOf({ ...strides, ...stepTimes(n, 0.4), ...more }, { speed, mass: 70 });
  const events = { ...trial.settings.events, sides: "first foot" };
  return { ...trial, settings: { ...trial.settings, events } };
}
const trial = told();

describe("load per kilometre and per minute", () => {
  it("by hand: 1000 steps a kilometre and 150 a minute, 97 parts of 200 on the left foot", () => {
    const load = found(cumulativeLoad(trial, "brakingImpulse"));
    const each = mean(varied);
    expect(load.stepsPerKilometre).toBeCloseTo(1000, 9);
    expect(load.stepsPerMinute).toBeCloseTo(150, 9);
    expect(load.perKilometre).toMatchObject({ unit: "N s/km", n });
    expect(load.perKilometre?.mean).toBeCloseTo(1000 * each, 8);
    expect(load.perKilometre?.left?.mean).toBeCloseTo(485 * each, 8);
    expect(load.perKilometre?.right?.mean).toBeCloseTo(515 * each, 8);
    expect(load.perMinute.unit).toBe("N s/min");
    expect(load.perMinute.mean).toBeCloseTo(150 * each, 8);
    expect(load.perKilometre?.normalised?.unit).toBe("BW s/km");
    expect(load.perKilometre?.normalised?.mean).toBeCloseTo((1000 * each) / (70 * 9.80665), 10);
    expect(load.noKilometre).toBeNull();
  });
  it("law: what the comparison says per kilometre, mean, spread and interval", () => {
    const uneven = told({ stepTime: Array.from({ length: n }, (_, k) => 0.36 + 0.001 * (k % 7)) });
    const compared = compareTrials(uneven, trial).metrics.find(({ id }) => id === "brakingImpulse");
    const load = found(cumulativeLoad(uneven, "brakingImpulse")).perKilometre;
    const expected = compared?.perKilometre?.baseline;
    expect(expected).toBeDefined();
    expect(load?.mean).toBeCloseTo(expected?.mean ?? 0, 8);
    expect(load?.sd).toBeCloseTo(expected?.sd ?? 0, 8);
    expect(load?.interval?.low).toBeCloseTo(expected?.interval?.low ?? 0, 8);
    expect(load?.interval?.high).toBeCloseTo(expected?.interval?.high ?? 0, 8);
  });
  it("law: left and right add up, and a load that is the same at every step is it times the steps", () => {
    const uneven = told({ stepTime: Array.from({ length: n }, (_, k) => 0.36 + 0.001 * (k % 7)) });
    const braking = found(cumulativeLoad(uneven, "brakingImpulse")).perMinute;
    expect((braking.left?.mean ?? 0) + (braking.right?.mean ?? 0)).toBeCloseTo(braking.mean, 8);
    const peak = found(cumulativeLoad(uneven, "peakVerticalForce"));
    expect(peak.perMinute.mean).toBeCloseTo(1600 * peak.stepsPerMinute, 6);
    expect(peak.perKilometre?.mean).toBeCloseTo(1600 * (peak.stepsPerKilometre ?? 0), 6);
  });
  it("lower per step, higher per kilometre: 5 % less at each of 10 % more steps is 4.5 % more", () => {
    const more = told({ brakingImpulse: varied.map((value) => 0.95 * value), ...stepTimes(n, 0.4 / 1.1) });
    const ratio = (which: "perKilometre" | "perMinute") =>
      (found(cumulativeLoad(more, "brakingImpulse"))[which]?.mean ?? 0) /
      (found(cumulativeLoad(trial, "brakingImpulse"))[which]?.mean ?? 1);
    expect(ratio("perKilometre")).toBeCloseTo(1.045, 10);
    expect(ratio("perMinute")).toBeCloseTo(1.045, 10);
  });
  it("work is per kilogram beside, not per metre once more", () => {
    const work = found(cumulativeLoad(trial, "positiveExternalWork"));
    expect(work.perKilometre).toMatchObject({ unit: "J/km", normalised: { unit: "J/kg/km" } });
    expect(work.perKilometre?.normalised?.mean).toBeCloseTo(90000 / 70, 8);
  });
  it.each([null, 0])("speed %s: per minute alone, and why", (speed) => {
    const load = found(cumulativeLoad(told({}, speed), "brakingImpulse"));
    expect(load).toMatchObject({
      perKilometre: null,
      stepsPerKilometre: null,
      noKilometre: { code: "missing-speed" },
    });
    expect(load.perMinute.mean).toBeCloseTo(150 * mean(varied), 8);
  });
  it("relative sides: the sum, and no feet", () => {
    const relative = found(cumulativeLoad(trialOf(strides), "brakingImpulse")).perMinute;
    expect(relative.left).toBeUndefined();
    expect(relative.right).toBeUndefined();
    expect(relative.n).toBe(n);
  });
  it("no mass, nothing normalised", () =>
    expect(
      found(cumulativeLoad(trialOf(strides, { mass: null }), "brakingImpulse")).perMinute.normalised,
    ).toBeUndefined());
  it("a wider interval at a higher level", () => {
    const at = (level: number) =>
      found(cumulativeLoad(trial, "brakingImpulse", { level })).perMinute.interval;
    expect((at(0.99)?.high ?? 0) - (at(0.99)?.low ?? 0)).toBeGreaterThan(
      (at(0.95)?.high ?? 0) - (at(0.95)?.low ?? 0),
    );
  });
});

describe("peaks to a power", () => {
  const peaks = told({ peakVerticalForce: varied.map((value) => 100 * value) });
  it("by hand: the left foot's 0.97 and the right foot's 1.03 times 1600 N, to the power 4", () => {
    const load = found(weightedLoad(trial, "peakVerticalForce", { exponent: 4, source: "a table" }));
    const sum = (0.97 ** 4 + 1.03 ** 4) / 2;
    expect(load).toMatchObject({ exponent: 4, source: "a table", perMinute: { unit: "N^4/min", n } });
    expect((load.perKilometre?.mean ?? 0) / (1000 * 1600 ** 4 * sum)).toBeCloseTo(1, 10);
    expect((load.perKilometre?.left?.mean ?? 0) / (500 * (0.97 * 1600) ** 4)).toBeCloseTo(1, 10);
    expect(load.perMinute.normalised?.unit).toBe("BW^4/min");
    expect(load.perMinute.normalised?.mean).toBeCloseTo(150 * (1600 / (70 * 9.80665)) ** 4 * sum, 6);
    expect(load.equivalentPeak).toBeCloseTo(1600 * sum ** 0.25, 8);
    expect(load.meaning).toContain("one twice as high counts as 16; a weighting, not damage");
  });
  it("law: the power 1 is the plain sum", () => {
    const plain = found(cumulativeLoad(peaks, "peakVerticalForce"));
    const weighted: WeightedLoad = found(weightedLoad(peaks, "peakVerticalForce", { exponent: 1 }));
    expect(weighted.perKilometre).toEqual(plain.perKilometre);
    expect(weighted.perMinute).toEqual(plain.perMinute);
    expect(weighted.source).toBeNull();
  });
  it("law: peaks k times as high sum to k^b times as much, and are equivalent to k times the peak", () => {
    const higher = told({ peakVerticalForce: varied.map((value) => 130 * value) });
    const of = (which: Trial) => found(weightedLoad(which, "peakVerticalForce", { exponent: 6.5 }));
    expect(of(higher).perMinute.mean / of(peaks).perMinute.mean).toBeCloseTo(1.3 ** 6.5, 9);
    expect(of(higher).equivalentPeak / of(peaks).equivalentPeak).toBeCloseTo(1.3, 10);
  });
  it("law: the equivalent peak grows with the power, from the mean towards the largest", () => {
    const equivalent = [1, 2, 4, 8, 16, 30].map(
      (exponent) => found(weightedLoad(peaks, "peakVerticalForce", { exponent })).equivalentPeak,
    );
    expect(equivalent[0]).toBeCloseTo(100 * mean(varied), 6);
    expect(equivalent).toEqual([...equivalent].sort((a, b) => a - b));
    expect(equivalent.at(-1)).toBeLessThan(103 * Math.max(...varied));
  });
});

describe("reasons in place of sums", () => {
  it("a metric that was not computed, that too few contacts have, that no stride has with its step time", () => {
    const notComputed = [{ id: "impactPeak", code: "no-impact-peak", message: "no contact has a value" }];
    expect(cumulativeLoad({ ...trial, notComputed }, "impactPeak")).toEqual(notComputed[0]);
    expect(weightedLoad(trial, "impactPeak", { exponent: 4 })).toMatchObject({ code: "not-analysed" });
    const without = (from: number, id: string) => ({
      ...trial,
      steps: trial.steps.map((row, k) =>
        k >= from ? { ...row, values: { ...row.values, [id]: null } } : row,
      ),
    });
    expect(cumulativeLoad(without(44, "brakingImpulse"), "brakingImpulse")).toEqual({
      id: "brakingImpulse",
      code: "too-few-contacts",
      message: "44 of 50 contacts have it; 90 % are needed",
    });
    expect(found(cumulativeLoad(without(45, "brakingImpulse"), "brakingImpulse")).perMinute.n).toBe(22);
    expect(cumulativeLoad(without(0, "stepTime"), "brakingImpulse")).toMatchObject({ code: "no-stride" });
  });
});

describe("bad input", () => {
  const own: Metric = { ...metricById("peakVerticalForce"), id: "own" };
  const negative = told({ own: same(-3) });
  const code = (expected: string) => expect.objectContaining({ code: expected });
  it.each([
    [() => cumulativeLoad({} as Trial, "brakingImpulse"), "wrong-type"],
    [() => cumulativeLoad(trial, "contactTime"), "out-of-range"],
    [() => cumulativeLoad(trial, "netForwardImpulse"), "out-of-range"],
    [() => cumulativeLoad(trial, "braking"), "out-of-range"],
    [() => cumulativeLoad(trial, "brakingImpulse", { level: 0 }), "out-of-range"],
    [() => cumulativeLoad(trial, "brakingImpulse", { exponent: 2 } as never), "unknown-option"],
    [() => weightedLoad({} as Trial, "peakVerticalForce", { exponent: 4 }), "wrong-type"],
    [() => weightedLoad(trial, "peakVerticalForce", {}), "missing-value"],
    [() => weightedLoad(trial, "peakVerticalForce", { exponent: 0.5 }), "out-of-range"],
    [() => weightedLoad(trial, "peakVerticalForce", { exponent: 31 }), "out-of-range"],
    [() => weightedLoad(trial, "peakVerticalForce", { exponent: Number.NaN }), "not-finite"],
    [() => weightedLoad(trial, "peakVerticalForce", { exponent: "4" as never }), "wrong-type"],
    [() => weightedLoad(trial, "peakVerticalForce", { exponent: 4, source: 7 as never }), "wrong-type"],
    [() => weightedLoad(trial, "peakVerticalForce", { exponent: 4, level: 1 }), "out-of-range"],
    [() => weightedLoad(trial, "brakingImpulse", { exponent: 4 }), "out-of-range"],
    [() => weightedLoad(trial, "earlyLoadingRate", { exponent: 4 }), "out-of-range"],
    // On 2026-11-25 a mean force, no peak, was raised to the power.
    [() => weightedLoad(trial, "meanVerticalForce", { exponent: 4 }), "out-of-range"],
    [() => weightedLoad(negative, own, { exponent: 2 }), "out-of-range"],
  ] as const)("refuses %o: %s", (call, expected) => expect(call).toThrow(code(expected)));
});
