import { parseC3d } from "../../io/index.js";
import type { Axes } from "../../recording/index.js";
import {
  type DescribedChannel,
  describeC3d,
  describeRecording,
  type RecordingDescription,
} from "../../report/index.js";
import { isGaitKineticsError } from "../../units/index.js";
import type { ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import { openFile } from "./openFile.js";
import { readRecordingFile } from "./readRecordingFile.js";
import { windowOf } from "./windowOf.js";

/** Right-handed mappings without a change of sign: one of them reads any table whose axes are not stated. */
const AS_STORED: readonly Axes[] = [
  { x: "right", y: "forward", z: "up" },
  { x: "forward", y: "up", z: "right" },
  { x: "up", y: "right", z: "forward" },
];

/**
 * Describes a file; where its axes are not stated, in its own axes.
 *
 * @throws GaitKineticsError as the readers do, but for axes that are not stated.
 */
export async function describeFile(
  path: string,
  own: RecordingOptions,
  reading: ReadingOptions,
): Promise<RecordingDescription> {
  const { format, bytes } = openFile(path);
  try {
    const described = describeRecording(windowOf(await readRecordingFile(path, own, reading), own));
    return format === "c3d" ? { ...described, storage: describeC3d(parseC3d(bytes())).storage } : described;
  } catch (caught) {
    if (!isGaitKineticsError(caught) || caught.code !== "unknown-axes" || reading.axes !== undefined)
      throw caught;
    return format === "c3d"
      ? describeRaw(path, own, reading, bytes(), caught.message)
      : describeUnframed(path, own, reading, caught.message);
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
    const recording = await readRecordingFile(path, own, { ...reading, axes: AS_STORED[0] });
    const { subject, events, cautions, speed, surface, grade } = describeRecording(recording);
    return { ...describeC3d(file, [toState]), subject, events, cautions, speed, surface, grade };
  } catch (caught) {
    if (!isGaitKineticsError(caught)) throw caught;
    return describeC3d(file, [toState, caught.message]);
  }
}

/** A table whose columns are named by axis, read as it is stored: by the first mapping that reads it. */
async function describeUnframed(
  path: string,
  own: RecordingOptions,
  reading: ReadingOptions,
  toState: string,
  [axes, ...further]: readonly Axes[] = AS_STORED,
): Promise<RecordingDescription> {
  try {
    const described = describeRecording(
      windowOf(await readRecordingFile(path, own, { ...reading, axes }), own),
    );
    return {
      ...described,
      framed: false,
      channels: described.channels.map(withoutDirection),
      toState: [toState],
    };
  } catch (caught) {
    if (further.length === 0) throw caught;
    return describeUnframed(path, own, reading, toState, further);
  }
}

/** The channel without a direction that was not stated. */
function withoutDirection(channel: DescribedChannel): DescribedChannel {
  return { ...channel, holds: channel.holds?.replace(/ (?:forward|up|right)$/, "") ?? null };
}
