import type { Position } from "../../recording/index.js";
import {
  type Complete,
  type Metres,
  type NewtonMetres,
  type Newtons,
  requireNumber,
  withDefaults,
} from "../../units/index.js";
import { CENTRE_OF_PRESSURE_FLOOR } from "../moments.js";
import type { PlatformReaction } from "./platformReaction.js";
import type { AlongDirections } from "./rotate.js";
import { combine, cross, dot } from "./vectors.js";

/** Where the force acts on a plate's surface, and the moment about the normal there. */
export interface SurfaceCentreOfPressure {
  /** From the middle of the surface along the plate's x axis. */
  readonly x: Metres;
  /** From the middle of the surface along the plate's y axis. */
  readonly y: Metres;
  /** In the library's frame. */
  readonly position: Position;
  /** Of the ground on the runner about the plate's z axis through the centre of pressure. */
  readonly freeMoment: NewtonMetres;
}

/** Where a centre of pressure is looked for. */
export interface SurfaceCentreOfPressureOptions {
  /** Least force normal to the surface, N. */
  readonly floor?: Newtons | undefined;
}

/** The floor of {@link CENTRE_OF_PRESSURE_FLOOR}. */
export const SURFACE_CENTRE_OF_PRESSURE_DEFAULTS: Complete<SurfaceCentreOfPressureOptions> = {
  floor: CENTRE_OF_PRESSURE_FLOOR,
};

/**
 * Gives the centre of pressure on a plate's own surface, tilted or raised as it may be, and the free moment
 * there.
 *
 * Formula: along the plate's axes p_x = −M_y / F_z, p_y = M_x / F_z, T = M_z − p_x F_y + p_y F_x, M about the
 * middle of the surface; position = centre + p_x x + p_y y.
 * Units: N and N·m in; m and N·m out.
 * Limits: `null` below the floor, where an error of 0.5 N·m moves the point by centimetres, and where the
 * moment is not known. The free moment is about the plate's z axis, which points down: about the upward
 * normal its sign turns.
 * Source: statics of a force and a couple normal to the surface.
 * @param reaction - Of one platform.
 * @param sample - Counted from 0.
 * @param options - {@link SURFACE_CENTRE_OF_PRESSURE_DEFAULTS} where left out.
 * @throws GaitKineticsError `out-of-range`: no such sample, a floor that is not above 0.
 * @example
 * const [zero, load, turn] = [0, 700, 70].map((value) => new Float64Array([value]));
 * const centre = { forward: 1, up: 0, right: 0 };
 * const [x, z] = [{ forward: 1, up: 0, right: 0 }, { forward: 0, up: -1, right: 0 }];
 * const frame = { centre, x, y: { forward: 0, up: 0, right: 1 }, z, normal: { forward: 0, up: 1, right: 0 } };
 * const force = { forward: zero, up: load, right: zero };
 * const moment = { forward: zero, up: zero, right: turn };
 * surfaceCentreOfPressure({ name: "one", frame, force, moment, cautions: [] }, 0)?.position.forward // 1.1
 */
export function surfaceCentreOfPressure(
  reaction: PlatformReaction,
  sample: number,
  options: SurfaceCentreOfPressureOptions = {},
): SurfaceCentreOfPressure | null {
  const { floor } = withDefaults<SurfaceCentreOfPressureOptions>(
    SURFACE_CENTRE_OF_PRESSURE_DEFAULTS,
    options,
  );
  const { frame, moment } = reaction;
  const last = reaction.force.up.length - 1;
  requireNumber("sample", sample, { from: 0, to: last, whole: true });
  requireNumber("floor", floor, { above: 0, unit: "N" });
  if (moment === null) return null;
  const at = (series: AlongDirections): Position => ({
    forward: series.forward[sample] as number,
    up: series.up[sample] as number,
    right: series.right[sample] as number,
  });
  const force = at(reaction.force);
  if (dot(force, frame.normal) < floor) return null;
  const about = at(moment);
  const fz = dot(force, frame.z);
  const x = -dot(about, frame.y) / fz;
  const y = dot(about, frame.x) / fz;
  const arm = combine([x, frame.x], [y, frame.y]);
  const freeMoment = dot(about, frame.z) - dot(cross(arm, force), frame.z);
  return { x, y, position: combine([1, frame.centre], [1, arm]), freeMoment };
}
