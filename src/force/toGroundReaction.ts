import { channelOf, checkRecording, type Recording } from "../recording/index.js";
import { fail, requireNumber, requireOneOf, withDefaults } from "../units/index.js";
import { correctBaseline } from "./correctBaseline.js";
import { findFlights } from "./findFlights.js";
import type { ForceComponents, GroundReaction } from "./groundReaction.js";
import {
  CENTRE_OF_PRESSURE_FLOOR,
  type CentreOfPressureColumns,
  centreOfPressureFloor,
  momentOf,
} from "./moments.js";
import { TO_GROUND_REACTION_DEFAULTS, type ToGroundReactionOptions } from "./options.js";
import { saturationCautions } from "./saturation.js";

const DIRECTIONS = ["forward", "up", "right"] as const;

/**
 * Turns a recording's force channels into the force between foot and ground: gaps refused, offset and drift of the
 * platform taken off by the flight phases, centre of pressure and free moment turned into a moment that is finite in flight.
 *
 * Formula: offset = mean of each channel over all flight phases; drift = the flights' levels (median of three), a line
 * between successive flights; moment = r × F + T after that.
 * Units: N, m and N·m in, as a `Recording` holds them; N and N·m out.
 * Limits: without flight phases (walking, standing) nothing is taken off, and a `Caution` says so.
 * Source: book-keeping of this library; the closing law is that the force in flight is zero.
 * @param recording - With a force channel `up`, in N.
 * @param options - {@link TO_GROUND_REACTION_DEFAULTS} where left out.
 * @throws GaitKineticsError `missing-channel`: no vertical force; `gap`: a missing sample of force, or of the centre of
 * pressure under load; `unknown-axes`: the vertical force points down; `too-short`: fewer than two samples.
 * @example
 * toGroundReaction(recording).settings.flights > 70 // true
 */
export function toGroundReaction(
  recording: Recording,
  options: ToGroundReactionOptions = {},
): GroundReaction {
  const settings = withDefaults<ToGroundReactionOptions>(TO_GROUND_REACTION_DEFAULTS, options);
  requireOneOf("offset", settings.offset, ["flights", "none"]);
  requireOneOf("drift", settings.drift, ["auto", "always", "never"]);
  requireNumber("driftLimit", settings.driftLimit, { from: 0, unit: "N" });
  const gravity = requireNumber("gravity", settings.gravity, { above: 0, to: 30, unit: "m/s²" });
  checkRecording(recording);
  const { sampleRate, startTime } = recording;

  const raw = forcesOf(recording);
  refuseUpsideDown(raw.up);
  const flights =
    settings.offset === "none" && settings.drift === "never" ? [] : findFlights(raw.up, sampleRate);
  const corrected = correctBaseline(raw, flights, settings);

  const column = (quantity: "centre-of-pressure" | "free-moment", direction: "forward" | "right" | "up") =>
    channelOf(recording, quantity, direction)?.samples;
  const copForward = column("centre-of-pressure", "forward");
  const copRight = column("centre-of-pressure", "right");
  const freeMoment = column("free-moment", "up");
  const columns: CentreOfPressureColumns = {
    ...(copForward && { forward: copForward }),
    ...(copRight && { right: copRight }),
    ...(freeMoment && { freeMoment }),
  };
  const floor = centreOfPressureFloor(corrected.force.up, columns, sampleRate, startTime);
  const moment = momentOf(corrected.force, columns, floor);

  const cautions = [
    ...recording.cautions.filter(({ code }) => code !== "gap"),
    ...saturationCautions(raw),
    ...corrected.cautions,
  ];
  if (floor > CENTRE_OF_PRESSURE_FLOOR) {
    cautions.push({
      code: "centre-of-pressure-floor",
      message: `the file leaves the centre of pressure blank up to ${floor.toFixed(0)} N of vertical force; it is used above that only`,
      values: { floor },
    });
  }
  const { subject, speed, surface, grade, firstFoot } = recording;
  return {
    sampleRate,
    startTime,
    force: corrected.force,
    ...(moment && { moment }),
    subject,
    ...(speed !== undefined && { speed }),
    ...(surface !== undefined && { surface }),
    ...(grade !== undefined && { grade }),
    gravity,
    ...(firstFoot !== undefined && { firstFoot }),
    settings: {
      ...(Object.keys(corrected.offset).length > 0 && { offset: corrected.offset }),
      driftRemoved: corrected.driftRemoved,
      flights: flights.length,
      filter: null,
    },
    cautions,
  };
}

function forcesOf(recording: Recording): ForceComponents {
  const forces: Partial<Record<"forward" | "up" | "right", Float64Array>> = {};
  for (const direction of DIRECTIONS) {
    const channel = channelOf(recording, "force", direction);
    if (channel === undefined) continue;
    const gap = channel.samples.findIndex(Number.isNaN);
    if (gap >= 0) {
      let missing = 0;
      for (let i = gap; i < channel.samples.length; i++) if (Number.isNaN(channel.samples[i])) missing++;
      const time = recording.startTime + gap / recording.sampleRate;
      fail(
        "gap",
        `"${channel.name}" lacks ${missing} of ${channel.samples.length} samples, the first at ${time.toFixed(3)} s (sample ${gap}); fill the gaps before force is computed`,
        {
          where: `${channel.name}, sample ${gap}`,
          values: { channel: channel.name, sample: gap, time, missing },
        },
      );
    }
    forces[direction] = channel.samples;
  }
  const { up } = forces;
  if (up === undefined) {
    fail(
      "missing-channel",
      `the recording has no vertical force; a force channel in the direction "up" is needed, it has ${recording.channels.map(({ name }) => name).join(", ")}`,
      {
        argument: "recording",
        values: { channels: recording.channels.map(({ name }) => name) },
      },
    );
  }
  if (up.length < 2)
    fail(
      "too-short",
      `the recording holds ${up.length === 1 ? "1 sample" : `${up.length} samples`}; at least 2 are needed`,
      {
        argument: "recording",
      },
    );
  return { ...forces, up };
}

function refuseUpsideDown(up: Float64Array): void {
  let sum = 0;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < up.length; i++) {
    const value = up[i] as number;
    sum += value;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  if (sum < 0 && -least > 2 * most) {
    fail(
      "unknown-axes",
      `the vertical force points down (mean ${(sum / up.length).toFixed(0)} N, ${least.toFixed(0)} to ${most.toFixed(0)} N); forces are those of the ground on the runner, "up" positive: read the file with the axis stated as "down", or with forceOn: "ground" where it holds the force on the ground`,
      {
        argument: "up",
        values: { mean: sum / up.length, least, most },
      },
    );
  }
}
