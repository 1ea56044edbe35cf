import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Metric } from "../../src/metrics/index.js";
import { HEALTH_CAUTIONS, trialText } from "../../src/report/index.js";
import { exampleTrial, summary } from "./examples.js";

const lines = (text: string) => text.split("\n");
const widest = (text: string) => Math.max(...lines(text).map((line) => [...line].length));

describe("a trial as text", () => {
  const text = trialText(exampleTrial(), { title: "usual.csv" });

  it("stays within 80 columns", () => expect(widest(text)).toBeLessThanOrEqual(80));

  it("says what was analysed, and both masses", () => {
    expect(text).toContain("74 contacts, 36 strides in 30 s at 300 Hz");
    expect(text).toContain("1 contact cut by the ends");
    expect(text).toContain("80 kg stated, 77.1 kg by force");
    expect(text).toContain("2.5 m/s, on a belt, taken as level");
    expect(text).toContain("low-pass 50 Hz");
    expect(lines(text)).toContainEqual(expect.stringMatching(/^Contact threshold +20 N/));
  });

  it("says in how many contacts there is an impact peak, and that it is not known where it is not", () => {
    expect(lines(text)).toContainEqual(expect.stringMatching(/^Impact peak +in 50 % of contacts$/));
    const own = exampleTrial();
    const unknown = trialText({ ...own, summary: { ...own.summary, impactPeakShare: null } });
    expect(lines(unknown)).toContainEqual(
      expect.stringMatching(/^Impact peak +not known without a body weight$/),
    );
  });

  it("shows value ± SD, unit, normalised, left and right of a metric on one line", () => {
    expect(lines(text)).toContainEqual(
      expect.stringMatching(/^ {2}Peak vertical force +1658 ± 32 N +2\.114 BW +1642 +1675$/),
    );
  });

  it("keeps the order: vertical, anteroposterior, mediolateral, timing, work", () => {
    const headings = ["Vertical", "Anteroposterior", "Mediolateral", "Timing", "Work and spring"];
    const at = headings.map((heading) => lines(text).indexOf(heading));
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(at[0]).toBeGreaterThan(0);
  });

  it("names what was not computed with one reason for all that share it", () => {
    expect(text).toContain("- Step length, stride length: the speed is not stated");
  });

  it("says cautions in words, metrics by their names", () => {
    expect(text).toContain("- Average loading rate: the sampling rate of 300 Hz is below 1000 Hz.");
  });

  it("ends with every health caution", () => {
    const flat = text.replace(/\s+/g, " ");
    for (const sentence of HEALTH_CAUTIONS) expect(flat).toContain(sentence);
  });
});

it("shows a metric that no entry describes under its id", () => {
  const own = exampleTrial();
  const trial = { ...own, summary: { ...own.summary, metrics: { ownMetric: summary(12, 1, "N") } } };
  expect(trialText(trial)).toMatch(/Others\n {2}ownMetric +12\.0 ± 1\.0 N/);
});

it("names own metrics by their entries, and gives a long name a line of its own", () => {
  const entry: Metric = {
    id: "ownMetric",
    name: "a name of quite some length that fits no column",
    symbol: "q",
    unit: "N",
    family: "vertical",
    component: "vertical",
    moreLoad: "higher",
    definition: "For this test.",
    source: "None.",
    needs: [],
    compute: () => null,
  };
  const own = exampleTrial();
  const trial = { ...own, summary: { ...own.summary, metrics: { ownMetric: summary(12, 1, "N") } } };
  expect(trialText(trial, { metrics: [entry] })).toMatch(
    /Vertical\n {2}A name of quite some length that fits no column\n +12\.0 ± 1\.0 N/,
  );
});

it("says plainly that neither mass, speed nor surface is known", () => {
  const own = exampleTrial();
  const settings = {
    ...own.settings,
    mass: null,
    massStated: false,
    massByForce: null,
    speed: null,
    surface: null,
  };
  const text = trialText({ ...own, settings });
  expect(text).toMatch(/Mass +not stated, not known by force/);
  expect(text).toMatch(/Speed +not stated, surface not stated, taken as level/);
});

it("refuses an option it does not know", () => {
  expect(() => trialText(exampleTrial(), { colour: "red" } as object)).toThrow(
    expect.objectContaining({ code: "unknown-option" }),
  );
});

it("property: whatever text a file brings, no line exceeds 80 columns and nothing reaches the terminal but characters", () =>
  fc.assert(
    fc.property(
      fc.string({ unit: "binary", maxLength: 300 }),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      (foreign, value) => {
        const own = exampleTrial();
        const text = trialText(
          {
            ...own,
            summary: {
              ...own.summary,
              metrics: { [`x${foreign}`]: summary(value, Math.abs(value), foreign, foreign) },
            },
            cautions: [{ code: "any", message: foreign, where: foreign }],
            notComputed: [{ id: foreign, code: "any", message: foreign }],
          },
          { title: foreign },
        );
        expect(widest(text)).toBeLessThanOrEqual(80);
        expect(text.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\u2028\u2029]/u);
      },
    ),
  ));

it("2026-11-25: two contacts were called a stride beside a stride time that no whole stride gave", () => {
  const own = exampleTrial();
  const contacts = own.contacts.slice(0, 2);
  const pair = trialText({ ...own, contacts, summary: { ...own.summary, strides: 1 } });
  expect(pair).toMatch(/^Analysed +\d contacts?, 1 pair of contacts in/m);
  expect(pair).toMatch(/^± one standard deviation between pairs of contacts;/m);
  const none = trialText({ ...own, contacts, summary: { ...own.summary, strides: 0 } });
  expect(none).toMatch(/^Analysed +\d contacts?, 0 strides in/m);
  expect(none).toMatch(/^± one standard deviation between contacts;/m);
});
