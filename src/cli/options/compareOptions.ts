import { type Command, Option } from "commander";
import { margin } from "./margin.js";
import { once } from "./once.js";
import { fileName, type Reader, sentence, whole, word } from "./readers.js";
import { severalFiles } from "./several.js";
import { smallestChanges } from "./smallestChanges.js";

/** An option that is given once: flags, what the help says, how it is read. */
type Entry = readonly [flags: string, text: string, read: Reader<unknown>];

const MARGINS: readonly Entry[] = [
  [
    "--margin <margins>",
    'within what a load counts as alike: a share of every baseline (default "10 %"), or by metric: "brakingImpulse=8 %"',
    margin,
  ],
  ["--margin-source <text>", "who chose the margins of metrics, such as a paper", sentence],
];

const METHODS: readonly Entry[] = [
  [
    "--method <word>",
    "interval that readings are taken from: student (default) or bootstrap of blocks of strides",
    word("student", "bootstrap"),
  ],
  [
    "--speed-effect <word>",
    "what a difference in speed alone would do, by published studies: kept in the differences (default) or removed",
    word("kept", "removed"),
  ],
];

const CHANGES: readonly Entry[] = [
  [
    "--smallest-change <pairs>",
    'smallest change that can be told from one day to another, by metric: "brakingImpulse=8 %"',
    smallestChanges,
  ],
  [
    "--smallest-change-source <text>",
    "who measured it, such as a paper; printed beside the answer",
    sentence,
  ],
  [
    "--reliability <file>",
    "take it from trials of this runner: JSON that reliability --json prints",
    fileName,
  ],
];

const STRIDES: readonly Entry[] = [
  ["--minimum-strides <number>", "fewest strides a reading needs (default 20)", whole(2)],
  [
    "--minimum-strides-correlated <number>",
    "the same where successive strides are correlated (default 40)",
    whole(2),
  ],
];

const RUNNERS: readonly Entry[] = [
  [
    "--design <word>",
    "paired, every runner in both conditions, or independent, each in one; where left out, as the table shows",
    word("paired", "independent"),
  ],
  ["--minimum-runners <number>", "fewest runners a reading needs (default 6)", whole(2)],
];

const SESSIONS: readonly Entry[] = [
  [
    "--baseline <word>",
    "sessions that make the baseline: moving, the last ones before each (default), or first, the first ones for good",
    word("first", "moving"),
  ],
  ["--baseline-sessions <number>", "how many they are (default 5)", whole(1)],
];

function add(command: Command, ...entries: readonly Entry[]): Command {
  return entries.reduce(
    (to, [flags, text, read]) => to.addOption(new Option(flags, text).argParser(once(read))),
    command,
  );
}

/** Adds what only a comparison takes. */
export function addCompareOptions(command: Command): Command {
  command
    .addOption(
      new Option(
        "--baseline-also <file>",
        "another trial of the baseline, such as one recorded again after the change; may be given again",
      ).argParser(severalFiles),
    )
    .addOption(
      new Option(
        "--changed-also <file>",
        "another trial of the changed condition; may be given again",
      ).argParser(severalFiles),
    );
  return add(command, ...METHODS, ...MARGINS, ...CHANGES, ...STRIDES);
}

/** Adds what only a comparison of runners takes. */
export function addRunnersOptions(command: Command): Command {
  return add(command, ...RUNNERS, ...MARGINS);
}

/** Adds what only a series of sessions takes. */
export function addSessionsOptions(command: Command): Command {
  return add(command, ...SESSIONS, ...CHANGES);
}
