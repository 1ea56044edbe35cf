import { Argument, Command, Option } from "commander";
import { healthText } from "../report/index.js";
import { VERSION } from "../units/index.js";
import { analyse } from "./commands/analyse.js";
import { compare } from "./commands/compare.js";
import { convert } from "./commands/convert.js";
import { DEMO_FOLDER, demo } from "./commands/demo.js";
import { describe } from "./commands/describe.js";
import { metrics } from "./commands/metrics.js";
import { reliability } from "./commands/reliability.js";
import { runners } from "./commands/runners.js";
import { sessions } from "./commands/sessions.js";
import { target } from "./convert/target.js";
import { BOTH, CONVERT, EXAMPLES, FILES, REPEATS, SERIES, STUDY, TRIALS } from "./helpTexts.js";
import { addCompareOptions, addRunnersOptions, addSessionsOptions } from "./options/compareOptions.js";
import {
  addAnalysisOptions,
  addComparedOptions,
  addForceOptions,
  addMarkerOptions,
  addOutputOptions,
  addReadingOptions,
  addRecordingOptions,
  jsonOption,
  reportOption,
} from "./options/inputOptions.js";
import { once } from "./options/once.js";
import { folder } from "./options/readers.js";
import type { Terminal } from "./terminal.js";

/** Adds how recordings of one runner, or of many, are read and analysed. */
function addTrialOptions(command: Command): void {
  addRecordingOptions(command);
  addReadingOptions(command);
  addForceOptions(command);
  addMarkerOptions(command);
  addAnalysisOptions(command);
}

/** Builds the command line; it ends by throwing, never by ending the process. */
export function buildProgram(terminal: Terminal): Command {
  const program = new Command("gait-kinetics")
    .description(
      "Ground reaction force of running: every component, per step, with its uncertainty, before and after a change.",
    )
    .version(VERSION, "--version", "print the version")
    .helpOption("-h, --help", "print this help")
    .helpCommand("help [command]", "print the help of a command")
    .exitOverride()
    .configureHelp({ minWidthToWrap: 20 })
    .configureOutput({
      writeOut: terminal.out,
      // Problems are written in one place, with what is allowed.
      writeErr: () => {},
      outputError: () => {},
      getOutHelpWidth: () => 80,
      getErrHelpWidth: () => 80,
    });
  const health = `\n${healthText()}`;
  program.addHelpText("after", EXAMPLES + health);

  const analyseCommand = program
    .command("analyse")
    .description("every number of one recording, per component and side")
    .argument("<file>", "the recording")
    .addHelpText("after", FILES + health);
  addTrialOptions(analyseCommand);
  addOutputOptions(analyseCommand, "the values of every contact");
  analyseCommand.action((file, options) => analyse(file, options, terminal));

  const compareCommand = program
    .command("compare")
    .description("what a change did to every component of the force, and to the work")
    .argument("<baseline>", "the recording before the change")
    .argument("<changed>", "the recording after it")
    .addHelpText("after", BOTH + TRIALS + FILES + health);
  addComparedOptions(compareCommand);
  addReadingOptions(compareCommand);
  addForceOptions(compareCommand);
  addMarkerOptions(compareCommand);
  addAnalysisOptions(compareCommand);
  addCompareOptions(compareCommand);
  addOutputOptions(compareCommand, "the difference of every metric");
  compareCommand.action((baseline, changed, options) => compare({ baseline, changed }, options, terminal));

  const reliabilityCommand = program
    .command("reliability")
    .description("how well trials of one runner repeat, and which change counts")
    .argument("<files...>", "two trials or more, between which nothing was changed")
    .addHelpText("after", REPEATS + TRIALS + FILES + health);
  addTrialOptions(reliabilityCommand);
  reliabilityCommand
    .addOption(jsonOption())
    .action((files, options) => reliability(files, options, terminal));

  const sessionsCommand = program
    .command("sessions")
    .description("which sessions of one runner lie outside the runner's own baseline")
    .argument("<files...>", "a recording a session, in the order of time")
    .addHelpText("after", SERIES + TRIALS + FILES + health);
  addTrialOptions(sessionsCommand);
  addSessionsOptions(sessionsCommand);
  sessionsCommand
    .addOption(jsonOption())
    .addOption(reportOption())
    .action((files, options) => sessions(files, options, terminal));

  const runnersCommand = program
    .command("runners")
    .description("what a change did to many runners")
    .argument("<table>", "which recording is of which runner and condition")
    .addHelpText("after", STUDY + TRIALS + FILES + health);
  addTrialOptions(runnersCommand);
  addRunnersOptions(runnersCommand);
  runnersCommand
    .addOption(jsonOption())
    .addOption(reportOption())
    .action((table, options) => runners(table, options, terminal));

  const describeCommand = program
    .command("describe")
    .description("what is in a file, and what must be stated of it")
    .argument("<file>", "the recording")
    .addHelpText("after", FILES + health);
  addRecordingOptions(describeCommand);
  addReadingOptions(describeCommand);
  describeCommand
    .addOption(new Option("--json", "print it as JSON"))
    .action((file, options) => describe(file, options, terminal));

  const convertCommand = program
    .command("convert")
    .description("one recording in another format")
    .argument("<in>", "the recording")
    .addArgument(new Argument("<out>", "the file to write").argParser(target))
    .addHelpText("after", CONVERT + FILES + health);
  addRecordingOptions(convertCommand);
  addReadingOptions(convertCommand);
  addForceOptions(convertCommand);
  convertCommand
    .addOption(new Option("--overwrite", "replace a file that is there"))
    .action((file, out, options) => convert(file, out, options, terminal));

  program
    .command("demo")
    .description("two synthetic recordings, written, compared and reported")
    .addOption(new Option("--out <folder>", "where to write").argParser(once(folder)).default(DEMO_FOLDER))
    .addHelpText("after", health)
    .action((options) => demo(options, terminal));

  const metricsCommand = program
    .command("metrics")
    .description("what is computed: every metric, or one of them explained")
    .argument("[id]", "such as brakingImpulse")
    .addHelpText("after", health);
  metricsCommand.action((id) => metrics(id, terminal, (message) => metricsCommand.error(message)));
  return program;
}
