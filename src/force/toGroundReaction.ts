import { checkRecording, type Platform, type Recording } from "../recording/index.js";
import {
  type Caution,
  type Complete,
  fail,
  type Metres,
  requireNumber,
  requireOneOf,
  withDefaults,
} from "../units/index.js";
import type { Flight } from "./baseline.js";
import { combinePlates } from "./combinePlates.js";
import type { GroundReaction } from "./groundReaction.js";
import { withMarkers } from "./markers/withMarkers.js";
import { TO_GROUND_REACTION_DEFAULTS, type ToGroundReactionOptions } from "./options.js";
import { coincidingPlates } from "./plates/coincidingPlates.js";
import { joinSharedPlates } from "./plates/joinSharedPlates.js";
import { leftAlone } from "./plates/leftAlone.js";
import type { PlateSource } from "./plates/plateSource.js";
import { plateSources } from "./plates/plateSources.js";
import { reactionOfPlate } from "./plates/reactionOfPlate.js";
import { touchCautions } from "./plates/touchCautions.js";
import { requirePlatformOptions } from "./platform/platformOptions.js";

/**
 * Plates whose heights differ by no more than this have one ground level, m. A judgement: 10 mm shift 2 mm at
 * 0.2 BW.
 */
const ONE_LEVEL: Metres = 0.01;

/**
 * Turns a recording's force channels and force platforms into the force between foot and ground: gaps
 * refused, platforms decoded and rotated, offset and drift taken off by the unloaded stretches, centre of
 * pressure and free moment turned into a moment that is finite in flight.
 *
 * Formula: platforms as in `platformReaction`; offset = mean of each channel over the samples that are stated
 * or that the file names as unloaded, else over all flight phases of the plate (on a belt of a split
 * treadmill, its swing phases); drift = the flights' levels (median of three), a line between successive
 * flights, of force and moment; moment = r × F + T after that, r from the frame's origin at the height of the
 * plates' surface. Places of markers: their mean, by a cubic spline at the times of the force's samples.
 * Units: N, m and N·m in (V for platforms of type 4), as a `Recording` holds them; N and N·m out.
 * Limits: without flight phases (walking on one plate, standing) nothing is taken off, and a `Caution` says
 * so. Plates that nobody stood on are left out. Plates at heights more than 10 mm apart are kept apart, each
 * moment at its own level, and their sum has none. Channels are the ground's force on the runner already:
 * `forceOn` concerns platforms. Markers that are named must be seen from the first to the last sample of force but for one
 * frame at either end; the mean of pelvis markers is a stand-in for the centre of mass, centimetres off but steadily so.
 * Source: platforms by the C3D format; book-keeping of this library, whose closing law is that the force in
 * flight is zero.
 * @param recording - With a force platform, or a force channel `up`, in N.
 * @param options - {@link TO_GROUND_REACTION_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: no vertical force, no marker of a stated name; `gap`: a missing sample of force, or of the
 * centre of pressure under load, a named marker out of sight; `unknown-axes`: the vertical force of a channel points down; `too-short`:
 * fewer than two samples; `out-of-range`, `wrong-type`: an option out of bounds, an unknown plate;
 * `missing-value`: the file's own offset, of which it has none; `conflict`: forces of plates beside forces of
 * none, a cover without a platform.
 * @example
 * toGroundReaction(recording).settings.flights > 70 // true
 */
export function toGroundReaction(
  recording: Recording,
  options: ToGroundReactionOptions = {},
): GroundReaction {
  const settings = withDefaults<ToGroundReactionOptions>(TO_GROUND_REACTION_DEFAULTS, options);
  requireSettings(settings);
  checkRecording(recording);
  const length = lengthOf(recording);
  const stated = statedStretch(recording, settings, length);
  const sources = plateSources(recording, settings, stated);
  const said = [
    ...recording.cautions.filter(({ code }) => code !== "gap"),
    ...coincidingPlates(platformsOf(recording, sources)),
  ];
  const [single] = sources as [PlateSource, ...PlateSource[]];
  if (sources.length === 1) {
    const ground = reactionOfPlate(single, recording, settings, stated, single.centre?.up ?? 0);
    return withMarkers({ ...ground, cautions: [...said, ...ground.cautions] }, recording, settings);
  }

  const { used, cautions } = leftAlone(sources, recording.sampleRate);
  const heights = used.flatMap(({ centre }) => centre?.up ?? []);
  const mean = heights.reduce((sum, height) => sum + height, 0) / Math.max(1, heights.length);
  const level = heights.every((height) => Math.abs(height - mean) <= ONE_LEVEL / 2);
  const apart = used.map((source) =>
    reactionOfPlate(source, recording, settings, stated, level ? mean : (source.centre?.up ?? 0)),
  );
  const joined =
    settings.plates === "auto" ? joinSharedPlates(apart, level) : { plates: apart, cautions: [] };
  if (!level) cautions.push(heightsCaution(used, heights));
  if (settings.plates !== "together") cautions.push(...touchCautions(joined.plates));
  const ground = {
    ...whole(joined.plates, settings, level),
    cautions: [...said, ...cautions, ...joined.cautions, ...apart.flatMap((plate) => plate.cautions)],
  };
  return withMarkers(ground, recording, settings);
}

/** The force platforms that force is taken from. */
function platformsOf({ platforms = [] }: Recording, sources: readonly PlateSource[]): readonly Platform[] {
  return platforms.filter(({ name }) => sources.some((source) => source.name === name));
}

/** The sum with its plates, or the only plate; without the moment of a sum over several heights. */
function whole(
  plates: readonly GroundReaction[],
  settings: Complete<ToGroundReactionOptions>,
  level: boolean,
): GroundReaction {
  const [first] = plates as [GroundReaction, ...GroundReaction[]];
  if (plates.length === 1) return first;
  const { plates: each, ...sum } = combinePlates(plates);
  const { moment: _moment, ...force } = sum;
  const ground = level ? sum : force;
  return settings.plates === "together" ? ground : { ...ground, ...(each && { plates: each }) };
}

function heightsCaution(used: readonly PlateSource[], heights: readonly number[]): Caution {
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  return {
    code: "plate-heights",
    message: `the surfaces of ${used.map(({ name }) => `"${name}"`).join(", ")} lie at heights of ${low.toFixed(3)} to ${high.toFixed(3)} m: each has its moment about the frame's origin at its own height, their sum has none`,
    values: { low, high },
  };
}

function requireSettings(settings: Complete<ToGroundReactionOptions>): void {
  const { offset, zero, drift, driftLimit, plates, only, sides, gravity } = settings;
  requireOneOf("offset", offset, ["auto", "flights", "file", "none"]);
  requireOneOf("drift", drift, ["auto", "always", "never"]);
  requireNumber("driftLimit", driftLimit, { from: 0, unit: "N" });
  requireOneOf("plates", plates, ["auto", "apart", "together"]);
  requireNumber("gravity", gravity, { above: 0, to: 30, unit: "m/s²" });
  requirePlatformOptions(settings);
  if (only !== null && (!Array.isArray(only) || only.length === 0)) {
    fail("wrong-type", "only is no list of names; at least one plate's name is needed", { argument: "only" });
  }
  for (const [name, side] of Object.entries(sides ?? {})) {
    requireOneOf(`sides.${name}`, side, ["left", "right"]);
  }
  if (zero === null) return;
  if (typeof zero !== "object") {
    fail("wrong-type", "zero is no stretch; { from, to } in seconds is needed", { argument: "zero" });
  }
  requireNumber("zero.from", zero.from, { from: 0, unit: "s" });
  requireNumber("zero.to", zero.to, { above: zero.from, unit: "s" });
}

function lengthOf({ channels, platforms = [] }: Recording): number {
  const samples = (channels[0] ?? platforms[0]?.channels[0])?.samples;
  if (samples === undefined) {
    fail("missing-channel", "the recording has no force: it holds markers alone", { argument: "recording" });
  }
  const { length } = samples;
  if (length < 2) {
    fail(
      "too-short",
      `the recording holds ${length === 1 ? "1 sample" : `${length} samples`}; at least 2 are needed`,
      { argument: "recording" },
    );
  }
  return length;
}

/** The stretch that is stated to be quiet, in samples. */
function statedStretch(
  { sampleRate }: Recording,
  { zero }: Complete<ToGroundReactionOptions>,
  length: number,
): Flight | null {
  if (zero === null) return null;
  const from = Math.ceil(zero.from * sampleRate - 1e-6);
  const to = Math.floor(zero.to * sampleRate + 1e-6) + 1;
  if (from < to && to <= length) return { from, to };
  fail(
    "out-of-range",
    `zero is ${zero.from} s to ${zero.to} s; it must hold a sample and lie within the recording, 0 s to ${(length - 1) / sampleRate} s after its first sample`,
    { argument: "zero", values: { from: zero.from, to: zero.to, end: (length - 1) / sampleRate } },
  );
}
