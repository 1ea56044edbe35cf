import type { Terminal } from "../terminal.js";
import { oneLine } from "./oneLine.js";
import { type FileToWrite, writeFilesWhole } from "./writeFilesWhole.js";

/** Writes files that may be written again and again, and says which of them were there before. */
export function writeReport(files: readonly FileToWrite[], terminal: Terminal): void {
  const replaced = writeFilesWhole(files);
  for (const path of replaced) terminal.err(`gait-kinetics: ${oneLine(`replaced ${path}`)}\n`);
  const written = files.map(({ path }) => path).filter((path) => !replaced.includes(path));
  if (written.length > 0) terminal.progress.end(`wrote ${written.join(", ")}`);
}
