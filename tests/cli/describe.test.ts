import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeCsv } from "../../src/io/index.js";
import type { RecordingDescription } from "../../src/report/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import {
  command,
  emptyFolder,
  expectRefused,
  fileIn,
  TREADMILL_OPTIONS,
  TREADMILL_RUN,
  WALK,
  WALK_AXES,
} from "./command.js";

const folder = emptyFolder();
const usual = fileIn(folder, "usual.csv", writeCsv(demoRecordings().usual));

const printed = async (...argv: readonly string[]): Promise<string> => {
  const { code, out, err } = await command("describe", ...argv);
  expect({ code, err }).toEqual({ code: 0, err: "" });
  expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  return out;
};
const described = async (...argv: readonly string[]): Promise<RecordingDescription> => {
  const { code, out, err } = await command("describe", ...argv, "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out) as RecordingDescription;
};

describe("describe", () => {
  it("a C3D file whose axes are not stated: what is in it, what must be stated, what is seen of it", async () => {
    const out = (await printed(WALK)).replace(/\s+/g, " ");
    expect(out).toContain("little-endian, 16-bit integers");
    expect(out).toContain("9 s: 1800 samples at 200 Hz");
    expect(out).toMatch(/To be stated - .* state all three, such as --axes x=right,y=forward,z=up/);
    expect(out).toMatch(/the markers go \d+ mm along \+y/);
    expect(out).toContain("mass 82.7 kg, height 1.63 m");
    expect(out).toContain("Markers: 26, 450 frames at 50 Hz");
    // The source's own events, s.
    for (const event of ["2.720 s RIC", "5.400 s RHS", "7.320 s RTO"]) expect(out).toContain(event);
    const raw = await described(WALK);
    expect(raw).toMatchObject({
      format: "c3d",
      framed: false,
      lengthUnit: "mm",
      duration: 9,
      sampleRate: 200,
    });
    expect(raw.channels).toHaveLength(16);
    expect(raw.platforms.map(({ type, zero }) => ({ type, zero }))).toEqual([
      { type: 2, zero: { from: 0, to: 40 } },
      { type: 2, zero: { from: 0, to: 40 } },
    ]);
    // Counted by the data set's own check: 226 points flagged invalid.
    expect(raw.markers?.markers.reduce((sum, { missing }) => sum + missing, 0)).toBe(226);
  });

  it("the same file in the library's frame, once its axes are stated", async () => {
    const framed = await described(WALK, ...WALK_AXES);
    expect(framed).toMatchObject({ framed: true, lengthUnit: "m", toState: [], sampleRate: 200 });
    expect(framed.platforms[0]?.place?.middle.up).toBeCloseTo(0.00135, 4);
    expect(framed.platforms[0]?.place?.middle.forward).toBeCloseTo(1.497, 3);
  });

  it("all six number formats are named, and five hold the first 60 frames of the same trial", async () => {
    const whole = await described(WALK);
    const storages = new Set([whole.storage]);
    for (const name of ["pr", "si", "sr", "vi", "vr"]) {
      const { storage, ...part } = await described(WALK.replace("walk-pi", `walk-${name}-60`));
      storages.add(storage);
      expect(part.duration).toBeCloseTo(60 / 50, 12);
      expect(part.platforms).toEqual(whole.platforms);
      expect(part.channels.map(({ name, unit }) => [name, unit])).toEqual(
        whole.channels.map(({ name, unit }) => [name, unit]),
      );
    }
    expect(storages.size).toBe(6);
  });

  it("the library's own table", async () => {
    const own = await described(usual);
    expect(own).toMatchObject({ format: "csv", framed: true, sampleRate: 1000, speed: 3, surface: "belt" });
    expect(own.subject.mass).toBe(70);
    expect(own.channels.map(({ holds }) => holds)).toContain("force up");
  });

  it("a table named by axis, with and without its axes", async () => {
    const without = TREADMILL_OPTIONS.slice(2);
    const stored = await described(TREADMILL_RUN, ...without);
    expect(stored.framed).toBe(false);
    expect(stored.toState[0]).toMatch(/--axes x=right,y=forward,z=up/);
    // Extremes of the file by its README.
    expect(stored.channels.find(({ name }) => name === "Fy")).toMatchObject({
      holds: "force",
      unit: "N",
      least: -32.35,
      most: 1731.87,
    });
    const framed = await described(TREADMILL_RUN, ...TREADMILL_OPTIONS);
    expect(framed.channels.find(({ name }) => name === "Fy")).toMatchObject({
      holds: "force up",
      most: 1731.87,
    });
  });

  it("a window of it", async () => {
    expect((await described(usual, "--from", "2 s", "--to", "4 s")).samples).toBe(2000);
  });

  it("numbers are written with 12 significant digits", async () => {
    const { out } = await command("describe", WALK, "--json");
    for (const [digits] of out.matchAll(/-?\d+\.\d+(?:e-?\d+)?/g))
      expect(Number(Number(digits).toPrecision(12))).toBe(Number(digits));
  });

  it("a file that is none", async () => {
    expectRefused(await command("describe", join(folder, "nowhere.c3d")), 1, /nowhere\.c3d/, /no such file/);
    expectRefused(await command("describe", folder), 1, /is a folder/);
    const cut = fileIn(folder, "cut.c3d", readFileSync(WALK).subarray(0, 20_000));
    expectRefused(await command("describe", cut), 1, cut);
    expectRefused(await command("describe", fileIn(folder, "empty.csv", "")), 1, /empty/);
  });
});
