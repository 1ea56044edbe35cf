import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import type { SessionSeries } from "../../src/compare/index.js";
import { writeCsv } from "../../src/io/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { command, emptyFolder, expectRefused, fileIn } from "./command.js";

const folder = emptyFolder();
const demo = demoRecordings();
const usual = fileIn(folder, "usual.csv", writeCsv(demo.usual));
const ahead = fileIn(folder, "ahead.csv", writeCsv(demo.furtherAhead));
let months: readonly string[] = [];
let changed = "";
beforeAll(async () => {
  const trialOf = async (name: string, file: string, from: number, to: number): Promise<string> => {
    const window = ["--from", `${from} s`, "--to", `${to} s`];
    return fileIn(folder, `${name}.json`, (await command("analyse", file, "--json", ...window)).out);
  };
  months = await Promise.all(
    ["march", "april", "may", "june"].map((name, k) => trialOf(name, usual, 7 * k, 7 * k + 7)),
  );
  changed = await trialOf("july", ahead, 0, 7);
});
const series = async (...argv: readonly string[]): Promise<SessionSeries> => {
  const { code, out, err } = await command("sessions", ...argv, "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out) as SessionSeries;
};
const placesOf = ({ metrics }: SessionSeries, id: string) =>
  metrics
    .find((metric) => metric.id === id)
    ?.sessions.map(({ name, against }) => [name, against?.place ?? null]);

describe("sessions of one runner", () => {
  it("says which lie outside, 80 columns wide", async () => {
    const { code, out, err } = await command("sessions", ...months, changed, "--baseline-sessions", "3");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out.replace(/\s+/g, " ")).toMatch(/^Peak vertical force: [^:]*july\.json \(-\d\.\d %\) below/);
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  it("stand in the order given, against a moving baseline or the first ones", async () => {
    const moving = await series(...months, changed, "--baseline-sessions", "3");
    expect(placesOf(moving, "brakingImpulse")).toEqual([
      ["march.json", null],
      ["april.json", null],
      ["may.json", null],
      ["june.json", "within"],
      ["july.json", "above"],
    ]);
    expect(moving.settings).toMatchObject({ baseline: "moving", baselineSessions: 3 });
    const first = await series(changed, ...months, "--baseline", "first", "--baseline-sessions", "1");
    expect(first.settings).toMatchObject({ baseline: "first", baselineSessions: 1 });
    expect(
      placesOf(first, "brakingImpulse")
        ?.slice(1)
        .map(([, place]) => place),
    ).toEqual(months.map(() => "below"));
  });

  it("takes smallest changes that were measured, or typed with their source", async () => {
    const measured = fileIn(folder, "runner.json", (await command("reliability", ...months, "--json")).out);
    const sources = ({ metrics }: SessionSeries) =>
      metrics.find(({ id }) => id === "brakingImpulse")?.sessions.at(-1)?.against?.smallestDetectableChange;
    const few = [...months, "--baseline-sessions", "3"];
    expect(sources(await series(...few, "--reliability", measured))?.source).toContain(
      "4 trials of one runner",
    );
    const typed = ["--smallest-change", "brakingImpulse=2 N s", "--smallest-change-source", "a paper"];
    expect(sources(await series(...few, ...typed))).toEqual({ value: 2, source: "a paper" });
  });

  it("takes recordings with what is stated of them, and writes a page", async () => {
    const page = join(folder, "page.html");
    const outcome = await command(
      ...["sessions", usual, ahead, "--baseline-sessions", "1", "--mass", "70 kg"],
      ...["--metrics", "brakingImpulse", "--report", page],
    );
    expect({ code: outcome.code, err: outcome.err }).toEqual({ code: 0, err: "" });
    expect(outcome.out).toMatch(/usual\.csv +13\.\d/);
    expect(readFileSync(page, "utf8")).toMatch(/^<!doctype html>[\s\S]*<\/html>\s*$/);
  });

  it.each<[string, () => readonly string[], number, readonly RegExp[]]>([
    ["no file", () => [], 2, [/missing required argument 'files'/]],
    ["one file", () => [usual], 2, [/1 file is given; at least 2/]],
    ["a file twice", () => [usual, usual], 2, [/usual\.csv is given twice/]],
    ["another baseline", () => [usual, ahead, "--baseline", "best"], 2, [/first or moving/]],
    ["no baseline session", () => [usual, ahead, "--baseline-sessions", "0"], 2, [/whole number from 1/]],
    ["half a session", () => [usual, ahead, "--baseline-sessions", "1.5"], 2, [/whole number from 1/]],
    [
      "a change without its source",
      () => [usual, ahead, "--smallest-change", "contactTime=5 %"],
      2,
      [/--smallest-change-source/],
    ],
    ["a page that is none", () => [usual, ahead, "--report", "page.pdf"], 2, [/\.html/]],
    [
      "a page over a session",
      () => [fileIn(folder, "in.html", "x"), ahead, "--report", join(folder, "in.html")],
      1,
      [/is read/],
    ],
    ["a file that is not there", () => [join(folder, "gone.csv"), usual], 1, [/gone\.csv: there is no such/]],
    ["a trial beside a recording", () => [months[0] ?? "", usual], 1, [/march\.json holds a trial/]],
    [
      "a reliability that is none",
      () => [...months, "--reliability", usual],
      1,
      [/usual\.csv: the text is no JSON/],
    ],
  ])("refuses %s", async (_, argv, code, words) => {
    expectRefused(await command("sessions", ...argv()), code, ...words);
  });
});
