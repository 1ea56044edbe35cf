import type { SegmentMarkers } from "./kinematicEvents.js";
import type { LegReader } from "./readMarkers.js";

/**
 * Flexion of the knee in the plane of `forward` and `up`, rad: the angle by which the shank points farther back than the
 * thigh; 0 where both lie in one line. Markers off the joints' centres add a constant that moves no extreme.
 */
export function kneeFlexion(reader: LegReader, thigh: SegmentMarkers, shank: SegmentMarkers): Float64Array {
  const along = (name: string, { upper, lower }: SegmentMarkers, direction: "forward" | "up") => {
    const from = reader.series(`${name} upper`, upper, direction);
    const to = reader.series(`${name} lower`, lower, direction);
    return to.map((value, i) => value - (from[i] as number));
  };
  const thighForward = along("thigh", thigh, "forward");
  const thighUp = along("thigh", thigh, "up");
  const shankForward = along("shank", shank, "forward");
  const shankUp = along("shank", shank, "up");
  return thighForward.map((a, i) => {
    const b = thighUp[i] as number;
    const c = shankForward[i] as number;
    const d = shankUp[i] as number;
    return Math.atan2(b * c - a * d, a * c + b * d);
  });
}
