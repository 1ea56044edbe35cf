import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { writeCsv } from "../../src/io/index.js";
import { demoRecordings } from "../../src/synthetic/index.js";
import { command, emptyFolder, expectRefused, fileIn } from "./command.js";

const folder = emptyFolder();
const { usual } = demoRecordings();
const plain = fileIn(folder, "plain.csv", writeCsv(usual));
const again = fileIn(folder, "again.csv", writeCsv(usual));
const shod = fileIn(folder, "shod.csv", writeCsv({ ...usual, footwear: "road shoe, 250 g" }));
const footwearOf = async (file: string, ...options: readonly string[]): Promise<unknown> => {
  const { out } = await command("analyse", file, "--json", ...options);
  return (JSON.parse(out) as { readonly settings: { readonly footwear: unknown } }).settings.footwear;
};

describe("what is on the feet", () => {
  it("comes from the file or the option, which counts before it and is said", async () => {
    expect(await footwearOf(plain)).toBeNull();
    expect(await footwearOf(shod)).toBe("road shoe, 250 g");
    expect(await footwearOf(shod, "--footwear", " barefoot ")).toBe("barefoot");
    const { out } = await command("analyse", shod, "--footwear", "barefoot");
    expect(out).toMatch(/Footwear +barefoot/);
    expect(out.replace(/\s+/g, " ")).toContain(
      "The file states footwear road shoe, 250 g, the option barefoot; the option was used",
    );
  });

  it.each(["csv", "c3d", "sub-1_task-run_tracksys-force_motion.tsv"])(
    "stays in a recording that is converted to %s",
    async (ending) => {
      const target = join(folder, ending.includes("_") ? ending : `converted.${ending}`);
      const { code, err } = await command("convert", shod, target);
      expect({ code, err: err.includes("footwear") }).toEqual({ code: 0, err: false });
      expect(await footwearOf(target)).toBe("road shoe, 250 g");
      expect((await command("describe", target)).out.replace(/\s+/g, " ")).toContain(
        "footwear: road shoe, 250 g",
      );
    },
  );

  it("markup is shown as text on the page", async () => {
    const page = join(folder, "page.html");
    await command("analyse", plain, "--footwear", "<img src=x onerror=alert(1)>", "--report", page);
    const { readFileSync } = await import("node:fs");
    const html = readFileSync(page, "utf8");
    expect(html).not.toContain("<img");
    expect(html).toContain("&lt;img src=x onerror=alert(1)>".replace(">", "&gt;"));
  });

  it.each<[readonly string[], readonly RegExp[]]>([
    [
      ["--footwear", ""],
      [/--footwear/, /what was on the feet/],
    ],
    [
      ["--footwear", "  "],
      [/--footwear/, /what was on the feet/],
    ],
    [
      ["--footwear", "a\nb"],
      [/--footwear/, /one line/],
    ],
    [
      ["--footwear", "a\u001b[31mb"],
      [/--footwear/, /control characters/],
    ],
    [
      ["--footwear", "x".repeat(81)],
      [/--footwear/, /81 characters; at most 80/],
    ],
    [
      ["--footwear", "a", "--footwear", "b"],
      [/--footwear/, /given twice/],
    ],
  ])("%j is refused", async (options, words) => {
    expectRefused(await command("analyse", plain, ...options), 2, ...words);
  });

  it("a line of a file that cannot be shown is refused with its place", async () => {
    const path = fileIn(folder, "bell.csv", `# footwear: road\u0007 shoe\n${writeCsv(usual)}`);
    expectRefused(await command("analyse", path), 1, path, /line 1/, /control characters/);
  });
});

describe("of two recordings", () => {
  it("one text is for both, a semicolon parts two; commas stay", async () => {
    const answer = async (text: string): Promise<string> => {
      const { code, out } = await command("compare", plain, again, "--footwear", text);
      expect(code).toBe(0);
      return out.replace(/\s+/g, " ");
    };
    expect(await answer("road shoe, 250 g")).not.toContain("road shoe");
    const differing = await answer("road shoe, 250 g; trail shoe, 310 g");
    expect(differing).toMatch(/road shoe, 250 g[^;]*trail shoe, 310 g/);
  });

  it.each<[string, RegExp]>([
    ["a;b;c", /one text for both recordings, or two with a semicolon between/],
    [";b", /what was on the feet/],
    ["a;", /what was on the feet/],
    [`a;${"x".repeat(81)}`, /at most 80/],
    ["a;\u0007", /what was on the feet|control characters/],
  ])("%j is refused", async (text, words) => {
    expectRefused(await command("compare", plain, shod, "--footwear", text), 2, /--footwear/, words);
  });
});
