import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { metricFiles } from "../../scripts/metrics/metricFiles.js";
import * as metrics from "../../src/metrics/index.js";
import { CATALOGUE, METRIC_INFLUENCES } from "../../src/metrics/index.js";

/** Law: a metric of the catalogue has a function, a section of the page of metrics and a proof: a row of the accuracy page. */
const page = readFileSync("docs/metrics.md", "utf8");
const accuracy = readFileSync("docs/accuracy.md", "utf8");
const exported = metrics as unknown as Readonly<Record<string, unknown>>;

interface Lacks {
  readonly id: string;
  readonly what: readonly string[];
}

function lacks(
  ids: readonly string[],
  functions: typeof exported,
  pages: { page: string; accuracy: string },
) {
  return ids.flatMap((id): Lacks[] => {
    const what = [
      ...(typeof functions[id] === "function" ? [] : ["function"]),
      ...(pages.page.split("\n").includes(`### ${id}`) ? [] : ["section"]),
      // Two tables of truth: without and with noise; a row has a number of contacts and of the error.
      ...(rowsOf(pages.accuracy, id) >= 2 ? [] : ["proof"]),
    ];
    return what.length === 0 ? [] : [{ id, what }];
  });
}

function rowsOf(text: string, id: string): number {
  const row = new RegExp(`^\\| \`${id}\`[^|]*\\| [1-9]\\d* \\| [^|]+ \\|( −?[\\d.]+(e-?\\d+)? \\|){3}$`);
  return text.split("\n").filter((line) => row.test(line)).length;
}

it("no metric lacks its function, its section or its proof", () => {
  const ids = CATALOGUE.map(({ id }) => id);
  expect(ids.length).toBeGreaterThan(50);
  expect(lacks(ids, exported, { page, accuracy })).toEqual([]);
});

it("finds what lacks", () => {
  const none = { page: "", accuracy: "| `cadence` | 0 | 170 steps/min | 0 | 0 | 0 |" };
  expect(lacks(["cadence"], {}, none)).toEqual([{ id: "cadence", what: ["function", "section", "proof"] }]);
  expect(lacks(["cadence"], exported, { page, accuracy })).toEqual([]);
});

describe("what is written from the doc comments and the catalogue is current; `npm run metrics` writes it anew", () => {
  it.each(metricFiles(`${process.cwd()}/`))("$path", ({ path, text }) =>
    expect(readFileSync(path, "utf8")).toBe(text),
  );
});

it("influences are of metrics that there are, one sentence part each, with a source", () => {
  for (const [id, influences] of Object.entries(METRIC_INFLUENCES)) {
    expect(CATALOGUE.map((entry) => entry.id)).toContain(id);
    for (const { what, source } of influences ?? []) {
      expect(what).toMatch(/^[a-z\d].*[^.]$/);
      expect(source).toMatch(/\d{4}|law|computed|doi:/);
    }
  }
});
