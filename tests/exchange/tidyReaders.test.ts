import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { metricsToCsv, stepsToCsv, summaryToCsv } from "../../src/exchange/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import pandas from "../fixtures/exchange/pandas.json" with { type: "json" };
import r from "../fixtures/exchange/r.json" with { type: "json" };
import { TIDY_COMPARISON, TIDY_TRIAL } from "./tidy.js";

/** What pandas 2.2.3 and R 4.2.2 made of the files, by tests/fixtures/exchange/scripts. */
const READERS = { pandas, R: r } as const;
const WRITTEN = {
  steps: stepsToCsv(TIDY_TRIAL),
  summary: summaryToCsv(TIDY_TRIAL),
  metrics: metricsToCsv(TIDY_COMPARISON),
} as const;
type Table = keyof typeof WRITTEN;
const TABLES = Object.keys(WRITTEN) as Table[];

it.each(TABLES)("%s: the file that was read is the one that is written", (table) => {
  expect(WRITTEN[table]).toBe(readFileSync(`tests/fixtures/exchange/${table}.csv`, "utf8"));
});

/** A cell as both readers must have it: a number, a word, true or false, or nothing. */
type Value = number | string | boolean | null;

describe.each(["pandas", "R"] as const)("%s reads, with its defaults but for R's na.strings", (reader) => {
  const read = READERS[reader] as unknown as Record<
    Table,
    { types: Record<string, string>; columns: Record<string, Value[]> }
  >;
  const columnOf = (table: Table, name: string): Value[] => read[table].columns[name] as Value[];

  it("one heading row and a type for each column", () => {
    expect(Object.keys(read.steps.types)).toHaveLength(3 + CATALOGUE.length + 1);
    expect(read.steps.types).toMatchObject({
      side: "text",
      initialContact: "number",
      toeOff: "number",
      contactTime: "number",
      averageLoadingRate: "number",
      "'=own": "number",
    });
    expect(read.summary.types).toMatchObject({
      metric: "text",
      unit: "text",
      normalised: "truth",
      side: "text",
      n: "number",
      mean: "number",
      sd: "number",
      level: "number",
    });
    expect(read.metrics.types).toMatchObject({
      metric: "text",
      per: "text",
      component: "text",
      reading: "text",
      baselineN: "number",
      percent: "number",
      smallestDetectableChangeSource: "text",
      effectSize: "number",
      normalisedUnit: "text",
      normalisedLow: "number",
    });
  });

  it("numbers to 12 digits, large and small, and nothing where nothing is", () => {
    expect(columnOf("steps", "contactTime")).toEqual([0.25, 0.333333333333, 0.25]);
    expect(columnOf("steps", "averageLoadingRate")).toEqual([1234567.25, null, 70000]);
    expect(columnOf("steps", "'=own")).toEqual([-1, 1e-9, null]);
    expect(columnOf("summary", "sd")).toEqual([0.03125, null, 0.0416666666667, 154320.90625, 10]);
    expect(columnOf("summary", "normalised")).toEqual([false, false, false, false, true]);
    expect(columnOf("metrics", "baselineMean")).toEqual([1700.5, 2000000, 0.25]);
    expect(columnOf("metrics", "effectSize")).toEqual([-1.25, null, null]);
    expect(columnOf("metrics", "normalisedUnit")).toEqual(["BW", null, null]);
  });

  it("texts with commas, quotes and line ends, and none that a table program would run", () => {
    const source = 'own table, "day to day"; =SUM(A1)';
    expect(columnOf("metrics", "smallestDetectableChangeSource")).toEqual([
      source,
      source,
      "'=1+1\nin two lines",
    ]);
    for (const table of TABLES) {
      for (const column of Object.entries(read[table].columns).flat(2)) {
        if (typeof column === "string") expect(column).not.toMatch(/^[=+\-@\t\r\n]/);
      }
    }
  });
});
