import type { Terminal } from "../terminal.js";
import { oneLine } from "./oneLine.js";
import { optionWords } from "./optionWords.js";

/** Says on standard error, in one line, what a person must know of a result that is otherwise good. */
export function note(terminal: Terminal, about: string, sentence: string): void {
  terminal.err(`gait-kinetics: ${oneLine(`${about}: note: ${optionWords(sentence)}`)}\n`);
}
