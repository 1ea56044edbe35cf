import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  CADENCE_WHAT_IF_DEFAULTS,
  type CadenceQuantity,
  type CadenceRunner,
  type CadenceWhatIfOptions,
  cadenceWhatIf,
  publishedCadenceChanges,
} from "../../src/models/index.js";
import models from "../fixtures/models/models.json" with { type: "json" }; // models.py, NumPy 2.4.6, SciPy 1.17.1

const { runner, rows, exponentExact } = models.whatIf;
const ask = (change: number, more: Partial<CadenceRunner> = {}, options: CadenceWhatIfOptions = {}) => {
  const answer = cadenceWhatIf({ ...runner, ...more }, { ...options, changes: [change] });
  const [found] = answer.changes;
  if (found === undefined) throw new Error("no change");
  const quantity = (id: string): CadenceQuantity => {
    const row = found.quantities.find((candidate) => candidate.id === id);
    if (row === undefined) throw new Error(`no ${id}`);
    return row;
  };
  return { answer, found, quantity };
};

describe("cadenceWhatIf", () => {
  it("source: Farley & González 1996, J Biomech 29:181: 7.0 to 16.3 kN/m from −26 to +36 % is a power of 1.389", () =>
    expect(CADENCE_WHAT_IF_DEFAULTS.stiffnessExponent).toBeCloseTo(exponentExact, 3));
  it.each(rows)("SciPy: half sine integrated, stiffness met by brentq, cadence × (1 + $change)", (row) => {
    const { quantity } = ask(row.change);
    const ids = [
      ["peakVerticalForce", "peakForce"],
      ["contactTime", "contactTime"],
      ["verticalOscillation", "oscillation"],
      ["verticalStiffness", "verticalStiffness"],
      ["legStiffness", "legStiffness"],
      ["peakBrakingForce", "peakBraking"],
      ["brakingImpulse", "brakingImpulse"],
    ] as const;
    for (const [id, key] of ids) {
      const ends = row.ends.map((end) => end[key]);
      // Trapezoids of 20 001 points and, for the peak, its largest point: 1e-7.
      expect(quantity(id).low / Math.min(...ends)).toBeCloseTo(1, 6);
      expect(quantity(id).high / Math.max(...ends)).toBeCloseTo(1, 6);
      if (id !== "contactTime") expect(quantity(id).baseline / row.own[key]).toBeCloseTo(1, 6);
    }
  });
  it("law: with the duty factor kept the oscillation goes with 1/rate², +10 % gives −17 %, and peak force stays", () => {
    const { quantity } = ask(0.1);
    expect(quantity("verticalOscillation").high / quantity("verticalOscillation").baseline).toBeCloseTo(
      1 / 1.21,
      12,
    );
    expect(quantity("peakVerticalForce").high).toBeCloseTo(quantity("peakVerticalForce").baseline, 9);
  });
  it("carries the runner's own values by the model's ratios", () => {
    const own = { peakVerticalForce: 1876, brakingImpulse: 18, legStiffness: 13_000 };
    const [model, measured] = [ask(0.05), ask(0.05, own)];
    for (const [id, value] of Object.entries(own)) {
      const row = measured.quantity(id);
      expect([row.from, row.baseline]).toEqual(["measured", value]);
      expect(row.low / value).toBeCloseTo(model.quantity(id).low / model.quantity(id).baseline, 12);
    }
    expect(measured.quantity("verticalOscillation").from).toBe("model");
    expect(measured.quantity("contactTime").from).toBe("measured");
  });
  it("per kilometre: a lower force a step can be a higher sum of peaks", () => {
    const { found, quantity } = ask(0.1);
    const steps = (1000 * runner.cadence) / (60 * runner.speed);
    expect(found.stepsPerKilometre).toBeCloseTo(1.1 * steps, 9);
    const { low, high, baseline, perKilometre } = quantity("peakVerticalForce");
    expect(perKilometre).toEqual({
      unit: "N/km",
      baseline: expect.closeTo(baseline * steps, 6),
      low: expect.closeTo(low * 1.1 * steps, 6),
      high: expect.closeTo(high * 1.1 * steps, 6),
    });
    expect(perKilometre?.low).toBeGreaterThan(perKilometre?.baseline as number);
    expect(quantity("legStiffness").perKilometre).toBeNull();
  });
  it("property: always a range, in order, for any runner and change; braking and bounce fall with cadence", () =>
    fc.assert(
      fc.property(
        fc.double({ min: 150, max: 190, noNaN: true }),
        fc.double({ min: 0.28, max: 0.42, noNaN: true }),
        fc.double({ min: 2.2, max: 4.5, noNaN: true }),
        fc.constantFrom(-0.1, -0.05, 0.05, 0.1),
        (cadence, dutyFactor, speed, change) => {
          const contactTime = (dutyFactor * 120) / cadence;
          const { found } = ask(change, { cadence, contactTime, speed });
          expect(found.quantities).toHaveLength(8);
          for (const { low, high } of found.quantities) expect(high).toBeGreaterThan(low);
          for (const id of ["brakingImpulse", "verticalOscillation"]) {
            const row = found.quantities.find((candidate) => candidate.id === id) as CadenceQuantity;
            if (change > 0) expect(row.high).toBeLessThan(row.baseline);
            else expect(row.low).toBeGreaterThan(row.baseline);
          }
        },
      ),
      { numRuns: 60 },
    ));
  it("property: mass scales forces and nothing else", () =>
    fc.assert(
      fc.property(fc.double({ min: 40, max: 120, noNaN: true }), (mass) => {
        const [one, other] = [ask(0.05), ask(0.05, { mass })];
        expect(other.quantity("brakingImpulse").low / mass).toBeCloseTo(
          one.quantity("brakingImpulse").low / 70,
          9,
        );
        expect(other.quantity("contactTime").high).toBeCloseTo(one.quantity("contactTime").high, 9);
      }),
      { numRuns: 20 },
    ));
  it("answers −10, −5, +5, +10 % where nothing is asked, with assumptions and what it leaves out", () => {
    const { changes, assumptions, notModelled } = cadenceWhatIf(runner);
    expect(changes.map(({ change }) => change)).toEqual([-0.1, -0.05, 0.05, 0.1]);
    expect(assumptions.join()).toContain("Farley & González 1996");
    expect(notModelled).toContain("mediolateral force");
  });
  it("is plain data: JSON gives it back", () => {
    const answer = cadenceWhatIf(runner);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
  it("says where the model misses the measured peak by more than 10 %", () => {
    expect(ask(0.05, { peakVerticalForce: 1876 }).answer.cautions.map(({ code }) => code)).toEqual([
      "model-misfit",
    ]);
    expect(ask(0.05, { peakVerticalForce: 1600 }).answer.cautions).toEqual([]);
  });
  it("gives no range, and says so, where an assumption leaves no flight", () => {
    const { answer, found } = ask(0.36, { contactTime: 0.355 });
    expect(found.quantities).toEqual([]);
    expect(answer.cautions.map(({ code }) => code)).toEqual(["no-such-step"]);
    expect(found.published.length).toBeGreaterThan(5);
  });
  it.each([
    ["neither leg length nor height", { legLength: undefined, height: undefined }, {}, "missing-value"],
    ["a contact as long as the step", { contactTime: 0.36 }, {}, "out-of-range"],
    ["strides for steps a minute", { cadence: 50 }, {}, "out-of-range"],
    ["km/h for m/s", { speed: 30 }, {}, "out-of-range"],
    ["no change", {}, { changes: [0] }, "out-of-range"],
    ["per cent for a share", {}, { changes: [5] }, "out-of-range"],
    ["a change beyond the experiment", {}, { changes: [-0.3] }, "out-of-range"],
    ["a negative exponent", {}, { stiffnessExponent: -1 }, "out-of-range"],
    ["a peak of 0", { peakVerticalForce: 0 }, {}, "out-of-range"],
    ["NaN for the mass", { mass: Number.NaN }, {}, "not-finite"],
    ["an option it does not know", {}, { change: [0.1] }, "unknown-option"],
  ])("refuses %s", (_what, more, options, code) =>
    expect(() =>
      cadenceWhatIf({ ...runner, ...more } as CadenceRunner, options as CadenceWhatIfOptions),
    ).toThrow(expect.objectContaining({ code })),
  );
});

describe("publishedCadenceChanges", () => {
  it("Heiderscheit et al. 2011, Med Sci Sports Exerc 43:296, table 3: preferred, +5, +10 %", () => {
    const values = (quantity: string) =>
      publishedCadenceChanges("higher").find((entry) => entry.quantity === quantity && entry.read === "table")
        ?.values;
    expect(values("peak knee flexion")).toEqual([46.3, 44.1, 42.8]);
    expect(values("peak hip adduction")).toEqual([10.4, 9.5, 8.7]);
    expect(values("peak knee extension moment")).toEqual([2.5, 2.4, 2.2]);
  });
  it.each(["higher", "lower"] as const)("%s: effects agree in sign with their numbers", (cadence) => {
    const entries = publishedCadenceChanges(cadence);
    expect(entries.length).toBeGreaterThan(1);
    for (const { values, effect, unit, source } of entries) {
      expect(source).toMatch(/(19|20)\d\d/);
      expect(unit === null).toBe(values.length === 0);
      if (values.length === 0) continue;
      const change =
        values.length === 1
          ? (values[0] as number)
          : (values[values.length - 1] as number) - (values[0] as number);
      expect(Math.sign(change)).toBe(effect === "higher" ? 1 : -1);
    }
  });
  it("agrees with the model where both speak: bounce and braking fall, stiffness rises", () => {
    const { quantity } = ask(0.1);
    const effect = (name: RegExp) =>
      publishedCadenceChanges("higher").find((entry) => name.test(entry.quantity))?.effect;
    expect([effect(/braking/), effect(/excursion/), effect(/leg stiffness/)]).toEqual([
      "lower",
      "lower",
      "higher",
    ]);
    expect(quantity("brakingImpulse").high).toBeLessThan(quantity("brakingImpulse").baseline);
    expect(quantity("verticalOscillation").high).toBeLessThan(quantity("verticalOscillation").baseline);
    expect(quantity("legStiffness").low).toBeGreaterThan(quantity("legStiffness").baseline);
  });
});
