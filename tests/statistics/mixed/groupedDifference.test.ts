import fc from "fast-check";
import { expect, it } from "vitest";
import { differenceInterval, groupedDifference, seededRandom } from "../../../src/statistics/index.js";
import scipy from "../../fixtures/statistics/groups.json" with { type: "json" };

it.each(scipy.cases.map((known, i) => ({ i, known })))(
  "SciPy 1.17.1, case $i: Student's interval of the group means",
  ({ known }) => {
    const found = groupedDifference(known.first, known.second, scipy.level);
    expect(found.difference).toBeCloseTo(known.difference, 12);
    expect(found.fromGroups?.low).toBeCloseTo(known.low, 9);
    expect(found.fromGroups?.high).toBeCloseTo(known.high, 9);
    // The variance of a group's mean counts the correlation of its values; independent ones are near it.
    expect(found.betweenGroups).toBeCloseTo(known.betweenIndependent, 1);
    expect(found.interval).toEqual(found.fromGroups);
  },
);

const group = fc.array(fc.double({ min: -9, max: 9, noNaN: true }), { minLength: 8, maxLength: 20 });

it("law: one group a condition is the interval of two series", () =>
  fc.assert(
    fc.property(group, group, fc.boolean(), (one, other, careful) => {
      const options = { correctBias: careful, shared: careful };
      const plain = differenceInterval(one, other, 0.95, options);
      const found = groupedDifference([one], [other], 0.95, options);
      expect(found.fromGroups).toBeNull();
      expect(found.betweenGroups).toBeNull();
      if (plain.interval === null) expect(found.interval).toBeNull();
      else expect((found.interval?.high ?? 0) / plain.interval.high).toBeCloseTo(1, 9);
    }),
  ));

it("property: swapping the conditions mirrors, and the interval is never narrower than the values make it", () =>
  fc.assert(
    fc.property(
      fc.array(group, { minLength: 1, maxLength: 4 }),
      fc.array(group, { minLength: 1, maxLength: 4 }),
      (one, other) => {
        const there = groupedDifference(one, other, 0.99);
        const back = groupedDifference(other, one, 0.99);
        expect(back.difference).toBeCloseTo(-there.difference, 12);
        expect(back.interval?.low ?? 0).toBeCloseTo(-(there.interval?.high ?? 0), 9);
        const width = (interval: { low: number; high: number } | null) =>
          interval === null ? 0 : interval.high - interval.low;
        expect(width(there.interval)).toBe(Math.max(width(there.fromGroups), width(there.fromValues)));
      },
    ),
  ));

it("covers whatever the groups vary by: 99 % intervals of 3 + 3 groups miss in at most about one of a hundred", () => {
  const random = seededRandom(8);
  for (const between of [0, 1, 3]) {
    let missed = 0;
    const condition = () =>
      Array.from({ length: 3 }, () => {
        const centre = between * random.normal();
        return Array.from({ length: 10 }, () => centre + random.normal());
      });
    for (let i = 0; i < 1500; i++) {
      const { low, high } = groupedDifference(condition(), condition(), 0.99).interval ?? { low: 0, high: 0 };
      if (low > 0 || high < 0) missed++;
    }
    expect(missed / 1500).toBeLessThan(0.019);
  }
});

it("groups that do not spread, and groups of one value", () => {
  expect(
    groupedDifference(
      [
        [2, 2],
        [2, 2],
      ],
      [[1, 1]],
      0.95,
    ).interval,
  ).toEqual({ low: 1, high: 1, level: 0.95 });
  const single = groupedDifference([[2], [3]], [[1], [2]], 0.95);
  expect(single.fromValues).toBeNull();
  expect(single.interval).toEqual(single.fromGroups);
  expect(groupedDifference([[2]], [[1]], 0.95).interval).toBeNull();
});

it.each([
  [[], [[1, 2]], "too-short"],
  [[[1, 2]], [[]], "too-short"],
  [[[1, Number.NaN]], [[1, 2]], "not-finite"],
])("refuses %o and %o: %s", (one, other, code) =>
  expect(() => groupedDifference(one, other, 0.95)).toThrow(expect.objectContaining({ code })),
);
it("refuses a level of 1", () =>
  expect(() => groupedDifference([[1, 2]], [[1, 2]], 1)).toThrow(
    expect.objectContaining({ code: "out-of-range" }),
  ));
