import { Command, Option } from "commander";
import { healthText } from "../report/index.js";
import { VERSION } from "../units/index.js";
import { analyse } from "./commands/analyse.js";
import { compare } from "./commands/compare.js";
import { DEMO_FOLDER, demo } from "./commands/demo.js";
import { metrics } from "./commands/metrics.js";
import {
  addAnalysisOptions,
  addComparedOptions,
  addOutputOptions,
  addRecordingOptions,
} from "./options/inputOptions.js";
import { folder, whole } from "./options/readers.js";
import type { Terminal } from "./terminal.js";

const EXAMPLES = `
Examples:
  gait-kinetics demo
  gait-kinetics analyse run.csv --mass "70 kg" --speed "12 km/h" --surface belt
  gait-kinetics compare usual.csv changed.csv --report page.html
`;

const FILES = `
A file is a table with a heading. In the library's own format columns are
named by direction and unit, any subset with up:
  time [s],forward [N],up [N],right [N],cop_forward [m],cop_right [m],
  free_moment [N m]
and lines such as "# mass: 70 kg" before it say the rest. For other files state
--axes and, where the heading has none, --units; a treadmill's export at 300 Hz:
  --axes x=forward,y=up,z=right --ignore Time,COPy --rate "300 Hz"
  --units "Fx=N,Fy=N,Fz=N,COPx=mm,COPz=mm,Ty=N mm"
`;

const BOTH = `
Options of a recording (--mass to --to) take one value for both, or two with a
comma between them, each with its unit:
  --speed "12 km/h, 12.1 km/h"
Parts of one recording are compared by naming the file twice:
  gait-kinetics compare run.csv run.csv --from "0 s, 15 s" --to "15 s, 30 s"
`;

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
  addRecordingOptions(analyseCommand);
  addAnalysisOptions(analyseCommand);
  addOutputOptions(analyseCommand, "the values of every contact");
  analyseCommand.action((file, options) => analyse(file, options, terminal));

  const compareCommand = program
    .command("compare")
    .description("what a change did to every component of the force, and to the work")
    .argument("<baseline>", "the recording before the change")
    .argument("<changed>", "the recording after it")
    .addHelpText("after", BOTH + FILES + health);
  addComparedOptions(compareCommand);
  addAnalysisOptions(compareCommand);
  compareCommand
    .addOption(
      new Option("--minimum-strides <number>", "fewest strides a reading needs (default 20)").argParser(
        whole(2),
      ),
    )
    .addOption(
      new Option(
        "--minimum-strides-correlated <number>",
        "the same where successive strides are correlated (default 40)",
      ).argParser(whole(2)),
    );
  addOutputOptions(compareCommand, "the difference of every metric");
  compareCommand.action((baseline, changed, options) => compare({ baseline, changed }, options, terminal));

  program
    .command("demo")
    .description("two synthetic recordings, written, compared and reported")
    .addOption(new Option("--out <folder>", "where to write").argParser(folder).default(DEMO_FOLDER))
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
