import type { AxisMapping, Direction } from "../../recording/index.js";
import { type Dimension, fail } from "../../units/index.js";
import { plainName } from "./words.js";

/** What becomes of a column. `zero`: it must hold nothing but zeros and is dropped. */
export type ColumnRole =
  | { readonly kind: "time" }
  | { readonly kind: "force"; readonly direction: Direction }
  | { readonly kind: "centre-of-pressure"; readonly direction: "forward" | "right" }
  | { readonly kind: "free-moment" }
  | { readonly kind: "zero"; readonly reason: string }
  | { readonly kind: "other"; readonly name: string };

/** What a name stands for, what it must measure (`null`: anything), and the sign that brings it to the library's frame. */
export interface NamedRole {
  readonly role: ColumnRole;
  readonly dimension: Dimension | null;
  readonly sign: 1 | -1;
}

/** Names of columns by direction, in their plain form. */
export const OWN_NAMES: readonly string[] = [
  "time",
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
const OTHER = /^other:\s*\S/i;

/** Tells whether this reader knows a name, with axes stated or without. */
export function isKnownName(name: string): boolean {
  const plain = plainName(name);
  return OWN_NAMES.includes(plain) || plain === "t" || BY_AXIS.test(plain) || OTHER.test(name);
}

/**
 * The role of a name; `null` where this reader knows none by it.
 *
 * @throws GaitKineticsError `unknown-axes`: it is named by an axis whose direction is not stated.
 */
export function roleOf(name: string, where: string, mapping: AxisMapping | null): NamedRole | null {
  if (OTHER.test(name)) {
    return { role: { kind: "other", name: name.slice("other:".length).trim() }, dimension: null, sign: 1 };
  }
  const plain = plainName(name);
  switch (plain) {
    case "time":
    case "t":
      return { role: { kind: "time" }, dimension: "time", sign: 1 };
    case "forward":
    case "up":
    case "right":
      return { role: { kind: "force", direction: plain }, dimension: "force", sign: 1 };
    case "cop_forward":
      return { role: { kind: "centre-of-pressure", direction: "forward" }, dimension: "length", sign: 1 };
    case "cop_right":
      return { role: { kind: "centre-of-pressure", direction: "right" }, dimension: "length", sign: 1 };
    case "free_moment":
      return { role: { kind: "free-moment" }, dimension: "moment", sign: 1 };
  }
  const named = BY_AXIS.exec(plain);
  if (named === null) return null;
  return axisRole(named[1] as string, named[2] as "x" | "y" | "z", where, mapping);
}

/** The role of a column named by an axis. */
function axisRole(
  prefix: string,
  axis: "x" | "y" | "z",
  where: string,
  mapping: AxisMapping | null,
): NamedRole {
  const mapped = mapping?.[axis];
  if (mapped === undefined) {
    fail(
      "unknown-axes",
      `${where} is named by axis ${axis}, and where that points is not stated; state it as axes: { x: "right", y: "forward", z: "up" } with the file's own directions (forward, backward, up, down, right, left)`,
      { argument: "axes", where },
    );
  }
  const { direction, sign } = mapped;
  if (prefix === "f" || prefix === "force") {
    return { role: { kind: "force", direction }, dimension: "force", sign };
  }
  if (prefix === "cop") {
    if (direction !== "up")
      return { role: { kind: "centre-of-pressure", direction }, dimension: "length", sign };
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
  return {
    role: { kind: "free-moment" },
    dimension: "moment",
    sign: sign * handedness > 0 ? 1 : -1,
  };
}
