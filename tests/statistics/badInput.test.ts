import { expect, it } from "vitest";
import {
  abcInterval,
  blandAltman,
  blockBootstrap,
  bootstrapInterval,
  bootstrapReplicates,
  cohensD,
  equivalenceTest,
  holmAdjusted,
  jackknife,
  linearRegression,
  mean,
  meanSquares,
  oneSampleTTest,
  pooledStandardDeviation,
  resampleIndices,
  type Sample,
  type Statistic,
  smallestDetectableChange,
  twoSampleTTest,
  type Values,
} from "../../src/statistics/index.js";

const x = [1, 2, 3, 4.5];
const y = [2, 1, 4, 3];
const huge = [1e308, -1e308, 1e308, 2];
const refuses = (call: () => unknown, code: string) =>
  expect(call).toThrow(expect.objectContaining({ code }));

it.each([undefined, null, 3, "mean", {}])(
  "2026-11-25: a statistic that is no function, %o, was a TypeError",
  (given) => {
    const statistic = given as unknown as Statistic<number> & ((weights: Float64Array) => number);
    refuses(() => bootstrapInterval(x, statistic), "wrong-type");
    refuses(() => bootstrapReplicates(x, statistic), "wrong-type");
    refuses(() => jackknife(x, statistic), "wrong-type");
    refuses(() => abcInterval(4, statistic), "wrong-type");
  },
);

it("2026-11-25: rows that are no lists were a TypeError", () => {
  for (const rows of [[null], [[0, 0], null], 5, { length: 3 }]) {
    const starts = rows as unknown as number[][];
    refuses(() => blockBootstrap(x, { blockLength: 2, starts }), "wrong-type");
    refuses(() => bootstrapReplicates(x, (items) => mean(items), { indices: starts }), "wrong-type");
  }
});

it("2026-11-25: an equivalence test without bounds was a TypeError", () => {
  for (const bounds of [undefined, null, 3])
    refuses(() => equivalenceTest(x, y, bounds as unknown as { low: number; high: number }), "wrong-type");
});

it("2026-11-25: 1e308 resamples were a RangeError", () => {
  const items = (values: readonly number[]) => mean(values);
  refuses(() => bootstrapInterval(x, items, { resamples: 1e308 }), "out-of-range");
  refuses(() => bootstrapReplicates(x, items, { resamples: 1_000_001 }), "out-of-range");
  refuses(() => blockBootstrap(x, { resamples: 1e308 }), "out-of-range");
  refuses(() => resampleIndices(4, 1e308, 1), "out-of-range");
  refuses(() => resampleIndices(1e308, 4, 1), "out-of-range");
  refuses(() => abcInterval(1e308, () => 1), "out-of-range");
});

it("2026-11-25: a list whose length is NaN passed for a list", () => {
  const list = { length: Number.NaN } as Values;
  refuses(() => cohensD(list, x), "wrong-type");
  refuses(() => pooledStandardDeviation(x, list), "wrong-type");
  refuses(() => holmAdjusted(list), "wrong-type");
  refuses(() => meanSquares({ length: Number.NaN }), "wrong-type");
  refuses(() => jackknife(list, (items) => mean(items)), "wrong-type");
});

it("2026-11-25: an object without a prototype among the values was a TypeError", () => {
  const odd = Object.create(null) as number;
  refuses(() => mean([odd, 1]), "wrong-type");
  refuses(() => jackknife(x, () => odd), "wrong-type");
});

it("2026-11-25: values of 1e308 gave Infinity, NaN and p 0.5", () => {
  refuses(() => oneSampleTTest(huge), "not-finite");
  refuses(() => twoSampleTTest(x, huge), "not-finite");
  refuses(() => blandAltman(huge, y), "not-finite");
  refuses(() => meanSquares([huge, y]), "not-finite");
  refuses(() => pooledStandardDeviation(huge, x), "not-finite");
  refuses(() => linearRegression(x, huge), "not-finite");
  refuses(() => pooledStandardDeviation({ n: 4, mean: 1, sd: 1e308 } as Sample, x), "out-of-range");
  refuses(() => equivalenceTest(x, y, { low: -1e308, high: 1e308 }), "out-of-range");
  refuses(() => smallestDetectableChange(1e308), "out-of-range");
  // The largest that are taken keep every digit.
  const scaled = (values: readonly number[]) => values.map((value) => 1e69 * value);
  expect(twoSampleTTest(scaled(x), scaled(y)).p).toBeCloseTo(twoSampleTTest(x, y).p ?? Number.NaN, 12);
  expect(linearRegression(scaled(x), scaled(y)).correlation).toBeCloseTo(
    linearRegression(x, y).correlation ?? Number.NaN,
    12,
  );
});
