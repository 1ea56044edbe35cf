import { fail, requireNumber, requireOneOf } from "../units/index.js";
import { checkEvents } from "./checkEvents.js";
import { checkFootwear } from "./checkFootwear.js";
import { checkMarkers } from "./checkMarkers.js";
import { checkPlatform } from "./checkPlatform.js";
import { checkSamples } from "./checkSamples.js";
import { PLAUSIBLE_BOUNDS } from "./plausibleBounds.js";
import type { Channel, ChannelQuantity, Direction, Recording } from "./recording.js";
import { wrongType } from "./wrongType.js";

/** The directions and the unit each quantity may have; `other` has no direction and any unit. */
const KNOWN: Readonly<
  Record<
    ChannelQuantity,
    { readonly directions: readonly (Direction | null)[]; readonly unit: string | null }
  >
> = {
  force: { directions: ["forward", "up", "right"], unit: "N" },
  "centre-of-pressure": { directions: ["forward", "right"], unit: "m" },
  "free-moment": { directions: ["up"], unit: "N m" },
  other: { directions: [null], unit: null },
};

/**
 * Checks that a recording is what its type says, and that the numbers about runner and trial are plausible.
 *
 * Units: SI, as `Recording` states them.
 * Limits: NaN passes, as a gap; the step to a ground reaction refuses it in a force. A recording without
 * vertical force passes too.
 * @param recording - From a reader of the library or made by hand.
 * @returns The same recording.
 * @throws GaitKineticsError `wrong-type`: a field of the wrong type; `not-finite`: a number or sample that is
 * infinite, or a rate that is NaN; `out-of-range`: a rate that is not above 0, an implausible mass, height,
 * speed or grade, an unknown word, a footwear that is no line of text, a force platform of an unknown type or without a surface;
 * `missing-channel`: no channel, platform or marker, or a platform that lacks channels; `missing-value`: a
 * platform that lacks its calibration; `too-short`: no sample; `unequal-lengths`: channels or markers of
 * different length; `unit-mismatch`: a channel in another unit than its quantity's; `conflict`: two channels
 * of one quantity and direction on one plate, two platforms of one name.
 * @example
 * checkRecording(recording) === recording // true
 */
export function checkRecording(recording: Recording): Recording {
  if (typeof recording !== "object" || recording === null) {
    wrongType("recording", recording, "an object");
  }
  const { sampleRate, startTime, channels, subject, speed, surface, grade, firstFoot, footwear } = recording;
  requireNumber("sampleRate", sampleRate, { above: 0, unit: "Hz" });
  requireNumber("startTime", startTime, { unit: "s" });
  if (typeof subject !== "object" || subject === null) {
    wrongType("subject", subject, "an object; it is empty where nothing is known of the runner");
  }
  if (subject.mass !== undefined) requireNumber("mass", subject.mass, PLAUSIBLE_BOUNDS.mass);
  if (subject.height !== undefined) requireNumber("height", subject.height, PLAUSIBLE_BOUNDS.height);
  if (speed !== undefined) requireNumber("speed", speed, PLAUSIBLE_BOUNDS.speed);
  if (grade !== undefined) requireNumber("grade", grade, PLAUSIBLE_BOUNDS.grade);
  if (surface !== undefined) requireOneOf("surface", surface, ["ground", "belt"]);
  if (firstFoot !== undefined) requireOneOf("firstFoot", firstFoot, ["left", "right"]);
  if (footwear !== undefined) checkFootwear("footwear", footwear);
  if (!Array.isArray(recording.cautions)) wrongType("cautions", recording.cautions, "an array");
  if (typeof recording.origin?.format !== "string") {
    wrongType("origin", recording.origin, "an object with the name of a format");
  }
  if (!Array.isArray(channels)) wrongType("channels", channels, "an array");
  const { platforms = [], markers, events } = recording;
  if (!Array.isArray(platforms)) wrongType("platforms", platforms, "an array");
  if (channels.length === 0 && platforms.length === 0 && markers === undefined) {
    fail(
      "missing-channel",
      "the recording has no channel, force platform or marker; at least one is needed",
      {
        argument: "channels",
      },
    );
  }
  for (const [index, channel] of channels.entries()) checkChannel(channel, index);
  for (const [index, platform] of platforms.entries()) checkPlatform(platform, `platforms[${index}]`);
  checkLengths(recording);
  checkOnce(recording);
  if (markers !== undefined) checkMarkers(markers);
  if (events !== undefined) checkEvents(events);
  return recording;
}

function checkChannel(channel: Channel, index: number): void {
  const argument = `channels[${index}]`;
  if (typeof channel !== "object" || channel === null) wrongType(argument, channel, "an object");
  const { name, quantity, direction, unit, samples } = channel;
  if (typeof name !== "string") wrongType(`${argument}.name`, name, "a text");
  requireOneOf(`${argument}.quantity`, quantity, ["force", "centre-of-pressure", "free-moment", "other"]);
  const known = KNOWN[quantity];
  if (!known.directions.includes(direction)) {
    fail(
      "out-of-range",
      `channel "${name}" holds ${quantity} in direction ${String(direction)}; the direction of ${quantity} is ${known.directions.join(" or ")}`,
      {
        argument: `${argument}.direction`,
        where: name,
        values: { given: direction, allowed: known.directions },
      },
    );
  }
  if (typeof unit !== "string") wrongType(`${argument}.unit`, unit, "a text");
  if (known.unit !== null && unit !== known.unit) {
    fail(
      "unit-mismatch",
      `channel "${name}" holds ${quantity} in "${unit}"; a recording holds it in ${known.unit}: convert the samples first`,
      { argument: `${argument}.unit`, where: name, values: { given: unit, allowed: known.unit } },
    );
  }
  if (channel.plate !== undefined && typeof channel.plate !== "string") {
    wrongType(`${argument}.plate`, channel.plate, "a text");
  }
  checkSamples(`${argument}.samples`, samples, `channel "${name}"`);
}

/** One length for every channel, those of the platforms among them. */
function checkLengths({ channels, platforms = [] }: Recording): void {
  const all = [
    ...channels.map(({ name, samples }) => ({ name: `channel "${name}"`, where: name, samples })),
    ...platforms.flatMap((platform) =>
      platform.channels.map(({ name, samples }) => ({
        name: `channel "${name}" of force platform "${platform.name}"`,
        where: `${platform.name}, ${name}`,
        samples,
      })),
    ),
  ];
  const [first] = all;
  if (first === undefined) return;
  const { length } = first.samples;
  if (length === 0) {
    fail("too-short", `${first.name} has no sample; at least one is needed`, { where: first.where });
  }
  for (const { name, where, samples } of all) {
    if (samples.length === length) continue;
    fail(
      "unequal-lengths",
      `${name} has ${samples.length} samples and ${first.name} has ${length}; all channels must be of one length`,
      { where, values: { given: samples.length, allowed: length } },
    );
  }
}

/** Each quantity and direction once on each plate, each platform's name once. */
function checkOnce({ channels, platforms = [] }: Recording): void {
  const seen = new Map<string, Channel>();
  for (const channel of channels) {
    const { quantity, direction, name, plate } = channel;
    const key = JSON.stringify([quantity, quantity === "other" ? name : direction, plate ?? null]);
    const same = seen.get(key);
    if (same !== undefined) {
      const what = quantity === "other" ? `of one name` : `${quantity} ${direction}`;
      const once = plate === undefined ? "a recording" : `plate "${plate}"`;
      fail("conflict", `channels "${same.name}" and "${name}" are both ${what}; ${once} holds each once`, {
        where: name,
        values: { channels: [same.name, name] },
      });
    }
    seen.set(key, channel);
  }
  const names = new Set<string>();
  for (const { name } of platforms) {
    if (names.has(name)) {
      fail("conflict", `two force platforms are named "${name}"; each needs a name of its own`, {
        argument: "platforms",
        where: name,
        values: { name },
      });
    }
    names.add(name);
  }
}
