import { expect, it } from "vitest";
import { isExpected, readExpected } from "../../scripts/docs/expected.js";
import { runExample, type Scope } from "../../scripts/docs/runExample.js";

/** Law: an example passes where it gives what its comment shows, to the digits shown, and nowhere else. */
const holds = (actual: unknown, comment: string): boolean => {
  const expected = readExpected(comment);
  return expected !== null && isExpected(actual, expected);
};

it.each([
  [63018.4, "63018 N/s on the fixture"],
  [-0.0625, "−0.06"],
  [0.2449, "≈ 0.245 s"],
  [1.5e-7, "1.5e-7"],
  ["belt", '"belt"'],
  [null, "null: no impact peak"],
  [[1, 2.04], "[1, 2.0]"],
  [new Float64Array([1, 2, 3]), "Float64Array [1, 2, …]"],
  [{ n: 3, mean: 2.5, sd: 1 }, "{ n: 3, mean: 2.5, … }"],
])("takes %o for // %s", (actual, comment) => expect(holds(actual, comment)).toBe(true));

it.each([
  [63018.6, "63018"],
  [0.246, "0.245"],
  [Number.NaN, "0"],
  ["belt", '"ground"'],
  [undefined, "null"],
  [[1, 2, 3], "[1, 2]"],
  [{ n: 3, mean: 2.5 }, "{ n: 3 }"],
  [{ n: 3 }, "{ n: 3, mean: 2.5, … }"],
  ["1", "1"],
  [1, "a number"],
])("refuses %o for // %s", (actual, comment) => expect(holds(actual, comment)).toBe(false));

const scope: Scope = {
  entries: new Map([["kit", { double: (x: number) => 2 * x }]]),
  names: {
    double: (x: number) => 2 * x,
    refuse: () => {
      throw Object.assign(new Error("no"), { code: "out-of-range" });
    },
  },
};

it("runs every statement and checks each line with a comment", () => {
  const text =
    'import { double } from "kit";\nconst three: number = 3;\ndouble(three) // 6\nrefuse() // throws out-of-range';
  expect(runExample(text, scope)).toEqual({ lines: 2, problems: [] });
});

it.each([
  ["double(3) // 7", /gives 6/],
  ["double(3) // six", /states no value/],
  ["double(3) // throws out-of-range", /throws no out-of-range/],
  ["refuse() // throws not-finite", /throws Error: no/],
  ["missing(3) // 6", /missing is not defined/],
  ['import { triple } from "kit";', /does not export/],
  ['import { double } from "toolbox";', /no entry/],
])("finds what is wrong with %s", (text, problem) =>
  expect(runExample(text, scope).problems.join()).toMatch(problem),
);
