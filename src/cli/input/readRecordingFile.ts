import { InvalidArgumentError } from "commander";
import {
  type MotionBidsColumn,
  readC3d,
  readCsvStream,
  readMotionBids,
  readRecording,
} from "../../io/index.js";
import type { Recording } from "../../recording/index.js";
import { fail, isGaitKineticsError } from "../../units/index.js";
import type { ForceOptions, ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import { optionWords } from "../output/optionWords.js";
import { readMotionBidsFiles } from "./motionBidsFiles.js";
import { type OpenedFile, openFile } from "./openFile.js";
import { unusedOptions, unusedSentence } from "./unusedOptions.js";

/**
 * Reads a file of any format the library knows into a recording: all of it, whatever window is asked for.
 *
 * @param path - Of the file.
 * @param own - What is stated of this recording.
 * @param reading - How files are read; options of the force step are only looked at whether they are for this format.
 * @throws GaitKineticsError as the readers do; `conflict`: an option that the file's format does not use.
 * InvalidArgumentError: a name in --columns that no column can have.
 */
export async function readRecordingFile(
  path: string,
  own: RecordingOptions,
  reading: ReadingOptions & ForceOptions,
): Promise<Recording> {
  const file = openFile(path);
  const [unused] = unusedOptions(file.format, { ...reading, rate: own.rate });
  if (unused !== undefined) {
    fail("conflict", unusedSentence(unused, file.format), {
      argument: unused,
      where: path,
      values: { unused: true },
    });
  }
  return refusingOptions(() => readAs(file, own, reading));
}

/** Reads by the format; a word for a column that the reader does not know is the reader's to refuse. */
function readAs(
  file: OpenedFile,
  { rate, mass, height, speed, surface, grade }: RecordingOptions,
  reading: ReadingOptions,
): Recording | Promise<Recording> {
  const { axes, forceOn } = reading;
  const runner = { mass, height, speed, surface, grade };
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
    case "table": {
      const { units, columns, ignore, decimal, delimiter, skip, header, unitRow, missing } = reading;
      const options = {
        ...runner,
        axes,
        sampleRate: rate,
        units,
        columns,
        ignore,
        decimal,
        delimiter,
        skip,
        header,
        unitRow,
        missing,
        forceOn: forceOn === "auto" ? undefined : forceOn,
      };
      // Refuses other formats by name, where readCsv would stumble over their bytes.
      return file.large ? readCsvStream(file.pieces(), options) : readRecording(file.bytes(), options);
    }
  }
}

/** A column's new name that this reader does not know is bad usage, whatever the file holds. */
async function refusingOptions<T>(read: () => T | Promise<T>): Promise<T> {
  try {
    return await read();
  } catch (caught) {
    if (isGaitKineticsError(caught) && caught.argument === "columns" && caught.where === undefined) {
      throw new InvalidArgumentError(optionWords(caught.message));
    }
    throw caught;
  }
}
