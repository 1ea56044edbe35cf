import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { comparisonText } from "../../src/report/index.js";
import { compared, exampleAlternative, exampleComparison, exampleCurves } from "./examples.js";

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
    const others = lines.slice(lines.findIndex((line) => line.startsWith("All other metrics")));
    expect(others.length).toBeLessThan(lines.length);
    expect(others.filter((line) => /^ {2}Peak vertical force/.test(line))).toEqual([]);
  });
});

describe("what the readings rest on, and what else is said", () => {
  const own = exampleComparison();
  const [first, ...rest] = own.metrics;
  const drift = (change: number, counts: boolean) => ({
    change,
    interval: { low: change - 5, high: change + 5, level: 0.99 },
    counts,
  });
  const text = comparisonText(
    {
      ...own,
      metrics: [
        {
          ...first!,
          bootstrapInterval: { low: -125, high: -90.4, level: 0.99 },
          drift: { baseline: drift(3, false), changed: drift(-21.4, true) },
          speedAlone: { difference: 25.7, source: "a study of speed", takenOff: false },
        },
        ...rest,
      ],
      alternatives: [exampleAlternative()],
    },
    { curves: [exampleCurves()] },
  );
  const flat = text.replace(/\s+/g, " ");

  it("puts the interval of the reading in the lead, behind the answer", () =>
    expect(text).toMatch(/^The 99 % intervals are: vertical -7\.1 to -5\.4 %, anteroposterior \+12\.4 to/m));
  it("shows both intervals, the smallest detectable change, the margin and whether a rise is ruled out", () =>
    expect(text).toMatch(/^ {2}Peak vertical force, N +-121 to -93 +-125 to -90 +11 +171 +yes$/m));
  it("shows drift within both trials, and which counts", () => {
    expect(flat).toContain(
      "Peak vertical force, N: +3 (-2 to +8) within the baseline, -21 (-26 to -16), counts within the changed trial, with 99 % intervals.",
    );
  });
  it("says what the difference in speed alone would do, and that it is still in", () =>
    expect(flat).toContain(
      "the difference in speed alone would do +25.70 N, +1.5 % (a study of speed); it is still in the difference.",
    ));
  it("names clusters of whole curves in per cent of stance and in ms", () =>
    expect(flat).toContain(
      "Vertical force, left foot: 40.2 to 61.7 % of stance (101 to 154 ms): on average -0.120 BW, largest at 50 % (t -9.1, p < 0.001).",
    ));
  it("names design, method and margin", () => {
    expect(flat).toContain("Design one trial of each condition; the strides of each recording alone");
    expect(flat).toContain(
      "Readings by Student's t decides; a studentised block bootstrap (2000 resamples, seed 1)",
    );
    expect(flat).toMatch(/Margin peak vertical force, braking impulse, mediolateral impulse: 10 % of/);
  });
  it("words an alternative as something to try and to measure, its cost with what was found", () => {
    expect(flat).toContain("None is a treatment.");
    expect(flat).toContain("- A higher cadence at the same speed, about 5 % (168 to 176 steps/min)");
    expect(flat).toContain("- Load: braking impulse lower (14.30 to 15.10 N s, from 16.30).");
    expect(flat).toContain("- Cost: hip flexor moment higher: +5.8 % of itself (14 runners).");
    expect(flat).toContain("Sources: A study 2011; another 2015.");
  });
  it("stays within 80 columns", () => expect(widest(text)).toBeLessThanOrEqual(80));
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
  expect(comparisonText({ ...own, components })).toContain("Mediolateral: not recorded");
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
