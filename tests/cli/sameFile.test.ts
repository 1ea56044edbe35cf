import { symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeCsv } from "../../src/io/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { command, emptyFolder, expectRefused, fileIn } from "./command.js";

const folder = emptyFolder();
const text = writeCsv(demoRecordings().usual);
const usual = fileIn(folder, "usual.csv", text);

describe('2026-11-25: a file against itself read "all similar"', () => {
  it("is refused, by another path too", async () => {
    expectRefused(await command("compare", usual, usual), 2, usual, /compared with itself/, /do not overlap/);
    const link = join(folder, "link.csv");
    symlinkSync(usual, link);
    expectRefused(
      await command("compare", usual, link),
      2,
      /link\.csv, which is the same file as .*usual\.csv/,
    );
    expectRefused(
      await command("compare", usual, usual, "--from", "0 s, 10 s", "--to", "15 s, 25 s"),
      2,
      /compared with itself/,
    );
  });
  it("its windows that meet are compared, and a copy is, with a word", async () => {
    const halves = await command("compare", usual, usual, "--from", "0 s, 15 s", "--to", "15 s, 30 s");
    expect({ code: halves.code, err: halves.err }).toEqual({ code: 0, err: "" });
    const { code, out } = await command("compare", usual, fileIn(folder, "copy.csv", text));
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, " ")).toMatch(/contacts have the very same numbers in both trials/);
    expect(halves.out).not.toContain("very same numbers");
  });
});
