/**
 * Writes `docs/accuracy.md`: how far contacts and metrics lie from the truth. With `--check` it compares the page with what
 * it would write, and fails where they differ.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { accuracyText } from "./accuracy/accuracyText.js";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const page = "docs/accuracy.md";
const text = accuracyText();
if (!process.argv.includes("--check")) {
  writeFileSync(page, text);
  console.log(`${page} written`);
} else if (readFileSync(page, "utf8") !== text) {
  const before = new Set(readFileSync(page, "utf8").split("\n"));
  console.error(`${page} differs from what npm run accuracy writes now:`);
  for (const line of text.split("\n")) if (!before.has(line)) console.error(`  ${line}`);
  process.exit(1);
}
