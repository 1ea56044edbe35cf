import { existsSync, readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { VERSION } from "../../src/units/index.js";

/** Law: package.json, the folders of `src` and the files that name a version agree. */
const manifest = JSON.parse(readFileSync("package.json", "utf8")) as {
  readonly version: string;
  readonly exports: Readonly<Record<string, unknown>>;
  readonly typesVersions: { readonly "*": Readonly<Record<string, readonly string[]>> };
};
const folders = readdirSync("src", { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== "cli" && existsSync(`src/${entry.name}/index.ts`))
  .map(({ name }) => name);
const subpaths = [...folders, "units/parse"].sort();

it("every folder is an entry of its own, and nothing else is but the schemas", () => {
  expect(folders.length).toBeGreaterThan(5);
  const files = [".", "./package.json", "./schemas/*"];
  const entries = Object.keys(manifest.exports).filter((path) => !files.includes(path));
  expect(entries.map((path) => path.slice(2)).sort()).toEqual(subpaths);
});

it.each(subpaths)("%s names a file for each format, and its types", (path) => {
  const file = (format: string, ending: string) => `./dist/${format}/${path}/index.${ending}`;
  expect(manifest.exports[`./${path}`]).toEqual({
    import: { types: file("esm", "d.ts"), default: file("esm", "js") },
    require: { types: file("cjs", "d.ts"), default: file("cjs", "js") },
  });
  expect(manifest.typesVersions["*"][path]).toEqual([file("cjs", "d.ts")]);
});

it("one version everywhere", () => {
  expect(VERSION).toBe(manifest.version);
  expect(/^version: (.+)$/m.exec(readFileSync("CITATION.cff", "utf8"))?.[1]).toBe(manifest.version);
});
