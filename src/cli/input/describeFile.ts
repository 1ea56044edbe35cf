import { parseC3d } from "../../io/index.js";
import { describeC3d, describeRecording, type RecordingDescription } from "../../report/index.js";
import { isGaitKineticsError } from "../../units/index.js";
import type { ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import { describeTable } from "./describeTable.js";
import { openFile } from "./openFile.js";
import { readRecordingFile } from "./readRecordingFile.js";
import { refuseUnusedByFormat } from "./refuseUnused.js";
import { windowOf } from "./windowOf.js";

/** Any right-handed mapping without a change of sign reads a file in its own axes. */
const AS_STORED = { x: "right", y: "forward", z: "up" } as const;

/**
 * Describes a file; where its axes are not stated, in its own axes, and a table with whatever else it does not state.
 *
 * @throws GaitKineticsError as the readers do, but for what can be stated.
 */
export async function describeFile(
  path: string,
  own: RecordingOptions,
  reading: ReadingOptions,
): Promise<RecordingDescription> {
  const file = openFile(path);
  const { format, bytes } = file;
  if (format === "table") {
    refuseUnusedByFormat(file, own, reading);
    return describeTable(file, own, reading);
  }
  try {
    const described = describeRecording(windowOf(await readRecordingFile(path, own, reading), own));
    return format === "c3d" ? { ...described, storage: describeC3d(parseC3d(bytes())).storage } : described;
  } catch (caught) {
    if (!isGaitKineticsError(caught) || caught.code !== "unknown-axes" || reading.axes !== undefined)
      throw caught;
    if (format !== "c3d") throw caught;
    return describeRaw(path, own, reading, bytes(), caught.message);
  }
}

/** A C3D file as it is, and what a reading in its own axes tells of runner and events where there is one. */
async function describeRaw(
  path: string,
  own: RecordingOptions,
  reading: ReadingOptions,
  bytes: Uint8Array,
  toState: string,
): Promise<RecordingDescription> {
  const file = parseC3d(bytes);
  try {
    const recording = await readRecordingFile(path, own, { ...reading, axes: AS_STORED });
    const { subject, events, cautions, speed, surface, grade } = describeRecording(recording);
    return { ...describeC3d(file, [toState]), subject, events, cautions, speed, surface, grade };
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    return describeC3d(file, [toState, caught.message]);
  }
}
