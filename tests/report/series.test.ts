import { describe, expect, it } from "vitest";
import type {
  Reliability,
  RunnersComparison,
  RunnersValues,
  SessionSeries,
} from "../../src/compare/index.js";
import {
  reliabilityText,
  runnersHtml,
  runnersText,
  sessionsHtml,
  sessionsText,
} from "../../src/report/index.js";
import { spread } from "./examples.js";
import { isBalanced, textOf } from "./tags.js";

const widest = (text: string) => Math.max(...text.split("\n").map((line) => [...line].length));
const around = (value: number, half: number, level = 0.95) => ({
  low: value - half,
  high: value + half,
  level,
});
const margin = { value: 168, source: "10 % of the baseline's mean" };

const perKilometre: RunnersValues = {
  baseline: { runners: 3, mean: 1_662_000, sd: 90_000 },
  changed: { runners: 3, mean: 1_554_000, sd: 91_000 },
  difference: -108_000,
  percent: -6.5,
  interval: around(-108_000, 31_000),
  readingInterval: around(-108_000, 60_000, 0.99),
  degreesOfFreedom: 2,
  betweenRunners: 14_000,
  betweenTrials: null,
  margin,
  noRiseBeyondMargin: true,
};

const runners: RunnersComparison = {
  schema: "gait-kinetics/runners/1",
  settings: {
    version: "0.1.0",
    design: "paired",
    shownLevel: 0.95,
    readingLevel: 0.99,
    similarMargin: 0.1,
    minimumRunners: 6,
    speedTolerance: 0.02,
    interval: "Student's t over runners",
    filter: { cutoff: 50, order: 4 },
  },
  runners: { baseline: 3, changed: 3 },
  metrics: [
    {
      id: "peakVerticalForce",
      unit: "N",
      baseline: { runners: 3, mean: 1680, sd: 120 },
      changed: { runners: 3, mean: 1570, sd: 110 },
      difference: -110,
      percent: -6.55,
      interval: around(-110, 32),
      readingInterval: around(-110, 61, 0.99),
      degreesOfFreedom: 2,
      betweenRunners: 14.2,
      betweenTrials: 9.1,
      effectSize: -0.9,
      perKilometre,
      margin,
      noRiseBeyondMargin: true,
      runners: [
        { runner: "Ada", difference: -98, interval: around(-98, 20) },
        { runner: "Bo", difference: -121.5, interval: null },
        { runner: "<b>Cy</b>", difference: -110, interval: around(-110, 18) },
      ],
    },
  ],
  notCompared: [{ id: "brakingImpulse", code: "missing", message: "one runner has none" }],
  components: [
    {
      component: "vertical",
      metric: "peakVerticalForce",
      reading: "lower",
      perKilometre: "lower",
      sentence: "Vertical lower: peak vertical force goes from 1680 to 1570 N.",
    },
  ],
  overall: {
    reading: "unsettled",
    sentence: "Unsettled: too few runners.",
    lower: ["vertical"],
    higher: [],
    unsettled: [],
    toSettle: ["three more runners"],
  },
  cautions: [{ code: "few-runners", message: "three runners tell little of others" }],
};

const sessions: SessionSeries = {
  schema: "gait-kinetics/sessions/1",
  settings: {
    version: "0.1.0",
    level: 0.99,
    baseline: "moving",
    baselineSessions: 2,
    interval: "Student's t",
    speedTolerance: 0.02,
    filter: { cutoff: 50, order: 4 },
  },
  metrics: [
    {
      id: "brakingImpulse",
      unit: "N s",
      moreLoad: "higher",
      sessions: [
        { name: "Monday", session: spread(13.2, 0.6), against: null },
        {
          name: "<i>Friday</i>",
          session: spread(15.1, 0.7),
          against: {
            baseline: 13.3,
            sessions: 2,
            difference: 1.8,
            interval: around(1.8, 0.4, 0.99),
            smallestDetectableChange: { value: 0.9, source: "repeated trials" },
            place: "above",
          },
        },
      ],
    },
  ],
  notCompared: [],
  sentences: ["Friday: braking impulse above the baseline."],
  cautions: [],
};

const repeats: Reliability = {
  schema: "gait-kinetics/reliability/1",
  settings: { version: "0.1.0", level: 0.95, design: "6 runners, 4 trials each" },
  metrics: [
    {
      id: "peakVerticalForce",
      unit: "N",
      runners: 6,
      trials: 4,
      mean: 1650,
      // Shrout & Fleiss 1979, table 4: ICC(2,1) of their example is 0.29, 95 % 0.02 to 0.76.
      correlations: [
        {
          form: "ICC(2,1)",
          alsoCalled: "ICC(A,1)",
          value: 0.2898,
          interval: { low: 0.0188, high: 0.7611, level: 0.95 },
        },
      ],
      standardError: { agreement: 12.3, consistency: 10.1 },
      smallestDetectableChange: {
        value: 34.1,
        percent: 2.07,
        interval: { low: 25.2, high: 52.7, level: 0.95 },
      },
      limitsOfAgreement: {
        bias: 2.6,
        biasInterval: around(2.6, 9),
        low: -30.1,
        lowInterval: around(-30.1, 15),
        high: 35.1,
        highInterval: around(35.1, 15),
      },
    },
  ],
  notCompared: [],
  smallestDetectableChange: { peakVerticalForce: { value: 34.1, unit: "N", source: "repeated trials" } },
  cautions: [],
};

describe("many runners", () => {
  const text = runnersText(runners);
  it("as text: the answer, each mean with its interval, each runner, the design", () => {
    expect(widest(text)).toBeLessThanOrEqual(80);
    expect(text.split("\n")[0]).toBe("Unsettled: too few runners.");
    expect(text).toContain("What would settle it: three more runners");
    expect(text).toMatch(/^ {2}Peak vertical force, N +1680 +1570 +-110 +-142 to -78 +-6\.5$/m);
    expect(text).toMatch(/^ {4}per kilometre, N\/km +1662000 +1554000 +-108000 +-139000 to -77000 +-6\.5$/m);
    expect(text).toContain("- Ada: -98.00 N (-118 to -78)");
    expect(text).toContain("- Bo: -121.5 N\n");
    expect(text).toContain("from trial to trial 9.100 N");
    expect(text).toMatch(/^Design +paired: 3 runners in both conditions$/m);
    expect(text).toContain("- Braking impulse: one runner has none");
    expect(text).toContain("no diagnosis");
  });
  it("as a page: balanced, names as text, the same numbers", () => {
    const page = runnersHtml(runners);
    expect(isBalanced(page)).toBe(true);
    expect(page).not.toContain("<b>Cy");
    expect(textOf(page)).toContain("Unsettled: too few runners.");
    expect(page).toMatch(/Peak vertical force, N<\/th><td[^>]*>1680<\/td><td[^>]*>1570<\/td>/);
  });
});

describe("sessions of one runner", () => {
  const text = sessionsText(sessions);
  it("as text: what lies outside, and each session against the baseline of its time", () => {
    expect(widest(text)).toBeLessThanOrEqual(80);
    expect(text.split("\n")[0]).toBe("Friday: braking impulse above the baseline.");
    expect(text).toMatch(/^ {2}Monday +13\.20$/m);
    expect(text).toMatch(/^ {2}<i>Friday<\/i> +15\.10 +13\.30 +\+1\.80 +\+1\.40 to \+2\.20 +0\.90 above$/m);
    expect(text).toMatch(/^Baseline +the last 2 sessions before each session$/m);
  });
  it("as a page: balanced, names as text", () => {
    const page = sessionsHtml(sessions);
    expect(isBalanced(page)).toBe(true);
    expect(page).not.toContain("<i>Friday");
    expect(page).toContain("&lt;i&gt;Friday&lt;/i&gt;");
  });
});

it("repeated trials as text: smallest detectable change, standard error, correlation and limits with their intervals", () => {
  const text = reliabilityText(repeats);
  expect(widest(text)).toBeLessThanOrEqual(80);
  expect(text).toMatch(/^ {2}Peak vertical force, N +1650 +12 +34 +25 to 53 +2\.1$/m);
  expect(text).toContain("  ICC(2,1), also called ICC(A,1): 0.290 (0.019 to 0.761)");
  expect(text.replace(/\s+/g, " ")).toContain(
    "limits of agreement, N: -30 (-45 to -15) and 35 (20 to 50), bias 3 (-6 to 12)",
  );
  expect(text).not.toMatch(/\b(?:excellent|good|moderate|poor)\b/);
});
