import type { GroundReaction } from "../../force/index.js";
import type {
  ForceOptions,
  MarkerOptions,
  ReadingOptions,
  RecordingOptions,
} from "../options/inputOptions.js";
import { groundOfRecording } from "./groundOfRecording.js";
import { namingLater } from "./naming.js";
import { readRecordingFile } from "./readRecordingFile.js";
import { windowOf } from "./windowOf.js";
import { withMarkers } from "./withMarkers.js";

/**
 * Reads a file into the force between foot and ground.
 *
 * @param path - Of the file.
 * @param own - What is stated of this recording.
 * @param options - How files are read and become force.
 * @throws GaitKineticsError as the stages do, with the file's name in front; InvalidArgumentError as
 * {@link readRecordingFile}.
 */
export function readGround(
  path: string,
  own: RecordingOptions,
  options: ReadingOptions & ForceOptions & MarkerOptions,
): Promise<GroundReaction> {
  return namingLater(path, async () => {
    const recording = await readRecordingFile(path, own, options);
    return withMarkers(groundOfRecording(recording, own, options), windowOf(recording, own), options);
  });
}
