import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type ApparentEfficiencyOptions,
  acsmOxygenUptake,
  apparentEfficiency,
  externalWork,
  forceGenerationRate,
  type MetabolicGait,
  minettiCost,
} from "../../src/models/index.js";
import models from "../fixtures/models/models.json" with { type: "json" }; // models.py, NumPy 2.4.6
import published from "../fixtures/models/published.json" with { type: "json" };
import { mirroredRun } from "../metrics/runs.js";

const { acsm, gradient, running, walking } = models.metabolic;
const codes = (cautions: readonly { readonly code: string }[]): string[] => cautions.map(({ code }) => code);

describe("acsmOxygenUptake (ACSM Guidelines for Exercise Testing and Prescription)", () => {
  it.each(acsm)("NumPy: $gait at $speed m/s, grade $grade", ({ gait, speed, grade, value }) =>
    expect(acsmOxygenUptake(gait as MetabolicGait, speed, { grade }).value).toBeCloseTo(value, 10),
  );
  it("worked example (acsm.walk.scribd): 93.8 m/min at 10 % is 29.76 ml/kg/min", () => {
    const { inputs, expected, tolerance } = published["acsm.walk.scribd"];
    const { value, cautions } = acsmOxygenUptake("walking", inputs.speed / 60, { grade: inputs.grade });
    expect(Math.abs(value - expected.vo2)).toBeLessThan(tolerance.abs);
    expect(cautions).toEqual([]);
  });
  it("worked example (acsm.run.8mets): 8 × 3.5 ml/kg/min at 122.5 m/min, below the range of the equation", () => {
    const { inputs, expected, tolerance } = published["acsm.run.8mets"];
    const { value, cautions } = acsmOxygenUptake("running", expected.speed / 60, { grade: inputs.grade });
    expect(Math.abs(value - 3.5 * inputs.mets)).toBeLessThan(0.2 * tolerance.speed);
    expect(codes(cautions)).toEqual(["outside-equation-range"]);
  });
  it("worked example (acsm.walk.7mets): 7 × 3.5 ml/kg/min at 75 m/min and 10 %", () => {
    const { inputs, expected, tolerance } = published["acsm.walk.7mets"];
    const { value } = acsmOxygenUptake("walking", expected.speed / 60, { grade: inputs.grade });
    // 0.28 ml/kg/min for each m/min at this grade.
    expect(Math.abs(value - 3.5 * inputs.mets)).toBeLessThan(0.28 * tolerance.speed);
  });
  it("worked example (acsm.run.level): 52 ml/kg/min at 242.5 m/min", () => {
    const { inputs, expected, tolerance } = published["acsm.run.level"];
    const { value } = acsmOxygenUptake("running", expected.speed / 60, { grade: inputs.grade });
    expect(Math.abs(value - inputs.vo2)).toBeLessThan(0.2 * tolerance.abs);
  });
  it("worked example (acsm.run.8280): 8.28 of 49.3 ml/kg/min are vertical at 7 mph, 26.8 m/min each", () => {
    const { inputs, expected, tolerance } = published["acsm.run.8280"];
    const level = acsmOxygenUptake("running", (inputs.mph * 26.8) / 60);
    expect(Math.abs(inputs.vo2 - level.value - expected.verticalVo2)).toBeLessThan(tolerance.abs);
    // The key divides by walking's factor; with running's the grade is 4.9 %.
    const uphill = acsmOxygenUptake("running", (inputs.mph * 26.8) / 60, { grade: 0.04904 });
    expect(uphill.parts.vertical).toBeCloseTo(expected.verticalVo2, 3);
  });
  it.each([
    ["running", 2.5, 0, []],
    ["running", 2.2, 0, ["outside-equation-range"]],
    ["running", 3, -0.05, ["outside-equation-range"]],
    ["walking", 1.5, 0.05, []],
    ["walking", 0.8, 0, ["outside-equation-range"]],
    ["walking", 1.8, -0.1, ["outside-equation-range", "outside-equation-range"]],
  ] as const)("%s at %f m/s, grade %f: %o", (gait, speed, grade, expected) =>
    expect(codes(acsmOxygenUptake(gait, speed, { grade }).cautions)).toEqual(expected),
  );
  it("names equation, unit and range, and says in words what lies outside it", () => {
    const { equation, unit, range, cautions } = acsmOxygenUptake("walking", 2);
    expect([equation, unit]).toEqual(["ACSM Guidelines, walking", "ml/kg/min"]);
    expect(range).toMatchObject({ speed: { unit: "m/min", from: 50, to: 100 } });
    expect(cautions[0]?.message).toBe(
      "speed is 120 m/min; the ACSM walking equation holds from 50 to 100 m/min",
    );
  });
  it.each([
    ["running", -1, {}],
    ["running", 3, { grade: 5 }],
    ["skipping", 3, {}],
  ] as [MetabolicGait, number, object][])("refuses %s at %f m/s with %o", (gait, speed, options) =>
    expect(() => acsmOxygenUptake(gait, speed, options)).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    ),
  );
});

describe("minettiCost (Minetti et al. 2002, J Appl Physiol 93:1039)", () => {
  it("NumPy's polyval on ten gradients, running and walking", () => {
    gradient.forEach((i, at) => {
      expect(minettiCost("running", i).value).toBeCloseTo(running[at] as number, 12);
      expect(minettiCost("walking", i).value).toBeCloseTo(walking[at] as number, 12);
    });
  });
  it("published measurements: running within one SD at all four gradients", () => {
    const { inputs, expected } = published["minetti.2002.run"];
    inputs.gradient.forEach((i, at) => {
      const miss = Math.abs(minettiCost("running", i).value - (expected.measured[at] as number));
      expect(miss).toBeLessThan(expected.sd[at] as number);
    });
  });
  it("published measurements: walking within one SD at −0.45, −0.10 and 0.45; not on the level", () => {
    const { inputs, expected } = published["minetti.2002.walk"];
    const misses = inputs.gradient.map(
      (i, at) =>
        Math.abs(minettiCost("walking", i).value - (expected.measured[at] as number)) /
        (expected.sd[at] as number),
    );
    expect(misses.map((miss) => miss < 1)).toEqual([true, true, false, true]);
  });
  it("published measurements: the ratio of running uphill at 0.45 to level, 18.93/3.40, within 4 %", () => {
    const ratio = minettiCost("running", 0.45).ratioToLevel as number;
    expect(Math.abs(ratio / (18.93 / 3.4) - 1)).toBeLessThan(0.04);
    expect(minettiCost("running", 0).ratioToLevel).toBe(1);
    expect(minettiCost("walking", 0.45).ratioToLevel).toBeNull();
  });
  it.each([
    ["running", 0.1, []],
    ["running", 0.5, ["outside-equation-range"]],
    ["running", -0.46, ["outside-equation-range"]],
    ["walking", 0, ["equation-misses-measurement"]],
    ["walking", 0.45, []],
    ["walking", 0.6, ["outside-equation-range"]],
  ] as const)("%s at %f: %o", (gait, i, expected) =>
    expect(codes(minettiCost(gait, i).cautions)).toEqual(expected),
  );
  it.each([5, Number.NaN])("refuses a gradient of %f", (i) =>
    expect(() => minettiCost("running", i)).toThrow(),
  );
  it("refuses another gait", () =>
    expect(() => minettiCost("hopping" as MetabolicGait, 0)).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    ));
});

describe("forceGenerationRate (Kram & Taylor 1990, Nature 346:265)", () => {
  it("published values (Kipp, Grabowski & Kram 2018, abstract): 9.28 W/kg at 0.280 s is 0.265 J/N, 21.44 at 0.190 s 0.415", () => {
    expect(forceGenerationRate(0.28, { coefficient: 0.265 }).cost).toBeCloseTo(9.28, 1);
    expect(forceGenerationRate(0.19, { coefficient: 0.415 }).cost).toBeCloseTo(21.44, 1);
  });
  it("gives no cost without a coefficient", () =>
    expect(forceGenerationRate(0.2)).toEqual({ rate: 5, cost: null }));
  it("property: half the contact time, twice rate and cost", () =>
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 0.4, noNaN: true }), (time) => {
        const [long, short] = [time, time / 2].map((t) => forceGenerationRate(t, { coefficient: 0.2 }));
        expect((short?.rate as number) / (long?.rate as number)).toBeCloseTo(2, 12);
        expect((short?.cost as number) / (long?.cost as number)).toBeCloseTo(2, 12);
      }),
    ));
  it.each([
    [0, {}],
    [0.2, { coefficient: 0 }],
    [0.2, { gravity: -9.8 }],
  ])("refuses %f s with %o", (time, options) =>
    expect(() => forceGenerationRate(time, options)).toThrow(
      expect.objectContaining({ code: "out-of-range" }),
    ),
  );
});

describe("apparentEfficiency", () => {
  it("definition by hand: 4.18 W/kg for 60 ml/kg/min at 20.9 J/ml is 0.2", () =>
    expect(apparentEfficiency(4.18, 60)).toEqual({
      efficiency: expect.closeTo(0.2, 12),
      mechanicalPower: 4.18,
      metabolicPower: expect.closeTo(20.9, 12),
      basis: "gross",
      oxygenEnergy: 20.9,
    }));
  it("net of rest it is higher, and says so", () => {
    const net = apparentEfficiency(4.18, 63.5, { restingUptake: 3.5 });
    expect([net.basis, net.efficiency]).toEqual(["net", expect.closeTo(0.2, 12)]);
  });
  it("plausible: the fixture run at 3 m/s, 1.50 J/kg/m, with 39.5 ml/kg/min lies between 0.2 and 0.8 (from memory)", () => {
    const work = externalWork(mirroredRun(1000, 1).ground, 0, 0.72, 3, { until: 0.36 });
    const { efficiency } = apparentEfficiency((work.external?.positive as number) / 0.36 / 70, 39.5);
    expect(efficiency).toBeGreaterThan(0.2);
    expect(efficiency).toBeLessThan(0.8);
  });
  it.each([
    [-1, 40, {}],
    [4, 0, {}],
    [4, 40, { restingUptake: 40 }],
    [4, 40, { restingUptake: -1 }],
    [4, 40, { oxygenEnergy: 5 }],
  ] as [number, number, ApparentEfficiencyOptions][])(
    "refuses %f W/kg, %f ml/kg/min, %o",
    (power, uptake, options) =>
      expect(() => apparentEfficiency(power, uptake, options)).toThrow(
        expect.objectContaining({ code: "out-of-range" }),
      ),
  );
});
