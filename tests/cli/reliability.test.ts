import { beforeAll, describe, expect, it } from "vitest";
import type { Comparison, Reliability } from "../../src/compare/index.js";
import { writeCsv } from "../../src/io/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { command, emptyFolder, expectRefused, fileIn } from "./command.js";

const folder = emptyFolder();
const demo = demoRecordings();
const usual = fileIn(folder, "usual.csv", writeCsv(demo.usual));
const ahead = fileIn(folder, "ahead.csv", writeCsv(demo.furtherAhead));
let parts: readonly string[] = [];
beforeAll(async () => {
  const windows = [
    ["--from", "0 s", "--to", "10 s"],
    ["--from", "10 s", "--to", "20 s"],
    ["--from", "20 s"],
  ];
  parts = await Promise.all(
    windows.map(async (window, k) =>
      fileIn(folder, `part${k}.json`, (await command("analyse", usual, "--json", ...window)).out),
    ),
  );
});

describe("how well trials of one runner repeat", () => {
  it("prints the smallest change that counts of every metric, 80 columns wide", async () => {
    const { code, out, err } = await command("reliability", ...parts);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/Braking impulse, N s +13\.\d+ /);
    expect(out).toMatch(/^Design +3 trials of one runner/m);
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  it("its JSON goes into a comparison, with where it comes from", async () => {
    const { out } = await command("reliability", ...parts, "--json");
    const { smallestDetectableChange } = JSON.parse(out) as Reliability;
    const measured = fileIn(folder, "runner.json", out);
    const compared = await command("compare", usual, ahead, "--json", "--reliability", measured);
    expect(compared.err).toBe("");
    const { metrics } = JSON.parse(compared.out) as Comparison;
    const used = metrics.find(({ id }) => id === "brakingImpulse")?.smallestDetectableChange;
    const few = smallestDetectableChange.brakingImpulse;
    expect(few?.degreesOfFreedom).toBe(2);
    // 2026-11-25: three trials loosened the rule to 0.23 N s where strides ask for 0.96.
    expect(used?.value).toBeGreaterThan(few?.value ?? Number.NaN);
    expect(used?.source).toMatch(
      /larger than what was given with 2 degrees of freedom \(.*3 trials of one runner\)$/,
    );
    expect(compared.out).toContain('"code":"only-two-recordings"');
    const typed = ["--smallest-change", "brakingImpulse=1 N s", "--smallest-change-source", "a coach"];
    const over = await command("compare", usual, ahead, "--json", "--reliability", measured, ...typed);
    expect(over.out).toContain('"smallestDetectableChange":{"value":1,"source":"a coach"}');
    expect(over.out).toContain("3 trials of one runner");
    const one = await command(
      ...["compare", usual, ahead, "--json", "--reliability", measured, "--metrics", "contactTime"],
    );
    expect(one.code).toBe(0);
  });

  it("takes recordings with what is stated of them, and metrics by name", async () => {
    const again = fileIn(folder, "again.csv", writeCsv(demo.usual));
    const options = ["--mass", "70 kg", "--speed", "3 m/s", "--metrics", "contactTime"];
    const { code, out, err } = await command("reliability", usual, again, "--json", ...options);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const { metrics } = JSON.parse(out) as Reliability;
    expect(metrics.map(({ id, standardError }) => [id, standardError.agreement])).toEqual([
      ["contactTime", 0],
    ]);
  });

  it.each<[string, () => readonly string[], number, readonly RegExp[]]>([
    ["no file", () => [], 2, [/missing required argument 'files'/, /<files\.\.\.>/]],
    ["one file", () => [usual], 2, [/1 file is given; at least 2/]],
    ["a file twice", () => [usual, ahead, usual], 2, [/usual\.csv is given twice/]],
    ["a page", () => [usual, ahead, "--report", "page.html"], 2, [/unknown option '--report'/]],
    ["a mass that is none", () => [usual, ahead, "--mass", "70"], 2, [/--mass/, /no unit/]],
    [
      "a file that is not there",
      () => [usual, `${folder}/nowhere.csv`],
      1,
      [/nowhere\.csv: there is no such/],
    ],
    [
      "a recording beside a trial",
      () => [usual, parts[0] ?? ""],
      1,
      [/part0\.json holds a trial/, /usual\.csv a recording/],
    ],
    ["options of recordings", () => [...parts, "--cutoff", "30 Hz"], 1, [/--cutoff is for recordings/]],
    [
      "an empty recording",
      () => [usual, fileIn(folder, "empty.csv", "")],
      1,
      [/empty\.csv/, /the file is empty/],
    ],
  ])("refuses %s", async (_, argv, code, words) => {
    expectRefused(await command("reliability", ...argv()), code, ...words);
  });

  it("refuses trials of different filters", async () => {
    const { out } = await command("analyse", usual, "--json", "--cutoff", "30 Hz");
    const other = fileIn(folder, "other.json", out);
    expectRefused(await command("reliability", parts[0] ?? "", other), 1, /50 Hz filter/, /30 Hz filter/);
  });
});
