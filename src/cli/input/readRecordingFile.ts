import { type MotionBidsColumn, readC3d, readMotionBids } from "../../io/index.js";
import type { Recording } from "../../recording/index.js";
import { fail } from "../../units/index.js";
import type {
  ForceOptions,
  MarkerOptions,
  ReadingOptions,
  RecordingOptions,
} from "../options/inputOptions.js";
import { readMotionBidsFiles } from "./motionBidsFiles.js";
import { type OpenedFile, openFile } from "./openFile.js";
import { readTable } from "./readTable.js";
import { refuseUnused, refuseUnusedByFormat } from "./refuseUnused.js";
import { refusingOptions } from "./refusingOptions.js";

/**
 * Reads a file of any format the library knows into a recording: all of it, whatever window is asked for.
 *
 * @param path - Of the file.
 * @param own - What is stated of this recording.
 * @param reading - How files are read; options of the force step and of markers are only looked at whether they are for this format.
 * @throws GaitKineticsError as the readers do; `conflict`: an option that the file's format does not use.
 * InvalidArgumentError: a name in --columns that no column can have.
 */
export async function readRecordingFile(
  path: string,
  own: RecordingOptions,
  reading: ReadingOptions & ForceOptions & MarkerOptions,
): Promise<Recording> {
  const file = openFile(path);
  refuseUnusedByFormat(file, own, reading);
  const recording = await refusingOptions(() => readAs(file, own, reading));
  await refuseUnused(file, recording, own, reading);
  return recording;
}

/** Reads by the format; a word for a column that the reader does not know is the reader's to refuse. */
function readAs(
  file: OpenedFile,
  { rate, mass, height, speed, surface, grade, footwear }: RecordingOptions,
  reading: ReadingOptions,
): Recording | Promise<Recording> {
  const { axes, forceOn } = reading;
  const runner = { mass, height, speed, surface, grade, footwear };
  switch (file.format) {
    case "c3d":
      return readC3d(file.bytes(), { ...runner, axes, units: reading.units, lengthUnit: reading.lengthUnit });
    case "motion-bids":
      return readMotionBids(readMotionBidsFiles(file.path, file.bytes()), {
        ...runner,
        axes,
        columns: reading.columns as Readonly<Record<string, MotionBidsColumn>> | undefined,
        forceOn: forceOn === "auto" ? undefined : forceOn,
      });
    case "result":
      return fail(
        "unreadable-file",
        "it is JSON, which holds results; a recording is needed (compare, reliability, sessions and runners take results of analyse --json)",
      );
    case "table":
      return readTable(file, { rate, ...runner }, reading);
  }
}
