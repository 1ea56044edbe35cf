import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type Field,
  fieldClusterProbability,
  fieldExceedance,
  fieldThreshold,
} from "../../../src/statistics/index.js";
import published from "../../fixtures/statistics/fieldExamples.json" with { type: "json" };
import simulated from "../../fixtures/statistics/fields.json" with { type: "json" };

interface Example {
  readonly id: string;
  readonly source: string;
  readonly inputs: {
    readonly alpha?: number;
    readonly df?: number | readonly number[];
    readonly resels?: number;
    readonly twoSided?: boolean;
    readonly u?: number;
    readonly nodes?: number;
    readonly fwhm?: number;
  };
  readonly expected: Readonly<Record<string, number>>;
  readonly tolerance: { readonly abs: number };
  readonly recomputed: Readonly<Record<string, number>>;
}

const examples = published.examples as readonly Example[];
const exactly = { rule: "random field" } as const;

/** A field of 101 points with the resels that are printed. */
function fieldOf({ df, resels = 1 }: Example["inputs"]): Field {
  const extent = { nodes: 101, fullWidthAtHalfMaximum: 100 / resels };
  return typeof df === "number"
    ? { kind: "t", degreesOfFreedom: df, ...extent }
    : { kind: "F", degreesOfFreedom: df as [number, number], ...extent };
}

describe("published thresholds", () => {
  const given = examples.filter(({ expected }) => "threshold" in expected);
  it("are five", () => expect(given).toHaveLength(5));
  it.each(given)("$id: $source", ({ inputs, expected, tolerance, recomputed }) => {
    const options = { level: inputs.alpha, twoSided: inputs.twoSided ?? false, ...exactly };
    const { threshold, rule } = fieldThreshold(fieldOf(inputs), options);
    expect(rule).toBe("random field");
    expect(Math.abs(threshold - (expected.threshold as number))).toBeLessThanOrEqual(tolerance.abs);
    expect(threshold).toBeCloseTo(recomputed.threshold as number, 9);
  });
});

describe("published probabilities", () => {
  const given = examples.filter(({ id }) => id.startsWith("field.norm"));
  it("are five", () => expect(given).toHaveLength(5));
  const normal = ({ nodes = 0, fwhm = 0 }: Example["inputs"]): Field => ({
    kind: "gaussian",
    nodes,
    fullWidthAtHalfMaximum: fwhm,
  });
  it.each(given)("$id: $source", ({ inputs, expected, tolerance, recomputed }) => {
    const p = fieldExceedance(inputs.u as number, normal(inputs), exactly);
    expect(Math.abs(p - (expected.p as number))).toBeLessThanOrEqual(tolerance.abs);
    expect(p).toBeCloseTo(recomputed.p as number, 9);
  });
  it("field.bonferroni: the smaller of both for a rough curve", () => {
    const { inputs, recomputed, expected } = examples.find(({ id }) => id === "field.bonferroni") as Example;
    const u = inputs.u as number;
    expect(fieldExceedance(u, normal(inputs), exactly)).toBeCloseTo(recomputed.field as number, 9);
    expect(fieldExceedance(u, normal(inputs))).toBeCloseTo(recomputed.withBonferroni as number, 9);
    expect(fieldExceedance(u, normal(inputs))).toBeCloseTo(expected.withBonferroni as number, 3);
    expect(fieldExceedance(u, normal(inputs), { twoSided: true })).toBeCloseTo(
      2 * (recomputed.withBonferroni as number),
      9,
    );
  });
});

describe("SciPy 1.17.1, root finding", () => {
  it.each(published.randomField.rows)("df $df, FWHM $fwhm", (row) => {
    const { df, nodes, fwhm } = row;
    const field: Field = { kind: "t", degreesOfFreedom: df, nodes, fullWidthAtHalfMaximum: fwhm };
    expect(fieldThreshold(field, { twoSided: false }).threshold).toBeCloseTo(row.oneTailed, 9);
    expect(fieldThreshold(field).threshold).toBeCloseTo(row.twoTailed, 9);
  });
});

describe("simulation with NumPy 2.4.6", () => {
  it("95 % quantile of the largest t of 6000 curves, 3.68, against 3.62: within 2 %", () => {
    const { df, nodes, fwhm, q95 } = published.randomField.monteCarlo;
    const field: Field = { kind: "t", degreesOfFreedom: df, nodes, fullWidthAtHalfMaximum: fwhm };
    expect(Math.abs(fieldThreshold(field, { twoSided: false }).threshold / q95 - 1)).toBeLessThan(0.02);
  });
  // Standard error of the shares about 0.001.
  it.each(simulated.ratios)(
    "F of $df above $threshold in 20 000 curves",
    ({ df, fwhm, threshold, share }) => {
      const field: Field = {
        kind: "F",
        degreesOfFreedom: df as [number, number],
        nodes: 101,
        fullWidthAtHalfMaximum: fwhm,
      };
      expect(Math.abs(fieldExceedance(threshold, field, exactly) - share)).toBeLessThan(0.004);
    },
  );
  it.each(simulated.clusters)(
    "widths above $threshold of 20 000 curves, $kind $df, FWHM $fwhm: within 0.005",
    ({ kind, df, fwhm, threshold, extents, shares }) => {
      const field = {
        kind,
        degreesOfFreedom: df,
        nodes: 101,
        fullWidthAtHalfMaximum: fwhm,
      } as Field;
      extents.forEach((extent, k) => {
        const p = fieldClusterProbability(extent, threshold, field, { twoSided: false });
        expect(Math.abs(p - (shares[k] as number)), `${extent} points`).toBeLessThan(0.005);
      });
    },
  );
});

const fields = fc.record({
  kind: fc.constant("t" as const),
  degreesOfFreedom: fc.double({ min: 3, max: 200, noNaN: true }),
  nodes: fc.integer({ min: 11, max: 501 }),
  fullWidthAtHalfMaximum: fc.double({ min: 0.5, max: 100, noNaN: true }),
});
const levels = fc.double({ min: 0.001, max: 0.3, noNaN: true });

it("property: the threshold's exceedance is the level, by each rule and the smaller of both", () =>
  fc.assert(
    fc.property(fields, levels, fc.boolean(), (field, level, twoSided) => {
      for (const rule of ["random field", "Bonferroni", "smaller"] as const) {
        const { threshold } = fieldThreshold(field, { level, twoSided, rule });
        expect(fieldExceedance(threshold, field, { twoSided, rule }) / level).toBeCloseTo(1, 8);
      }
    }),
  ));

it("property: a stretch of no width is as likely as the threshold is crossed, and wider ones less", () =>
  fc.assert(
    fc.property(fields, levels, fc.double({ min: 0, max: 20, noNaN: true }), (field, level, extent) => {
      const { threshold } = fieldThreshold(field, { level, rule: "random field" });
      const none = fieldClusterProbability(0, threshold, field);
      expect(none).toBeLessThanOrEqual(level * (1 + 1e-9));
      expect(fieldClusterProbability(extent, threshold, field)).toBeLessThanOrEqual(none);
    }),
  ));

it("rough curves take Bonferroni's threshold, smooth ones that of random field theory", () => {
  const field = { kind: "t", degreesOfFreedom: 30, nodes: 101 } as const;
  expect(fieldThreshold({ ...field, fullWidthAtHalfMaximum: 1 }).rule).toBe("Bonferroni");
  expect(fieldThreshold({ ...field, fullWidthAtHalfMaximum: 10 }).rule).toBe("random field");
});

const good = { kind: "t", degreesOfFreedom: 9, nodes: 101, fullWidthAtHalfMaximum: 15 } as const;
it.each([
  ["out-of-range", { ...good, degreesOfFreedom: 1 }, {}],
  ["out-of-range", { ...good, nodes: 1 }, {}],
  ["out-of-range", { ...good, fullWidthAtHalfMaximum: 0 }, {}],
  ["out-of-range", { ...good, kind: "z" }, {}],
  ["out-of-range", good, { level: 0.5 }],
  ["out-of-range", good, { rule: "both" }],
  ["not-finite", { ...good, degreesOfFreedom: Number.NaN }, {}],
  ["wrong-type", { ...good, kind: "F" }, { twoSided: false }],
  ["wrong-type", null, {}],
  ["out-of-range", { ...good, kind: "F", degreesOfFreedom: [1.5, 16] }, { twoSided: false }],
  ["conflict", { ...good, kind: "F", degreesOfFreedom: [1, 16] }, { twoSided: true }],
  ["unknown-option", good, { alpha: 0.05 }],
])("refuses with %s: %o %o", (code, field, options) =>
  expect(() => fieldThreshold(field as Field, options as object)).toThrow(expect.objectContaining({ code })),
);
