import type { Recording } from "../../recording/index.js";
import type { RecordingOptions } from "../options/inputOptions.js";
import { cropRecording } from "./cropRecording.js";

/** The window of a recording that is asked for, and the foot that is stated for its first contact. */
export function windowOf(recording: Recording, { from, to, firstFoot }: RecordingOptions): Recording {
  const part = from === undefined && to === undefined ? recording : cropRecording(recording, from, to);
  return firstFoot === undefined ? part : { ...part, firstFoot };
}
