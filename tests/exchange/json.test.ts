import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { COMPARISON_SHAPE } from "../../src/exchange/comparisonShape.js";
import { readComparison, readJson, readReliability, readTrial, writeJson } from "../../src/exchange/index.js";
import { RELIABILITY_SHAPE } from "../../src/exchange/reliabilityShape.js";
import { RUNNERS_SHAPE } from "../../src/exchange/runnersShape.js";
import { SESSIONS_SHAPE } from "../../src/exchange/sessionsShape.js";
import { TRIAL_SHAPE } from "../../src/exchange/trialShape.js";
import type { Trial } from "../../src/trial/index.js";
import { isGaitKineticsError } from "../../src/units/index.js";
import { arbitraryOf } from "./arbitraryOf.js";
import { COMPARISONS, RELIABILITIES, TRIALS } from "./documents.js";

const DOCUMENTS = [...Object.values(TRIALS), ...Object.values(COMPARISONS)];

/** A value with each number at 12 significant digits, as JSON can hold it. */
function rounded(value: unknown): unknown {
  if (typeof value === "number") return Number(value.toPrecision(12)) + 0;
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, entry]) => [name, rounded(entry)]));
}

describe("writeJson and readJson", () => {
  it("give back what the library computes, to 12 significant digits", () => {
    for (const document of DOCUMENTS) {
      const text = writeJson(document);
      expect(readJson(text)).toEqual(rounded(document));
      const numbers = text.match(/(?<=[:,[])-?\d[\d.e+-]*/g) ?? [];
      const digits = (number: string) => number.replace(/e.*|[.-]/g, "").replace(/^0+|0+$/g, "").length;
      expect(numbers.length).toBeGreaterThan(100);
      expect(numbers.filter((number) => digits(number) > 12)).toEqual([]);
    }
  });

  it.each([
    ["trial", TRIAL_SHAPE],
    ["comparison", COMPARISON_SHAPE],
    ["reliability", RELIABILITY_SHAPE],
    ["comparison of runners", RUNNERS_SHAPE],
    ["series of sessions", SESSIONS_SHAPE],
  ])("property: any %s comes back as written, and is written again in the same bytes", (_, shape) =>
    fc.assert(
      fc.property(arbitraryOf(shape), (document) => {
        const text = writeJson(document as Trial);
        const back = readJson(text);
        expect(back).toStrictEqual(rounded(document));
        expect(writeJson(back)).toBe(text);
      }),
      { numRuns: 200, seed: 5 },
    ),
  );

  it("leaves the value alone and leaves out what is undefined", () => {
    const before = JSON.stringify(TRIALS.whole);
    const { metrics } = TRIALS.whole.summary;
    const summary = { ...TRIALS.whole.summary, metrics: { ...metrics, contactTime: undefined } };
    const text = writeJson({ ...TRIALS.whole, summary });
    expect(readTrial(text).summary.metrics).not.toHaveProperty("contactTime");
    expect(JSON.stringify(TRIALS.whole)).toBe(before);
  });

  it.each<[string, unknown, object]>([
    ["no object", null, { code: "wrong-type", argument: "value" }],
    ["another object", { schema: "trial" }, { code: "wrong-type", argument: "value" }],
    [
      "a NaN, which JSON would turn into null",
      { ...TRIALS.whole, settings: { ...TRIALS.whole.settings, speed: Number.NaN } },
      { code: "not-finite", where: "trial.settings.speed" },
    ],
    [
      "an infinite number",
      { ...COMPARISONS.whole, baseline: { ...COMPARISONS.whole.baseline, mass: Number.POSITIVE_INFINITY } },
      { code: "not-finite", where: "comparison.baseline.mass" },
    ],
    [
      "a list of samples",
      { ...TRIALS.whole, curves: { ...TRIALS.whole.curves, percent: new Float64Array(101) } },
      { code: "wrong-type", where: "trial.curves.percent" },
    ],
    [
      "a missing field",
      { ...TRIALS.whole, steps: undefined },
      { code: "missing-value", where: "trial.steps" },
    ],
  ])("writes nothing for %s", (_, value, details) =>
    expect(() => writeJson(value as Trial)).toThrow(expect.objectContaining(details)),
  );
});

describe("readJson refuses", () => {
  const text = writeJson(TRIALS.whole);
  const replaced = (from: string | RegExp, to: string): string => {
    const changed = text.replace(from, to);
    expect(changed).not.toBe(text);
    return changed;
  };

  it.each<[string, string, string | undefined, RegExp]>([
    [
      "a number as a word",
      replaced(/"sampleRate":\d+/, '"sampleRate":"NaN"'),
      "trial.settings.sampleRate",
      /"NaN"; a finite number from 0 is needed/,
    ],
    [
      "a number beyond the range of numbers",
      replaced(/"gravity":[\d.]+/, '"gravity":1e999'),
      "trial.settings.gravity",
      /Infinity/,
    ],
    [
      "NaN as JavaScript writes it",
      replaced(/"gravity":[\d.]+/, '"gravity":NaN'),
      undefined,
      /is no JSON .*never NaN/,
    ],
    [
      "a word that is none of a list",
      replaced('"side":"left"', '"side":"middle"'),
      "trial.contacts[1].side",
      /"middle"; "left" or "right" or "unknown" is needed/,
    ],
    [
      "null where a value is needed",
      replaced(/"level":[\d.]+/, '"level":null'),
      "trial.settings.level",
      /is null/,
    ],
    [
      "a list where an object is needed",
      replaced('"subject":{', '"subject":[],"x":{'),
      "trial.subject",
      /is a list; an object is needed/,
    ],
    [
      "an unknown field",
      replaced('"subject":{', '"subject":{"weight":700,'),
      "trial.subject.weight",
      /does not know; it knows mass, height/,
    ],
    ["a missing field", replaced(/"gravity":[\d.]+,/, ""), "trial.settings.gravity", /has no "gravity"/],
    [
      "a curve of another length",
      replaced('"percent":[0,', '"percent":['),
      "trial.curves.percent",
      /has 100 entries; 101 are needed/,
    ],
    [
      "a name that reaches the prototype",
      replaced('"metrics":{', '"metrics":{"__proto__":{"n":1},'),
      "trial.summary.metrics.__proto__",
      /never taken/,
    ],
    [
      "a constructor",
      replaced('"values":{', '"values":{"constructor":1,'),
      "trial.steps[0].values.constructor",
      /never taken/,
    ],
    [
      "another version",
      replaced("trial/1", "trial/2"),
      "schema",
      /"gait-kinetics\/trial\/2"; this version reads gait-kinetics\/trial\/1, /,
    ],
    ["an inherited name for a schema", '{"schema":"toString"}', "schema", /"toString"/],
    ["no schema", "{}", "schema", /names no schema/],
    ["a bare number", "1", "schema", /names no schema/],
    ["nothing", "", undefined, /is no JSON/],
    ["a cut text", text.slice(0, 1000), undefined, /is no JSON/],
    ["huge nesting of lists", "[".repeat(1_000_000), "character 33", /deeper than 32/],
    ["huge nesting of objects", '{"a":'.repeat(100_000), "character 161", /deeper than 32/],
  ])("%s", (_, changed, where, message) => {
    try {
      readJson(changed);
    } catch (caught) {
      if (!isGaitKineticsError(caught)) throw caught;
      expect(caught.code).toBe("unreadable-file");
      expect(caught.where).toBe(where);
      expect(caught.message).toMatch(message);
      expect(caught.message).not.toMatch(/[\r\n]/);
      return;
    }
    expect.unreachable("it was read");
  });

  it("what is no text", () =>
    expect(() => readJson(new Uint8Array(3) as unknown as string)).toThrow(
      expect.objectContaining({ code: "wrong-type" }),
    ));

  it("nothing for brackets inside a text, a byte order mark, blanks and line ends", () => {
    const cautions = [{ code: "own", message: '[{"'.repeat(100) }];
    const odd = writeJson({ ...TRIALS.whole, cautions });
    expect(readTrial(`\uFEFF ${odd}\r\n`).cautions).toEqual(cautions);
  });

  it("a comparison where a trial is needed, and a trial where a comparison is", () => {
    const comparison = writeJson(COMPARISONS.whole);
    expect(readComparison(comparison).schema).toBe("gait-kinetics/comparison/1");
    expect(() => readTrial(comparison)).toThrow(/holds a comparison; a trial is needed/);
    expect(() => readComparison(text)).toThrow(/holds a trial; a comparison is needed/);
    const repeats = writeJson(RELIABILITIES.twoRunners);
    expect(readReliability(repeats)).toEqual(rounded(RELIABILITIES.twoRunners));
    expect(() => readReliability(text)).toThrow(/holds a trial; a reliability is needed/);
    expect(() => readTrial(repeats)).toThrow(/holds a reliability; a trial is needed/);
  });
});

it("a result from another person's JSON reaches no prototype", () => {
  const text = writeJson(TRIALS.whole).replace('"subject":{', '"subject":{"__proto__":{"polluted":true},');
  expect(() => readJson(text)).toThrow(expect.objectContaining({ code: "unreadable-file" }));
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
});
