import type { AxisMapping, Direction } from "../../recording/index.js";
import { type Dimension, fail } from "../../units/index.js";
import { plainName } from "./words.js";

/** What becomes of a column. `zero`: it must hold nothing but zeros and is dropped; `sample`: it counts rows. */
export type ColumnRole =
  | { readonly kind: "time" }
  | { readonly kind: "sample" }
  | { readonly kind: "force"; readonly direction: Direction; readonly plate?: string }
  | {
      readonly kind: "centre-of-pressure";
      readonly direction: "forward" | "right";
      readonly plate?: string;
    }
  | { readonly kind: "free-moment"; readonly plate?: string }
  | { readonly kind: "marker"; readonly name: string; readonly direction: Direction }
  | { readonly kind: "zero"; readonly reason: string }
  | { readonly kind: "other"; readonly name: string; readonly plate?: string };

/** What a name stands for, what it must measure (`null`: anything), and the sign that brings it to the library's frame. */
export interface NamedRole {
  readonly role: ColumnRole;
  readonly dimension: Dimension | null;
  readonly sign: 1 | -1;
}

type Axis = "x" | "y" | "z";

/** Names of columns by direction, in their plain form. */
export const OWN_NAMES: readonly string[] = [
  "time",
  "sample",
  "forward",
  "up",
  "right",
  "cop_forward",
  "cop_right",
  "free_moment",
];
/** Names of columns by axis, for messages. */
export const AXIS_NAMES: string = "Fx, Fy, Fz, COPx, COPy, COPz, Tx, Ty, Tz";

const BY_AXIS = /^(f|force|cop|t)_?([xyz])$/;
const OTHER = /^other(?:@([^:]*[^:\s]))?:\s*(\S.*)$/is;
const MARKER = /^marker:\s*(\S.*):\s*(x|y|z|forward|up|right)\s*$/is;
const ON_PLATE = /^([^@:]+)@\s*(\S.*)$/s;

/** Tells whether this reader knows a name, with axes stated or without. */
export function isKnownName(name: string): boolean {
  if (OTHER.test(name) || MARKER.test(name)) return true;
  const [plain, plate] = plateOf(name);
  if (plain === "time" || plain === "t" || plain === "sample") return plate === undefined;
  return OWN_NAMES.includes(plain) || BY_AXIS.test(plain);
}

/** The plain form of a name, and the plate behind its `@`. */
function plateOf(name: string): readonly [plain: string, plate: string | undefined] {
  const [, before, plate] = ON_PLATE.exec(name) ?? [];
  return [plainName(before ?? name), plate?.trim()];
}

/**
 * The role of a name; `null` where this reader knows none by it.
 *
 * @throws GaitKineticsError `unknown-axes`: it is named by an axis whose direction is not stated.
 */
export function roleOf(name: string, where: string, mapping: AxisMapping | null): NamedRole | null {
  if (!isKnownName(name)) return null;
  const other = OTHER.exec(name);
  if (other !== null) {
    const plate = other[1]?.trim();
    const role = { kind: "other", name: (other[2] as string).trim(), ...onPlate(plate) } as const;
    return { role, dimension: null, sign: 1 };
  }
  const marker = MARKER.exec(name);
  if (marker !== null) return markerRole((marker[1] as string).trim(), marker[2] as string, where, mapping);
  const [plain, plate] = plateOf(name);
  switch (plain) {
    case "time":
    case "t":
      return { role: { kind: "time" }, dimension: "time", sign: 1 };
    case "sample":
      return { role: { kind: "sample" }, dimension: null, sign: 1 };
    case "forward":
    case "up":
    case "right":
      return { role: { kind: "force", direction: plain, ...onPlate(plate) }, dimension: "force", sign: 1 };
    case "cop_forward":
    case "cop_right": {
      const direction = plain === "cop_forward" ? "forward" : "right";
      const role = { kind: "centre-of-pressure", direction, ...onPlate(plate) } as const;
      return { role, dimension: "length", sign: 1 };
    }
    case "free_moment":
      return { role: { kind: "free-moment", ...onPlate(plate) }, dimension: "moment", sign: 1 };
  }
  const named = BY_AXIS.exec(plain);
  if (named === null) return null;
  return axisRole(named[1] as string, named[2] as Axis, where, mapping, plate);
}

function onPlate(plate: string | undefined): { readonly plate?: string } {
  return plate === undefined ? {} : { plate };
}

function markerRole(name: string, word: string, where: string, mapping: AxisMapping | null): NamedRole {
  const axis = word.toLowerCase();
  const { direction, sign } =
    axis === "x" || axis === "y" || axis === "z"
      ? mappedAxis(axis, where, mapping)
      : { direction: axis as Direction, sign: 1 as const };
  return { role: { kind: "marker", name, direction }, dimension: "length", sign };
}

function mappedAxis(
  axis: Axis,
  where: string,
  mapping: AxisMapping | null,
): { readonly direction: Direction; readonly sign: 1 | -1 } {
  const mapped = mapping?.[axis];
  if (mapped !== undefined) return mapped;
  fail(
    "unknown-axes",
    `${where} is named by axis ${axis}, and where that points is not stated; state it as axes: { x: "right", y: "forward", z: "up" } with the file's own directions (forward, backward, up, down, right, left)`,
    { argument: "axes", where },
  );
}

/** The role of a column named by an axis. */
function axisRole(
  prefix: string,
  axis: Axis,
  where: string,
  mapping: AxisMapping | null,
  plate: string | undefined,
): NamedRole {
  const { direction, sign } = mappedAxis(axis, where, mapping);
  if (prefix === "f" || prefix === "force") {
    return { role: { kind: "force", direction, ...onPlate(plate) }, dimension: "force", sign };
  }
  if (prefix === "cop") {
    if (direction !== "up") {
      const role = { kind: "centre-of-pressure", direction, ...onPlate(plate) } as const;
      return { role, dimension: "length", sign };
    }
    const reason = "the centre of pressure lies on the ground, at height 0";
    return { role: { kind: "zero", reason }, dimension: "length", sign };
  }
  if (direction !== "up") {
    const reason = "a free moment turns about the vertical alone";
    return { role: { kind: "zero", reason }, dimension: "moment", sign };
  }
  const handedness = mapping?.handedness ?? null;
  if (handedness === null) {
    fail(
      "unknown-axes",
      `${where} is a moment, whose sign needs the directions of x, y and z; state all three in axes`,
      { argument: "axes", where },
    );
  }
  const role = { kind: "free-moment", ...onPlate(plate) } as const;
  return { role, dimension: "moment", sign: sign * handedness > 0 ? 1 : -1 };
}
