import type { Recording } from "../../recording/index.js";
import { fail, isGaitKineticsError } from "../../units/index.js";
import type {
  ForceOptions,
  MarkerOptions,
  ReadingOptions,
  RecordingOptions,
} from "../options/inputOptions.js";
import type { OpenedFile } from "./openFile.js";
import { readTable } from "./readTable.js";
import { type UsedBySome, unusedOptions, unusedSentence } from "./unusedOptions.js";

const OF_PLATES = ["plates", "onlyPlates", "sides"] as const;
const OF_MARKERS = ["centreOfMass", "feet"] as const;

/**
 * Refuses options that a recording which was read has no use for: axes for a table whose columns are named by direction,
 * what is stated of plates or markers where there are none.
 *
 * @throws GaitKineticsError `conflict`.
 */
export async function refuseUnused(
  file: OpenedFile,
  { platforms, channels, markers }: Recording,
  own: RecordingOptions,
  options: ReadingOptions & ForceOptions & MarkerOptions,
): Promise<void> {
  const hasPlates = platforms !== undefined || channels.some(({ plate }) => plate !== undefined);
  const needless = [...(hasPlates ? [] : OF_PLATES), ...(markers === undefined ? OF_MARKERS : [])];
  const ofContent = needless.find((name) => options[name] !== undefined);
  const unused = ofContent ?? ((await hasUnusedAxes(file, own, options)) ? "axes" : undefined);
  if (unused !== undefined) refuse(unused, file);
}

/**
 * Refuses an option that the format of a file does not use.
 *
 * @throws GaitKineticsError `conflict`.
 */
export function refuseUnusedByFormat(
  file: OpenedFile,
  { rate }: RecordingOptions,
  options: ReadingOptions & ForceOptions,
): void {
  const [unused] = unusedOptions(file.format, { ...options, rate });
  if (unused !== undefined) refuse(unused, file);
}

function refuse(unused: UsedBySome, { path, format }: OpenedFile): never {
  fail("conflict", unusedSentence(unused, format), {
    argument: unused,
    where: path,
    values: { unused: true },
  });
}

/** Axes that are needed are missed at the names of the columns, before any number is read. */
async function hasUnusedAxes(
  file: OpenedFile,
  own: RecordingOptions,
  reading: ReadingOptions,
): Promise<boolean> {
  if (file.format !== "table" || reading.axes === undefined) return false;
  try {
    await readTable(file, own, { ...reading, axes: undefined }, "optional");
    return true;
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    return false;
  }
}
