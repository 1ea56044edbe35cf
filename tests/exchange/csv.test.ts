import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { type Comparison, compareTrials } from "../../src/compare/index.js";
import { metricsToCsv, stepsToCsv, summaryToCsv } from "../../src/exchange/index.js";
import { toGroundReaction } from "../../src/force/index.js";
import { readCsv } from "../../src/io/index.js";
import { CATALOGUE } from "../../src/metrics/index.js";
import type { Recording } from "../../src/recording/index.js";
import { analyseTrial, type Spread, type Trial } from "../../src/trial/index.js";
import { fixture, TREADMILL_RUN } from "../io/fixtures.js";

const run = readCsv(fixture("treadmill-run/forces-2.5ms.txt"), {
  ...TREADMILL_RUN,
  mass: 80,
  speed: 2.5,
  surface: "belt",
});
const part = (from: number, to: number): Recording => ({
  ...run,
  channels: run.channels.map((channel) => ({ ...channel, samples: channel.samples.slice(from, to) })),
});
const asJson = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
const baseline = asJson(analyseTrial(toGroundReaction(part(0, 4500))));
const changed = asJson(analyseTrial(toGroundReaction(part(4500, 9000))));
const comparison = asJson(compareTrials(baseline, changed));

type Row = Readonly<Record<string, string>>;
const rowsOf = (text: string): Row[] => {
  const { data, errors } = Papa.parse<Row>(text, { header: true, skipEmptyLines: true });
  expect(errors).toEqual([]);
  return data;
};
/** A cell as the number it shows, to 12 digits; `null` where it is empty. */
const shows = (cell: string | undefined, value: number | null | undefined): void => {
  const absent = value === null || value === undefined;
  expect(cell === "").toBe(absent);
  if (!absent) expect(Number(cell)).toBe(Number(value.toPrecision(12)));
};

describe("stepsToCsv", () => {
  const rows = rowsOf(stepsToCsv(baseline));

  const headings = ["side", "initialContact", "toeOff", ...CATALOGUE.map(({ id }) => id)];

  it("has a row for every contact and a column for every metric of the catalogue, by id", () => {
    expect(rows).toHaveLength(baseline.steps.length);
    expect(baseline.steps.length).toBeGreaterThan(30);
    expect(Object.keys(rows[0] as Row)).toEqual(headings);
  });

  it("2026-11-25: tables of a whole recording and of vertical force alone had 36 and 26 columns and did not stack", () => {
    const { up } = toGroundReaction(run).force;
    const { moment: _, ...rest } = toGroundReaction(run);
    const verticalOnly = analyseTrial({ ...rest, force: { up } });
    const own = rowsOf(stepsToCsv(verticalOnly));
    expect(verticalOnly.notComputed.map(({ id }) => id)).toContain("peakBrakingForce");
    expect(Object.keys(own[0] as Row)).toEqual(headings);
    expect(new Set(own.map((row) => row.peakBrakingForce))).toEqual(new Set([""]));
    expect(own.every((row) => Number(row.peakVerticalForce) > 800)).toBe(true);
  });

  it("shows every value of the trial's JSON to 12 digits, an absent one as an empty cell", () => {
    for (const [index, { side, initialContact, toeOff, values }] of baseline.steps.entries()) {
      const row = rows[index] as Row;
      expect(row.side).toBe(side);
      shows(row.initialContact, initialContact);
      shows(row.toeOff, toeOff);
      for (const [id, value] of Object.entries(values)) shows(row[id], value);
    }
    // The last contact has no neighbour to measure a step with.
    expect(rows.at(-1)?.stepTime).toBe("");
  });

  it("2026-11-25: one spelling in every heading, that of the JSON fields; `initial_contact` stood beside `contactTime`", () => {
    for (const text of [stepsToCsv(baseline), summaryToCsv(baseline), metricsToCsv(comparison)]) {
      const [first = ""] = text.split("\n");
      for (const heading of first.split(",")) expect(heading).toMatch(/^[a-z][A-Za-z]*$/);
    }
  });

  it("gives a table of columns alone where there is no contact", () => {
    expect(stepsToCsv({ ...baseline, steps: [] })).toBe(`${headings.join(",")}\n`);
  });

  it("refuses a value that JSON could not hold", () => {
    const [first] = baseline.steps as [Trial["steps"][number]];
    const steps = [{ ...first, values: { contactTime: Number.NaN } }];
    expect(() => stepsToCsv({ ...baseline, steps })).toThrow(
      expect.objectContaining({ code: "not-finite", where: "row 1, contactTime" }),
    );
  });
});

describe("summaryToCsv", () => {
  const rows = rowsOf(summaryToCsv(baseline));
  const rowOf = (metric: string, side: string, normalised: boolean) =>
    rows.filter(
      (row) =>
        row.metric === metric && row.side === side && row.normalised === String(normalised).toUpperCase(),
    );

  it("shows every spread of the trial's JSON once, with its unit", () => {
    let expected = 0;
    for (const [id, summary] of Object.entries(baseline.summary.metrics)) {
      if (summary === undefined) throw new Error(`${id} has no summary`);
      const { unit, normalised, left, right, ...all } = summary;
      const spreads: [string, boolean, string, Spread | undefined][] = [
        ["all", false, unit, all],
        ["left", false, unit, left],
        ["right", false, unit, right],
        ["all", true, normalised?.unit ?? "", normalised],
      ];
      for (const [side, isNormalised, itsUnit, spread] of spreads) {
        const found = rowOf(id, side, isNormalised);
        if (spread === undefined) {
          expect(found).toEqual([]);
          continue;
        }
        expected++;
        expect(found).toHaveLength(1);
        const [row] = found as [Row];
        expect(row.unit).toBe(itsUnit);
        shows(row.n, spread.n);
        shows(row.mean, spread.mean);
        shows(row.sd, spread.sd);
        shows(row.meanLow, spread.interval?.low);
        shows(row.meanHigh, spread.interval?.high);
        shows(row.level, spread.interval?.level);
      }
    }
    expect(rows).toHaveLength(expected);
    expect(expected).toBeGreaterThan(Object.keys(baseline.summary.metrics).length);
  });

  it("leaves spread and interval of a single value empty", () => {
    const one = { n: 1, mean: -0.25, sd: null, interval: null };
    const summary = { ...baseline.summary, metrics: { contactTime: { ...one, unit: "s" } } };
    expect(summaryToCsv({ ...baseline, summary }).split("\n")[1]).toBe("contactTime,s,FALSE,all,1,-0.25,,,,");
  });
});

describe("metricsToCsv", () => {
  const rows = rowsOf(metricsToCsv(comparison));
  const rowOf = (metric: string, per: string) => rows.find((row) => row.metric === metric && row.per === per);
  const showsValues = (
    row: Row | undefined,
    values: NonNullable<Comparison["metrics"][number]["perKilometre"]>,
  ) => {
    for (const trial of ["baseline", "changed"] as const) {
      shows(row?.[`${trial}N`], values[trial].n);
      shows(row?.[`${trial}Mean`], values[trial].mean);
      shows(row?.[`${trial}Sd`], values[trial].sd);
    }
    shows(row?.difference, values.difference);
    shows(row?.percent, values.percent);
    shows(row?.differenceLow, values.interval.low);
    shows(row?.differenceHigh, values.interval.high);
    shows(row?.level, values.interval.level);
    shows(row?.readingLow, values.readingInterval.low);
    shows(row?.readingHigh, values.readingInterval.high);
    shows(row?.readingLevel, values.readingInterval.level);
    shows(row?.smallestDetectableChange, values.smallestDetectableChange.value);
    expect(row?.smallestDetectableChangeSource).toBe(values.smallestDetectableChange.source);
  };

  it("shows every number of the comparison's JSON, per step and per kilometre", () => {
    expect(comparison.metrics.length).toBeGreaterThan(20);
    for (const metric of comparison.metrics) {
      const { id, unit, effectSize, normalised, perKilometre } = metric;
      const row = rowOf(id, "step");
      expect(row?.unit).toBe(unit);
      showsValues(row, metric);
      shows(row?.effectSize, effectSize);
      expect(row?.normalisedUnit).toBe(normalised?.unit ?? "");
      shows(row?.normalisedDifference, normalised?.difference);
      shows(row?.normalisedLow, normalised?.interval.low);
      shows(row?.normalisedHigh, normalised?.interval.high);
      const kilometre = rowOf(id, "kilometre");
      expect(kilometre === undefined).toBe(perKilometre === undefined);
      if (perKilometre !== undefined) {
        expect(kilometre?.unit).toBe(`${unit}/km`);
        showsValues(kilometre, perKilometre);
      }
    }
    expect(comparison.metrics.some(({ perKilometre }) => perKilometre !== undefined)).toBe(true);
  });

  it("names component and reading beside the metric that speaks for it, and nowhere else", () => {
    for (const { component, metric, reading, perKilometre } of comparison.components) {
      expect(rowOf(metric as string, "step")).toMatchObject({ component, reading });
      if (perKilometre !== null)
        expect(rowOf(metric as string, "kilometre")).toMatchObject({ component, reading: perKilometre });
    }
    const speaking = comparison.components.map(({ metric }) => metric);
    for (const row of rows.filter(
      ({ metric, per }) => per === "step" && !speaking.includes(metric as string),
    )) {
      expect([row.component, row.reading]).toEqual(["", ""]);
    }
  });

  it("keeps the reading per step and the one per kilometre apart", () => {
    const components = comparison.components.map((component) => ({
      ...component,
      reading: "lower" as const,
      perKilometre: "higher" as const,
    }));
    const own = rowsOf(metricsToCsv({ ...comparison, components }));
    const readings = (per: string) =>
      own.filter((row) => row.per === per && row.component !== "").map((row) => row.reading);
    expect(readings("step")).toEqual(["lower", "lower", "lower"]);
    expect(readings("kilometre")).toEqual(["higher", "higher", "higher"]);
  });

  it("ends with the work per metre", () => {
    const { perMetre, reading } = comparison.work;
    if (perMetre === undefined) throw new Error("the comparison holds no work per metre");
    expect(rows.at(-1)).toMatchObject({
      metric: "positiveExternalWork",
      per: "metre",
      component: "work",
      reading,
      unit: perMetre.unit,
    });
    showsValues(rows.at(-1), perMetre);
  });

  it("makes text harmless that a table program would run as a formula, and leaves negative numbers alone", () => {
    const [first] = comparison.metrics as [Comparison["metrics"][number]];
    const source = '=HYPERLINK("http://example.org","a, b")';
    const metric = { ...first, id: "@own", difference: -1.5, smallestDetectableChange: { value: 1, source } };
    const text = metricsToCsv({
      ...comparison,
      metrics: [metric],
      components: [],
      work: { reading: "unsettled", sentence: "" },
    });
    const [row] = rowsOf(text) as [Row];
    expect(row.metric).toBe("'@own");
    expect(row.smallestDetectableChangeSource).toBe(`'${source}`);
    expect(row.difference).toBe("-1.5");
    expect(text.split("\n")).toHaveLength(3);
  });

  it.each(["=1+1\nin two lines", "+1", "-1", "@A1", "\t=1", "\r=1", "\n=1", "＝1", "＠A1"])(
    "makes a source that begins like %j harmless",
    (source) => {
      const [first] = comparison.metrics as [Comparison["metrics"][number]];
      const metric = { ...first, smallestDetectableChange: { value: 1, source } };
      const text = metricsToCsv({ ...comparison, metrics: [metric] });
      const { data } = Papa.parse<Row>(text, { header: true, newline: "\n" });
      expect(data[0]?.smallestDetectableChangeSource).toBe(`'${source}`);
    },
  );

  it("fills every row to the width of the header, where a metric has no normalised value either", () => {
    const widths = Papa.parse<string[]>(metricsToCsv(comparison), { skipEmptyLines: true }).data.map(
      ({ length }) => length,
    );
    expect(new Set(widths).size).toBe(1);
  });
});

it("the same results give the same bytes", () => {
  expect(stepsToCsv(asJson(baseline))).toBe(stepsToCsv(baseline));
  expect(summaryToCsv(asJson(baseline))).toBe(summaryToCsv(baseline));
  expect(metricsToCsv(asJson(comparison))).toBe(metricsToCsv(comparison));
});
