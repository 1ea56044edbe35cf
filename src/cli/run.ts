import { CommanderError } from "commander";
import { isGaitKineticsError } from "../units/index.js";
import { oneLine } from "./output/oneLine.js";
import { optionWords } from "./output/optionWords.js";
import { progressOn } from "./output/progress.js";
import { buildProgram } from "./program.js";
import type { Streams, Terminal } from "./terminal.js";
import { usageProblem } from "./usageProblem.js";

/**
 * Runs one command line.
 *
 * @param argv - Arguments behind the program's name.
 * @param streams - Where results, problems and progress go.
 * @returns The exit code: 0, 1 for input that cannot be used, 2 for a command line that cannot be used.
 */
export async function run(argv: readonly string[], streams: Streams): Promise<number> {
  const terminal = terminalOn(streams);
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
  } finally {
    terminal.progress.end();
  }
}

function terminalOn({ out, err, watched }: Streams): Terminal {
  const progress = progressOn(watched);
  const behind =
    (write: (text: string) => void) =>
    (text: string): void => {
      progress.end();
      write(text);
    };
  return { out: behind(out), err: behind(err), progress };
}

function messageOf(caught: unknown): string {
  if (isGaitKineticsError(caught)) return optionWords(caught.message);
  return caught instanceof Error
    ? `unexpected problem: ${caught.message}`
    : `unexpected problem: ${String(caught)}`;
}
