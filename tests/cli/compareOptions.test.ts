import { beforeAll, describe, expect, it } from "vitest";
import type { Comparison } from "../../src/compare/index.js";
import { writeCsv } from "../../src/io/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { command, emptyFolder, expectRefused, fileIn } from "./command.js";

const folder = emptyFolder();
let usual = "";
let ahead = "";
beforeAll(async () => {
  const demo = demoRecordings();
  const trialOf = async (name: string, recording: typeof demo.usual): Promise<string> => {
    const { out } = await command("analyse", fileIn(folder, `${name}.csv`, writeCsv(recording)), "--json");
    return fileIn(folder, `${name}.json`, out);
  };
  usual = await trialOf("usual", demo.usual);
  ahead = await trialOf("ahead", demo.furtherAhead);
});
const compared = async (...options: readonly string[]): Promise<Comparison> => {
  const { code, out, err } = await command("compare", usual, ahead, "--json", ...options);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out) as Comparison;
};
const smallestOf = ({ metrics }: Comparison, id: string) =>
  metrics.find((metric) => metric.id === id)?.smallestDetectableChange;
const SOURCE = ["--smallest-change-source", "our laboratory, 12 runners"] as const;

describe("how the answer is read", () => {
  it("a smallest change counts with its source, per cent of the baseline's mean or in the metric's unit", async () => {
    const comparison = await compared(
      "--smallest-change",
      "brakingImpulse=8 %, peakVerticalForce=60 N,mediolateralImpulse=0.02 BW s",
      ...SOURCE,
    );
    const braking = comparison.metrics.find(({ id }) => id === "brakingImpulse");
    expect(smallestOf(comparison, "brakingImpulse")?.value).toBeCloseTo(
      0.08 * (braking?.baseline.mean ?? 0),
      9,
    );
    expect(smallestOf(comparison, "peakVerticalForce")).toMatchObject({ value: 60 });
    expect(smallestOf(comparison, "mediolateralImpulse")?.value).toBeCloseTo(0.02 * 70 * 9.80665, 9);
    for (const id of ["brakingImpulse", "peakVerticalForce", "mediolateralImpulse"]) {
      expect(smallestOf(comparison, id)?.source).toContain("our laboratory, 12 runners");
    }
    expect(smallestOf(comparison, "contactTime")?.source).not.toContain("our laboratory");
  });

  it("a change that is smaller than that is not read as lower", async () => {
    const reading = ({ components }: Comparison) =>
      components.find(({ component }) => component === "vertical")?.reading;
    expect(reading(await compared())).toBe("lower");
    expect(reading(await compared("--smallest-change", "peakVerticalForce=200 N", ...SOURCE))).not.toBe(
      "lower",
    );
  });

  it("the margin is a share of the baseline", async () => {
    expect((await compared("--margin", "5 %")).settings.similarMargin).toBe(0.05);
    expect((await compared("--margin", "0.05")).settings.similarMargin).toBe(0.05);
    expect((await compared()).settings.similarMargin).toBe(0.1);
  });

  it.each<[readonly string[], readonly RegExp[]]>([
    [
      ["--margin", "0"],
      [/--margin/, /between 0 and 100 %/],
    ],
    [
      ["--margin", "100 %"],
      [/--margin/, /between 0 and 100 %/],
    ],
    [
      ["--margin", "-5 %"],
      [/--margin/, /between 0 and 100 %/],
    ],
    [
      ["--margin", "5 N"],
      [/--margin/, /"10 %" or 0\.1/],
    ],
    [
      ["--margin", "wide"],
      [/--margin/, /'wide'/],
    ],
    [
      ["--smallest-change", "brakingImpulse=8", ...SOURCE],
      [/--smallest-change/, /its unit, % or N s or BW s/],
    ],
    [["--smallest-change", "brakingImpulse=8 stone", ...SOURCE], [/% or N s or BW s/]],
    [["--smallest-change", "brakingImpulse=-8 %", ...SOURCE], [/number from zero/]],
    [
      ["--smallest-change", "braking=8 %", ...SOURCE],
      [/"braking" is no metric/, /brakingImpulse/],
    ],
    [["--smallest-change", "", ...SOURCE], [/NAME=VALUE/]],
    [["--smallest-change", "brakingImpulse=8 %,brakingImpulse=9 %", ...SOURCE], [/stands twice/]],
    [
      ["--smallest-change", "brakingImpulse=8 %"],
      [/without --smallest-change-source/, /who measured/],
    ],
    [[...SOURCE], [/--smallest-change-source is given without metrics in --smallest-change/]],
    [["--smallest-change", "brakingImpulse=8 %", "--smallest-change-source", " "], [/one line of text/]],
    [["--smallest-change", "brakingImpulse=8 %", "--smallest-change-source", "a\nb"], [/one line of text/]],
    [
      ["--smallest-change", "brakingImpulse=8 %", "--smallest-change-source", "x".repeat(201)],
      [/up to 200 characters/],
    ],
    [
      ["--reliability", ""],
      [/--reliability/, /name a file/],
    ],
    [
      ["--baseline-also", " "],
      [/--baseline-also/, /name a file/],
    ],
    [["--changed-also"], [/--changed-also/]],
    [
      ["--json", "--markdown"],
      [/--json/, /--markdown/],
    ],
    [
      ["--csv", "--markdown"],
      [/--csv/, /--markdown/],
    ],
  ])("%j is refused", async (options, words) => {
    expectRefused(await command("compare", usual, ahead, ...options), 2, ...words);
  });

  it("a change of a metric that is not compared is refused", async () => {
    expectRefused(
      await command(
        ...["compare", usual, ahead, "--metrics", "brakingImpulse"],
        ...["--smallest-change", "contactTime=8 %", ...SOURCE],
      ),
      2,
      /--smallest-change names contactTime, which --metrics leaves out/,
    );
  });

  it.each<[string, () => string, RegExp]>([
    [
      "a file that is not there",
      () => `${folder}/nowhere.json`,
      /nowhere\.json: cannot be opened: there is no such/,
    ],
    ["a folder", () => folder, /it is a folder/],
    ["a trial", () => usual, /usual\.json: the text holds a trial; a reliability is needed/],
    ["no JSON", () => fileIn(folder, "text.json", "eight per cent"), /text\.json: the text is no JSON/],
    ["no text", () => fileIn(folder, "bytes.json", new Uint8Array([0xff, 0xfe, 0])), /no text in UTF-8/],
  ])("--reliability of %s is refused", async (_, path, words) => {
    expectRefused(await command("compare", usual, ahead, "--reliability", path()), 1, words);
  });
});

describe("Markdown", () => {
  it.each(["analyse", "compare"])("of %s says the same as the text, with tables", async (name) => {
    const files = [`${folder}/usual.csv`, `${folder}/ahead.csv`].slice(0, name === "compare" ? 2 : 1);
    const { code, out, err } = await command(name, ...files, "--markdown");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^# usual\.csv/);
    expect(out).toMatch(/^\| [^\n]*\|\n\| ---/m);
    expect(out).toContain("see a licensed clinician");
  });
});
