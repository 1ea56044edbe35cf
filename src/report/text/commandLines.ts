import { lengthOf } from "./lengthOf.js";
import { printable } from "./printable.js";
import { TEXT_WIDTH, wrap } from "./wrap.js";

/** Says what a command line is for, and sets it so that it can be copied into a shell: a word of it is never cut. */
export function commandLines(commandLine: string | null): string[] {
  if (commandLine === null) return [];
  const unknown = commandLine.includes("? ") ? ", and put a number where a ? stands" : "";
  const check = `A command line that states it; check its axes, units and names against the source${unknown}:`;
  const lines: string[] = [];
  let line = " ";
  for (const word of wordsOf(printable(commandLine))) {
    if (lengthOf(line) + lengthOf(word) + 3 > TEXT_WIDTH && line.trim() !== "") {
      lines.push(`${line} \\`);
      line = "   ";
    }
    line += ` ${word}`;
  }
  return [...wrap(check), ...lines, line, ""];
}

/** Words with what stands in quotation marks kept whole, an option with its value. */
function wordsOf(text: string): readonly string[] {
  return text.match(/--\S+ (?:"[^"]*"|\S+)|"[^"]*"|\S+/g) ?? [];
}
