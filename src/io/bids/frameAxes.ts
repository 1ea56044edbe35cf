import { type Axes, type AxisDirection, type AxisMapping, axisMapping } from "../../recording/index.js";
import { type Caution, fail } from "../../units/index.js";
import type { BidsChannel } from "./readChannels.js";
import { fieldOf, isObject, type JsonObject } from "./readObject.js";
import { quoted } from "./words.js";

/**
 * Letters of `SpatialAxes`. The specification's text names F B, L R, U D; the JSON schema of its validator A P, L R, S I
 * (anterior, posterior, superior, inferior). Both are read.
 */
const LETTERS: Readonly<Record<string, AxisDirection>> = {
  F: "forward",
  A: "forward",
  B: "backward",
  P: "backward",
  L: "left",
  R: "right",
  U: "up",
  S: "up",
  D: "down",
  I: "down",
};

/** Finds where the axes of a channel's reference frame point. */
export interface FrameAxes {
  /** @throws GaitKineticsError `unknown-axes`: nothing says so. */
  readonly mappingOf: (channel: BidsChannel) => AxisMapping;
  readonly cautions: () => readonly Caution[];
}

/** Reads the levels of `reference_frame` in `channels.json`; axes that are stated count before them. */
export function frameAxes(sidecar: JsonObject | null, stated: Axes | null): FrameAxes {
  const own = stated === null ? null : axisMapping(stated);
  const levels = levelsOf(sidecar);
  const said = new Map<string, Caution>();
  const mappingOf = (channel: BidsChannel): AxisMapping => {
    const frame = channel.frame ?? (levels.size === 1 ? [...levels.keys()][0] : undefined);
    const axes = frame === undefined ? undefined : levels.get(frame);
    if (own !== null) {
      if (frame !== undefined && axes !== undefined && differ(own, axisMapping(axes))) {
        said.set(frame, {
          code: "option-over-file",
          message: `the option states other axes than the reference frame ${quoted(frame)} of the file; the option was used`,
          where: frame,
        });
      }
      return own;
    }
    if (axes !== undefined) return axisMapping(axes);
    const place =
      frame === undefined
        ? "no reference frame is named"
        : `the reference frame ${quoted(frame)} states no directions`;
    fail(
      "unknown-axes",
      `channel ${quoted(channel.name)} lies along an axis, and ${place}; state it as axes: { x: "forward", y: "left", z: "up" } with the file's own directions (forward, backward, up, down, right, left), or as "SpatialAxes": "FLU" at the frame's level in channels.json`,
      { argument: "axes", where: channel.name },
    );
  };
  return { mappingOf, cautions: () => [...said.values()] };
}

function differ(one: AxisMapping, two: AxisMapping): boolean {
  return (["x", "y", "z"] as const).some((axis) => {
    const [a, b] = [one[axis], two[axis]];
    return a !== undefined && b !== undefined && (a.direction !== b.direction || a.sign !== b.sign);
  });
}

function levelsOf(sidecar: JsonObject | null): ReadonlyMap<string, Axes> {
  const found = new Map<string, Axes>();
  const column = sidecar === null ? undefined : fieldOf(sidecar, "reference_frame");
  const levels = isObject(column) ? fieldOf(column, "Levels") : undefined;
  if (!isObject(levels)) return found;
  for (const [frame, level] of Object.entries(levels)) {
    const letters = isObject(level) ? fieldOf(level, "SpatialAxes") : level;
    if (typeof letters !== "string" || !/^[FABPLRUSDI_]{3}$/.test(letters)) continue;
    const named = (["x", "y", "z"] as const).flatMap((axis, k) => {
      const direction = LETTERS[letters[k] as string];
      return direction === undefined ? [] : [[axis, direction] as const];
    });
    found.set(frame, Object.fromEntries(named));
  }
  return found;
}
