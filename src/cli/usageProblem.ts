import type { Command, CommanderError } from "commander";

/**
 * Says what is wrong with a command line and what is allowed.
 *
 * @param problem - As commander throws it.
 * @param program - The whole program.
 * @param argv - What was typed.
 */
export function usageProblem(problem: CommanderError, program: Command, argv: readonly string[]): string {
  // Thrown where a command is missing, and for the help of one that there is not.
  if (problem.code === "commander.help") {
    const what = argv[1] === undefined ? "no command is given" : `unknown command '${argv[1]}'`;
    return `${what}; the commands are ${namesOf(program)}; gait-kinetics --help says more`;
  }
  const command = program.commands.find((candidate) => candidate.name() === argv[0]);
  const what = problem.message.replace(/^error: /, "").replace(/\.?\s*$/, "");
  const name = command === undefined ? "" : `${command.name()}: `;
  return `${name}${what}${allowed(problem.code, command, program)}`;
}

function allowed(code: string, command: Command | undefined, program: Command): string {
  const names = namesOf(program);
  switch (code) {
    case "commander.unknownCommand":
      return `; the commands are ${names}`;
    case "commander.unknownOption":
      return command === undefined
        ? `; the commands are ${names}, each with --help`
        : command.options.length === 0
          ? "; it takes --help alone"
          : `; its options are ${command.options.map(({ long }) => long).join(", ")}`;
    case "commander.missingArgument":
    case "commander.excessArguments":
      return command === undefined
        ? ""
        : `; it is used as: gait-kinetics ${command.name()} ${command.usage()}`;
    default:
      return "";
  }
}

function namesOf(program: Command): string {
  return program.commands.map((candidate) => candidate.name()).join(", ");
}
