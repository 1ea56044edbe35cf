import { readCsvStream, readRecording } from "../../io/index.js";
import type { Recording } from "../../recording/index.js";
import type { ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import type { OpenedFile } from "./openFile.js";

/** Reads a table of text; `verticalForce` as {@link readCsvStream} takes it. */
export function readTable(
  file: OpenedFile,
  { rate, mass, height, speed, surface, grade, footwear }: RecordingOptions,
  reading: ReadingOptions,
  verticalForce: "needed" | "optional" = "needed",
): Recording | Promise<Recording> {
  const { axes, forceOn, units, columns, ignore, decimal, delimiter, skip, header, unitRow, missing } =
    reading;
  const options = {
    mass,
    height,
    speed,
    surface,
    grade,
    footwear,
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
    verticalForce,
    forceOn: forceOn === "auto" ? undefined : forceOn,
  };
  // Refuses other formats by name, where readCsv would stumble over their bytes.
  return file.large ? readCsvStream(file.pieces(), options) : readRecording(file.bytes(), options);
}
