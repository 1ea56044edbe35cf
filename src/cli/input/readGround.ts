import { type GroundReaction, toGroundReaction } from "../../force/index.js";
import { readCsv } from "../../io/index.js";
import type { AnalysisOptions, RecordingOptions } from "../options/inputOptions.js";
import { cropRecording } from "./cropRecording.js";
import { naming } from "./naming.js";
import { readText } from "./readText.js";

/**
 * Reads a file into the force between foot and ground.
 *
 * @param path - Of the file.
 * @param own - What is stated of this recording.
 * @param analysis - How files are read.
 * @throws GaitKineticsError as the stages do, with the file's name in front.
 */
export function readGround(path: string, own: RecordingOptions, analysis: AnalysisOptions): GroundReaction {
  return naming(path, () => {
    const { from, to, rate, firstFoot, mass, height, speed, surface, grade } = own;
    const { axes, units, columns, ignore, decimal, forceOn, drift } = analysis;
    const whole = readCsv(readText(path), {
      mass,
      height,
      speed,
      surface,
      grade,
      sampleRate: rate,
      axes,
      units,
      columns,
      ignore,
      decimal,
      forceOn,
    });
    const recording = from === undefined && to === undefined ? whole : cropRecording(whole, from, to);
    return toGroundReaction(firstFoot === undefined ? recording : { ...recording, firstFoot }, { drift });
  });
}
