import { derivative, lowPass, secondDerivative } from "../../../src/filters/index.js";
import type { Marker, MarkerSet } from "../../../src/recording/index.js";

/** What a sensor on the leg would read, computed from its markers: no sensor was worn. */
function markerOf({ markers }: MarkerSet, name: string): Marker {
  const found = markers.find((marker) => marker.name === name);
  if (found === undefined) throw new Error(`no marker ${name}`);
  return found;
}

/** Rate of a foot's pitch, toes up positive, rad/s, from a marker on its heel and one on its toes. */
export function footRateFromMarkers(set: MarkerSet, heelName: string, toeName: string): Float64Array {
  const heel = markerOf(set, heelName);
  const toe = markerOf(set, toeName);
  const pitch = new Float64Array(heel.up.length);
  let turns = 0;
  for (let i = 0; i < pitch.length; i++) {
    const raw = Math.atan2(
      (toe.up[i] as number) - (heel.up[i] as number),
      (toe.forward[i] as number) - (heel.forward[i] as number),
    );
    const before = pitch[i - 1] ?? raw;
    turns += Math.round((before - raw - turns) / (2 * Math.PI)) * 2 * Math.PI;
    pitch[i] = raw + turns;
  }
  return derivative(pitch, set.sampleRate);
}

/** Acceleration along the shank, towards the knee, with gravity as a sensor reads it, m/s²; markers smoothed at 50 Hz. */
export function tibiaFromMarkers(set: MarkerSet, upperName: string, lowerName: string): Float64Array {
  const upper = markerOf(set, upperName);
  const lower = markerOf(set, lowerName);
  const { sampleRate } = set;
  const accelerationOf = (samples: Float64Array) =>
    secondDerivative(lowPass(samples, { cutoff: 50, sampleRate }), sampleRate);
  const forward = accelerationOf(lower.forward);
  const up = accelerationOf(lower.up);
  return up.map((vertical, i) => {
    const dx = (upper.forward[i] as number) - (lower.forward[i] as number);
    const dy = (upper.up[i] as number) - (lower.up[i] as number);
    return ((vertical + 9.80665) * dy + (forward[i] as number) * dx) / Math.hypot(dx, dy);
  });
}
