import type { Recording } from "../../recording/index.js";
import { c3dToRecording } from "./c3dToRecording.js";
import type { ReadC3dOptions } from "./options.js";
import { parseC3d } from "./parseC3d.js";

/**
 * Reads a recording from a C3D file: force platforms, other channels, markers, events, runner and trial, in SI units and
 * in the library's frame.
 *
 * The format does not say where its axes point, and nothing is guessed: state `axes`. The refusal of a file without
 * them says what is seen in it. Files of {@link writeC3d} and {@link recordingToC3d} state them. Force platforms come as
 * recorded; `toGroundReaction` makes their force. Channels of no platform, and of platforms whose type is not 1 to 4
 * (a `Caution` names them), are `other`.
 *
 * Units: of forces and moments by ANALOG:UNITS, of lengths by POINT:UNITS; a unit that neither states is deduced from
 * the load, with a `Caution`. Moment rows of a type-4 matrix are N mm/V or N m/V by the same rule, always with one.
 * Limits: times count from frame 1 of the trial, so a cropped file starts later than 0. FORCE_PLATFORM:ZERO is taken as
 * frames counted from the file's first. Mass and height are taken from groups such as SUBJECT with a `Caution`. Points
 * listed as angles, forces and the like are left out; a position of exactly 0 0 0 without a camera or a residual is a gap.
 * A force beyond 100 kN, a length, moment or voltage beyond a million in SI units is no recorded one and is refused with
 * channel and sample (judgement of this library).
 * Source: description of the format on c3d.org.
 * @param bytes - The whole file.
 * @param options - {@link READ_C3D_DEFAULTS} where left out; what they state counts before the file, with a `Caution`.
 * @throws GaitKineticsError `unknown-axes`: axes not stated, not all three, or left-handed; `unknown-unit`: no unit of
 * length; `missing-channel`: no channel, platform or marker; `unreadable-file`, `wrong-type`: as {@link parseC3d};
 * `out-of-range`, `not-finite`: an implausible mass, height, speed or grade, a sample that no recording holds, a name in
 * `units` that no channel has; `unknown-unit`, `unit-mismatch`: a unit stated for a platform's channel that is none, or of
 * another kind; `unknown-option`; `conflict`; `too-short`.
 * @example
 * readC3d(writeC3d(recordingToC3d(recording))).sampleRate === recording.sampleRate // true
 */
export function readC3d(bytes: Uint8Array, options: ReadC3dOptions = {}): Recording {
  return c3dToRecording(parseC3d(bytes), options);
}
