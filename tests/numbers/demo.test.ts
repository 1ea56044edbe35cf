import { expect, it } from "vitest";
import { demoNumbers } from "../../scripts/numbers/demoNumbers.js";
import comparison from "../fixtures/numbers/comparison.json" with { type: "json" };
import trial from "../fixtures/numbers/trial.json" with { type: "json" };

/**
 * Law of this library: a number does not move unawares. The fixtures are its own earlier output, no proof that a number is
 * right; `npm run numbers` writes them anew when one was meant to move. The version may differ.
 */
function moved(now: unknown, before: unknown, path: string): string[] {
  if (typeof now === "number" && typeof before === "number") {
    const tolerance = 1e-9 * Math.max(Math.abs(now), Math.abs(before), 1e-6);
    return Math.abs(now - before) <= tolerance ? [] : [`${path}: ${before} is now ${now}`];
  }
  if (typeof now !== "object" || typeof before !== "object" || now === null || before === null) {
    return Object.is(now, before) ? [] : [`${path}: ${String(before)} is now ${String(now)}`];
  }
  const fields = new Set([...Object.keys(now), ...Object.keys(before)]);
  const at = (of: object, field: string) => (of as Readonly<Record<string, unknown>>)[field];
  fields.delete("version");
  return [...fields].flatMap((field) => moved(at(now, field), at(before, field), `${path}.${field}`));
}

const numbers = JSON.parse(JSON.stringify(demoNumbers())) as { trial: unknown; comparison: unknown };

it("the demo's trial has the numbers it had", () => {
  expect(moved(numbers.trial, trial, "trial").slice(0, 20)).toEqual([]);
});

it("the demo's comparison has the numbers it had", () => {
  expect(moved(numbers.comparison, comparison, "comparison").slice(0, 20)).toEqual([]);
});

it.each([
  [{ a: [1, 2] }, { a: [1, 2 + 1e-8] }],
  [{ a: 1 }, { a: 1, b: null }],
  [{ a: "lower" }, { a: "higher" }],
  [{ a: 0 }, { a: null }],
])("%o is seen to differ from %o", (now, before) => expect(moved(now, before, "x")).toHaveLength(1));
