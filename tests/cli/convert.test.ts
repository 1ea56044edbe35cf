import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { readCsv, writeCsv } from "../../src/io/index.js";
import { channelOf, type Recording } from "../../src/recording/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import type { Trial } from "../../src/trial/index.js";
import { command, emptyFolder, expectRefused, fileIn, WALK, WALK_AXES } from "./command.js";

const folder = emptyFolder();
const usual = fileIn(folder, "usual.csv", writeCsv(demoRecordings().usual));

const converted = async (...argv: readonly string[]): Promise<string> => {
  const { code, out, err } = await command("convert", ...argv);
  expect({ code, out, err: code === 0 ? "" : err }).toEqual({ code: 0, out: "", err: "" });
  return err;
};
const analysed = async (...argv: readonly string[]): Promise<Trial> => {
  const { code, out, err } = await command("analyse", ...argv, "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out) as Trial;
};
const up = (recording: Recording) => channelOf(recording, "force", "up")?.samples;

describe("convert", () => {
  it("from the library's table to C3D and to Motion-BIDS and back: the analysis says the same", async () => {
    const there = await analysed(usual);
    for (const name of ["there.c3d", "sub-01_task-run_tracksys-plate_motion.tsv"]) {
      const path = join(folder, name);
      await converted(usual, path);
      const again = await analysed(path);
      expect(again.settings).toMatchObject({ mass: 70, speed: 3, surface: "belt", sampleRate: 1000 });
      expect(again.contacts).toHaveLength(there.contacts.length);
      for (const [id, metric] of Object.entries(there.summary.metrics)) {
        if (metric === undefined) continue;
        // C3D holds 32-bit numbers: seven digits, of which a difference of two loses some.
        expect(Math.abs((again.summary.metrics[id]?.mean ?? Number.NaN) / metric.mean - 1), id).toBeLessThan(
          1e-3,
        );
      }
      const back = join(folder, `${name}.csv`);
      await converted(path, back);
      const [one, two] = [usual, back].map((file) => readCsv(readFileSync(file, "utf8")));
      expect(two?.sampleRate).toBe(one?.sampleRate);
      const [before, after] = [one, two].map((recording) => up(recording as Recording));
      const worst = before?.reduce(
        (most, value, i) => Math.max(most, Math.abs(value - (after?.[i] ?? Number.NaN))),
        0,
      );
      expect(worst).toBeLessThan(1e-3);
    }
  });

  it("Motion-BIDS comes with its sidecars", () => {
    expect(
      readdirSync(folder)
        .filter((name) => name.startsWith("sub-01"))
        .sort(),
    ).toEqual(
      expect.arrayContaining([
        "sub-01_task-run_tracksys-plate_channels.tsv",
        "sub-01_task-run_tracksys-plate_motion.json",
        "sub-01_task-run_tracksys-plate_motion.tsv",
      ]),
    );
  });

  it("platforms become the force on the runner in a table, plates apart, and what is lost is said line by line", async () => {
    const path = join(folder, "walk.csv");
    const said = await converted(WALK, path, ...WALK_AXES);
    for (const line of said.trimEnd().split("\n"))
      expect(line).toMatch(/^gait-kinetics: .*walk\.csv: note: /);
    expect(said).toMatch(/became the force of the ground on the runner/);
    expect(said).toMatch(/26 markers are not written/);
    const table = readCsv(readFileSync(path, "utf8"));
    const plates = table.channels.filter(
      ({ quantity, direction }) => quantity === "force" && direction === "up",
    );
    expect(plates).toHaveLength(2);
    // Check values of the recording: peak 805.580 N at sample 904 of plate 2, 817.277 N at sample 1244 of plate 1.
    const peaks = plates.map(({ samples }) => Math.max(...samples)).sort((one, two) => one - two);
    expect(Math.abs((peaks[0] ?? 0) - 805.58)).toBeLessThan(0.3);
    expect(Math.abs((peaks[1] ?? 0) - 817.277)).toBeLessThan(0.3);
    const [fromC3d, fromTable] = [await analysed(WALK, ...WALK_AXES), await analysed(path)];
    expect(fromTable.contacts.length).toBe(fromC3d.contacts.length);
  });

  it("C3D to C3D keeps the platforms as they are", async () => {
    const path = join(folder, "again.c3d");
    await converted(WALK, path, ...WALK_AXES);
    const [one, two] = [await analysed(WALK, ...WALK_AXES), await analysed(path)];
    expect(two.contacts.length).toBe(one.contacts.length);
    expect(two.summary.metrics.peakVerticalForce?.mean).toBeCloseTo(
      one.summary.metrics.peakVerticalForce?.mean ?? Number.NaN,
      2,
    );
  });

  it("a window is cut out", async () => {
    const path = join(folder, "part.csv");
    await converted(usual, path, "--from", "2 s", "--to", "4 s");
    const part = readCsv(readFileSync(path, "utf8"));
    expect([part.startTime, part.channels[0]?.samples.length]).toEqual([2, 2000]);
  });

  it("a file that is there is kept, unless it may be replaced", async () => {
    const path = fileIn(folder, "mine.csv", "mine");
    expectRefused(await command("convert", usual, path), 1, path, /is there/, /--overwrite/);
    expect(readFileSync(path, "utf8")).toBe("mine");
    await converted(usual, path, "--overwrite");
    expect(readFileSync(path, "utf8")).toContain("up [N]");
    const beside = fileIn(folder, "sub-02_task-run_tracksys-plate_channels.tsv", "mine");
    expectRefused(
      await command("convert", usual, join(folder, "sub-02_task-run_tracksys-plate_motion.tsv")),
      1,
      beside,
      /--overwrite/,
    );
    expect(existsSync(join(folder, "sub-02_task-run_tracksys-plate_motion.tsv"))).toBe(false);
  });

  it("never over the file that is read", async () => {
    for (const path of [usual, join(folder, ".", "usual.csv")])
      expectRefused(await command("convert", usual, path, "--overwrite"), 1, /is a recording that is read/);
    const link = join(folder, "link.csv");
    symlinkSync(usual, link);
    expectRefused(await command("convert", usual, link, "--overwrite"), 1, /is a recording that is read/);
  });

  it("a place that cannot be written, before the file is read", async () => {
    expectRefused(
      await command("convert", "nowhere.csv", join(folder, "none", "out.csv")),
      1,
      /out\.csv: cannot be written/,
      /no such file or folder/,
    );
    expectRefused(await command("convert", usual, join(usual, "out.csv")), 1, /cannot be written/);
    const taken = join(folder, "taken.csv");
    mkdirSync(taken);
    expectRefused(await command("convert", usual, taken, "--overwrite"), 1, /is a folder/);
  });

  it("a folder this user may not write into", async () => {
    const closed = join(folder, "closed");
    mkdirSync(closed);
    chmodSync(closed, 0o555);
    chmodSync(folder, 0o755);
    const all = process.geteuid?.() === 0;
    if (all) process.seteuid?.("nobody");
    try {
      expectRefused(await command("convert", usual, join(closed, "out.csv")), 1, /this user may not/);
      expect(readdirSync(closed)).toEqual([]);
    } finally {
      if (all) process.seteuid?.(0);
      chmodSync(closed, 0o755);
    }
  });

  it("nothing is left behind where the file cannot be read", async () => {
    const before = readdirSync(folder).length;
    expectRefused(await command("convert", "nowhere.csv", join(folder, "out.csv")), 1, /nowhere\.csv/);
    const bad = fileIn(folder, "bad.csv", "time [s],up [N]\n0,many\n");
    expectRefused(await command("convert", bad, join(folder, "out.csv")), 1, /bad\.csv/, /"many"/);
    expect(readdirSync(folder).length).toBe(before + 1);
  });

  it.each<[string, readonly RegExp[]]>([
    ["out.xlsx", [/out\.xlsx/, /\.csv/, /\.c3d/, /_motion\.tsv/]],
    ["out", [/ending/]],
    [".csv", [/ending/]],
    ["trial.json", [/analyse --json/]],
    [
      "walk_motion.tsv",
      [/made of sub, ses \(optional\), task/, /sub-01_task-running_tracksys-force_motion\.tsv/],
    ],
    ["sub-01_task-run_motion.tsv", [/tracksys/]],
    ["sub-01_task-run_tracksys-f_run-x_motion.tsv", [/run and desc \(optional\)/]],
  ])("to %s: exit 2", async (name, words) => {
    expectRefused(await command("convert", usual, name), 2, ...words);
  });
});
