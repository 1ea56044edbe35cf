import type { Position } from "../../recording/index.js";
import type { AlongAxes } from "./decodeChannels.js";
import type { PlatformFrame } from "./platformFrame.js";

/** Three series along the library's directions. */
export interface AlongDirections {
  readonly forward: Float64Array;
  readonly up: Float64Array;
  readonly right: Float64Array;
}

/** Series along a plate's axes, in the library's frame, times a sign. */
export function toLibrary({ x, y, z }: AlongAxes, frame: PlatformFrame, sign: 1 | -1): AlongDirections {
  const along = (axis: keyof Position): Float64Array => {
    const [ex, ey, ez] = [sign * frame.x[axis], sign * frame.y[axis], sign * frame.z[axis]];
    const result = new Float64Array(x.length);
    for (let i = 0; i < x.length; i++) {
      result[i] = ex * (x[i] as number) + ey * (y[i] as number) + ez * (z[i] as number);
    }
    return result;
  };
  return { forward: along("forward"), up: along("up"), right: along("right") };
}

/** Series in the library's frame along a plate's axes. */
export function toPlate({ forward, up, right }: AlongDirections, frame: PlatformFrame): AlongAxes {
  const along = (axis: Position): Float64Array => {
    const result = new Float64Array(up.length);
    for (let i = 0; i < up.length; i++) {
      result[i] =
        axis.forward * (forward[i] as number) +
        axis.up * (up[i] as number) +
        axis.right * (right[i] as number);
    }
    return result;
  };
  return { x: along(frame.x), y: along(frame.y), z: along(frame.z) };
}

/** The moment about another point: M + r × F, r from the new point to the old one. */
export function movedBy(moment: AlongDirections, force: AlongDirections, by: Position): AlongDirections {
  const { length } = moment.up;
  const forward = new Float64Array(length);
  const up = new Float64Array(length);
  const right = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    const [f, u, r] = [force.forward[i] as number, force.up[i] as number, force.right[i] as number];
    forward[i] = (moment.forward[i] as number) + by.up * r - by.right * u;
    up[i] = (moment.up[i] as number) + by.right * f - by.forward * r;
    right[i] = (moment.right[i] as number) + by.forward * u - by.up * f;
  }
  return { forward, up, right };
}
