import { fail, requireNumber, requireOneOf } from "../units/index.js";
import { checkSamples } from "./checkSamples.js";
import type { Platform, PlatformType, Position } from "./recording.js";
import { wrongType } from "./wrongType.js";

/** The channels of each type, as the C3D format orders them, with their units. */
const CHANNELS: Readonly<
  Record<PlatformType, { readonly names: string; readonly units: readonly string[] }>
> = {
  1: { names: "Fx Fy Fz Px Py Tz", units: ["N", "N", "N", "m", "m", "N m"] },
  2: { names: "Fx Fy Fz Mx My Mz", units: ["N", "N", "N", "N m", "N m", "N m"] },
  3: {
    names: "Fx12 Fx34 Fy14 Fy23 Fz1 Fz2 Fz3 Fz4",
    units: ["N", "N", "N", "N", "N", "N", "N", "N"],
  },
  4: { names: "Fx Fy Fz Mx My Mz", units: ["V", "V", "V", "V", "V", "V"] },
};

/** Sides of a plate or belt outside these are no sides in metres, m. A judgement. */
const SHORTEST_SIDE = 0.01;
const LONGEST_SIDE = 20;
/** A transducer farther from the surface than this is no distance in metres, m. A judgement. */
const FARTHEST_ORIGIN = 5;
/** Least sine of the angle between neighbouring sides. */
const LEAST_SINE = 0.1;

/**
 * Checks that a force platform is what its type says.
 *
 * @param platform - The platform.
 * @param argument - Its name, such as `platforms[0]`.
 * @throws GaitKineticsError `wrong-type`, `not-finite`: a field of the wrong type, a number that is not
 * finite; `out-of-range`: an unknown type, corners that span no plate, lengths that are none in metres, a
 * range of zero samples outside the recording; `missing-channel`: a number of channels other than the type's;
 * `unit-mismatch`: a channel in another unit than the type's; `missing-value`: type 4 without its
 * calibration.
 */
export function checkPlatform(platform: Platform, argument: string): void {
  if (typeof platform !== "object" || platform === null) wrongType(argument, platform, "an object");
  const { name, type, channels, corners, origin, side } = platform;
  if (typeof name !== "string") wrongType(`${argument}.name`, name, "a text");
  if (!Object.hasOwn(CHANNELS, String(type))) {
    fail(
      "out-of-range",
      `force platform "${name}" is of type ${String(type)}; types 1, 2, 3 and 4 are known, and no public definition of others agrees with the next: its raw channels can be read, its force cannot`,
      { argument: `${argument}.type`, where: name, values: { given: type, allowed: [1, 2, 3, 4] } },
    );
  }
  if (side !== undefined) requireOneOf(`${argument}.side`, side, ["left", "right"]);
  if (!Array.isArray(channels)) wrongType(`${argument}.channels`, channels, "an array");
  checkChannels(platform, argument);
  checkCorners(name, corners, argument);
  if (!Array.isArray(origin) || origin.length !== 3) {
    wrongType(`${argument}.origin`, origin, "an array of three numbers");
  }
  origin.forEach((value, axis) => {
    requireNumber(`${argument}.origin[${axis}]`, value, {
      from: -FARTHEST_ORIGIN,
      to: FARTHEST_ORIGIN,
      unit: "m",
      hint: "a larger number may be in millimetres",
    });
  });
  if (type === 4) checkCalibration(platform, argument);
  checkZero(platform, argument);
}

function checkChannels({ name, type, channels }: Platform, argument: string): void {
  const { names, units } = CHANNELS[type];
  if (channels.length !== units.length) {
    fail(
      "missing-channel",
      `force platform "${name}" of type ${type} has ${channels.length} channels; it needs ${units.length}, ${names}`,
      {
        argument: `${argument}.channels`,
        where: name,
        values: { given: channels.length, allowed: units.length },
      },
    );
  }
  for (const [k, channel] of channels.entries()) {
    const own = `${argument}.channels[${k}]`;
    if (typeof channel !== "object" || channel === null) wrongType(own, channel, "an object");
    if (typeof channel.name !== "string") wrongType(`${own}.name`, channel.name, "a text");
    if (channel.unit !== units[k]) {
      fail(
        "unit-mismatch",
        `channel "${channel.name}" of force platform "${name}" is in "${String(channel.unit)}"; ${names.split(" ")[k]} of type ${type} is held in ${units[k]}: convert the samples first`,
        {
          argument: `${own}.unit`,
          where: `${name}, ${channel.name}`,
          values: { given: channel.unit, allowed: units[k] },
        },
      );
    }
    checkSamples(`${own}.samples`, channel.samples, `channel "${channel.name}" of force platform "${name}"`);
  }
}

function checkCorners(name: string, corners: Platform["corners"], argument: string): void {
  const own = `${argument}.corners`;
  if (!Array.isArray(corners) || corners.length !== 4) wrongType(own, corners, "an array of four positions");
  for (const [k, corner] of corners.entries()) {
    if (typeof corner !== "object" || corner === null) wrongType(`${own}[${k}]`, corner, "a position");
    for (const axis of ["forward", "up", "right"] as const) {
      requireNumber(`${own}[${k}].${axis}`, corner[axis], { unit: "m" });
    }
  }
  const [c1, c2, c3, c4] = corners;
  const x = between(c2, c1, c3, c4);
  const y = between(c4, c1, c3, c2);
  const [alongX, alongY] = [lengthOf(x) / 2, lengthOf(y) / 2];
  const refuse = (what: string, values: Readonly<Record<string, unknown>>): never =>
    fail("out-of-range", `the corners of force platform "${name}" ${what}`, {
      argument: own,
      where: name,
      values,
    });
  for (const side of [alongX, alongY]) {
    if (side >= SHORTEST_SIDE && side <= LONGEST_SIDE) continue;
    refuse(
      `span ${alongX.toPrecision(3)} m by ${alongY.toPrecision(3)} m; a plate has sides of ${SHORTEST_SIDE} m to ${LONGEST_SIDE} m (other numbers may be in millimetres), and its corners come in the order (+x, +y), (−x, +y), (−x, −y), (+x, −y)`,
      { alongX, alongY },
    );
  }
  const sine = lengthOf(cross(x, y)) / (4 * alongX * alongY);
  if (sine < LEAST_SINE) {
    refuse("lie on one line; the x and the y axis of the plate, which they state, must point apart", {
      sine,
    });
  }
}

/** The vectors from a to b and from c to d, added. */
function between(a: Position, b: Position, c: Position, d: Position): Position {
  const along = (axis: keyof Position) => b[axis] - a[axis] + d[axis] - c[axis];
  return { forward: along("forward"), up: along("up"), right: along("right") };
}

function cross(a: Position, b: Position): Position {
  return {
    forward: a.up * b.right - a.right * b.up,
    up: a.right * b.forward - a.forward * b.right,
    right: a.forward * b.up - a.up * b.forward,
  };
}

function lengthOf({ forward, up, right }: Position): number {
  return Math.hypot(forward, up, right);
}

function checkCalibration({ name, calibration }: Platform, argument: string): void {
  const own = `${argument}.calibration`;
  if (calibration === undefined) {
    fail(
      "missing-value",
      `force platform "${name}" of type 4 has no calibration; its six rows of six turn volts into force and moment`,
      { argument: own, where: name },
    );
  }
  if (!Array.isArray(calibration) || calibration.length !== 6) {
    wrongType(own, calibration, "an array of six rows");
  }
  for (const [row, values] of calibration.entries()) {
    if (!Array.isArray(values) || values.length !== 6)
      wrongType(`${own}[${row}]`, values, "a row of six numbers");
    for (const [column, value] of values.entries()) requireNumber(`${own}[${row}][${column}]`, value);
  }
}

function checkZero({ name, zero, channels }: Platform, argument: string): void {
  if (zero === undefined) return;
  if (typeof zero !== "object" || zero === null) wrongType(`${argument}.zero`, zero, "an object");
  const length = channels[0]?.samples.length ?? 0;
  const { from, to } = zero;
  if (Number.isInteger(from) && Number.isInteger(to) && 0 <= from && from < to && to <= length) return;
  fail(
    "out-of-range",
    `the unloaded samples of force platform "${name}" are ${String(from)} to ${String(to)}; whole numbers that rise from 0 to ${length}, the number of samples, are needed`,
    { argument: `${argument}.zero`, where: name, values: { from, to, length } },
  );
}
