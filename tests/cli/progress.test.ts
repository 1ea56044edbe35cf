import { spawn, spawnSync } from "node:child_process";
import { join } from "node:path";
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { progressOn } from "../../src/cli/output/progress.js";
import { writeCsv } from "../../src/io/index.js";
import { demoRecordings, syntheticRun } from "../../src/synthetic/index.js";
import { command, commandAt, emptyFolder, fileIn } from "./command.js";
import { WatchedTerminal } from "./watchedTerminal.js";

const folder = emptyFolder();
let usual = "";
let ahead = "";
beforeAll(() => {
  const demo = demoRecordings();
  usual = fileIn(folder, "usual.csv", writeCsv(demo.usual));
  ahead = fileIn(folder, "ahead.csv", writeCsv(demo.furtherAhead));
});
beforeEach(() => {
  vi.stubEnv("TERM", "xterm");
  vi.stubEnv("CI", undefined);
});
afterEach(() => {
  vi.unstubAllEnvs();
});

/** The stages that stood on the screen one after the other, without the turning sign. */
function stages({ states }: WatchedTerminal): string[] {
  const lines = states.flatMap((state) =>
    state.endsWith("...") ? [state.split("\n").at(-1)?.slice(2) ?? ""] : [],
  );
  return lines.filter((line, k) => line !== lines[k - 1]);
}

describe("where a person watches standard error", () => {
  it("each stage is named, standard output is the same, and nothing is left behind", async () => {
    const watched = new WatchedTerminal();
    const outcome = await commandAt(watched, "compare", usual, ahead);
    expect(stages(watched)).toEqual([
      `reading ${usual} ...`,
      `reading ${ahead} ...`,
      "analysing 2 recordings ...",
      "comparing ...",
    ]);
    expect(watched.screen).toBe("");
    expect(watched.cursorHidden).toBe(false);
    expect(outcome).toEqual(await command("compare", usual, ahead));
  });

  it("what was written stays", async () => {
    const watched = new WatchedTerminal();
    const page = join(folder, "page.html");
    await commandAt(watched, "analyse", usual, "--report", page);
    expect(watched.screen).toBe(`wrote ${page}\n`);
    expect(watched.cursorHidden).toBe(false);
  });

  it("a problem stands alone", async () => {
    const watched = new WatchedTerminal();
    const { code, err } = await commandAt(watched, "compare", usual, fileIn(folder, "empty.csv", ""));
    expect(stages(watched)).toEqual([`reading ${usual} ...`, `reading ${join(folder, "empty.csv")} ...`]);
    expect({ code, screen: watched.screen, hidden: watched.cursorHidden }).toEqual({
      code: 1,
      screen: err,
      hidden: false,
    });
  });

  it("a name that would write on the terminal is shown harmless", async () => {
    const watched = new WatchedTerminal();
    await commandAt(watched, "analyse", join(folder, "a\u001b[2J\nb.csv"));
    expect(stages(watched)[0]).toMatch(/a \[2J b\.csv \.\.\.$/);
  });

  it("a long name is taken away with all of its lines", async () => {
    const watched = new WatchedTerminal();
    const progress = progressOn(watched);
    await progress.say("x".repeat(200));
    expect(watched.screen).toContain("x".repeat(200));
    progress.end();
    progress.end();
    expect(watched.cursorHidden).toBe(false);
  });

  it("nothing is said to a pipe", async () => {
    const progress = progressOn(null);
    await progress.say("reading");
    progress.end("wrote");
    expect((await command("analyse", usual)).err).toBe("");
  });
});

describe("as a process on a terminal", () => {
  const root = new URL("../../", import.meta.url).pathname;
  const program = `"${process.execPath}" --import tsx src/cli/main.ts`;
  const env = { ...process.env, TERM: "xterm", CI: undefined };
  /** The system's program that gives a process a terminal; not every system has it. */
  const SCRIPT = "script";
  const hasTerminals = spawnSync(SCRIPT, ["--version"]).status === 0;

  it.runIf(hasTerminals)("the spinner turns on standard error and ends with the cursor shown", () => {
    const { stdout, status } = spawnSync(
      SCRIPT,
      ["-qec", `${program} analyse "${usual}" > "${join(folder, "out.txt")}"`, "/dev/null"],
      { cwd: root, encoding: "utf8", env },
    );
    expect(status).toBe(0);
    expect(stdout).toContain("analysing ...");
    expect(stdout.lastIndexOf("\u001b[?25h")).toBeGreaterThan(stdout.lastIndexOf("\u001b[?25l"));
    expect(stdout.slice(stdout.lastIndexOf("...") + 3)).not.toMatch(/[a-z]{2}/i);
  });

  it.runIf(hasTerminals)("an interruption ends it with the cursor shown, exit 130", async () => {
    const long = fileIn(folder, "long.csv", writeCsv(syntheticRun({ contacts: 1500 }).recording));
    const child = spawn(SCRIPT, ["-qec", `${program} analyse "${long}"`, "/dev/null"], {
      cwd: root,
      env,
      stdio: ["pipe", "pipe", "pipe"],
    });
    let shown = "";
    child.stdout.on("data", (data: Buffer) => {
      const before = shown;
      shown += data.toString();
      // What a keyboard sends for an interruption, a moment after the first stage stands there: the spinner draws first and
      // listens for interruptions then, which on a busy machine can be some time apart.
      if (!before.includes("...") && shown.includes("...")) {
        setTimeout(() => child.stdin.write("\u0003"), 200);
      }
    });
    const code = await new Promise((resolve) => {
      child.on("close", resolve);
    });
    expect({ code, shown }).toMatchObject({ code: 130 });
    expect(shown).not.toContain("Vertical");
    expect(shown.lastIndexOf("\u001b[?25h")).toBeGreaterThan(shown.lastIndexOf("\u001b[?25l"));
  });
});
