import { chmodSync, mkdirSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { command, emptyFolder, expectRefused, fileIn, TREADMILL_OPTIONS, TREADMILL_RUN } from "./command.js";

const folder = emptyFolder();
const head = "time [s],forward [N],up [N],right [N]\n";
/** Two steps a second of 0.3 s half sines with a peak of 1500 N, at 200 Hz; `change` edits the lines. */
const table = (change: (rows: string[]) => readonly string[] = (rows) => rows): string => {
  const rows = Array.from({ length: 1000 }, (_, i) => {
    const part = ((i / 200) % 0.5) / 0.3;
    const up = part < 1 ? 1500 * Math.sin(Math.PI * part) : 0;
    return `${(i / 200).toFixed(3)},0,${up.toFixed(2)},0`;
  });
  return head + change(rows).join("\n");
};
const replacing = (row: number, line: string) =>
  table((rows) => rows.map((old, i) => (i === row ? line : old)));

it("analyses the table these cases are made from", async () => {
  const { code, out, err } = await command("analyse", fileIn(folder, "good.csv", table()), "--mass", "70 kg");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  expect(out).toMatch(/Analysed +10 contacts/);
});

describe("files: exit 1", () => {
  it.each<[string, string, readonly (string | RegExp)[]]>([
    ["an empty file", "", [/the file is empty/]],
    [
      "text",
      "Dear reader,\nthis is a letter.\n",
      [/"Dear" is no name this reader knows/, /--ignore "Dear"/, /--columns Dear=up/],
    ],
    ["a ragged row", replacing(4, "0.02,0,10"), [/line 6 has 3 cells/]],
    ["a word where a number belongs", replacing(4, "0.020,0,many,0"), [/line 6/, /"many" is no number/]],
    ["an unknown unit", table().replace("up [N]", "up [stone]"), [/stone/, /kN/]],
    [
      "unknown axes",
      table().replace(head, "time [s],Fx [N],Fy [N],Fz [N]\n"),
      [/--axes x=right,y=forward,z=up/],
    ],
    ["time backwards", replacing(400, "1.000,0,0,0"), [/line 402/, /backwards/]],
    [
      "uneven time",
      table((rows) => rows.filter((_, i) => i < 300 || i > 340)),
      [/line 302/, /41 rows are missing there/],
    ],
    [
      "NaN",
      replacing(4, "0.020,0,NaN,0"),
      [/lacks 1 of 1000 samples/, /line 6 of the file/, /fill the gaps/],
    ],
    ["Infinity", replacing(4, "0.020,0,Infinity,0"), [/line 6/, /"Infinity" is no number/]],
    [
      "no contact",
      table((rows) => rows.map((row) => row.replace(/,[\d.]+,0$/, ",3,0"))),
      [/no complete contact/, /3\.0 N/, /20\.0 N/],
    ],
  ])("%s", async (name, content, words) => {
    const path = fileIn(folder, `${name.replaceAll(" ", "-")}.csv`, content);
    expectRefused(await command("analyse", path, "--mass", "70 kg"), 1, path, ...words);
    expectRefused(await command("compare", join(folder, "good.csv"), path), 1, path, ...words);
  });

  it("bytes that are no text", async () => {
    const bytes = Uint8Array.from({ length: 4000 }, (_, i) => (i * 37) % 256);
    expectRefused(
      await command("analyse", fileIn(folder, "bytes.csv", bytes)),
      1,
      /looks like a binary file/,
    );
  });

  it("a missing file", async () => {
    expectRefused(await command("analyse", join(folder, "nowhere.csv")), 1, /nowhere\.csv/, /no such file/);
  });

  it("a folder", async () => {
    expectRefused(await command("analyse", folder), 1, folder, /is a folder/);
  });

  it("a name that would write on the terminal is shown harmless, on one line", async () => {
    expectRefused(await command("analyse", join(folder, "a\u001b[31m\nb.csv")), 1, /a \[31m b\.csv/);
  });
});

describe("values that this recording does not allow: exit 1", () => {
  let good = "";
  beforeAll(() => {
    good = fileIn(folder, "good.csv", table());
  });

  it.each<[string, readonly string[], readonly (string | RegExp)[]]>([
    ["a cutoff beyond Nyquist", ["--cutoff", "150 Hz"], [/150/, /100/]],
    ["a window beyond the end", ["--from", "2 s", "--to", "20 s"], [/2 to 20 s/, /within 0 to 5 s/]],
    ["a threshold nothing reaches", ["--threshold", "2000 N"], [/contact/, /2000/]],
  ])("%s", async (_, options, words) => {
    expectRefused(await command("analyse", good, ...options), 1, good, ...words);
  });

  it("a report that cannot be written, before anything is printed", async () => {
    expectRefused(
      await command("analyse", good, "--report", join(folder, "none", "page.html")),
      1,
      /page\.html/,
      /cannot be written/,
      /no such/,
    );
    const taken = join(folder, "taken.html");
    mkdirSync(taken);
    expectRefused(await command("analyse", good, "--report", taken), 1, /is a folder/);
    const device = join(folder, "device.html");
    symlinkSync("/dev/null", device);
    expectRefused(await command("analyse", good, "--report", device), 1, /no regular file/);
    const loop = join(folder, "loop.html");
    symlinkSync(loop, loop);
    expectRefused(await command("analyse", good, "--report", loop), 1, /links to itself/);
    expectRefused(await command("analyse", loop), 1, /links to itself/);
  });

  it("a report in a folder this user may not enter", async () => {
    const closed = join(folder, "closed");
    mkdirSync(closed);
    chmodSync(closed, 0);
    // Who may do all steps down for this; the recording lies where everybody may read.
    chmodSync(folder, 0o755);
    const all = process.geteuid?.() === 0;
    if (all) process.seteuid?.("nobody");
    try {
      const outcome = await command("analyse", good, "--report", join(closed, "page.html"));
      expectRefused(outcome, 1, /page\.html: cannot be written: this user may not/);
    } finally {
      if (all) process.seteuid?.(0);
      chmodSync(closed, 0o755);
    }
  });

  it("a report in the place of the recording", async () => {
    const page = fileIn(folder, "good.html", table());
    expectRefused(await command("analyse", page, "--report", page), 1, /is a recording that is read/);
    expectRefused(
      await command("compare", good, page, "--report", `${folder}/./good.html`),
      1,
      /is a recording/,
    );
  });

  it("a demo folder that is a file", async () => {
    expectRefused(await command("demo", "--out", good), 1, good, /cannot be made a folder/);
  });
});

describe("files and options that do not fit together: exit 1", () => {
  const upsideDown = () => table((rows) => rows.map((row) => row.replace(/,(\d+\.\d+),0$/, ",-$1,0")));

  it("a force that points down, and what was stated of it", async () => {
    const path = fileIn(folder, "down.csv", upsideDown());
    expectRefused(await command("analyse", path), 1, path, /points down/, /state --force-on ground/);
    const good = fileIn(folder, "good.csv", table());
    const outcome = await command("analyse", good, "--force-on", "ground");
    expectRefused(outcome, 1, good, /points down/, /--force-on ground was given/);
    expect(outcome.err).not.toMatch(/forceOn|state --force-on ground/);
  });

  it("a recording too short for the filter", async () => {
    const path = fileIn(
      folder,
      "short.csv",
      table((rows) => rows.slice(0, 2)),
    );
    expectRefused(await command("analyse", path), 1, path, /holds 2 samples/, /at least \d+ are needed/);
    expect((await command("analyse", path)).err).not.toContain("padLength");
  });

  it("names that are no columns, and a unit over the heading's", async () => {
    const good = fileIn(folder, "good.csv", table());
    for (const option of ["--ignore", "--units", "--columns"]) {
      const value = option === "--ignore" ? "Tme" : option === "--units" ? "Tme=s" : "Tme=time";
      expectRefused(
        await command("analyse", good, option, value),
        1,
        good,
        `${option} names "Tme"`,
        /"time \[s\]", "forward \[N\]"/,
      );
    }
    expectRefused(await command("analyse", good, "--units", "up=kN"), 1, /states "N"/, /--units "?up=kN/);
  });

  it("in a comparison a name may be a column of one file alone, and must be of one", async () => {
    const good = fileIn(folder, "good.csv", table());
    const named = fileIn(folder, "named.csv", table().replace("up [N]", "Vertical GRF"));
    const options = ["--columns", "Vertical GRF=up", "--units", "Vertical GRF=N", "--mass", "70 kg"];
    for (const pair of [
      [good, named],
      [named, good],
    ]) {
      const { code, err } = await command("compare", ...pair, ...options);
      expect({ code, err }).toEqual({ code: 0, err: "" });
    }
    for (const pair of [
      [good, named],
      [named, good],
      [good, good],
    ]) {
      const slip = await command("compare", ...pair, ...options, "--ignore", "Tme");
      expectRefused(slip, 1, pair[0] as string, /names "(Tme|Vertical GRF)"/);
    }
  });

  it("the vertical force among what is to ignore", async () => {
    const good = fileIn(folder, "good.csv", table());
    expectRefused(await command("analyse", good, "--ignore", "up"), 1, /"up \[N\]"/, /--ignore/, /needed/);
  });
});

describe("command lines: exit 2", () => {
  it.each<[string, readonly string[], readonly (string | RegExp)[]]>([
    [
      "an unknown command",
      ["analyze", "x.csv"],
      [
        /unknown command 'analyze'/,
        /analyse, compare, reliability, sessions, runners, describe, convert, demo, metrics/,
      ],
    ],
    [
      "an unknown option",
      ["analyse", "x.csv", "--weight", "70 kg"],
      [/^gait-kinetics: analyse: /, /unknown option '--weight'/, /--mass/],
    ],
    ["an unknown option of the program", ["--weight"], [/unknown option '--weight'/, /analyse/]],
    [
      "a missing argument",
      ["analyse"],
      [/missing required argument 'file'/, /gait-kinetics analyse \[options\] <file>/],
    ],
    ["a missing second recording", ["compare", "x.csv"], [/'changed'/, /<baseline> <changed>/]],
    ["an argument too many", ["analyse", "x.csv", "y.csv"], [/too many arguments/]],
    ["an option without its value", ["analyse", "x.csv", "--mass"], [/--mass <quantity>/]],
    ["a negative mass", ["analyse", "x.csv", "--mass", "-70 kg"], [/--mass/, /-70 kg/, /above zero/]],
    ["no mass at all", ["analyse", "x.csv", "--mass", "0 kg"], [/above zero/]],
    ["a mass in newtons", ["analyse", "x.csv", "--mass", "700 N"], [/700 N/, /mass/, /70 kg/]],
    ["a mass without a unit", ["analyse", "x.csv", "--mass", "70"], [/no unit/, /kg/]],
    ["a word for a mass", ["analyse", "x.csv", "--mass", "heavy"], [/heavy/]],
    ["an unknown unit", ["analyse", "x.csv", "--speed", "3 knots"], [/knots/, /km\/h/]],
    ["an unknown surface", ["analyse", "x.csv", "--surface", "moon"], [/moon/, /belt or ground/]],
    ["a slope that is a word", ["analyse", "x.csv", "--grade", "steep"], [/steep/, /2 %/]],
    ["an order that is no number", ["analyse", "x.csv", "--order", "four"], [/four/, /whole number/]],
    ["pairs that are none", ["analyse", "x.csv", "--axes", "xyz"], [/xyz/, /NAME=VALUE/]],
    ["JSON and CSV at once", ["analyse", "x.csv", "--json", "--csv"], [/--json/, /--csv/]],
    [
      "three values for two recordings",
      ["compare", "x.csv", "y.csv", "--speed", "3 m/s, 3 m/s, 3 m/s"],
      [/two with a comma/],
    ],
    ["two values for one recording", ["analyse", "x.csv", "--from", "0 s, 15 s"], [/--from/]],
    [
      "an order without a filter",
      ["analyse", "x.csv", "--cutoff", "none", "--order", "4"],
      [/--order/, /--cutoff none/],
    ],
    ["an unknown metric", ["metrics", "loadingRate"], [/"loadingRate" is no metric/, /averageLoadingRate/]],
  ])("%s", async (_, argv, words) => {
    expectRefused(await command(...argv), 2, ...words);
  });

  it("no command at all", async () => {
    expectRefused(
      await command(),
      2,
      /no command/,
      /analyse, compare, reliability, sessions, runners, describe, convert, demo, metrics/,
      /--help/,
    );
  });

  it("help on a command that there is not", async () => {
    expectRefused(await command("help", "analyze"), 2, /unknown command 'analyze'/, /analyse, compare/);
  });

  it("an option of a command that has none", async () => {
    expectRefused(await command("metrics", "--json"), 2, /unknown option '--json'/, /it takes --help alone/);
  });
});

it("an option is refused before the recording is looked for, and a bad recording before the report is written", async () => {
  expectRefused(await command("analyse", "nowhere.csv", "--mass", "700 N"), 2, /700 N/);
  expectRefused(
    await command("compare", TREADMILL_RUN, "nowhere.csv", ...TREADMILL_OPTIONS),
    1,
    /^gait-kinetics: nowhere\.csv: /,
  );
});
