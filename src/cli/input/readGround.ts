import { InvalidArgumentError } from "commander";
import { type GroundReaction, toGroundReaction } from "../../force/index.js";
import { readCsv } from "../../io/index.js";
import { isGaitKineticsError } from "../../units/index.js";
import type { AnalysisOptions, RecordingOptions } from "../options/inputOptions.js";
import { optionWords } from "../output/optionWords.js";
import { cropRecording } from "./cropRecording.js";
import { explainingUpsideDown } from "./explainingUpsideDown.js";
import { naming } from "./naming.js";
import { readText } from "./readText.js";

/**
 * Reads a file into the force between foot and ground.
 *
 * @param path - Of the file.
 * @param own - What is stated of this recording.
 * @param analysis - How files are read.
 * @throws GaitKineticsError as the stages do, with the file's name in front; InvalidArgumentError: a name in --columns
 * that no column can have.
 */
export function readGround(path: string, own: RecordingOptions, analysis: AnalysisOptions): GroundReaction {
  return naming(path, () => {
    const { from, to, rate, firstFoot, mass, height, speed, surface, grade } = own;
    const { axes, units, columns, ignore, decimal, forceOn, drift } = analysis;
    const text = readText(path);
    const whole = refusingOptions(() =>
      readCsv(text, {
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
      }),
    );
    const recording = from === undefined && to === undefined ? whole : cropRecording(whole, from, to);
    const stated = firstFoot === undefined ? recording : { ...recording, firstFoot };
    return explainingUpsideDown(forceOn, () => toGroundReaction(stated, { drift }));
  });
}

/** A column's new name that this reader does not know is bad usage, whatever the file holds. */
function refusingOptions<T>(read: () => T): T {
  try {
    return read();
  } catch (caught) {
    if (isGaitKineticsError(caught) && caught.argument === "columns" && caught.where === undefined) {
      throw new InvalidArgumentError(optionWords(caught.message));
    }
    throw caught;
  }
}
