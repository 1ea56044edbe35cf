import { type Command, Option } from "commander";
import { type Axes, PLAUSIBLE_BOUNDS, type Side, type Surface } from "../../recording/index.js";
import { type Both, both } from "./both.js";
import { axes, cutoff, grade, list, netOrder, page, pairs, quantity, type Reader, word } from "./readers.js";

/** What may differ from recording to recording. */
export interface RecordingOptions {
  readonly mass?: number | undefined;
  readonly height?: number | undefined;
  readonly speed?: number | undefined;
  readonly surface?: Surface | undefined;
  readonly grade?: number | undefined;
  readonly firstFoot?: Side | undefined;
  readonly rate?: number | undefined;
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/** How files are read and force is analysed: alike for all recordings of a command. */
export interface AnalysisOptions {
  readonly axes?: Axes | undefined;
  readonly units?: Readonly<Record<string, string>> | undefined;
  readonly columns?: Readonly<Record<string, string>> | undefined;
  readonly ignore?: readonly string[] | undefined;
  readonly decimal?: "." | "," | undefined;
  readonly forceOn?: "runner" | "ground" | undefined;
  readonly drift?: "auto" | "always" | "never" | undefined;
  readonly threshold?: number | undefined;
  readonly cutoff?: number | "none" | undefined;
  readonly order?: number | undefined;
}

/** What comes out. */
export interface OutputOptions {
  readonly json?: true | undefined;
  readonly csv?: true | undefined;
  readonly report?: string | undefined;
}

/** {@link RecordingOptions} for each of two recordings. */
export type ComparedOptions = {
  readonly [K in keyof RecordingOptions]: Both<NonNullable<RecordingOptions[K]>> | undefined;
};

const positive = { positive: true };

/** The options of a recording, in the order of the help: flags, what they say, how they are read. */
const RECORDING: readonly (readonly [string, string, Reader<unknown>])[] = [
  [
    "--mass <quantity>",
    'mass of the runner, such as "70 kg" or "154 lb"',
    quantity("mass", { positive: true, plausible: PLAUSIBLE_BOUNDS.mass }),
  ],
  [
    "--height <quantity>",
    'height of the runner, such as "1.78 m"',
    quantity("length", { positive: true, plausible: PLAUSIBLE_BOUNDS.height }),
  ],
  [
    "--speed <quantity>",
    'mean speed, such as "12 km/h" or "3.3 m/s"',
    quantity("speed", { positive: true, plausible: PLAUSIBLE_BOUNDS.speed }),
  ],
  ["--surface <word>", "what the foot lands on: belt or ground", word("belt", "ground")],
  ["--grade <slope>", 'slope of the surface, uphill positive, such as "2 %"', grade],
  ["--first-foot <side>", "foot of the first complete contact: left or right", word("left", "right")],
  [
    "--rate <quantity>",
    'sampling rate of a file without time, such as "300 Hz"',
    quantity("frequency", positive),
  ],
  [
    "--from <quantity>",
    'analyse from here on, such as "15 s" after the first sample',
    quantity("time", { positive: false }),
  ],
  [
    "--to <quantity>",
    'analyse up to here, such as "30 s" after the first sample',
    quantity("time", positive),
  ],
];

/** Adds the options of one recording. */
export function addRecordingOptions(command: Command): Command {
  return RECORDING.reduce(
    (to, [flags, text, read]) => to.addOption(new Option(flags, text).argParser(read)),
    command,
  );
}

/** Adds the same options, each with one value for both recordings or two. */
export function addComparedOptions(command: Command): Command {
  return RECORDING.reduce(
    (to, [flags, text, read]) => to.addOption(new Option(flags, text).argParser(both(read))),
    command,
  );
}

/** Adds what is alike for all recordings. */
export function addAnalysisOptions(command: Command): Command {
  return [
    new Option(
      "--axes <pairs>",
      "where the axes of the file point, seen by the runner, such as x=forward,y=up,z=right; the other words are backward, down, left",
    ).argParser(axes),
    new Option(
      "--units <pairs>",
      'units of columns whose heading has none: "Fx=N,COPx=mm,Ty=N mm"',
    ).argParser(pairs),
    new Option("--columns <pairs>", 'columns by another name: "Vertical GRF=up"').argParser(pairs),
    new Option("--ignore <names>", "columns to leave out, with commas between").argParser(list),
    new Option(
      "--decimal <sign>",
      'decimal sign of the file, "." or ","; found in the cells where left out',
    ).argParser(word(".", ",")),
    new Option(
      "--force-on <whom>",
      "on whom the force of the file acts: runner (default) or ground",
    ).argParser(word("runner", "ground")),
    new Option(
      "--drift <when>",
      "take drift off from flight to flight: auto (default), always or never",
    ).argParser(word("auto", "always", "never")),
    new Option(
      "--threshold <quantity>",
      "vertical force that contacts are read at; where left out, 20 N or what the noise in flight asks for",
    ).argParser(quantity("force", positive)),
    new Option(
      "--cutoff <quantity>",
      'low-pass filter, -3 dB of the net response, or none (default "50 Hz")',
    ).argParser(cutoff),
    new Option("--order <number>", "net order of the filter, even (default 4)").argParser(netOrder),
  ].reduce((to, option) => to.addOption(option), command);
}

/** Adds what comes out. */
export function addOutputOptions(command: Command, csv: string): Command {
  return command
    .addOption(new Option("--json", "print every number and setting as JSON").conflicts("csv"))
    .addOption(new Option("--csv", `print ${csv} as CSV`))
    .addOption(new Option("--report <file>", "write a page to read and print, FILE.html").argParser(page));
}
