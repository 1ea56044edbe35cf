import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { RecordingDescription } from "../../src/report/index.js";
import { command, emptyFolder, expectRefused, fileIn, TREADMILL_RUN } from "./command.js";

const folder = emptyFolder();

/** Two steps a second of 0.3 s half sines with a peak of 1500 N, at 200 Hz. */
const up = (i: number): number => {
  const part = ((i / 200) % 0.5) / 0.3;
  return part < 1 ? 1500 * Math.sin(Math.PI * part) : 0;
};
const table = (heading: string, row: (i: number) => string): string =>
  [heading, ...Array.from({ length: 400 }, (_, i) => row(i))].join("\n");
const described = async (path: string, ...options: readonly string[]): Promise<RecordingDescription> => {
  const { code, out, err } = await command("describe", path, ...options, "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out) as RecordingDescription;
};
/** The words of the command line that a description gives, without the program's name. */
const suggested = ({ commandLine }: RecordingDescription): string[] =>
  [...(commandLine ?? "").matchAll(/"([^"]*)"|[^\s"]+/g)].map(([word, inner]) => inner ?? word).slice(1);

describe("2026-11-25: describe refused a table until it was fully stated, one refusal after another", () => {
  const markers = table("Time\tHEELx\tHEELy\tHEELz\tFx\tFy\tFz\tCOPx\tCOPy\tCOPz\tMy", (i) =>
    [i / 200, 300 + i, 90, -120, 0, up(i), 0, 400, 0, -120, 2000].join("\t"),
  );

  it("a table without any unit, axis or marker name: all at once, and a command line that reads it", async () => {
    const path = fileIn(folder, "walk.txt", markers);
    const found = await described(path);
    expect(found.toState).toHaveLength(3);
    const [axes, names, units] = found.toState;
    expect(axes).toMatch(/--axes x=right,y=forward,z=up/);
    expect(names).toMatch(
      /^"HEELx", "HEELy", "HEELz", "My" are names that are not known.*--columns.*--ignore/,
    );
    expect(units).toMatch(/^"Time", "HEELx", .* state no unit.*--units/);
    expect(found.columns).toHaveLength(11);
    expect(found.columns[1]).toEqual({
      number: 2,
      name: "HEELx",
      unit: "",
      first: 300,
      least: 300,
      most: 699,
      blank: 0,
      takenAs: "marker:HEEL:x",
      leftOut: false,
    });
    const words = suggested(found);
    expect(words.slice(0, 2)).toEqual(["analyse", path]);
    expect(words).toContain("x=forward,y=up,z=right");
    expect(words).toContain("*x=mm,*y=mm,*z=mm,Time=s,Fx=N,Fy=N,Fz=N,COPx=mm,COPz=mm,My=N mm");
    const { code, err, out } = await command(...words);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toMatch(/Analysed +4 contacts/);
    // What is stated is not asked for again.
    const stated = await described(path, ...words.slice(2));
    expect(stated).toMatchObject({ toState: [], commandLine: null, framed: true, sampleRate: 200 });
    expect(stated.markers?.markers.map(({ name }) => name)).toEqual(["HEEL"]);
  });

  it("a table of markers alone", async () => {
    const path = fileIn(
      folder,
      "markers.csv",
      table("Time [s],TOE_X [m],TOE_Y [m],TOE_Z [m]", (i) => `${i / 200},${i / 100},0.1,0.2`),
    );
    const found = await described(path);
    expect(found).toMatchObject({ samples: 0, duration: 2, sampleRate: 200, framed: false });
    const words = suggested(found);
    expect(words[0]).toBe("describe");
    const stated = await described(path, ...words.slice(2));
    expect(stated.markers?.markers).toEqual([{ name: "TOE", missing: 0, gaps: 0, longest: 0 }]);
  });

  it("a table of other things: its columns with unit, first value and range", async () => {
    const path = fileIn(
      folder,
      "volts.csv",
      table("Time [s],Channel 1 [V]", (i) => `${i / 200},${i - 3}`),
    );
    const found = await described(path);
    expect(found.columns[1]).toMatchObject({ name: "Channel 1", unit: "V", first: -3, least: -3, most: 396 });
    expect(found.commandLine).toBeNull();
    expect(found.toState.join(" ")).toMatch(/"Channel 1/);
    expect(found.toState.join(" ")).not.toMatch(/verticalForce/);
  });

  it("a counter of samples is no time, and no rate is made up", async () => {
    const found = await described(TREADMILL_RUN);
    expect(found).toMatchObject({ duration: null, sampleRate: null, samples: 9000 });
    expect(suggested(found)).toContain("? Hz");
    expect(suggested(found)).toContain("Time=sample");
    expectRefused(await command(...suggested(found)), 2, /--rate/);
  });

  it("numbers without a heading", async () => {
    const path = fileIn(
      folder,
      "bare.txt",
      table("0", (i) => up(i).toFixed(1)),
    );
    const found = await described(path);
    expect(suggested(found).slice(2)).toEqual([
      "--header",
      "0",
      "--columns",
      "1=up",
      "--units",
      "1=N",
      "--rate",
      "? Hz",
    ]);
    expect(found.columns).toMatchObject([{ number: 1, name: "", first: 0, takenAs: "up" }]);
  });

  it("a column of words beside the numbers is listed without them", async () => {
    const path = fileIn(
      folder,
      "words.csv",
      table("time [s],up [N],phase", (i) => `${i / 200},${up(i)},run`),
    );
    const found = await described(path);
    expect(found.columns[2]).toMatchObject({ name: "phase", first: null, least: null, leftOut: true });
    expect(suggested(found).slice(2)).toEqual(["--ignore", "phase"]);
    expect((await command(...suggested(found))).code).toBe(0);
  });

  it("times with a hole: what is there, and what is wrong", async () => {
    const rows = table("time [s],up [N]", (i) => `${i / 200},${up(i)}`).split("\n");
    const path = fileIn(folder, "hole.csv", rows.filter((_, i) => i < 100 || i > 180).join("\n"));
    const found = await described(path);
    expect(found.columns.map(({ name, leftOut }) => [name, leftOut])).toEqual([
      ["time", true],
      ["up", false],
    ]);
    expect(found.toState).toHaveLength(1);
    expect(found.toState[0]).toMatch(/line \d+/);
    // Leaving the time out would glue the halves together.
    expect(found.commandLine).toBeNull();
  });

  it("what no statement puts right is refused", async () => {
    const bad = fileIn(folder, "bad.csv", "time [s],Fz\n0,1\n0.1,many\n0.2,3\n");
    expectRefused(
      await command("describe", bad, "--axes", "z=up", "--units", "Fz=N"),
      1,
      /"many" is no number/,
    );
    const torn = fileIn(folder, "torn.csv", "time,Fz\n0,1\n0.1\n");
    expectRefused(await command("describe", torn), 1, /line 3 has 1 cell/);
    expectRefused(await command("describe", TREADMILL_RUN, "--ignore", "Tme"), 1, /--ignore names "Tme"/);
  });
});

it("2026-11-25: describe did not name the columns that --ignore leaves out", async () => {
  const path = fileIn(
    folder,
    "ignored.csv",
    table("time [s],up [N],Fx2,note", (i) => `${i / 200},${up(i)},1,2`),
  );
  for (const names of ["Fx2,note", "*"]) {
    const { out, code } = await command("describe", path, "--ignore", names);
    expect(code).toBe(0);
    expect(out).toMatch(/^Left out {7}Fx2, note$/m);
  }
});

describe("2026-11-25: options that a recording has no use for passed unseen", () => {
  const own = () =>
    fileIn(
      folder,
      "own.csv",
      table("time [s],up [N]", (i) => `${i / 200},${up(i)}`),
    );

  it.each([
    [["--axes", "x=right,y=forward,z=up"], /--axes is for columns named by axis, and this table has none/],
    [["--plates", "together"], /--plates is for force platforms, or belts of their own/],
    [["--only-plates", "1"], /--only-plates is for force platforms/],
    [["--sides", "1=left"], /--sides is for force platforms/],
  ] as const)("%j", async (options, words) => {
    const path = own();
    expectRefused(await command("analyse", path, ...options), 1, path, words);
    expectRefused(await command("compare", path, path, ...options), 1, path, words);
  });

  it("in a comparison one file's use is enough", async () => {
    const byAxis = fileIn(
      folder,
      "axis.csv",
      table("time [s],Fz [N]", (i) => `${i / 200},${up(i)}`),
    );
    const { code, err } = await command("compare", own(), byAxis, "--axes", "z=up", "--mass", "70 kg");
    expect({ code, err }).toEqual({ code: 0, err: "" });
  });

  it("an option given twice counted the last time, unsaid", async () => {
    const twice = await command("analyse", own(), "--mass", "70 kg", "--mass", "80 kg");
    expectRefused(twice, 2, /--mass/, /given twice, as '70 kg' before/);
    expectRefused(await command("demo", "--out", folder, "--out", join(folder, "b")), 2, /--out/, /twice/);
  });
});

it("2026-11-25: names that hold a bracket, or none, were suggested as options that fail", async () => {
  const blank = fileIn(
    folder,
    "blank.csv",
    table("time [s],,up [N]", (i) => `${i / 200},1,${up(i)}`),
  );
  const refused = await command("analyse", blank);
  expectRefused(refused, 1, /--ignore "2"/, /--columns 2=up/);
  expect((await command("analyse", blank, "--ignore", "2", "--mass", "70 kg")).code).toBe(0);
  const divided = fileIn(folder, "divided.csv", "time [s];up [N],x\n0,1\n1,2\n");
  const outcome = await command("analyse", divided, "--delimiter", "comma");
  expectRefused(outcome, 1, /--ignore "time \[s\];up"/);
});

it("the whole treadmill file is listed, blanks counted", async () => {
  const text = readFileSync(TREADMILL_RUN, "utf8");
  const lines = text.split(/\r?\n/);
  const cells = (lines[5] ?? "").split("\t");
  lines[5] = [...cells.slice(0, 4), "", ...cells.slice(5)].join("\t");
  const path = fileIn(folder, "gap.txt", lines.join("\n"));
  const { out, code } = await command("describe", path);
  expect(code).toBe(0);
  expect(out).toMatch(/^3 Fy +1613 +-32\.35 +1732$/m);
  expect(out).toMatch(/^5 COPx .*\n {4}blank in 1 of 9000 rows$/m);
});
