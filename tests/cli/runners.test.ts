import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import type { RunnersComparison } from "../../src/compare/index.js";
import { writeCsv } from "../../src/io/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { command, emptyFolder, expectRefused, fileIn } from "./command.js";

const folder = emptyFolder();
const demo = demoRecordings();
const WINDOWS = ["0 s,10 s", "10 s,20 s", "20 s,30 s"] as const;
const HEAD = "runner,condition,file,from,to";
const rows = (...conditions: readonly string[]): readonly string[] =>
  conditions.flatMap((condition) =>
    WINDOWS.map((window, k) => `${k + 1},${condition},${condition}.csv,${window}`),
  );
const table = (name: string, lines: readonly string[]): string =>
  fileIn(folder, name, `${lines.join("\n")}\n`);
let paired = "";
let independent = "";
beforeAll(() => {
  fileIn(folder, "baseline.csv", writeCsv(demo.usual));
  fileIn(folder, "changed.csv", writeCsv(demo.furtherAhead));
  paired = table("paired.csv", [HEAD, ...rows("baseline", "changed")]);
  independent = table("independent.csv", [
    HEAD,
    ...rows("baseline"),
    ...rows("changed").map((row) => `B${row}`),
  ]);
});
const compared = async (...argv: readonly string[]): Promise<RunnersComparison> => {
  const { code, out, err } = await command("runners", ...argv, "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out) as RunnersComparison;
};

describe("many runners", () => {
  it("prints the answer of paired runners, 80 columns wide", async () => {
    const { code, out, err } = await command("runners", paired, "--minimum-runners", "3");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^Shifted/);
    expect(out).toMatch(/paired: 3 runners in both conditions/);
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  it("tells the design from the table, and takes it stated", async () => {
    expect((await compared(paired)).settings.design).toBe("paired");
    expect((await compared(paired, "--design", "paired")).settings.design).toBe("paired");
    const groups = await compared(independent);
    expect(groups.settings.design).toBe("independent");
    expect(groups.runners).toEqual({ baseline: 3, changed: 3 });
  });

  it("each runner's own difference is that of their rows", async () => {
    const { metrics } = await compared(paired);
    const braking = metrics.find(({ id }) => id === "brakingImpulse");
    expect(braking?.runners.map(({ runner }) => runner)).toEqual(["1", "2", "3"]);
    for (const { difference } of braking?.runners ?? []) expect(difference).toBeGreaterThan(0);
    const few = await compared(paired, "--metrics", "brakingImpulse", "--margin", "5 %");
    expect(few.metrics.map(({ id }) => id)).toEqual(["brakingImpulse"]);
    expect(few.settings.similarMargin).toBe(0.05);
  });

  it("takes trials that were analysed before, as seen from the table's folder", async () => {
    for (const condition of ["baseline", "changed"]) {
      for (const [k, window] of WINDOWS.entries()) {
        const [from = "", to = ""] = window.split(",");
        const { out } = await command(
          ...["analyse", join(folder, `${condition}.csv`), "--json", "--from", from, "--to", to],
        );
        fileIn(folder, `${condition}${k}.json`, out);
      }
    }
    const stored = table("stored.csv", [
      "runner,condition,file,mass",
      ...["baseline", "changed"].flatMap((condition) =>
        WINDOWS.map((_, k) => `${k + 1},${condition},${condition}${k}.json,`),
      ),
    ]);
    const [one, other] = [await compared(stored), await compared(paired)];
    expect(one.overall).toEqual(other.overall);
    const stating = table("stating.csv", [
      "runner,condition,file,mass",
      "1,baseline,baseline0.json,70 kg",
      "1,changed,changed0.json,",
    ]);
    expectRefused(await command("runners", stating), 1, /--mass is for recordings/, /baseline0\.json/);
    expectRefused(await command("runners", stored, "--speed", "3 m/s"), 1, /--speed is for recordings/);
  });

  it("2026-11-25: --mass was taken without a word where every row states its own", async () => {
    const own = table("own.csv", [
      "runner,condition,file,mass [kg],from,to",
      ...["baseline", "changed"].flatMap((condition) =>
        WINDOWS.map((window, k) => `${k + 1},${condition},${condition}.csv,70,${window}`),
      ),
    ]);
    expectRefused(
      await command("runners", own, "--mass", "70 kg"),
      1,
      /--mass is without effect: every row states its own in column "mass \[kg\]"/,
      /own\.csv/,
    );
    const some = table("some.csv", [
      "runner,condition,file,mass [kg],from,to",
      ...["baseline", "changed"].flatMap((condition) =>
        WINDOWS.map((window, k) => `${k + 1},${condition},${condition}.csv,${k === 0 ? "" : 70},${window}`),
      ),
    ]);
    expect((await compared(some, "--mass", "70 kg")).runners.baseline).toBe(3);
  });

  it("several rows of a runner and condition are several trials", async () => {
    const several = table("several.csv", [
      HEAD,
      ...["A", "B"].flatMap((runner) =>
        ["baseline", "changed"].flatMap((condition) =>
          WINDOWS.slice(0, 2).map((window) => `${runner},${condition},${condition}.csv,${window}`),
        ),
      ),
    ]);
    const { metrics, runners } = await compared(several, "--minimum-runners", "2");
    expect(runners).toEqual({ baseline: 2, changed: 2 });
    expect(metrics.find(({ id }) => id === "contactTime")?.betweenTrials).toBeGreaterThan(0);
  });

  it("writes a page whole beside what is printed", async () => {
    const page = join(folder, "study.html");
    const { code, err } = await command("runners", paired, "--report", page);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(readFileSync(page, "utf8")).toMatch(/^<!doctype html>[\s\S]*<\/html>\s*$/);
    expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
  });

  it("names of runners that are markup are shown as text", async () => {
    const odd = table("odd.csv", [HEAD, ...rows("baseline", "changed").map((row) => `<b>${row}`)]);
    const page = join(folder, "odd.html");
    expect((await command("runners", odd, "--report", page)).code).toBe(0);
    expect(readFileSync(page, "utf8")).not.toContain("<b>1");
    const bell = table("bell.csv", [HEAD, ...rows("baseline", "changed").map((row) => `\u001b[31m${row}`)]);
    expect((await command("runners", bell)).out).not.toContain("\u001b");
  });

  it.each<[string, () => readonly string[], number, readonly RegExp[]]>([
    ["no table", () => [], 2, [/missing required argument 'table'/]],
    ["two tables", () => [paired, independent], 2, [/too many arguments/]],
    ["another design", () => [paired, "--design", "crossed"], 2, [/paired or independent/]],
    ["too few runners for anything", () => [paired, "--minimum-runners", "1"], 2, [/whole number from 2/]],
    [
      "a margin of a metric without its source",
      () => [paired, "--margin", "contactTime=5 %"],
      2,
      [/--margin-source/],
    ],
    ["CSV", () => [paired, "--csv"], 2, [/unknown option '--csv'/]],
    ["a table that is not there", () => [join(folder, "none.csv")], 1, [/none\.csv: cannot be opened/]],
    ["a folder", () => [folder], 1, [/it is a folder/]],
    ["no text", () => [fileIn(folder, "bytes.csv", new Uint8Array([0xff, 0xfe, 1]))], 1, [/UTF-8/]],
    ["an empty table", () => [table("empty.csv", [])], 1, [/empty\.csv: line 1: the table is empty/]],
    [
      "another condition",
      () => [table("odd-word.csv", [HEAD, "1,after,baseline.csv,,"])],
      1,
      [/odd-word\.csv: line 2/, /baseline or changed/],
    ],
    [
      "a file that is not there",
      () => [table("gone.csv", [HEAD, "1,baseline,gone.c3d,,"])],
      1,
      [/gone\.c3d: there is no such/],
    ],
    [
      "paired runners stated as independent",
      () => [paired, "--design", "independent"],
      1,
      [/paired\.csv: .*runner "1" is in both conditions/],
    ],
    [
      "groups stated as paired",
      () => [independent, "--design", "paired"],
      1,
      [/runner "1" has no row of condition changed/],
    ],
    [
      "neither of both designs",
      () => [table("mixed.csv", [HEAD, ...rows("baseline", "changed").slice(0, 5)])],
      1,
      [/mixed\.csv: runner "1" is in both conditions and "3" in one alone/],
    ],
    [
      "one condition alone",
      () => [table("one.csv", [HEAD, ...rows("baseline")])],
      1,
      [/one\.csv: no row is of condition changed/],
    ],
    [
      "a page over the table",
      () => [
        table("table.html", [HEAD, ...rows("baseline", "changed")]),
        "--report",
        join(folder, "table.html"),
      ],
      1,
      [/table\.html: cannot be written: .* is read/],
    ],
  ])("refuses %s", async (_, argv, code, words) => {
    expectRefused(await command("runners", ...argv()), code, ...words);
  });
});
