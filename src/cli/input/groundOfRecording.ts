import { type GroundReaction, toGroundReaction } from "../../force/index.js";
import type { Recording } from "../../recording/index.js";
import type { ForceOptions, ReadingOptions, RecordingOptions } from "../options/inputOptions.js";
import { cropGround } from "./cropGround.js";
import { sampleWindow } from "./cropRecording.js";
import { explainingUpsideDown } from "./explainingUpsideDown.js";
import { windowOf } from "./windowOf.js";

/**
 * Makes the window of a recording the force between foot and ground by the options of the command line. Samples that are
 * named as unloaded count wherever they lie: where that is outside the window, the window is cut out last.
 *
 * @param recording - The whole.
 * @param own - What is stated of it, the window among it.
 * @param options - How it becomes force.
 * @throws GaitKineticsError as `toGroundReaction`, in words of the command line.
 */
export function groundOfRecording(
  recording: Recording,
  own: RecordingOptions,
  options: ForceOptions & Pick<ReadingOptions, "forceOn">,
): GroundReaction {
  const window = sampleWindow(recording, own.from, own.to);
  if (isNamedOutside(recording, window, options)) {
    const { first, last } = window;
    const ground = cropGround(groundOf(recording, options), first, last);
    return own.firstFoot === undefined ? ground : { ...ground, firstFoot: own.firstFoot };
  }
  const { zero } = options;
  const from = window.first / recording.sampleRate;
  return groundOf(
    windowOf(recording, own),
    zero === undefined ? options : { ...options, zero: { from: zero.from - from, to: zero.to - from } },
  );
}

/** Whether samples that are taken as unloaded lie outside the window. */
function isNamedOutside(
  { platforms = [], sampleRate }: Recording,
  { first, last }: { readonly first: number; readonly last: number },
  { zero, offset = "auto" }: ForceOptions,
): boolean {
  const outside = (from: number, to: number): boolean => from < first || to > last;
  if (zero !== undefined) return outside(zero.from * sampleRate, zero.to * sampleRate);
  if (offset !== "auto" && offset !== "file") return false;
  return platforms.some((platform) => platform.zero && outside(platform.zero.from, platform.zero.to));
}

function groundOf(
  recording: Recording,
  {
    forceOn,
    plates,
    onlyPlates,
    sides,
    zero,
    offset,
    drift,
    coverThickness,
    originSign,
  }: ForceOptions & Pick<ReadingOptions, "forceOn">,
): GroundReaction {
  return explainingUpsideDown(forceOn, recording.platforms !== undefined, () =>
    toGroundReaction(recording, {
      plates,
      only: onlyPlates,
      sides,
      zero,
      offset,
      drift,
      coverThickness,
      originSign,
      // A table's forces were turned over when it was read.
      forceOn: recording.platforms === undefined ? undefined : forceOn === "ground" ? "platform" : forceOn,
    }),
  );
}
