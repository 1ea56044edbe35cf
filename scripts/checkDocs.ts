/** Checks that doc comments are whole and that each example, there and in the pages, gives what it says. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { exampleScope } from "./docs/exampleScope.js";
import { type DocExample, readGrammar } from "./docs/grammar.js";
import { runExample, type Scope } from "./docs/runExample.js";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));

/** The code blocks of the README and of the pages in `docs`. */
function pageExamples(): DocExample[] {
  const pages = [
    "README.md",
    ...readdirSync("docs")
      .filter((name) => name.endsWith(".md"))
      .map((name) => join("docs", name)),
  ];
  return pages
    .filter((page) => existsSync(page))
    .flatMap((page) => {
      const text = readFileSync(page, "utf8");
      return [...text.matchAll(/^```(?:ts|js)\n([\s\S]*?)^```$/gm)].map((found) => ({
        place: `${page}:${text.slice(0, found.index).split("\n").length}`,
        text: found[1] as string,
      }));
    });
}

/** What no entry exports may be named in its own file. */
async function withInternals(file: string, { entries, names }: Scope): Promise<Scope> {
  const own = (await import(pathToFileURL(file).href)) as Readonly<Record<string, unknown>>;
  return { entries, names: { ...own, ...names } };
}

const { examples, problems, declarations } = readGrammar(process.cwd());
const all = [...problems];
const scope = await exampleScope();
let lines = 0;
for (const { place, file, text } of [...examples, ...pageExamples()]) {
  const result = runExample(text, file === undefined ? scope : await withInternals(file, scope));
  lines += result.lines;
  all.push(...result.problems.map((problem) => `${place}: ${problem}`));
  if (result.lines === 0) all.push(`${place}: its example states no value`);
}
for (const problem of all) console.error(problem);
console.log(`docs: ${declarations} declarations, ${lines} lines of examples run, ${all.length} problems`);
process.exit(all.length > 0 || lines === 0 ? 1 : 0);
