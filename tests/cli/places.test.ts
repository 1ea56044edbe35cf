import { chmodSync, mkdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeCsv } from "../../src/io/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { command, emptyFolder, expectRefused, fileIn, WALK, WALK_AXES } from "./command.js";

const folder = emptyFolder();
const usual = fileIn(folder, "usual.csv", writeCsv(demoRecordings().usual));

describe("2026-11-25: files that are there", () => {
  it("a page was replaced silently", async () => {
    const page = join(folder, "page.html");
    expect(await command("analyse", usual, "--report", page)).toMatchObject({ code: 0, err: "" });
    const again = await command("analyse", usual, "--report", page);
    expect(again).toMatchObject({ code: 0, err: `gait-kinetics: replaced ${page}\n` });
    const other = fileIn(folder, "ahead.csv", writeCsv(demoRecordings().furtherAhead));
    const compared = await command("compare", usual, other, "--report", page);
    expect(compared).toMatchObject({ code: 0, err: `gait-kinetics: replaced ${page}\n` });
  });

  it("the demo replaced recordings silently", async () => {
    const place = join(folder, "demo", "twice");
    expect(await command("demo", "--out", place)).toMatchObject({ code: 0, err: "" });
    const { code, err } = await command("demo", "--out", place);
    expect(code).toBe(0);
    expect(err.trimEnd().split("\n")).toHaveLength(3);
    for (const line of err.trimEnd().split("\n")) expect(line).toMatch(/^gait-kinetics: replaced .*twice/);
  });

  it("a read-only file was replaced", async () => {
    const kept = fileIn(folder, "kept.csv", "kept");
    const page = fileIn(folder, "kept.html", "kept");
    for (const path of [kept, page]) chmodSync(path, 0o444);
    expectRefused(await command("convert", usual, kept, "--overwrite"), 1, kept, /read-only/);
    expectRefused(await command("analyse", usual, "--report", page), 1, page, /read-only/);
    for (const path of [kept, page]) expect(readFileSync(path, "utf8")).toBe("kept");
  });

  it("a file of another owner was replaced", async () => {
    const open = join(folder, "open");
    mkdirSync(open);
    const other = fileIn(open, "other.csv", "other's");
    chmodSync(other, 0o644);
    for (const path of [folder, open]) chmodSync(path, 0o777);
    const all = process.geteuid?.() === 0;
    // Without another user only the file's own mode can tell.
    if (!all) chmodSync(other, 0o444);
    if (all) process.seteuid?.("nobody");
    try {
      expectRefused(
        await command("convert", usual, other, "--overwrite"),
        1,
        other,
        /may not write there|read-only/,
      );
    } finally {
      if (all) process.seteuid?.(0);
    }
    expect(readFileSync(other, "utf8")).toBe("other's");
  });
});

describe("2026-11-25: places that are no files", () => {
  it("a device that never ends was read for ever", async () => {
    for (const name of ["analyse", "describe"]) {
      expectRefused(await command(name, "/dev/zero"), 1, /\/dev\/zero: it is no regular file/);
    }
    const link = join(folder, "zero.c3d");
    symlinkSync("/dev/zero", link);
    expectRefused(await command("analyse", link, ...WALK_AXES), 1, /no regular file/);
  });

  it("a sidecar that never ends", async () => {
    const motion = fileIn(folder, "sub-01_task-run_tracksys-f_motion.tsv", "0\n");
    symlinkSync("/dev/zero", join(folder, "sub-01_task-run_tracksys-f_channels.tsv"));
    expectRefused(await command("describe", motion), 1, /_channels\.tsv/, /no regular file/);
  });

  it("a demo folder where none can be made hung", async () => {
    expectRefused(await command("demo", "--out", "/proc/x"), 1, /\/proc\/x: cannot be made a folder/);
    expectRefused(await command("demo", "--out", "/proc/x/y"), 1, /cannot be made a folder/);
    expectRefused(await command("demo", "--out", join(usual, "x")), 1, /part of the path is a file/);
  });
});

describe("2026-11-25: what convert did not say", () => {
  it("the offset of what is written is taken off twice without --offset none", async () => {
    const path = join(folder, "walk.csv");
    const { err } = await command("convert", WALK, path, ...WALK_AXES);
    expect(err).toMatch(/offset taken off: .*; analyse what is written with --offset none/);
    const peaks = async (...argv: readonly string[]): Promise<readonly number[]> => {
      const { out } = await command("analyse", ...argv, "--json");
      return JSON.parse(out).steps.map(
        ({ values }: { values: Record<string, number> }) => values.peakVerticalForce,
      );
    };
    const [before, after] = [await peaks(WALK, ...WALK_AXES), await peaks(path, "--offset", "none")];
    expect(after).toHaveLength(before.length);
    before.forEach((peak, i) => {
      expect(Math.abs((after[i] ?? Number.NaN) - peak)).toBeLessThan(0.01);
    });
    const none = join(folder, "none.csv");
    const kept = await command("convert", WALK, none, ...WALK_AXES, "--offset", "none", "--drift", "never");
    expect(kept.err).toMatch(/no offset was taken off/);
    expect(kept.err).not.toMatch(/twice/);
  });

  it("a platform that no table states is written to C3D", async () => {
    const { code, err } = await command("convert", usual, join(folder, "usual.c3d"));
    expect(code).toBe(0);
    expect(err).toMatch(
      /states no force platform; platform 1 of [\d.]+ by [\d.]+ m was written in its place/,
    );
    const own = await command("convert", WALK, join(folder, "again.c3d"), ...WALK_AXES);
    expect(own.err).not.toMatch(/in its place/);
  });

  it("C3D keeps seven digits", async () => {
    expect((await command("convert", "--help")).out).toMatch(/C3D, whose numbers are of 32 bits/);
  });
});

it("2026-11-25: a stated --force-on was not named where it made the force useless", async () => {
  const outcome = await command("analyse", WALK, ...WALK_AXES, "--force-on", "ground");
  expectRefused(outcome, 1, /--force-on ground was given/);
});

it("2026-11-25: mass and surface that nobody stated were shown as stated, and 0 strides had a spread between strides", async () => {
  const { out } = await command("analyse", WALK, ...WALK_AXES);
  expect(out).toMatch(/^Mass +82\.7 kg from the file/m);
  expect(out).toMatch(/taken as level|taken as\n +level/);
  expect(out).toMatch(/^± one standard deviation between contacts;/m);
  expect(out).toMatch(/state\n? +--mass if that is wrong/);
  const stated = await command("analyse", WALK, ...WALK_AXES, "--mass", "80 kg", "--surface", "ground");
  expect(stated.out).toMatch(/^Mass +80 kg stated/m);
  expect(stated.out).toMatch(/over ground, taken as level/);
});
