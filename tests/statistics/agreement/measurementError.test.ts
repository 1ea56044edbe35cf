import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  blandAltman,
  intraclassCorrelation,
  meanSquares,
  seededRandom,
  smallestDetectableChange,
  standardDeviation,
  standardErrorOfMeasurement,
  standardErrorsFromCorrelation,
} from "../../../src/statistics/index.js";
import scipy from "../../fixtures/statistics/comparison.json" with { type: "json" };
import worked from "../../fixtures/statistics/workedExamples.json" with { type: "json" };

describe("Weir 2005, J Strength Cond Res 19:231, data set A, p. 236", () => {
  const { inputs, expected, recomputed } = worked["icc.weir"];
  it("standard error of measurement 7.6, from the mean squares", () => {
    const { value } = standardErrorOfMeasurement(inputs.trials, { type: "consistency" });
    expect(value.toFixed(1)).toBe(expected.sem.toFixed(1));
    expect(value).toBeCloseTo(recomputed.semFromError, 10);
  });
  it("standard errors of estimate 7.1 and prediction 10.2, from SD and ICC(3,1); SD √(1 − ICC) is 7.31, not 7.6", () => {
    const correlation = intraclassCorrelation(inputs.trials, { form: "ICC(3,1)" }).value as number;
    const { estimate, prediction, measurement } = standardErrorsFromCorrelation(
      standardDeviation(inputs.trials.flat()),
      correlation,
    );
    expect(estimate.toFixed(1)).toBe(expected.see.toFixed(1));
    expect(prediction.toFixed(1)).toBe(expected.sep.toFixed(1));
    expect(measurement.toFixed(2)).toBe("7.31");
  });
  it("smallest detectable change 20.95, same formula", () =>
    expect(
      smallestDetectableChange(standardErrorOfMeasurement(inputs.trials, { type: "consistency" }).value),
    ).toBeCloseTo(recomputed.mdc95, 10));
});

describe("published tables", () => {
  it("Sensors 2020, 20:4866, Table 3: SEM 4.4 gives 12.2, which is half the width of the limits −13.9 to 10.6", () => {
    const { inputs, expected, tolerance } = worked["mdc.sensors2020"];
    const change = smallestDetectableChange(inputs.sem);
    expect(change.toFixed(1)).toBe(expected.mdc95.toFixed(1));
    const half = ((inputs.limits[1] as number) - (inputs.limits[0] as number)) / 2;
    expect(Math.abs(change - half)).toBeLessThan(tolerance.mdc95);
    const centre = (inputs.pretest + inputs.retest) / 2;
    expect(Math.abs((100 * change) / centre - expected.mdcPercent)).toBeLessThan(tolerance.mdcPercent);
  });
  it("J Aging Res 2012:954378, Table 3: SEM 5.20 gives 14.42", () => {
    const { inputs, expected, tolerance } = worked["mdc.hindawi2012"];
    expect(Math.abs(smallestDetectableChange(inputs.sem) - expected.sdd)).toBeLessThan(tolerance.abs);
  });
  it("Arthritis Care Res 2021, 73:559, Table 2: SD 12.8 and ICC 0.90 give 4.1; 13.0 and 0.95 give 2.9", () => {
    const { inputs, expected, tolerance } = worked["sem.gaitspeed2021"];
    inputs.halfSd.forEach((half, i) => {
      const { measurement } = standardErrorsFromCorrelation(2 * half, inputs.icc[i] as number);
      expect(Math.abs(measurement - (expected.sem[i] as number))).toBeLessThan(tolerance.abs);
    });
  });
});

it("NumPy 2.4.6 on Shrout & Fleiss's table: SEM and smallest detectable change of both kinds", () => {
  const { data, computed } = scipy.shroutFleiss;
  const consistency = standardErrorOfMeasurement(data, { type: "consistency" }).value;
  const agreement = standardErrorOfMeasurement(data).value;
  expect(consistency).toBeCloseTo(computed.sem, 12);
  expect(agreement).toBeCloseTo(computed.semAgreement, 12);
  expect(smallestDetectableChange(consistency)).toBeCloseTo(computed.mdc95, 12);
  expect(smallestDetectableChange(agreement)).toBeCloseTo(computed.mdc95Agreement, 12);
});

describe("Bland & Altman", () => {
  it("1986, Lancet 327:307, 17 pairs: −2.1, SD 38.8, limits −79.7 and 75.5, the lower one's interval −114.3 to −45.1", () => {
    const { inputs, expected, tolerance, recomputed } = worked["blandaltman.1986"];
    const found = blandAltman(inputs.large, inputs.mini, { multiplier: 2, limitError: "short" });
    expect(found.n).toBe(17);
    expect(found.bias.toFixed(1)).toBe(expected.meanDifference.toFixed(1));
    expect(found.sd.toFixed(1)).toBe(expected.sd.toFixed(1));
    expect(Math.abs(found.low - expected.lower)).toBeLessThan(tolerance.lower);
    expect(Math.abs(found.high - expected.upper)).toBeLessThan(tolerance.upper);
    expect(Math.abs(found.lowInterval.low - (expected.lowerInterval[0] as number))).toBeLessThan(
      tolerance.lowerInterval,
    );
    expect(Math.abs(found.lowInterval.high - (expected.lowerInterval[1] as number))).toBeLessThan(
      tolerance.lowerInterval,
    );
    expect(found.low).toBeCloseTo(recomputed.lower, 9);
    expect(found.highInterval.high).toBeCloseTo(recomputed.upperInterval[1] as number, 8);
    expect(found.biasInterval.low).toBeCloseTo(recomputed.meanInterval[0] as number, 8);
  });
  it("SciPy 1.17.1: bias, limits and their intervals by the full formula", () => {
    const { blandAltman: exact } = scipy;
    const found = blandAltman(exact.method1, exact.method2);
    expect(found.bias).toBeCloseTo(exact.bias, 10);
    expect(found.sd).toBeCloseTo(exact.sd, 12);
    expect([found.low, found.high]).toEqual(exact.loa.map((end) => expect.closeTo(end, 10)));
    for (const [interval, numbers] of [
      [found.biasInterval, exact.biasCI],
      [found.lowInterval, exact.lowerLoaCI],
      [found.highInterval, exact.upperLoaCI],
    ] as const)
      expect([interval.low, interval.high]).toEqual(numbers.map((end) => expect.closeTo(end, 10)));
    const short = blandAltman(exact.method1, exact.method2, { limitError: "short" });
    expect((short.lowInterval.high - short.low) / (found.lowInterval.high - found.low)).toBeCloseTo(
      exact.loaSeApprox / exact.loaSe,
      10,
    );
  });
  it("refuses lists that do not belong together", () => {
    expect(() => blandAltman([1, 2, 3], [1, 2])).toThrow(
      expect.objectContaining({ code: "unequal-lengths" }),
    );
    expect(() => blandAltman([1], [1])).toThrow(expect.objectContaining({ code: "too-short" }));
  });
});

describe("laws", () => {
  const pairs = fc.array(
    fc.tuple(fc.double({ min: -50, max: 50, noNaN: true }), fc.double({ min: -50, max: 50, noNaN: true })),
    {
      minLength: 2,
      maxLength: 20,
    },
  );
  it("two trials, consistency: the smallest detectable change is half the width of the limits of agreement", () =>
    fc.assert(
      fc.property(pairs, (table) => {
        const { low, high } = blandAltman(
          table.map(([a]) => a),
          table.map(([, b]) => b),
        );
        const { value } = standardErrorOfMeasurement(table, { type: "consistency" });
        expect(smallestDetectableChange(value)).toBeCloseTo((high - low) / 2, 8);
      }),
    ));
  it("agreement is √(E + (J − E)/n), and never below zero", () =>
    fc.assert(
      fc.property(pairs, (table) => {
        const { error, betweenTrials, subjects } = meanSquares(table);
        const variance = (error as number) + (betweenTrials - (error as number)) / subjects;
        expect(standardErrorOfMeasurement(table).value ** 2).toBeCloseTo(variance, 6);
      }),
    ));
  it("means of four trials: half the change of single ones", () =>
    expect(smallestDetectableChange(3, { trials: 4 })).toBeCloseTo(smallestDetectableChange(3) / 2, 12));
  it("a single subject: the standard deviation of its trials; chi-square of 3 degrees of freedom, 0.2158 and 9.3484 (printed tables)", () => {
    const trials = [4, 6, 5, 9];
    const { value, interval } = standardErrorOfMeasurement([trials]);
    expect(value).toBeCloseTo(standardDeviation(trials), 12);
    expect(interval.low / value).toBeCloseTo(Math.sqrt(3 / 9.3484), 5);
    expect(interval.high / value).toBeCloseTo(Math.sqrt(3 / 0.2158), 3);
    expect(() => standardErrorOfMeasurement([trials], { type: "consistency" })).toThrow(
      expect.objectContaining({ code: "too-short" }),
    );
  });
});

describe("simulation, 2000 tables each: 95 % intervals cover the truth", () => {
  it.each([
    [8, 2, 0],
    [8, 3, 1],
    [20, 3, 2],
    [20, 3, 4],
    [5, 5, 4],
  ])("%i runners, %i trials, SD shared by a trial %f against 2 of error", (runners, trials, shared) => {
    const random = seededRandom(5);
    const truth = { consistency: 2, agreement: Math.hypot(2, shared) };
    const covered = { consistency: 0, agreement: 0 };
    const repeats = 2000;
    for (let r = 0; r < repeats; r++) {
      const common = Array.from({ length: trials }, () => shared * random.normal());
      const table = Array.from({ length: runners }, () => {
        const own = 10 * random.normal();
        return common.map((trial) => own + trial + 2 * random.normal());
      });
      for (const type of ["consistency", "agreement"] as const) {
        const { interval } = standardErrorOfMeasurement(table, { type });
        if (interval.low < truth[type] && truth[type] < interval.high) covered[type]++;
      }
    }
    expect(covered.consistency / repeats).toBeGreaterThan(0.935);
    expect(covered.consistency / repeats).toBeLessThan(0.965);
    expect(covered.agreement / repeats).toBeGreaterThan(0.935);
    expect(covered.agreement / repeats).toBeLessThan(0.985);
  });
});
