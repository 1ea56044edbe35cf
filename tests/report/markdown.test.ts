import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { comparisonMarkdown, trialMarkdown } from "../../src/report/index.js";
import { escapeMarkdown } from "../../src/report/text/escapeMarkdown.js";
import { exampleAlternative, exampleComparison, exampleCurves, exampleTrial } from "./examples.js";

const cellsOf = (line: string) =>
  line
    .split(/(?<!\\)\|/)
    .slice(1, -1)
    .map((cell) => cell.trim());

describe("a comparison as Markdown", () => {
  const text = comparisonMarkdown(exampleComparison({ alternatives: [exampleAlternative()] }), {
    names: { baseline: "usual.csv", changed: "further-ahead.csv" },
    curves: [exampleCurves()],
  });
  const lines = text.split("\n");

  it("says the answer under one heading of the first level, its uncertainty behind it", () => {
    expect(lines.filter((line) => /^# /.test(line))).toEqual(["# usual.csv compared with further-ahead.csv"]);
    expect(lines[2]).toMatch(/^The load shifted/);
    expect(lines[4]?.replaceAll("\u00a0", " ")).toMatch(/^The 99 % intervals are: vertical −7\.1 to −5\.4/);
  });

  it("has tables whose rows are as long as their headings", () => {
    const tables = text.split("\n\n").filter((block) => block.startsWith("|"));
    expect(tables.length).toBeGreaterThanOrEqual(3);
    for (const table of tables) {
      const widths = table
        .trim()
        .split("\n")
        .map((line) => cellsOf(line).length);
      expect(new Set(widths).size).toBe(1);
    }
  });

  it("shows a reading with its numbers, what it rests on, clusters, and what else could be tried with its source", () => {
    expect(lines.map((line) => cellsOf(line).join(" "))).toContain(
      "vertical peak vertical force, N, per step lower 1710 1603 -107 -118 to -96 -6.3",
    );
    expect(lines.map((line) => cellsOf(line).join(" "))).toContain(
      "peak vertical force, N -121 to -93  11 171 yes",
    );
    expect(text.replaceAll("\u00a0", " ")).toContain("40.2 to 61.7 % of stance (101 to 154 ms)");
    expect(text).toContain(
      "- Cost: hip flexor moment higher: +5.8\u00a0% of itself (14 runners) (another 2015).",
    );
    expect(text).toContain("no diagnosis");
  });
});

describe("a trial as Markdown", () => {
  const text = trialMarkdown(exampleTrial(), { title: "usual.csv" });
  it("has each metric's numbers in one row", () =>
    expect(text).toContain(
      "| Peak vertical force, N | 1658 ± 32 | 1642 | 1675 | 1648 to 1669 | 2.114 ± 0.040 BW | 36 |",
    ));
  it("says what was not computed, the cautions and the methods", () => {
    expect(text).toContain("- Step length, stride length: the speed is not stated.");
    expect(text).toContain("## Data quality and cautions");
    expect(text).toMatch(/zero-phase Butterworth filter of net order 4/);
  });
});

describe("text of a file", () => {
  it.each([
    ["[click](javascript:alert(1))", "\\[click\\](javascript:alert(1))"],
    ["<img src=x onerror=alert(1)>", "&lt;img src=x onerror=alert(1)&gt;"],
    ["a | b", "a \\| b"],
    ["# heading", "\\# heading"],
    ["- point", "\\- point"],
    ["12. point", "12\\. point"],
    ["![picture](x)", "\\!\\[picture\\](x)"],
    ["`code` *bold* _low_", "\\`code\\` \\*bold\\* \\_low\\_"],
    ["see http://example.org", "see http&#58;//example.org"],
    ["www.example.org, me@example.org", "www&#46;example.org, me&#64;example.org"],
    ["one\n# two", "one \\# two"],
    ["&lt;b&gt;", "&amp;lt;b&amp;gt;"],
    ["---", "\\---"],
  ])("%j makes no markup and no link: %j", (foreign, escaped) =>
    expect(escapeMarkdown(foreign)).toBe(escaped),
  );

  it("property: adds no line, no cell and no heading, whatever it is", () => {
    const build = (foreign: string) => {
      const own = exampleComparison();
      return comparisonMarkdown(
        {
          ...own,
          overall: { ...own.overall, sentence: `x${foreign}` },
          metrics: own.metrics.map((metric) => ({ ...metric, unit: `x${foreign}` })),
          cautions: [{ code: "any", message: `x${foreign}` }],
        },
        { names: { baseline: `x${foreign}`, changed: foreign } },
      );
    };
    const shape = (text: string) =>
      text
        .split("\n")
        .map((line) =>
          line.startsWith("|") ? `| ${cellsOf(line).length}` : (/^(?:#+|-) /.exec(line)?.[0] ?? line === ""),
        );
    const plain = shape(build("plain"));
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: "binary", maxLength: 40 }),
          fc
            .array(fc.constantFrom("|", "\\", "\n", "#", "- ", "`", "<b>", "[", "](", "---"), {
              maxLength: 8,
            })
            .map((parts) => parts.join("")),
        ),
        (foreign) => {
          expect(shape(build(foreign))).toEqual(plain);
        },
      ),
      { numRuns: 60 },
    );
  });
});
