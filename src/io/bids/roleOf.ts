import type { Direction } from "../../recording/index.js";
import { type Dimension, fail, isGaitKineticsError, type UnitFactor, unitFactor } from "../../units/index.js";
import type { FrameAxes } from "./frameAxes.js";
import type { MotionBidsColumn } from "./options.js";
import type { BidsChannel } from "./readChannels.js";
import { MISSING, quoted } from "./words.js";

/** What becomes of a channel. */
export type Role =
  | { readonly kind: "time"; readonly factor: number }
  | {
      readonly kind: "force" | "centre-of-pressure" | "free-moment" | "marker";
      readonly direction: Direction;
      /** To SI, and to the library's direction. */
      readonly factor: number;
      /** Whether the file itself says so, or its name was understood. */
      readonly stated: boolean;
    }
  /** It must be zero, and is dropped. */
  | { readonly kind: "zero"; readonly factor: number; readonly reason: string }
  | { readonly kind: "platform" }
  /** `doubt`: why a channel that may be a force is kept as it is. */
  | { readonly kind: "other"; readonly doubt?: string };

/** What a channel is taken for, before its axis and unit are looked at. */
interface Reading {
  readonly kind: "time" | "force" | "centre-of-pressure" | "free-moment" | "marker";
  /** `null`: the component says it. */
  readonly direction: Direction | null;
  readonly stated: boolean;
}

const DIMENSIONS: Readonly<Record<Reading["kind"], Dimension>> = {
  time: "time",
  force: "force",
  "centre-of-pressure": "length",
  "free-moment": "moment",
  marker: "length",
};

const STATED: Readonly<Record<Exclude<MotionBidsColumn, "other">, Omit<Reading, "stated">>> = {
  time: { kind: "time", direction: null },
  forward: { kind: "force", direction: "forward" },
  up: { kind: "force", direction: "up" },
  right: { kind: "force", direction: "right" },
  cop_forward: { kind: "centre-of-pressure", direction: "forward" },
  cop_right: { kind: "centre-of-pressure", direction: "right" },
  free_moment: { kind: "free-moment", direction: "up" },
  force: { kind: "force", direction: null },
  cop: { kind: "centre-of-pressure", direction: null },
};

/** What a channel is: as the caller states it, as the file's own column says, or as type, name and unit tell. */
export function roleOf(
  channel: BidsChannel,
  stated: MotionBidsColumn | undefined,
  frames: FrameAxes,
  forceOn: "runner" | "ground",
): Role {
  if (stated === "other" || (stated === undefined && channel.quantity === "other")) return { kind: "other" };
  if (stated === undefined && channel.quantity === "platform") return { kind: "platform" };
  const reading = readingOf(channel, stated);
  if (reading === null) return { kind: "other", ...doubtOf(channel) };
  const factor = factorOf(channel, reading);
  if (factor === null) return { kind: "other", ...doubtOf(channel) };
  const { kind } = reading;
  if (kind === "time") return { kind, factor };
  const side = forceOn === "ground" && (kind === "force" || kind === "free-moment") ? -1 : 1;
  if (reading.direction !== null) {
    return { kind, direction: reading.direction, factor: side * factor, stated: reading.stated };
  }
  const axis = (["x", "y", "z"] as const).find((name) => name === channel.component?.toLowerCase());
  if (axis === undefined) {
    return {
      kind: "other",
      ...(kind !== "marker" && {
        doubt: `its component is ${quoted(channel.component ?? MISSING)}, not x, y or z`,
      }),
    };
  }
  const mapping = frames.mappingOf(channel);
  const mapped = mapping[axis];
  if (mapped === undefined) {
    fail(
      "unknown-axes",
      `channel ${quoted(channel.name)} lies along axis ${axis}, whose direction is not stated; state it in axes`,
      { argument: "axes", where: channel.name },
    );
  }
  const { direction, sign } = mapped;
  if (kind === "centre-of-pressure" && direction === "up") {
    return { kind: "zero", factor, reason: "the centre of pressure lies on the ground, at height 0" };
  }
  if (kind !== "free-moment")
    return { kind, direction, factor: side * sign * factor, stated: reading.stated };
  if (direction !== "up")
    return { kind: "zero", factor, reason: "a free moment turns about the vertical alone" };
  if (mapping.handedness === null) {
    fail(
      "unknown-axes",
      `channel ${quoted(channel.name)} is a moment, whose sign needs the directions of x, y and z; state all three in axes`,
      { argument: "axes", where: channel.name },
    );
  }
  return { kind, direction, factor: side * sign * mapping.handedness * factor, stated: reading.stated };
}

function readingOf(channel: BidsChannel, stated: MotionBidsColumn | undefined): Reading | null {
  if (stated !== undefined && stated !== "other") return { ...STATED[stated], stated: true };
  const { quantity, type } = channel;
  if (quantity !== undefined && quantity !== "other" && quantity !== "platform") {
    return { kind: quantity, direction: null, stated: true };
  }
  if (type === "LATENCY") return { kind: "time", direction: null, stated: true };
  if (type === "POS") return { kind: "marker", direction: null, stated: true };
  if (type !== "MISC") return null;
  const kind = kindByName(channel.name);
  return kind === null ? null : { kind, direction: null, stated: false };
}

/** The quantity that words of a name say: `Fz`, `grf_x`, `COP y`, `free moment`, `Tz`. */
function kindByName(name: string): "force" | "centre-of-pressure" | "free-moment" | null {
  const words = name
    .replace(/CoP/g, "cop")
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .split(/[^a-z]+/);
  const together = words.join(" ");
  if (/\bfree ?moment\b/.test(together) || words.some((word) => /^t[xyz]$/.test(word))) return "free-moment";
  if (/\bcent(?:re|er) of pressure\b/.test(together) || words.some((word) => /^cop[xyz]?$/.test(word))) {
    return "centre-of-pressure";
  }
  return words.some((word) => /^(?:f[xyz]|force|grf)$/.test(word)) ? "force" : null;
}

/** The factor to SI; `null` where the name alone said what it is and the unit says something else. */
function factorOf(channel: BidsChannel, { kind, stated }: Reading): number | null {
  const { name, unit, type } = channel;
  // The standard has latencies in seconds, whether the table repeats it or not.
  if (unit === "" && kind === "time" && type === "LATENCY") return 1;
  // A raw channel bears the name of the force that its volts will become.
  if (!stated && /^[mµμu]?V$/.test(unit)) return null;
  const where = `channel ${quoted(name)}`;
  const needed = DIMENSIONS[kind];
  const known = unitNamed(channel, where, stated);
  if (known.dimension === needed) return known.toSi;
  if (!stated) return null;
  fail(
    "unit-mismatch",
    `${where} is a ${kind === "marker" ? "position" : kind} in ${quoted(unit)}, which measures ${known.dimension}; a unit of ${needed} is needed`,
    { where: name, values: { given: unit, allowed: needed } },
  );
}

/** A unit's factor; where only a name told what the channel is, its refusal says how to keep the channel apart. */
function unitNamed({ name, unit }: BidsChannel, where: string, stated: boolean): UnitFactor {
  try {
    return unitFactor(unit === "" ? MISSING : unit, where);
  } catch (caught) {
    if (stated || !isGaitKineticsError(caught)) throw caught;
    const { code, message, where: place, values } = caught;
    return fail(
      code,
      `${message}; if the channel is something else, keep it apart with columns: { ${quoted(name)}: "other" }`,
      { argument: "columns", where: place, values },
    );
  }
}

/** Why a channel that is not mapped might have been meant to be. */
function doubtOf({ type, unit, name }: BidsChannel): { readonly doubt?: string } {
  if (type !== "MISC") return {};
  const known = unitOrNull(unit);
  if (known === null || (known.dimension !== "force" && known.dimension !== "moment")) return {};
  return { doubt: `its name ${quoted(name)} does not say what it is` };
}

function unitOrNull(unit: string): UnitFactor | null {
  try {
    return unitFactor(unit);
  } catch (caught) {
    if (isGaitKineticsError(caught)) return null;
    throw caught;
  }
}
