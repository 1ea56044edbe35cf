import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Comparison } from "../../src/compare/index.js";
import { readC3d, readCsv, recordingToC3d, writeC3d, writeCsv } from "../../src/io/index.js";
import { channelOf, type Recording } from "../../src/recording/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import type { Trial } from "../../src/trial/index.js";
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
const bytes = readFileSync(WALK);
const demo = demoRecordings();

const parsed = async <T>(...argv: readonly string[]): Promise<T> => {
  const { code, out, err } = await command(...argv, "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out) as T;
};
const walked = (...options: readonly string[]) => parsed<Trial>("analyse", WALK, ...WALK_AXES, ...options);
const valuesOf = (trial: Trial, id: string) => trial.steps.map(({ values }) => values[id] ?? Number.NaN);

describe("a C3D walking file, c3d.org standard sample set 01, check values by NumPy", () => {
  it("with its axes alone: two contacts, one a plate, near the check values through the default filter", async () => {
    const trial = await walked();
    expect(trial.settings).toMatchObject({ mass: 82.7, sampleRate: 200, duration: 9 });
    // Plates 2 and 1: impulses 1223.4693 and 1177.4198 N s, peaks 805.580 and 817.277 N.
    const [first, second] = valuesOf(trial, "verticalImpulse");
    expect(Math.abs((first ?? 0) / 1223.4693 - 1)).toBeLessThan(1e-3);
    expect(Math.abs((second ?? 0) / 1177.4198 - 1)).toBeLessThan(1e-3);
    const [one, two] = valuesOf(trial, "peakVerticalForce");
    expect(Math.abs((one ?? 0) / 805.58 - 1)).toBeLessThan(2e-3);
    expect(Math.abs((two ?? 0) / 817.277 - 1)).toBeLessThan(2e-3);
  });

  it("with the same ten samples as zero and no filter: peaks to the printed digits", async () => {
    const trial = await walked("--zero", "0 s to 0.045 s", "--cutoff", "none", "--threshold", "20 N");
    const [one, two] = valuesOf(trial, "peakVerticalForce");
    expect(one).toBeCloseTo(805.58, 3);
    expect(two).toBeCloseTo(817.277, 3);
    // Samples 544 to 994 and 1078 to 1465 lie above 20 N: the crossings lie within a sample before and behind them.
    const ends = trial.contacts.flatMap(({ initialContact, toeOff }) => [initialContact, toeOff]);
    [2.72, 4.97, 5.39, 7.325].forEach((time, i) => {
      expect(Math.abs((ends[i] ?? 0) - time)).toBeLessThan(0.005);
    });
  });

  it("under another name, and as floating numbers of another byte order, it reads the same", async () => {
    const renamed = fileIn(folder, "walk.dat", bytes);
    expect(await parsed<Trial>("analyse", renamed, ...WALK_AXES)).toEqual(await walked());
  });

  it("takes plates together, one alone, and the sides that are stated", async () => {
    const together = await walked("--plates", "together");
    expect(together.contacts).toHaveLength(2);
    const alone = await walked("--only-plates", "1");
    expect(alone.contacts).toHaveLength(1);
    expect(valuesOf(alone, "peakVerticalForce")[0]).toBeCloseTo(
      valuesOf(await walked(), "peakVerticalForce")[1] ?? 0,
      6,
    );
    const sided = await walked("--sides", "1=left,2=right");
    expect(sided.contacts.map(({ side }) => side)).toEqual(["right", "left"]);
  });

  it("uses the file's zero frames though they lie outside the window", async () => {
    const part = await walked("--from", "5 s");
    const whole = await walked();
    expect(part.contacts).toHaveLength(1);
    expect(valuesOf(part, "peakVerticalForce")[0]).toBeCloseTo(
      valuesOf(whole, "peakVerticalForce")[1] ?? 0,
      1,
    );
    expect((part.contacts[0]?.initialContact ?? 0) + 5).toBeCloseTo(
      whole.contacts[1]?.initialContact ?? 0,
      3,
    );
    expect(part.settings.force.offset.up).toBeCloseTo(whole.settings.force.offset.up ?? Number.NaN, 9);
  });

  it("moves a stated zero stretch with the window", async () => {
    // Both feet are off plate 1 up to 5.39 s, off plate 2 from 4.97 s on.
    const there = await walked("--from", "4.98 s", "--zero", "5 s to 5.3 s", "--only-plates", "1");
    const whole = await walked("--zero", "5 s to 5.3 s", "--only-plates", "1");
    expect(there.settings.force.offset.up).toBeCloseTo(whole.settings.force.offset.up ?? Number.NaN, 9);
  });

  it("a cover moves the centre of pressure against the horizontal force, and changes nothing of the force", async () => {
    const tableWith = async (name: string, ...options: readonly string[]) => {
      const path = join(folder, name);
      const { code } = await command("convert", WALK, path, ...WALK_AXES, "--only-plates", "2", ...options);
      expect(code).toBe(0);
      return readCsv(readFileSync(path, "utf8"));
    };
    const bare = await tableWith("bare.csv");
    const covered = await tableWith("covered.csv", "--cover-thickness", "20 mm");
    const at = (
      recording: Recording,
      quantity: "force" | "centre-of-pressure",
      direction: "forward" | "up",
    ) => channelOf(recording, quantity, direction)?.samples[769] ?? Number.NaN;
    expect(at(covered, "force", "up")).toBe(at(bare, "force", "up"));
    // A surface 20 mm higher: the line of the force meets it 20 mm × F_forward ÷ F_up farther on.
    const shift = (0.02 * at(bare, "force", "forward")) / at(bare, "force", "up");
    const moved = at(covered, "centre-of-pressure", "forward") - at(bare, "centre-of-pressure", "forward");
    expect(moved).toBeCloseTo(shift, 6);
    // Check value of the source's data: Y 743.9212 mm at this sample.
    expect(Math.abs(at(bare, "centre-of-pressure", "forward") - 0.7439212)).toBeLessThan(2e-4);
  });
});

describe("compare takes files of different formats, each option for those that use it", () => {
  it("a table and a C3D file of the demo shift as two tables do", async () => {
    const usual = fileIn(folder, "usual.csv", writeCsv(demo.usual));
    const ahead = fileIn(folder, "ahead.c3d", writeC3d(recordingToC3d(demo.furtherAhead)));
    const comparison = await parsed<Comparison>("compare", usual, ahead, "--decimal", ".");
    expect(comparison.overall).toMatchObject({ reading: "shifted", lower: ["vertical"] });
    // The vertical force of both points up already.
    const tables = await parsed<Comparison>(
      "compare",
      usual,
      fileIn(folder, "ahead.csv", writeCsv(demo.furtherAhead)),
    );
    const difference = (one: Comparison) =>
      one.metrics.find(({ id }) => id === "peakVerticalForce")?.difference;
    expect(difference(comparison)).toBeCloseTo(difference(tables) ?? Number.NaN, 3);
  });

  it("an option that neither file's format uses is refused", async () => {
    const one = fileIn(folder, "one.c3d", writeC3d(recordingToC3d(demo.usual)));
    expectRefused(
      await command("compare", one, one, "--decimal", "."),
      1,
      one,
      /--decimal is for a table of text/,
    );
  });
});

describe("bad input: exit 1", () => {
  it("axes that are not stated: what to state, and what is seen", async () => {
    const outcome = await command("analyse", WALK);
    expectRefused(
      outcome,
      1,
      WALK,
      /state all three, such as --axes x=right,y=forward,z=up/,
      /2160 mm along \+y/,
    );
    expect(outcome.err).not.toMatch(/axes: \{|[{}]/);
  });

  it.each<[string, readonly string[], readonly RegExp[]]>([
    ["two axes alone", ["--axes", "x=right,y=forward"], [/z/, /all three/]],
    ["left-handed axes", ["--axes", "x=left,y=forward,z=up"], [/left-handed/]],
    [
      "--decimal",
      [...WALK_AXES, "--decimal", ","],
      [/--decimal is for a table of text, and this file is C3D/],
    ],
    ["--rate", [...WALK_AXES, "--rate", "200 Hz"], [/--rate is for a table of text/]],
    ["--unit-row", [...WALK_AXES, "--unit-row", "skip"], [/--unit-row is for a table of text/]],
    ["--columns", [...WALK_AXES, "--columns", "a=up"], [/--columns is for a table of text or Motion-BIDS/]],
    ["a zero stretch beyond the end", [...WALK_AXES, "--zero", "8 s to 10 s"], [/--zero is 8 s to 10 s/]],
    [
      "a plate that there is not",
      [...WALK_AXES, "--only-plates", "7"],
      [/--only-plates names "7"; the plates are 1, 2/],
    ],
    ["a window beyond the end", [...WALK_AXES, "--to", "20 s"], [/0 to 20 s/, /within 0 to 9 s/]],
  ])("%s", async (_, options, words) => {
    expectRefused(await command("analyse", WALK, ...options), 1, WALK, ...words);
  });

  it("options of platforms for a table", async () => {
    for (const option of [
      ["--cover-thickness", "10 mm"],
      ["--origin-sign", "stored"],
      ["--length-unit", "mm"],
    ]) {
      const outcome = await command("analyse", TREADMILL_RUN, ...TREADMILL_OPTIONS, ...option);
      expectRefused(outcome, 1, `${option[0]} is for C3D, and this file is a table of text`);
    }
  });

  it.each<[string, Uint8Array, readonly RegExp[]]>([
    ["cut", bytes.subarray(0, 60_000), [/frames|bytes|end/]],
    ["header-alone", bytes.subarray(0, 512), [/./]],
    ["empty", new Uint8Array(0), [/empty|bytes/]],
    ["text-named", new TextEncoder().encode("time [s],up [N]\n0,1\n"), [/./]],
  ])("a C3D file that is none: %s", async (name, content, words) => {
    const path = fileIn(folder, `${name}.c3d`, content);
    expectRefused(await command("analyse", path, ...WALK_AXES), 1, path, ...words);
  });

  it("other formats are refused by name", async () => {
    const zip = Uint8Array.from([0x50, 0x4b, 3, 4, ...new Array(600).fill(0)]);
    expectRefused(await command("analyse", fileIn(folder, "table.xlsx", zip)), 1, /looks like/);
  });

  it("Motion-BIDS without its sidecars names the one that is missing", async () => {
    const path = join(folder, "sub-01_task-running_tracksys-force_motion.tsv");
    expect((await command("convert", WALK, path, ...WALK_AXES)).code).toBe(0);
    const alone = fileIn(folder, "sub-09_task-running_tracksys-force_motion.tsv", readFileSync(path));
    expectRefused(
      await command("analyse", alone),
      1,
      alone,
      /sub-09_task-running_tracksys-force_channels\.tsv, which says what each column holds, is needed beside it/,
    );
    fileIn(folder, "sub-09_task-running_tracksys-force_channels.tsv", "name\tcomponent\ttype\n");
    expectRefused(
      await command("analyse", alone),
      1,
      /sub-09_task-running_tracksys-force_motion\.json/,
      /sampling rate/,
    );
  });

  it("a recording that comes back from Motion-BIDS has its platforms, markers and events", async () => {
    const path = join(folder, "sub-01_task-running_tracksys-force_motion.tsv");
    const { out } = await command("describe", path, "--json");
    const own = readC3d(bytes, { axes: { x: "right", y: "forward", z: "up" } });
    const back = JSON.parse(out);
    expect(back.platforms).toHaveLength(2);
    expect(back.events).toHaveLength(own.events?.length ?? Number.NaN);
    expect(back.markers.markers).toHaveLength(26);
  });
});
