import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import type { Comparison } from "../../src/compare/index.js";
import { writeCsv } from "../../src/io/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { command, emptyFolder, expectRefused, fileIn } from "./command.js";

const folder = emptyFolder();
const demo = demoRecordings();
const usual = fileIn(folder, "usual.csv", writeCsv(demo.usual));
const ahead = fileIn(folder, "ahead.csv", writeCsv(demo.furtherAhead));
let before: readonly string[] = [];
let after: readonly string[] = [];
beforeAll(async () => {
  const halves = (name: string, file: string) =>
    Promise.all(
      [0, 15].map(async (from) => {
        const window = ["--from", `${from} s`, "--to", `${from + 15} s`];
        return fileIn(
          folder,
          `${name}${from}.json`,
          (await command("analyse", file, "--json", ...window)).out,
        );
      }),
    );
  before = await halves("before", usual);
  after = await halves("after", ahead);
});
const designOf = async (...argv: readonly string[]) => {
  const { code, out, err } = await command("compare", ...argv, "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return (JSON.parse(out) as Comparison).settings.design;
};

describe("several trials of a condition", () => {
  it("the baseline recorded again, and more of both", async () => {
    const [one = "", again = ""] = before;
    const [changed = "", more = ""] = after;
    expect(await designOf(one, changed, "--baseline-also", again)).toMatchObject({
      kind: "baseline again",
      baselineTrials: 2,
      changedTrials: 1,
    });
    expect(await designOf(one, changed, "--baseline-also", again, "--changed-also", more)).toMatchObject({
      kind: "several trials",
      baselineTrials: 2,
      changedTrials: 2,
    });
    expect(await designOf(one, changed)).toMatchObject({ kind: "one trial each" });
  });

  it("an option may be given again, and recordings take the options of their condition", async () => {
    const copies = ["c", "d"].map((name) => fileIn(folder, `${name}.csv`, readFileSync(usual)));
    const design = await designOf(
      ...[usual, ahead, "--speed", "3 m/s, 3 m/s", "--metrics", "brakingImpulse"],
      ...copies.flatMap((copy) => ["--baseline-also", copy]),
    );
    expect(design).toMatchObject({ baselineTrials: 3, changedTrials: 1 });
  });

  it("all files are named, in the text and on the page", async () => {
    const page = join(folder, "page.html");
    const { code, out } = await command(
      ...["compare", before[0] ?? "", after[0] ?? "", "--baseline-also", before[1] ?? "", "--report", page],
    );
    expect(code).toBe(0);
    expect(out).toContain("before0.json and before15.json");
    expect(readFileSync(page, "utf8")).toContain("before0.json and before15.json");
  });

  it.each<[string, () => readonly string[], number, readonly RegExp[]]>([
    [
      "the baseline itself again",
      () => [usual, ahead, "--baseline-also", usual],
      2,
      [/usual\.csv is given twice/],
    ],
    [
      "one of both twice",
      () => [usual, ahead, "--changed-also", "x.csv", "--changed-also", "x.csv"],
      2,
      [/x\.csv is given twice/],
    ],
    [
      "a file that is not there",
      () => [usual, ahead, "--changed-also", "x.csv"],
      1,
      [/x\.csv: there is no such/],
    ],
    [
      "a trial beside recordings",
      () => [usual, ahead, "--baseline-also", before[0] ?? ""],
      1,
      [/before0\.json holds a trial/],
    ],
    [
      "a page over one of them",
      () => [usual, ahead, "--baseline-also", "x.html", "--report", "x.html"],
      1,
      [/is read/],
    ],
    [
      "the bootstrap over trials",
      () => [
        ...before.slice(0, 1),
        ...after.slice(0, 1),
        "--baseline-also",
        before[1] ?? "",
        "--changed-also",
        after[1] ?? "",
        "--method",
        "bootstrap",
      ],
      1,
      [/bootstrap/, /student/],
    ],
  ])("refuses %s", async (_, argv, code, words) => {
    expectRefused(await command("compare", ...argv()), code, ...words);
  });
});

describe("the method", () => {
  it("readings by the bootstrap say so", async () => {
    const { out } = await command(
      "compare",
      before[0] ?? "",
      after[0] ?? "",
      "--json",
      "--method",
      "bootstrap",
    );
    expect((JSON.parse(out) as Comparison).settings.method).toBe("bootstrap");
    expectRefused(await command("compare", usual, ahead, "--method", "guess"), 2, /student or bootstrap/);
  });

  it("the published effect of speed is taken off on request", async () => {
    const speeds = ["--speed", "3 m/s, 3.2 m/s", "--metrics", "peakVerticalForce,brakingImpulse"];
    const read = async (...options: readonly string[]): Promise<Comparison> =>
      JSON.parse((await command("compare", usual, ahead, "--json", ...speeds, ...options)).out) as Comparison;
    const [kept, removed] = [await read(), await read("--speed-effect", "removed")];
    const peak = ({ metrics }: Comparison) => metrics.find(({ id }) => id === "peakVerticalForce");
    expect(kept.overall.reading).toBe("unsettled");
    expect(peak(kept)?.speedAlone?.takenOff).toBe(false);
    expect(peak(removed)?.speedAlone?.takenOff).toBe(true);
    const off = peak(kept)?.speedAlone?.difference ?? Number.NaN;
    expect(peak(removed)?.difference).toBeCloseTo((peak(kept)?.difference ?? Number.NaN) - off, 6);
    expectRefused(await command("compare", usual, ahead, "--speed-effect", "yes"), 2, /kept or removed/);
  });
});
