import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  analysisOfVariance,
  CORRELATION_FORMS,
  type CorrelationForm,
  intraclassCorrelation,
  meanSquares,
} from "../../../src/statistics/index.js";
import scipy from "../../fixtures/statistics/comparison.json" with { type: "json" };
import worked from "../../fixtures/statistics/workedExamples.json" with { type: "json" };

const KEYS = {
  "ICC(1,1)": "icc11",
  "ICC(2,1)": "icc21",
  "ICC(3,1)": "icc31",
  "ICC(1,k)": "icc1k",
  "ICC(2,k)": "icc2k",
  "ICC(3,k)": "icc3k",
} as const;
type Key = (typeof KEYS)[keyof typeof KEYS];
const forms = Object.entries(KEYS) as [CorrelationForm, Key][];
const ends = (form: CorrelationForm, table: number[][]) => {
  const { interval } = intraclassCorrelation(table, { form });
  return [interval?.low ?? Number.NaN, interval?.high ?? Number.NaN] as const;
};

describe("Shrout & Fleiss 1979, Psychol Bull 86:420, six targets and four judges", () => {
  const { inputs, expected } = worked["icc.shrout"];
  const printed = worked["icc.shrout.intervals"].expected;
  it("the six forms to the printed digits: 0.17, 0.29, 0.71, 0.44, 0.62, 0.91", () => {
    for (const [form, key] of forms)
      expect(intraclassCorrelation(inputs.ratings, { form }).value?.toFixed(2)).toBe(
        expected[key].toFixed(2),
      );
  });
  it("the six 95 % intervals, F and p as R's psych prints them", () => {
    for (const [form, key] of forms) {
      const [low, high] = ends(form, inputs.ratings);
      expect(Math.abs(low - (printed[key][0] as number)), form).toBeLessThan(0.0006);
      expect(Math.abs(high - (printed[key][1] as number)), form).toBeLessThan(0.006);
    }
    const one = intraclassCorrelation(inputs.ratings, { form: "ICC(1,1)" }).test;
    const three = intraclassCorrelation(inputs.ratings, { form: "ICC(3,1)" }).test;
    expect(one?.F.toFixed(1)).toBe("1.8");
    expect(one?.p.toFixed(5)).toBe("0.16477");
    expect(three?.F.toFixed(1)).toBe("11.0");
    expect(three?.p.toFixed(5)).toBe("0.00013");
  });
  it("SciPy 1.17.1, same formulas: mean squares, values and intervals to 12 digits", () => {
    const { computed, data } = scipy.shroutFleiss;
    const squares = meanSquares(data);
    expect(squares.betweenSubjects).toBeCloseTo(computed.MSB, 12);
    expect(squares.withinSubjects).toBeCloseTo(computed.MSW, 12);
    expect(squares.betweenTrials).toBeCloseTo(computed.MSJ, 12);
    expect(squares.error).toBeCloseTo(computed.MSE, 12);
    for (const [form, key] of forms)
      expect(intraclassCorrelation(data, { form }).value).toBeCloseTo(computed[key], 12);
    for (const [form, key] of [
      ["ICC(1,1)", "icc11CI"],
      ["ICC(2,1)", "icc21CI"],
      ["ICC(3,1)", "icc31CI"],
    ] as const) {
      const [low, high] = ends(form, data);
      expect(low).toBeCloseTo(computed[key][0] as number, 12);
      expect(high).toBeCloseTo(computed[key][1] as number, 12);
    }
  });
});

it("McGraw & Wong 1996, Psychol Methods 1:30, Table 6: six values, intervals, F and p to the printed digits", () => {
  const { inputs, expected, recomputed } = worked["icc.mcgraw"];
  for (const [form, key] of forms) {
    const { value } = intraclassCorrelation(inputs.ratings, { form });
    expect(Math.abs((value ?? Number.NaN) - expected[key]), form).toBeLessThan(0.0006);
    const [low, high] = ends(form, inputs.ratings);
    expect(Math.abs(low - (expected.intervals[key][0] as number)), form).toBeLessThan(0.0006);
    expect(Math.abs(high - (expected.intervals[key][1] as number)), form).toBeLessThan(0.0006);
    expect(low).toBeCloseTo(recomputed.intervals[key][0] as number, 10);
    expect(high).toBeCloseTo(recomputed.intervals[key][1] as number, 10);
  }
  const one = intraclassCorrelation(inputs.ratings, { form: "ICC(1,1)" }).test;
  const three = intraclassCorrelation(inputs.ratings, { form: "ICC(3,1)" }).test;
  expect(one?.F.toFixed(2)).toBe("6.18");
  expect(three?.F.toFixed(2)).toBe("6.00");
  expect(Math.abs((one?.p ?? 1) - expected.p1)).toBeLessThan(6e-6);
  expect(Math.abs((three?.p ?? 1) - expected.p3)).toBeLessThan(6e-6);
});

it("McGraw & Wong's names mean the same forms, and each result names both", () => {
  const table = worked["icc.shrout"].inputs.ratings;
  for (const [mcgraw, shrout] of [
    ["ICC(1)", "ICC(1,1)"],
    ["ICC(A,1)", "ICC(2,1)"],
    ["ICC(C,1)", "ICC(3,1)"],
    ["ICC(k)", "ICC(1,k)"],
    ["ICC(A,k)", "ICC(2,k)"],
    ["ICC(C,k)", "ICC(3,k)"],
  ] as const) {
    const found = intraclassCorrelation(table, { form: mcgraw });
    expect(found).toEqual(intraclassCorrelation(table, { form: shrout }));
    expect([found.form, found.alsoCalled]).toEqual([shrout, mcgraw]);
  }
  expect(CORRELATION_FORMS).toEqual(Object.keys(KEYS));
});

const tables = fc.tuple(fc.integer({ min: 2, max: 8 }), fc.integer({ min: 2, max: 5 })).chain(([n, k]) =>
  fc.array(fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: k, maxLength: k }), {
    minLength: n,
    maxLength: n,
  }),
);

describe("laws", () => {
  it("one-way analysis of variance of the rows has the mean squares between and within subjects", () =>
    fc.assert(
      fc.property(tables, (table) => {
        const squares = meanSquares(table);
        const anova = analysisOfVariance(table);
        expect(squares.withinSubjects).toBeCloseTo(anova.within.meanSquare, 6);
        expect(squares.betweenSubjects).toBeCloseTo(anova.between.meanSquare, 6);
      }),
    ));
  it("within = [between trials + (n − 1) error]/n", () =>
    fc.assert(
      fc.property(tables, (table) => {
        const { withinSubjects, betweenTrials, error, subjects } = meanSquares(table);
        expect(withinSubjects).toBeCloseTo(
          (betweenTrials + (subjects - 1) * (error as number)) / subjects,
          6,
        );
      }),
    ));
  it("a trial that is higher for everybody lowers agreement and leaves consistency", () => {
    const table = worked["icc.mcgraw"].inputs.ratings;
    const shifted = table.map(([a = 0, b = 0]) => [a, b + 30]);
    const value = (data: number[][], form: CorrelationForm) =>
      intraclassCorrelation(data, { form }).value as number;
    expect(value(shifted, "ICC(3,1)")).toBeCloseTo(value(table, "ICC(3,1)"), 10);
    expect(value(shifted, "ICC(2,1)")).toBeLessThan(value(table, "ICC(2,1)") - 0.2);
  });
  it("another unit, another zero, another order of subjects or trials change nothing", () =>
    fc.assert(
      fc.property(tables, (table) => {
        const moved = table.map((row) => row.map((x) => 3 * x + 7).reverse()).reverse();
        for (const form of CORRELATION_FORMS) {
          const one = intraclassCorrelation(table, { form }).value;
          const other = intraclassCorrelation(moved, { form }).value;
          if (one === null || other === null || Math.abs(one) > 1e3) continue;
          expect(Math.abs(other - one)).toBeLessThan(1e-6 * Math.max(1, Math.abs(one)));
        }
      }),
    ));
  it("the interval of a single trial holds the value, in every form", () =>
    fc.assert(
      fc.property(tables, fc.constantFrom("ICC(1,1)", "ICC(2,1)", "ICC(3,1)" as const), (table, form) => {
        const { value, interval } = intraclassCorrelation(table, { form: form as CorrelationForm });
        if (value === null || interval === null) return;
        expect(interval.low).toBeLessThanOrEqual(value + 1e-12);
        expect(interval.high).toBeGreaterThanOrEqual(value - 1e-12);
      }),
    ));
});

it("2026-11-25: a negative agreement had NaN in its interval, or a value outside it", () => {
  const tables = [
    [
      [-2329, -613],
      [-1276, -1811],
    ],
    [
      [10, 16],
      [11, 15.1],
    ],
  ];
  for (const table of tables) {
    const { value, interval } = intraclassCorrelation(table);
    expect(interval?.low).toBeLessThanOrEqual(value as number);
    expect(interval?.high).toBeGreaterThanOrEqual(value as number);
    const ofMeans = intraclassCorrelation(table, { form: "ICC(2,k)" }).interval;
    for (const end of [ofMeans?.low ?? 0, ofMeans?.high ?? 0]) expect(Number.isFinite(end)).toBe(true);
  }
});

it("trials that repeat exactly: correlation 1, interval 1 to 1, no F", () => {
  const table = [
    [1, 1],
    [2, 2],
    [5, 5],
  ];
  for (const form of CORRELATION_FORMS) {
    const { value, interval, test } = intraclassCorrelation(table, { form });
    expect(value).toBe(1);
    expect(interval).toEqual({ low: 1, high: 1, level: 0.95 });
    expect(test).toBeNull();
  }
});

it("a table of one value has none", () => {
  const table = [
    [0.1, 0.1, 0.1],
    [0.1, 0.1, 0.1],
  ];
  for (const form of CORRELATION_FORMS)
    expect(intraclassCorrelation(table, { form })).toMatchObject({ value: null, interval: null, test: null });
});

it.each([
  ["too-short", [[1, 2]]],
  ["too-short", [[1], [2]]],
  [
    "unequal-lengths",
    [
      [1, 2],
      [1, 2, 3],
    ],
  ],
  [
    "not-finite",
    [
      [1, 2],
      [1, Number.NaN],
    ],
  ],
  ["wrong-type", 3],
  ["wrong-type", [[1, 2], "ab"]],
] as const)("refuses a table with %s: %o", (code, table) =>
  expect(() => intraclassCorrelation(table as unknown as number[][])).toThrow(
    expect.objectContaining({ code }),
  ),
);
it("refuses another form and level, and names the forms", () => {
  const table = worked["icc.mcgraw"].inputs.ratings;
  expect(() => intraclassCorrelation(table, { form: "ICC(4,1)" as CorrelationForm })).toThrow(
    /ICC\(2,1\).*ICC\(A,1\)/,
  );
  expect(() => intraclassCorrelation(table, { level: 1 })).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  );
});
