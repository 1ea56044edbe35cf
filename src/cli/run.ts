import { CommanderError } from "commander";
import { isGaitKineticsError } from "../units/index.js";
import { oneLine } from "./output/oneLine.js";
import { optionWords } from "./output/optionWords.js";
import { buildProgram } from "./program.js";
import type { Terminal } from "./terminal.js";
import { usageProblem } from "./usageProblem.js";

/**
 * Runs one command line.
 *
 * @param argv - Arguments behind the program's name.
 * @param terminal - Where results and problems go.
 * @returns The exit code: 0, 1 for input that cannot be used, 2 for a command line that cannot be used.
 */
export async function run(argv: readonly string[], terminal: Terminal): Promise<number> {
  const program = buildProgram(terminal);
  try {
    await program.parseAsync([...argv], { from: "user" });
    return 0;
  } catch (caught) {
    if (caught instanceof CommanderError) {
      if (caught.exitCode === 0) return 0;
      terminal.err(`gait-kinetics: ${oneLine(usageProblem(caught, program, argv))}\n`);
      return 2;
    }
    terminal.err(`gait-kinetics: ${oneLine(messageOf(caught))}\n`);
    return 1;
  }
}

function messageOf(caught: unknown): string {
  if (isGaitKineticsError(caught)) return optionWords(caught.message);
  return caught instanceof Error
    ? `unexpected problem: ${caught.message}`
    : `unexpected problem: ${String(caught)}`;
}
