import { describe, expect, it } from "vitest";
import { accuracyPage } from "./accuracyPage.js";
import { comparisons } from "./comparisons.js";

const all = comparisons();

describe.each(all)("$what against $against", ({ cases }) => {
  it.each(cases)("$name", ({ error, allowed }) => expect(error).toBeLessThanOrEqual(allowed));
});

it("as many cases as promised: 200 designs and 60 filtered signals or more, none of them twice", () => {
  const named = (what: RegExp, against: RegExp) =>
    all
      .filter((one) => what.test(one.what) && against.test(one.against))
      .flatMap(({ cases }) => cases.map(({ name }) => name));
  const designs = named(/complex response/, /SciPy/);
  const filtered = named(/filterZeroPhase`, ends/, /SciPy/);
  expect(new Set(designs).size).toBeGreaterThanOrEqual(200);
  expect(new Set(filtered).size).toBe(filtered.length);
  expect(filtered.length).toBeGreaterThanOrEqual(60);
});

it("the accuracy page says what these comparisons say", async () =>
  expect(accuracyPage()).toMatchFileSnapshot("../../docs/accuracy-filters.md"));
