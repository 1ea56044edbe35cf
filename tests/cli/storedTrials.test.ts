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
let stored = { usual: "", ahead: "" };
let text = "";
beforeAll(async () => {
  text = (await command("analyse", usual, "--json")).out;
  stored = {
    usual: fileIn(folder, "usual.json", text),
    ahead: fileIn(folder, "ahead.trial", (await command("analyse", ahead, "--json")).out),
  };
});
const compared = async (...argv: readonly string[]): Promise<Comparison> =>
  JSON.parse((await command("compare", ...argv, "--json")).out) as Comparison;

describe("trials that were analysed before", () => {
  it("are compared as their recordings are, by their name or by what they hold", async () => {
    const [fromTrials, fromRecordings] = [
      await compared(stored.usual, stored.ahead),
      await compared(usual, ahead),
    ];
    expect(fromTrials.overall).toEqual(fromRecordings.overall);
    expect(fromTrials.metrics.map(({ id }) => id)).toEqual(fromRecordings.metrics.map(({ id }) => id));
    for (const [k, { difference, readingInterval }] of fromTrials.metrics.entries()) {
      const size = Math.abs(fromRecordings.metrics[k]?.baseline.mean ?? 0);
      expect(difference).toBeCloseTo(fromRecordings.metrics[k]?.difference ?? Number.NaN, size > 1e4 ? 4 : 7);
      expect(readingInterval.low).toBeCloseTo(
        fromRecordings.metrics[k]?.readingInterval.low ?? Number.NaN,
        size > 1e4 ? 4 : 7,
      );
    }
  });

  it("give the text, CSV and a page without curves against each other", async () => {
    const page = join(folder, "page.html");
    const { code, out, err } = await command("compare", stored.usual, stored.ahead, "--report", page);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/^Shifted/);
    expect((await command("compare", stored.usual, stored.ahead, "--csv")).out).toMatch(/^metric,/);
  });

  it("take the metrics that the answer is to speak of", async () => {
    const { metrics } = await compared(stored.usual, stored.ahead, "--metrics", "brakingImpulse");
    expect(metrics.map(({ id }) => id)).toEqual(["brakingImpulse"]);
  });

  it("a text in them that would write on the terminal is shown harmless", async () => {
    const evil = fileIn(
      folder,
      "evil.json",
      text.replace('"cautions":[]', '"cautions":[{"code":"odd","message":"a\\u001b[2Jb"}]'),
    );
    const { out } = await command("compare", evil, stored.ahead);
    expect(out).toContain("a [2Jb");
    expect(out).not.toContain("\u001b");
  });

  it.each<[string, () => readonly string[], readonly (string | RegExp)[]]>([
    [
      "a mass",
      () => [stored.usual, stored.ahead, "--mass", "70 kg"],
      [/--mass is for recordings/, "usual.json"],
    ],
    ["a speed of one", () => [stored.usual, stored.ahead, "--speed", "3 m/s, 3 m/s"], [/--speed is for/]],
    ["a window", () => [stored.usual, stored.usual, "--from", "0 s, 5 s"], [/--from is for recordings/]],
    ["a filter", () => [stored.usual, stored.ahead, "--cutoff", "30 Hz"], [/--cutoff is for recordings/]],
    ["axes", () => [stored.usual, stored.ahead, "--force-on", "runner"], [/--force-on is for recordings/]],
    [
      "a recording beside it",
      () => [stored.usual, ahead],
      [/usual\.json holds a trial/, /ahead\.csv a recording/],
    ],
    [
      "beside a recording",
      () => [ahead, stored.usual],
      [/usual\.json holds a trial/, /ahead\.csv a recording/],
    ],
    [
      "no JSON",
      () => [fileIn(folder, "torn.json", text.slice(0, 1000)), stored.ahead],
      [/torn\.json/, /no JSON/],
    ],
    ["an empty file", () => [fileIn(folder, "empty.json", ""), stored.ahead], [/empty\.json/, /no JSON/]],
    [
      "another schema",
      () => [fileIn(folder, "other.json", '{"schema":"x"}'), stored.ahead],
      [/other\.json/, /gait-kinetics\/trial\/1/],
    ],
    [
      "a field of the wrong kind",
      () => [
        fileIn(folder, "wrong.json", text.replace(/"gravity":[\d.]+/, '"gravity":"much"')),
        stored.ahead,
      ],
      [/wrong\.json/, /trial\.settings\.gravity/],
    ],
    [
      "no text",
      () => [fileIn(folder, "bytes.json", new Uint8Array([123, 255, 254])), stored.ahead],
      [/UTF-8/],
    ],
    ["a folder", () => [stored.usual, folder], [/is a folder/]],
  ])("refused: %s", async (_, argv, words) => {
    expectRefused(await command("compare", ...argv()), 1, ...words);
  });

  it("a comparison is no trial", async () => {
    const comparison = fileIn(
      folder,
      "comparison.json",
      (await command("compare", usual, ahead, "--json")).out,
    );
    expectRefused(
      await command("compare", comparison, stored.ahead),
      1,
      /holds a comparison; a trial is needed/,
    );
  });

  it.each(["analyse", "describe"])("%s says that it needs a recording", async (name) => {
    expectRefused(await command(name, stored.usual), 1, /usual\.json: it is JSON/, /a recording is needed/);
  });

  it("convert says it too", async () => {
    const target = join(folder, "out.csv");
    expectRefused(await command("convert", stored.usual, target), 1, /a recording is needed/);
  });
});
