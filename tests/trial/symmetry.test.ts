import { describe, expect, it } from "vitest";
import { type Metric, metricById } from "../../src/metrics/index.js";
import { mean, seededRandom } from "../../src/statistics/index.js";
import {
  analyseTrial,
  type NotComputed,
  type Symmetry,
  symmetriesOf,
  symmetryOf,
  type Trial,
} from "../../src/trial/index.js";
import { type Strides, type TrialParts, trialOf } from "../compare/trialOf.js";
import { running, sampledRun } from "../metrics/runs.js";

/** A made trial whose feet are told apart: right 1.03 times, left 0.97 times the stride's value. */
function told(strides: Strides, parts: TrialParts = {}): Trial {
  const trial = trialOf(strides, parts);
  const events = { ...trial.settings.events, sides: "first foot" };
  return { ...trial, settings: { ...trial.settings, events } };
}

/** Another value in the place of some. */
function altered(
  trial: Trial,
  id: string,
  to: (value: number, k: number, side: string) => number | null,
): Trial {
  const steps = trial.steps.map((row, k) => ({
    ...row,
    values: { ...row.values, [id]: to(row.values[id] ?? 0, k, row.side) },
  }));
  return { ...trial, steps };
}

function found(result: Symmetry | NotComputed): Symmetry {
  if ("index" in result) return result;
  throw new Error(result.message);
}

const random = seededRandom(9);
const many = (n: number, centre: number, sd: number) =>
  Array.from({ length: n }, () => centre + sd * random.normal());
const strides = { peakVerticalForce: many(30, 1650, 40), netForwardImpulse: many(30, 0.2, 0.4) };
const trial = told(strides);

describe("by hand: 1.03 against 0.97", () => {
  const result = found(symmetryOf(trial, "peakVerticalForce"));
  it("6 % of the mean, 3 % of the sum, 1.0619 as a ratio, and no width, since all that varies is shared", () => {
    expect(result).toMatchObject({ id: "peakVerticalForce", unit: "N", n: 30, of: "mean", cautions: [] });
    expect(result.index).toBeCloseTo(6, 10);
    expect(result.interval.low).toBeCloseTo(6, 8);
    expect(result.interval.high).toBeCloseTo(6, 8);
    expect(result.ratio.value).toBeCloseTo(1.03 / 0.97, 12);
    expect(result.angle.value).toBeCloseTo(50 - (100 * Math.atan(0.97 / 1.03)) / (Math.PI / 2), 10);
    expect(found(symmetryOf(trial, "peakVerticalForce", { of: "sum" })).index).toBeCloseTo(3, 10);
    expect(found(symmetryOf(trial, "peakVerticalForce", { of: "left" })).index).toBeCloseTo(600 / 97, 10);
  });
  it("left, right and difference are means of the same strides", () => {
    const stride = mean(strides.peakVerticalForce);
    expect(result.right.mean).toBeCloseTo(1.03 * stride, 8);
    expect(result.left.mean).toBeCloseTo(0.97 * stride, 8);
    expect(result.difference.value).toBeCloseTo(0.06 * stride, 8);
    expect(result.difference.interval.low).toBeLessThan(result.difference.value);
  });
  it("exchanged feet exchange every sign", () => {
    const other = (side: string): "left" | "right" => (side === "left" ? "right" : "left");
    const noisy = altered(trial, "peakVerticalForce", (value, k) => value + (k % 5));
    const mirrored = { ...noisy, steps: noisy.steps.map((row) => ({ ...row, side: other(row.side) })) };
    const [one, two] = [noisy, mirrored].map((of) => found(symmetryOf(of, "peakVerticalForce")));
    expect(two?.index).toBeCloseTo(-(one?.index ?? 0), 10);
    expect(two?.interval.low).toBeCloseTo(-(one?.interval.high ?? 0), 10);
    expect(two?.angle.interval.high).toBeCloseTo(-(one?.angle.interval.low ?? 0), 10);
    expect(two?.difference.interval.high).toBeCloseTo(-(one?.difference.interval.low ?? 0), 8);
    expect((two?.ratio.interval.low ?? 0) * (one?.ratio.interval.high ?? 0)).toBeCloseTo(1, 12);
  });
  it("a higher level is a wider interval around the same index", () => {
    const noisy = altered(trial, "peakVerticalForce", (value, k) => value + 10 * (k % 7));
    const wide = found(symmetryOf(noisy, "peakVerticalForce", { level: 0.99 }));
    const plain = found(symmetryOf(noisy, "peakVerticalForce"));
    expect(wide.index).toBe(plain.index);
    expect(wide.interval.low).toBeLessThan(plain.interval.low);
    expect(wide.interval.high).toBeGreaterThan(plain.interval.high);
    expect(wide.interval.level).toBe(0.99);
  });
});

describe("a sampled run whose left foot differs on purpose (formulas by NumPy, contacts at 20 N)", () => {
  const { ground } = sampledRun();
  const whole = analyseTrial(
    { ...ground, firstFoot: "right" },
    { filter: null, events: { threshold: 20, firstFoot: "right" } },
  );
  const analytic = (side: string, id: string) => {
    const row = running.analytic.find((one) => one.side === side && one.threshold === 20);
    return (row as unknown as Record<string, number>)[id] as number;
  };
  it.each([
    ["impactPeak", -13.12, 0.1],
    ["peakVerticalForce", 1.69, 0.1],
    ["brakingImpulse", -8.24, 0.1],
    ["medialImpulse", -16.66, 0.1],
    ["contactTime", -0.08, 0.02],
    // The slope between two places of a 1 kHz curve.
    ["averageLoadingRate", -16.72, 0.8],
  ])("%s: %d %% (book value from the formulas)", (id, index, within) => {
    const result = found(symmetryOf(whole, id));
    expect(Math.abs(result.index - index)).toBeLessThan(within);
    const [right, left] = [analytic("right", id), analytic("left", id)];
    expect(Math.abs(result.index - (100 * (right - left)) / ((right + left) / 2))).toBeLessThan(within);
  });
  it("stride metrics and the balance of braking and propulsion have none", () => {
    const { metrics, notComputed } = symmetriesOf(whole);
    const codes = Object.fromEntries(notComputed.map((entry) => [entry.id, entry.code]));
    expect(codes).toMatchObject({
      strideTime: "both-feet",
      strideLength: "both-feet",
      mediolateralExcursion: "both-feet",
      netForwardImpulse: "balance",
    });
    expect(metrics.map(({ id }) => id)).toContain("dutyFactor");
    for (const id of Object.keys(codes)) expect(metrics.some((metric) => metric.id === id)).toBe(false);
  });
});

describe("reasons in place of an index", () => {
  const reason = (of: Trial, metric: string | Metric = "peakVerticalForce") => {
    const result = symmetryOf(of, metric);
    expect(result).not.toHaveProperty("index");
    return result as NotComputed;
  };
  it("sides by alternation, or exchanged after a pause: what is called right is arbitrary", () => {
    expect(reason(trialOf(strides)).code).toBe("sides-relative");
    const pause = { ...trial, cautions: [{ code: "sides-relative", message: "" }] };
    expect(reason(pause)).toEqual({
      id: "peakVerticalForce",
      code: "sides-relative",
      message:
        "which foot is called right is arbitrary, or may change within the trial; state the first foot",
    });
  });
  it("doubtful sides are given with the trial's caution", () => {
    const cautions = ["sides-from-force", "few-strides", "sides-uncertain"].map((code) => ({
      code,
      message: code,
    }));
    expect(
      found(symmetryOf({ ...trial, cautions }, "peakVerticalForce")).cautions.map(({ code }) => code),
    ).toEqual(["sides-from-force", "sides-uncertain"]);
  });
  it("a contact of unknown side, a foot that is not there", () => {
    const unknown = trial.steps.map((row, k) => (k === 7 ? { ...row, side: "unknown" as const } : row));
    expect(reason({ ...trial, steps: unknown }).code).toBe("side-unknown");
    const one = trial.steps.filter(({ side }) => side === "left");
    expect(reason({ ...trial, steps: one })).toMatchObject({
      code: "one-foot",
      message: "no contact of the right foot is complete",
    });
  });
  it("one value of the other sign is enough", () => {
    expect(reason(altered(trial, "peakVerticalForce", (value, k) => (k === 9 ? -value : value)))).toEqual({
      id: "peakVerticalForce",
      code: "mixed-sign",
      message:
        "1 of 60 contacts have the other sign than the rest; between values of both signs a share has no meaning",
    });
  });
  it("negative throughout is a sign like any other: the index is that of the sizes", () => {
    const negative = altered(trial, "peakVerticalForce", (value) => -value);
    expect(found(symmetryOf(negative, "peakVerticalForce")).index).toBeCloseTo(6, 8);
  });
  it("near zero: a foot that is 0 but now and then, or always", () => {
    const rare = (k: number) => (k === 20 || k === 21 ? 5 : 0);
    expect(
      reason(altered(trial, "peakVerticalForce", (v, k, side) => (side === "left" ? rare(k) : v))).code,
    ).toBe("near-zero");
    expect(
      reason(altered(trial, "peakVerticalForce", (v, k, side) => (side === "right" ? rare(k - 1) : v))).code,
    ).toBe("near-zero");
    for (const zero of ["left", "right"]) {
      const gone = altered(trial, "peakVerticalForce", (value, _, side) => (side === zero ? 0 : value));
      expect(reason(gone).code).toBe("near-zero");
    }
  });
  it("too few contacts of one foot, counted by foot: 4 of 30 lack it, 3 of 30 may", () => {
    const without = (count: number) =>
      altered(trial, "peakVerticalForce", (value, k, side) =>
        side === "left" && k < 2 * count ? null : value,
      );
    expect(reason(without(4))).toEqual({
      id: "peakVerticalForce",
      code: "too-few-contacts",
      message: "26 of 30 contacts of the left foot have it; 90 % are needed",
    });
    expect(found(symmetryOf(without(3), "peakVerticalForce")).n).toBe(27);
  });
  it("no interval: one stride, or strides that resemble each other too much", () => {
    expect(reason(told({ peakVerticalForce: [1650] })).code).toBe("no-interval");
    const wave = altered(trial, "peakVerticalForce", (value, k, side) =>
      side === "left" ? 1650 + 40 * Math.sin((2 * Math.PI * k) / 60) : value * 0 + 1650,
    );
    expect(reason(wave).code).toBe("no-interval");
  });
  it("a metric that was not computed has the trial's reason, one that was not asked for says so", () => {
    const notComputed = [{ id: "impactPeak", code: "no-impact-peak", message: "no contact has a value" }];
    expect(reason({ ...trial, notComputed }, "impactPeak")).toEqual(notComputed[0]);
    expect(reason(trial, "impactPeak").code).toBe("not-analysed");
  });
  it("an entry of one's own", () => {
    const own = { ...metricById("peakVerticalForce"), id: "own", unit: "kN" };
    expect(found(symmetryOf(told({ own: many(20, 3, 0.1) }), own)).unit).toBe("kN");
    expect(reason(trial, own).code).toBe("not-analysed");
  });
});

describe("bad input", () => {
  const code = (expected: string) => expect.objectContaining({ code: expected });
  it.each([
    [() => symmetryOf({} as Trial, "peakVerticalForce"), "wrong-type"],
    [() => symmetryOf(undefined as never, "peakVerticalForce"), "wrong-type"],
    [() => symmetryOf(trial, "peakForce"), "out-of-range"],
    [() => symmetryOf(trial, { id: "own" } as never), "wrong-type"],
    [() => symmetryOf(trial, null as never), "wrong-type"],
    [() => symmetryOf(trial, "peakVerticalForce", { level: 1 }), "out-of-range"],
    [() => symmetryOf(trial, "peakVerticalForce", { level: Number.NaN }), "not-finite"],
    [() => symmetryOf(trial, "peakVerticalForce", { of: "smaller" as never }), "out-of-range"],
    [() => symmetryOf(trial, "peakVerticalForce", { side: "left" } as never), "unknown-option"],
    [() => symmetriesOf(trial, { metrics: "peakVerticalForce" as never }), "wrong-type"],
    [() => symmetriesOf(trial, { metrics: ["peakForce"] }), "out-of-range"],
  ] as const)("refuses %o: %s", (call, expected) => expect(call).toThrow(code(expected)));
});
