import { describe, expect, it } from "vitest";
import { compareTrials, type RunnersComparison, type SessionSeries } from "../../src/compare/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import {
  comparisonHtml,
  comparisonMarkdown,
  comparisonText,
  runnersHtml,
  runnersText,
  sessionsHtml,
  sessionsText,
} from "../../src/report/index.js";
import { tableRow } from "../../src/report/text/tableRow.js";
import { answerParts } from "../../src/report/wording/answerParts.js";
import { decimalsFor } from "../../src/report/wording/decimalsFor.js";
import { overallHeading } from "../../src/report/wording/overallHeading.js";
import { settleWords } from "../../src/report/wording/settleWords.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { analyseTrial } from "../../src/trial/index.js";
import { exampleAlternative, exampleComparison, exampleCurves, exampleTrial, spread } from "./examples.js";
import { textOf } from "./tags.js";

const flat = (text: string) => text.replace(/\s+/g, " ");
const own = exampleComparison();
const of = (id: string) => own.metrics.find((metric) => metric.id === id)!;
const pageOf = (comparison: typeof own) =>
  flat(textOf(comparisonHtml(comparison, exampleTrial(), exampleTrial()))).replaceAll("\u00a0", " ");

describe("limits beside the answer", () => {
  const given = {
    ...own,
    metrics: own.metrics.map((metric) =>
      metric.id === "brakingImpulse"
        ? {
            ...metric,
            smallestDetectableChange: { value: 1.2, source: "retest of 20 runners" },
            margin: { value: 4, source: "the coach" },
          }
        : metric,
    ),
  };
  it.each([
    ["text", (comparison: typeof own) => flat(comparisonText(comparison))],
    ["Markdown", (comparison: typeof own) => flat(comparisonMarkdown(comparison))],
    ["page", pageOf],
  ])("2026-11-25: sources of smallest detectable change and margin were not in the %s", (_, write) => {
    const text = write(given);
    const change = of("peakVerticalForce").smallestDetectableChange.source;
    expect(text).toMatch(/braking impulse: retest of 20 runners/);
    expect(text).toContain(`peak vertical force, mediolateral impulse: ${change}`);
    expect(text).toMatch(/braking impulse: the coach/);
  });

  it("2026-11-25: the margin was said to be the larger of the smallest detectable change and 10 %", () => {
    for (const text of [flat(comparisonText(own)), flat(comparisonMarkdown(own)), pageOf(own)]) {
      expect(text).not.toMatch(/the larger of (the smallest detectable|that) change/);
      expect(text).toContain("the larger of 10 % of the baseline's mean and 0.8 of the standard deviation");
    }
  });
});

describe("what several trials do not have", () => {
  const design = {
    kind: "several trials",
    baselineTrials: 2,
    changedTrials: 2,
    variation: "the trials' own",
  } as const;
  const several = { ...own, settings: { ...own.settings, design } };
  it.each([
    ["text", (comparison: typeof own) => flat(comparisonText(comparison))],
    ["Markdown", (comparison: typeof own) => flat(comparisonMarkdown(comparison))],
    ["page", pageOf],
  ])("2026-11-25: whole curves and drift vanished from the %s without a word", (_, write) => {
    expect(write(several)).toMatch(/with several trials of a condition the trials themselves tell/);
    expect(write(several)).toMatch(/which curves of several trials stand for their condition, no rule says/);
    expect(write(own)).toMatch(/that takes the force of both recordings itself/);
  });
  it("2026-11-25: a bootstrap was said to stand beside Student's t where there was none", () => {
    expect(flat(comparisonText(several))).toContain("no bootstrap stands beside it: with several trials");
    expect(flat(comparisonMarkdown(several))).not.toContain("resamples");
    const [first, ...rest] = own.metrics;
    const made = { ...own, metrics: [{ ...first!, bootstrapInterval: first!.interval }, ...rest] };
    expect(flat(comparisonText(made))).toContain("(2000 resamples, seed 1) stands beside it");
    expect(flat(comparisonMarkdown(made))).toContain("the bootstrap used 2000 resamples (seed 1)");
  });
});

it("2026-11-25: a difference that speed's effect was taken off stood beside means that do not differ by it", () => {
  const [first, ...rest] = own.metrics;
  const speedAlone = { difference: 34, source: "a study", takenOff: true };
  const removed = { ...own, metrics: [{ ...first!, speedAlone }, ...rest] };
  const words = "per step (difference beside the effect of speed)";
  expect(flat(comparisonText(removed))).toContain(words);
  expect(comparisonMarkdown(removed)).toContain(words);
  expect(pageOf(removed)).toContain(words);
  expect(comparisonText(own)).not.toContain("beside the effect");
});

it("2026-11-25: advice that other advice begins with was printed besides", () => {
  const long = "both recordings at one speed, or an effect of speed with its source";
  expect(settleWords(["both recordings at one speed", long, "more strides", "more strides"])).toEqual([
    long,
    "more strides",
  ]);
});

it("2026-11-25: the list of metrics that rose drowned the answer; it stands on its own below", () => {
  const list = "Also more load by their 95 % intervals, without a reading: contact time (+4.8 %).";
  const sentence = `Shifted, not reduced: a is lower (-6.2 %). ${list} This is the force.`;
  expect(answerParts(sentence)).toEqual({
    answer: "Shifted, not reduced: a is lower (-6.2 %). This is the force.",
    besides: list,
  });
  const comparison = { ...own, overall: { ...own.overall, sentence } };
  const lines = comparisonText(comparison).split("\n");
  const at = lines.findIndex((line) => line.startsWith("Also more load"));
  expect(at).toBeGreaterThan(lines.findIndex((line) => line.startsWith("- Mediolateral")));
  expect(lines[at - 1]).toBe("");
  expect(comparisonHtml(comparison, exampleTrial(), exampleTrial())).toMatch(
    /<h2[^>]*>Also more load<\/h2>\s*<p>Also more load by/,
  );
});

it("2026-11-25: clusters of curves stood without their level and method", () =>
  expect(flat(comparisonText(own, { curves: [exampleCurves()] }))).toMatch(
    /two-sided, with the threshold for the whole curve at 99 % by random field theory and by permutation/,
  ));

describe("alternatives", () => {
  const modelled = {
    ...exampleAlternative(),
    effects: [
      {
        metric: "peakVerticalForce",
        quantity: "peak vertical force",
        kind: "load" as const,
        direction: "lower" as const,
        finding: "−1.5 to 0 % a step, +3.4 to +5 % a kilometre, by a model",
        source: "this library's spring-mass model",
        estimate: { unit: "N", from: 1679, low: 1654, high: 1679 },
      },
    ],
  };
  it("2026-11-25: what a kilometre adds was not in the summary, and no change at all read lower", () =>
    expect(flat(comparisonText({ ...own, alternatives: [modelled] }))).toContain(
      "Load: peak vertical force lower or unchanged (1654 to 1679 N, from 1679; +3.4 to +5 % a kilometre).",
    ));
});

describe("numbers", () => {
  it("2026-11-25: decimals of a table were set apart from the wrong end", () => {
    const [first, ...rest] = own.metrics;
    const small = { ...first!, baseline: spread(0.000481, 0.00001), changed: spread(12_345, 1) };
    const page = comparisonHtml({ ...own, metrics: [small, ...rest] }, exampleTrial(), exampleTrial());
    expect(page).not.toMatch(/\.\d+\u202f/);
    expect(page).toContain("12\u202f345");
  });
  it("2026-11-25: an interval narrower than the last decimal read 0.0000 to +0.0001", () => {
    expect(decimalsFor(0.0017, 0.00006)).toBe(6);
    expect(decimalsFor(0.0017, 0.0004)).toBe(4);
  });
  it("2026-11-25: a row of small numbers fell out of its table", () => {
    const columns = [
      { heading: "", width: 27, left: true as const },
      ...[8, 8, 8, 17, 6].map((width) => ({ heading: "", width })),
    ];
    const cells = ["-0.000191", "-0.000325", "-0.000134", "-0.000184 to -0.000084", "-69.8"];
    const [label, row = ""] = tableRow(columns, ["  Net forward impulse, BW s", ...cells]);
    expect(label).toBe("  Net forward impulse, BW s");
    expect(row.trim().split(/ +(?!to)(?<!to )/)).toEqual(cells);
    expect(row).toHaveLength(79);
  });
});

describe("sessions", () => {
  const place = (where: "above" | "within") => ({
    name: "Friday",
    session: spread(15.1, 0.7),
    against: {
      baseline: 13.3,
      sessions: 2,
      difference: 1.8,
      interval: { low: 1.4, high: 2.2, level: 0.95 },
      smallestDetectableChange: { value: 0.9, source: "repeated trials" },
      place: where,
    },
  });
  const metric = (id: string, where: "above" | "within") => ({
    id,
    unit: "N s",
    moreLoad: "higher" as const,
    sessions: [{ name: "Monday", session: spread(13, 0.6), against: null }, place(where)],
  });
  const series: SessionSeries = {
    schema: "gait-kinetics/sessions/1",
    settings: {
      version: "0.1.0",
      level: 0.95,
      baseline: "first",
      baselineSessions: 1,
      interval: "Student's t",
      speedTolerance: 0.02,
      filter: null,
    },
    metrics: [
      metric("contactTime", "above"),
      metric("peakVerticalForce", "within"),
      metric("brakingImpulse", "above"),
    ],
    notCompared: [],
    sentences: [
      "Peak vertical force: the session lies within what varies.",
      "Braking impulse: Friday above.",
    ],
    cautions: [],
  };
  it("2026-11-25: a session within came before one that lies outside, and timing before what speaks", () => {
    const text = sessionsText(series);
    expect(text).toMatch(/^Braking impulse: Friday above\.\nPeak vertical force: the session/);
    const headings = text.split("\n").filter((line) => /, N s$/.test(line));
    expect(headings).toEqual(["Braking impulse, N s", "Peak vertical force, N s", "Contact time, N s"]);
    const page = sessionsHtml(series);
    expect(page).toMatch(/<option>Braking impulse, N s<\/option>\s*<option>Peak vertical force/);
    expect(page).toMatch(/class="answer">Braking impulse: Friday above\./);
  });
});

describe("runners", () => {
  const around = (value: number, half: number, level: number) => ({
    low: value - half,
    high: value + half,
    level,
  });
  const values = (id: string, unit: string, mean: number, percent: number) => {
    const difference = (mean * percent) / 100;
    return {
      id,
      unit,
      baseline: { runners: 8, mean, sd: mean / 10 },
      changed: { runners: 8, mean: mean + difference, sd: mean / 10 },
      difference,
      percent,
      interval: around(difference, mean / 50, 0.95),
      readingInterval: around(difference, mean / 40, 0.99),
      degreesOfFreedom: 7,
      betweenRunners: mean / 100,
      betweenTrials: null,
      margin: { value: mean / 10, source: "10 % of the baseline's mean, a judgement" },
      noRiseBeyondMargin: false,
      effectSize: 1,
      runners: [{ runner: "Ada", difference, interval: null }],
    };
  };
  const comparison: RunnersComparison = {
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
      filter: null,
    },
    runners: { baseline: 8, changed: 8 },
    metrics: [
      values("mediolateralImpulse", "BW s", 0.01, 20),
      values("peakVerticalForce", "BW", 2.4, -6),
      values("peakBrakingForce", "BW", 0.3, 18),
      values("peakPropulsiveForce", "BW", 0.3, 1),
      values("positiveExternalWork", "J/kg", 1.2, 10),
    ],
    notCompared: [],
    components: [
      {
        component: "vertical",
        metric: "peakVerticalForce",
        reading: "lower",
        perKilometre: null,
        sentence: "Vertical lower.",
      },
      {
        component: "mediolateral",
        metric: "mediolateralImpulse",
        reading: "higher",
        perKilometre: null,
        sentence: "Mediolateral higher.",
      },
    ],
    overall: {
      reading: "shifted",
      sentence: "Shifted, not reduced.",
      lower: ["vertical"],
      higher: ["mediolateral"],
      unsettled: [],
    },
    cautions: [],
  };
  const page = runnersHtml(comparison);
  const text = flat(runnersText(comparison));

  it("2026-11-25: the answer was neither the title nor beside its interval", () => {
    expect(page).toContain("<h1>The load shifted</h1>");
    expect(flat(textOf(page)).replaceAll("\u00a0", " ")).toContain(
      "The 99 % intervals are: vertical −8.5 to −3.5 %, mediolateral +17.5 to +22.5 %.",
    );
    expect(text).toContain("The 99 % intervals are: vertical -8.5 to -3.5 %, mediolateral +17.5 to +22.5 %.");
  });
  it("2026-11-25: eight runners in both conditions read as 8 and 8 runners", () => {
    expect(page).toContain("8 runners, each in both conditions");
    expect(page).not.toContain("8 and 8 runners");
  });
  it("2026-11-25: the figure opened on the metric that came first, not on the first that speaks", () =>
    expect(page).toMatch(/<option>Peak vertical force, BW<\/option>\s*<option>Mediolateral impulse/));
  it("2026-11-25: secondary metrics with more load, and the work, were not named", () => {
    expect(text).toMatch(/Also more load by their 95 % intervals[^:]*: peak braking force \(\+18\.0 %\)\./);
    expect(text).toContain(
      "Work, without a reading: positive external work differs by +10.0 % (99 % interval +7.5 to +12.5 %)",
    );
    expect(page).toContain("peak braking force (+18.0");
    const unsettled = {
      ...comparison.overall,
      reading: "unsettled" as const,
      lower: [],
      higher: [],
    };
    expect(runnersText({ ...comparison, overall: unsettled })).not.toContain("Also more load");
  });
});

it("a heading says per step where a kilometre reads otherwise", () => {
  expect(overallHeading("raised", { lower: ["vertical"], higher: [] })).toBe("The load was raised per step");
  expect(overallHeading("shifted", { lower: ["vertical"], higher: [] })).toBe("The load shifted");
});

it("2026-11-25: the demo's model estimates stood without what a kilometre adds", () => {
  const { usual, furtherAhead } = demoRecordings();
  const [before, after] = [usual, furtherAhead].map((recording) => analyseTrial(toGroundReaction(recording)));
  const text = flat(comparisonText(compareTrials(before!, after!)));
  expect(text).toMatch(
    /peak vertical force lower or unchanged \(\d+ to \d+ N, from \d+; [^;)]+ % a kilometre\)/,
  );
});
