/**
 * Writes what the doc comments of the metrics' functions say to `src/metrics/explanations.ts`, for the command line and the
 * page, and `docs/metrics.md` from it and the catalogue. Run after a doc comment or an entry changed.
 */
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { metricFiles } from "./metrics/metricFiles.js";

const root = fileURLToPath(new URL("..", import.meta.url));
for (const { path, text } of metricFiles(root)) {
  writeFileSync(`${root}${path}`, text);
  console.log(`${path} written`);
}
