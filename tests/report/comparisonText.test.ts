import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { comparisonText } from "../../src/report/index.js";
import { compared, exampleComparison } from "./examples.js";

const widest = (text: string) => Math.max(...text.split("\n").map((line) => [...line].length));

describe("a comparison as text", () => {
  const names = { baseline: "usual.csv", changed: "further-ahead.csv" };
  const text = comparisonText(exampleComparison(), { names });
  const lines = text.split("\n");

  it("stays within 80 columns", () => expect(widest(text)).toBeLessThanOrEqual(80));

  it("says the answer first", () =>
    expect(lines[0]).toMatch(/^The load shifted: the vertical force went down/));

  it("gives each component its reading, both means, the difference with its interval and per cent", () => {
    expect(lines).toContain("Vertical: peak vertical force, N");
    expect(lines).toContainEqual(
      expect.stringMatching(/^ {2}per step +lower +1710 +1603 +-107 +-118 to -96 +-6\.3$/),
    );
    expect(lines).toContainEqual(
      expect.stringMatching(/^ {2}per kilometre unsettled +7\.03 +8\.12 +\+1\.09/),
    );
  });

  it("keeps the components in their order", () => {
    const at = ["Vertical: ", "Anteroposterior: ", "Mediolateral: "].map((start) =>
      lines.findIndex((line) => line.startsWith(start)),
    );
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(at[0]).toBeGreaterThan(0);
  });

  it("shows the other metrics, work, names, cautions and what was not compared", () => {
    expect(lines).toContainEqual(expect.stringMatching(/^ {2}Contact time, s +0\.2512 +0\.2633 \+0\.0121/));
    expect(text).toContain("mechanical work is not\n  oxygen uptake.");
    expect(text).toMatch(/Baseline +usual\.csv: 60 strides, worth 41 independent ones/);
    expect(text).toContain("- Only these two recordings were compared.");
    expect(text).toContain("- Impact peak: too few contacts have a value");
    expect(text).toContain("no diagnosis");
  });

  it("does not repeat the metrics that speak for a component", () => {
    expect(lines.filter((line) => /^ {2}Peak vertical force/.test(line))).toEqual([]);
  });
});

it("says what would settle it", () => {
  const own = exampleComparison();
  const overall = {
    ...own.overall,
    reading: "unsettled" as const,
    toSettle: ["about 30 more strides", "both recordings at one speed"],
  };
  expect(comparisonText({ ...own, overall })).toContain(
    "What would settle it: about 30 more strides; both recordings at one speed",
  );
});

it("names a component that was not recorded", () => {
  const own = exampleComparison();
  const components = own.components.map((component) =>
    component.component === "mediolateral"
      ? {
          ...component,
          metric: null,
          moreLoad: null,
          reading: null,
          perKilometre: null,
          missing: "not recorded" as const,
        }
      : component,
  );
  expect(comparisonText({ ...own, components })).toContain("Mediolateral: not recorded in both");
});

it("names a component that was recorded and not compared", () => {
  const own = exampleComparison();
  const components = own.components.map((component) =>
    component.component === "mediolateral" ? { ...component, missing: "not compared" as const } : component,
  );
  const text = comparisonText({ ...own, components, metrics: own.metrics.slice(0, 2) });
  expect(text).toContain("Mediolateral: not compared\n");
  expect(text).not.toContain("not recorded");
});

it("says of a metric that grows where the load falls that less of it is more load", () => {
  const own = exampleComparison();
  const components = own.components.map((component) =>
    component.component === "vertical" ? { ...component, moreLoad: "lower" as const } : component,
  );
  expect(comparisonText({ ...own, components })).toContain(
    "Vertical: peak vertical force, N (less of it is more load)\n",
  );
});

it("says what a reading needs, from the comparison's own settings", () => {
  const own = exampleComparison();
  const text = comparisonText({
    ...own,
    settings: { ...own.settings, correlatedAbove: 0.4, leastShareOfContacts: 0.8, massRatioTolerance: 0.02 },
  }).replace(/\s+/g, " ");
  expect(text).toContain("40 where successive strides correlate above 0.4");
  expect(text).toContain("in 80 % of the contacts");
  expect(text).toContain("mass by force ÷ stated mass within 2 %");
});

it("names both thresholds where they differ", () => {
  const own = exampleComparison();
  const text = comparisonText({
    ...own,
    settings: { ...own.settings, threshold: null },
    changed: { ...own.changed, threshold: 34.5 },
  });
  expect(text).toMatch(/Contact threshold +20 N in the baseline, 34\.5 N in the changed trial/);
});

it("property: no line exceeds 80 columns, whatever the numbers and the words", () =>
  fc.assert(
    fc.property(
      fc.string({ unit: "binary", maxLength: 300 }),
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      fc.double({ min: 1e-9, max: 1e9, noNaN: true }),
      (words, before, after, half) => {
        const own = exampleComparison();
        const text = comparisonText(
          {
            ...own,
            metrics: [
              ...own.metrics.slice(1),
              compared("peakVerticalForce", words, before, after, half),
              compared(words, words, before, after, half),
            ],
            overall: { ...own.overall, sentence: words, toSettle: [words] },
            cautions: [{ code: "any", message: words }],
          },
          { names: { baseline: words, changed: words } },
        );
        expect(widest(text)).toBeLessThanOrEqual(80);
        expect(text.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\u2028\u2029]/u);
      },
    ),
  ));
