import { spawn } from "node:child_process";
import { createInterface } from "node:readline";

/** A program that is measured: it says what it runs on, then answers each line of its input with one of its own. */
export interface Side {
  readonly name: string;
  /** What it runs on, once it is ready. */
  readonly versions: Promise<Record<string, string>>;
  readonly ask: (line: string) => Promise<string>;
  readonly end: () => void;
}

/** Starts a program. */
export function side(name: string, command: string, ...parameters: string[]): Side {
  const program = spawn(command, parameters, { stdio: ["pipe", "pipe", "inherit"] });
  const lines = createInterface({ input: program.stdout })[Symbol.asyncIterator]();
  const next = async (): Promise<string> => {
    const { value, done } = await lines.next();
    if (done) throw new Error(`${command} ended before it answered`);
    return value;
  };
  const versions = next().then((line) => JSON.parse(line) as Record<string, string>);
  return {
    name,
    versions,
    ask: async (line) => {
      await versions;
      program.stdin.write(`${line}\n`);
      return next();
    },
    end: () => program.stdin.end(),
  };
}
