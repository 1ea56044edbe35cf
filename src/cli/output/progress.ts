import type { Terminal } from "../terminal.js";
import { oneLine } from "./oneLine.js";

/** Says what is being done, where a person watches. */
export function progress(terminal: Terminal, doing: string): void {
  if (terminal.interactive) terminal.err(`${oneLine(doing)} ...\n`);
}
