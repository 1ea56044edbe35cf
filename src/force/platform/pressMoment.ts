import type { Platform } from "../../recording/index.js";
import type { Metres } from "../../units/index.js";
import { nearestLoaded } from "../moments.js";
import type { PlatformFrame } from "./platformFrame.js";
import { type AlongDirections, movedBy, toLibrary, toPlate } from "./rotate.js";
import { combine } from "./vectors.js";

/**
 * The moment about the middle of the surface of a platform that states centre of pressure and free moment
 * (type 1): M = (p_y F_z, −p_x F_z, p_x F_y − p_y F_x + T). Below the floor the centre of pressure is held
 * from the nearest sample above it, and the free moment is zero. `null` where the plate is never loaded.
 */
export function pressMoment(
  platform: Platform,
  frame: PlatformFrame,
  force: AlongDirections,
  sign: 1 | -1,
  { coverThickness, floor }: { coverThickness: Metres; floor: number },
): AlongDirections | null {
  const loaded = nearestLoaded(force.up, floor);
  if (loaded === null) return null;
  const [, , , px, py, twist] = platform.channels.map(({ samples }) => samples);
  const plate = toPlate(force, frame);
  const { length } = force.up;
  const x = new Float64Array(length);
  const y = new Float64Array(length);
  const z = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    const at = loaded[i] as number;
    const [cx, cy] = [(px as Float64Array)[at] as number, (py as Float64Array)[at] as number];
    x[i] = cy * (plate.z[i] as number);
    y[i] = -cx * (plate.z[i] as number);
    z[i] =
      cx * (plate.y[i] as number) -
      cy * (plate.x[i] as number) +
      ((force.up[i] as number) >= floor ? sign * ((twist as Float64Array)[i] as number) : 0);
  }
  const moment = toLibrary({ x, y, z }, frame, 1);
  return movedBy(moment, force, combine([-coverThickness, frame.normal]));
}
