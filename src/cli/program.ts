import { Argument, Command, Option } from "commander";
import { healthText } from "../report/index.js";
import { VERSION } from "../units/index.js";
import { analyse } from "./commands/analyse.js";
import { compare } from "./commands/compare.js";
import { convert } from "./commands/convert.js";
import { DEMO_FOLDER, demo } from "./commands/demo.js";
import { describe } from "./commands/describe.js";
import { metrics } from "./commands/metrics.js";
import { target } from "./convert/target.js";
import {
  addAnalysisOptions,
  addComparedOptions,
  addForceOptions,
  addMarkerOptions,
  addOutputOptions,
  addReadingOptions,
  addRecordingOptions,
} from "./options/inputOptions.js";
import { once } from "./options/once.js";
import { folder, whole } from "./options/readers.js";
import type { Terminal } from "./terminal.js";

const EXAMPLES = `
Examples:
  gait-kinetics demo
  gait-kinetics describe walk.c3d
  gait-kinetics analyse run.csv --mass "70 kg" --speed "12 km/h" --surface belt
  gait-kinetics analyse walk.c3d --axes x=right,y=forward,z=up
  gait-kinetics compare usual.csv changed.csv --report page.html
  gait-kinetics convert walk.c3d walk.csv --axes x=right,y=forward,z=up
`;

const FILES = `
A file is a table of text, a C3D file, or Motion-BIDS (a name that ends in
_motion.tsv, with its _channels.tsv and _motion.json beside it).

In the library's own table columns are named by direction and unit, any subset
with up:
  time [s],forward [N],up [N],right [N],cop_forward [m],cop_right [m],
  free_moment [N m]
and lines such as "# mass: 70 kg" before it say the rest. For other tables state
--axes and, where the heading has none, --units; a treadmill's export at 300 Hz:
  --axes x=forward,y=up,z=right --ignore Time,COPy --rate "300 Hz"
  --units "Fx=N,Fy=N,Fz=N,COPx=mm,COPz=mm,Ty=N mm"

A C3D file says most of itself, but not where its axes point: state --axes. What
is in a file, and what must be stated of it, says
  gait-kinetics describe FILE
`;

const CONVERT = `
The ending of <out> says the format:
  name.csv    the library's own table
  name.c3d    C3D, whose numbers are of 32 bits: seven digits are kept; where the
              recording states no force platform, one is written, and said
  sub-01_task-running_tracksys-force_motion.tsv
              Motion-BIDS; its _channels.tsv, _motion.json and _channels.json
              are written beside it, events and markers of another rate in files
              of their own
Recordings are converted, not results: those are printed by analyse --json.

Force platforms stay as recorded in C3D and Motion-BIDS. In a table, and in
every format where an option of the force step is given (--plates to
--origin-sign), they become the force of the ground on the runner, forward, up,
right, just as analyse computes it before it filters: offset and drift are taken
off; with --offset none --drift never they are not. What is written so is
analysed with --offset none, or an offset is taken off twice. What was done, and
what the format does not hold, is said on standard error, one line each.

A file that is there is replaced only with --overwrite, and never one that is
read-only, nor the one that is read. Files are written whole or not at all.
`;

const BOTH = `
Options of a recording (--mass to --to) take one value for both, or two with a
comma between them, each with its unit:
  --speed "12 km/h, 12.1 km/h"
Parts of one recording are compared by naming the file twice:
  gait-kinetics compare run.csv run.csv --from "0 s, 15 s" --to "15 s, 30 s"

The answer is read from peakVerticalForce, brakingImpulse, mediolateralImpulse
and positiveExternalWork; with --metrics, name those that it is to speak of.
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
  addReadingOptions(analyseCommand);
  addForceOptions(analyseCommand);
  addMarkerOptions(analyseCommand);
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
  addReadingOptions(compareCommand);
  addForceOptions(compareCommand);
  addMarkerOptions(compareCommand);
  addAnalysisOptions(compareCommand);
  compareCommand
    .addOption(
      new Option("--minimum-strides <number>", "fewest strides a reading needs (default 20)").argParser(
        once(whole(2)),
      ),
    )
    .addOption(
      new Option(
        "--minimum-strides-correlated <number>",
        "the same where successive strides are correlated (default 40)",
      ).argParser(once(whole(2))),
    );
  addOutputOptions(compareCommand, "the difference of every metric");
  compareCommand.action((baseline, changed, options) => compare({ baseline, changed }, options, terminal));

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
