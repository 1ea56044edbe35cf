import { type Command, Option } from "commander";
import { GAITS, type Gait } from "../../events/index.js";
import type { Delimiter } from "../../io/index.js";
import type { Metric } from "../../metrics/index.js";
import { type Axes, PLAUSIBLE_BOUNDS, type Side, type Surface } from "../../recording/index.js";
import { airDrag } from "./airDrag.js";
import { type Both, both, bothTexts } from "./both.js";
import { type Feet, feet, markerNames } from "./markerNames.js";
import { metricIds } from "./metricIds.js";
import { once } from "./once.js";
import {
  axes,
  cutoff,
  delimiter,
  footwear,
  grade,
  list,
  netOrder,
  page,
  pairs,
  quantity,
  type Reader,
  sides,
  stretch,
  whole,
  word,
  words,
} from "./readers.js";
import { type Threshold, threshold } from "./threshold.js";

/** What may differ from recording to recording. */
export interface RecordingOptions {
  readonly mass?: number | undefined;
  readonly height?: number | undefined;
  readonly speed?: number | undefined;
  readonly surface?: Surface | undefined;
  readonly grade?: number | undefined;
  readonly firstFoot?: Side | undefined;
  readonly footwear?: string | undefined;
  readonly rate?: number | undefined;
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/** How files are read: alike for all recordings of a command. */
export interface ReadingOptions {
  readonly axes?: Axes | undefined;
  readonly forceOn?: "runner" | "ground" | "auto" | undefined;
  readonly units?: Readonly<Record<string, string>> | undefined;
  readonly lengthUnit?: "mm" | "cm" | "m" | undefined;
  readonly columns?: Readonly<Record<string, string>> | undefined;
  readonly ignore?: readonly string[] | undefined;
  readonly decimal?: "." | "," | undefined;
  readonly delimiter?: Delimiter | undefined;
  readonly skip?: number | undefined;
  readonly header?: number | undefined;
  readonly unitRow?: "auto" | "read" | "skip" | "none" | undefined;
  readonly missing?: readonly string[] | undefined;
}

/** How a recording becomes the force between foot and ground. */
export interface ForceOptions {
  readonly plates?: "auto" | "apart" | "together" | undefined;
  readonly zero?: { readonly from: number; readonly to: number } | undefined;
  readonly offset?: "auto" | "flights" | "file" | "none" | undefined;
  readonly drift?: "auto" | "always" | "never" | undefined;
  readonly coverThickness?: number | undefined;
  readonly onlyPlates?: readonly string[] | undefined;
  readonly sides?: Readonly<Record<string, Side>> | undefined;
  readonly originSign?: "auto" | "stored" | "negated" | undefined;
}

/** Names of the options of the force step. */
export const FORCE_OPTIONS: readonly (keyof ForceOptions)[] = [
  "plates",
  "onlyPlates",
  "sides",
  "zero",
  "offset",
  "drift",
  "coverThickness",
  "originSign",
];

/** Which markers stand for the centre of mass and the feet. */
export interface MarkerOptions {
  readonly centreOfMass?: readonly string[] | undefined;
  readonly feet?: Feet | undefined;
}

/** How force is analysed. */
export interface AnalysisOptions {
  readonly gait?: Gait | "auto" | undefined;
  readonly threshold?: Threshold | undefined;
  readonly eventCutoff?: number | undefined;
  readonly airDrag?: number | "estimated" | undefined;
  readonly metrics?: readonly Metric[] | undefined;
  readonly cutoff?: number | "none" | undefined;
  readonly order?: number | undefined;
}

/** What comes out. */
export interface OutputOptions {
  readonly json?: true | undefined;
  readonly csv?: true | undefined;
  readonly markdown?: true | undefined;
  readonly report?: string | undefined;
}

/** {@link RecordingOptions} for each of two recordings. */
export type ComparedOptions = {
  readonly [K in keyof RecordingOptions]: Both<NonNullable<RecordingOptions[K]>> | undefined;
};

/** An option: flags, what the help says, how it is read. */
type Entry = readonly [flags: string, text: string, read: Reader<unknown>];

const positive = { positive: true };

/** The force step's own bounds. */
const COVER_BOUNDS = { from: 0, to: 0.5, unit: "m", hint: "a larger number may be in millimetres" };

const RECORDING: readonly Entry[] = [
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
  ["--footwear <text>", 'what is on the feet, in words: "road shoe, 250 g"', footwear],
  [
    "--rate <quantity>",
    'sampling rate of a table without time, such as "300 Hz"',
    quantity("frequency", positive),
  ],
  [
    "--from <quantity>",
    'take the recording from here on, such as "15 s" after the first sample',
    quantity("time", { positive: false }),
  ],
  [
    "--to <quantity>",
    'take it up to here, such as "30 s" after the first sample',
    quantity("time", positive),
  ],
];

const READING: readonly Entry[] = [
  [
    "--axes <pairs>",
    "where the axes of the file point, seen by the runner, such as x=forward,y=up,z=right; the other words are backward, down, left",
    axes,
  ],
  [
    "--force-on <whom>",
    "on whom the force of the file acts: runner or ground (the platform under it); auto, as the load shows, for platforms (default there)",
    word("runner", "ground", "auto"),
  ],
  [
    "--units <pairs>",
    'units of columns whose heading has none, or of channels that state none or a wrong one: "Fx=N,COPx=mm,Ty=N mm"',
    pairs,
  ],
  [
    "--length-unit <unit>",
    "unit of positions in a C3D file that states none or a wrong one: mm, cm or m",
    word("mm", "cm", "m"),
  ],
  ["--columns <pairs>", 'columns by another name: "Vertical GRF=up"', pairs],
  ["--ignore <names>", "columns to leave out, with commas between; * is all unknown ones", list],
  ["--decimal <sign>", 'decimal sign, "." or ","; found in the cells where left out', word(".", ",")],
  [
    "--delimiter <sign>",
    "what stands between cells: comma, semicolon, tab, bar or blanks; found where left out",
    delimiter,
  ],
  ["--skip <lines>", "lines at the top to leave out before the names (default 0)", whole(0)],
  ["--header <rows>", "rows of names; 0 where columns go by number (default 1)", whole(0)],
  [
    "--unit-row <how>",
    "a row of units under the names: auto (default), read, skip or none",
    word("auto", "read", "skip", "none"),
  ],
  ["--missing <words>", 'cells that mean no value, with commas between: "NA,-9999"', words],
];

const FORCE: readonly Entry[] = [
  [
    "--plates <how>",
    "several platforms: apart, a foot each; together, as their sum; auto (default)",
    word("auto", "apart", "together"),
  ],
  ["--only-plates <names>", "platforms to take, with commas between", list],
  ["--sides <pairs>", "foot of each belt or platform by its name: L=left,R=right", sides],
  [
    "--zero <stretch>",
    'stretch in which nobody stands on the platforms, such as "0 s to 0.2 s"; its mean is taken off',
    stretch,
  ],
  [
    "--offset <source>",
    "what is taken off as offset: flights, the file's own zero frames, none, or auto (default)",
    word("auto", "flights", "file", "none"),
  ],
  [
    "--drift <when>",
    "take drift off from flight to flight: auto (default), always or never",
    word("auto", "always", "never"),
  ],
  [
    "--cover-thickness <quantity>",
    'thickness of a cover on the platforms, such as "10 mm"',
    quantity("length", { positive: false, plausible: COVER_BOUNDS }),
  ],
  [
    "--origin-sign <how>",
    "a platform's origin as stored, negated, or auto (default): negated where it lies above the surface",
    word("auto", "stored", "negated"),
  ],
];

const MARKERS: readonly Entry[] = [
  [
    "--centre-of-mass <names>",
    "markers on the pelvis whose mean is taken for the centre of mass, with commas between; where left out, it follows from the force",
    markerNames,
  ],
  [
    "--feet <pairs>",
    "markers of heel and toe: left=LHEEL:LTOE,right=RHEEL:RTOE; a + between several whose mean counts",
    feet,
  ],
];

const ANALYSIS: readonly Entry[] = [
  [
    "--gait <word>",
    "what the recording holds: running, walking, jumping, standing, or auto (default), told from the contacts",
    word("auto", ...GAITS),
  ],
  [
    "--threshold <level>",
    'level that contacts are read at: "20 N"; "5 %" of body weight; "6 SD" above the mean force in flight; where left out, 20 N or 5 SD, the larger',
    threshold,
  ],
  ["--cutoff <quantity>", 'low-pass filter, -3 dB of the net response, or none (default "50 Hz")', cutoff],
  ["--order <number>", "net order of the filter, even (default 4)", netOrder],
  [
    "--event-cutoff <quantity>",
    "low-pass filter of the force that contacts are read from; where left out, that of --cutoff",
    quantity("frequency", positive),
  ],
  [
    "--air-drag <force>",
    'drag of the air that the work is done against: "3 N", negative with a wind from behind, or estimated from speed, mass and height; none where left out',
    airDrag,
  ],
  [
    "--metrics <ids>",
    "metrics to compute, with commas between, such as contactTime,brakingImpulse; all where left out",
    metricIds,
  ],
];

/** How each statement about a recording is read. */
export const RECORDING_READERS: Readonly<Record<keyof RecordingOptions, Reader<unknown>>> =
  Object.fromEntries(RECORDING.map(([flags, , read]) => [new Option(flags).attributeName(), read])) as Record<
    keyof RecordingOptions,
    Reader<unknown>
  >;

/** Names of the options that say how recordings are read and analysed; a trial that was analysed before takes none. */
export const OPTIONS_OF_RECORDINGS: readonly string[] = [
  ...RECORDING,
  ...READING,
  ...FORCE,
  ...MARKERS,
  ...ANALYSIS,
]
  .map(([flags]) => new Option(flags).attributeName())
  .filter((name) => name !== "metrics");

function addEntries(
  command: Command,
  entries: readonly Entry[],
  readBy: (read: Reader<unknown>) => Reader<unknown> = (read) => read,
): Command {
  return entries.reduce(
    (to, [flags, text, read]) => to.addOption(new Option(flags, text).argParser(once(readBy(read)))),
    command,
  );
}

/** Adds the options of one recording. */
export function addRecordingOptions(command: Command): Command {
  return addEntries(command, RECORDING);
}

/** Adds the same options, each with one value for both recordings or two. */
export function addComparedOptions(command: Command): Command {
  return addEntries(command, RECORDING, (read) => (read === footwear ? bothTexts(read) : both(read)));
}

/** Adds how files are read. */
export function addReadingOptions(command: Command): Command {
  return addEntries(command, READING);
}

/** Adds how recordings become force. */
export function addForceOptions(command: Command): Command {
  return addEntries(command, FORCE);
}

/** Adds which markers are taken. */
export function addMarkerOptions(command: Command): Command {
  return addEntries(command, MARKERS);
}

/** Adds how force is analysed. */
export function addAnalysisOptions(command: Command): Command {
  return addEntries(command, ANALYSIS);
}

/** The option for JSON. */
export function jsonOption(): Option {
  return new Option("--json", "print every number and setting as JSON");
}

/** The option for a page. */
export function reportOption(): Option {
  return new Option("--report <file>", "write a page to read and print, FILE.html").argParser(once(page));
}

/** Adds what comes out. */
export function addOutputOptions(command: Command, csv: string): Command {
  return command
    .addOption(jsonOption().conflicts(["csv", "markdown"]))
    .addOption(new Option("--csv", `print ${csv} as CSV`).conflicts("markdown"))
    .addOption(new Option("--markdown", "print the text as Markdown"))
    .addOption(reportOption());
}
