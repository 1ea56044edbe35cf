import { fail, requireNumber } from "../units/index.js";
import { checkSamples } from "./checkSamples.js";
import type { MarkerSet } from "./recording.js";
import { wrongType } from "./wrongType.js";

/**
 * Checks that markers are of one length, finite or gaps.
 *
 * @param set - The markers.
 * @throws GaitKineticsError `wrong-type`, `not-finite`, `out-of-range`: a field that is not what its type
 * says; `unequal-lengths`: markers of different length.
 */
export function checkMarkers(set: MarkerSet): void {
  if (typeof set !== "object" || set === null) wrongType("markers", set, "an object");
  requireNumber("markers.sampleRate", set.sampleRate, { above: 0, unit: "Hz" });
  requireNumber("markers.startTime", set.startTime, { unit: "s" });
  if (!Array.isArray(set.markers)) wrongType("markers.markers", set.markers, "an array");
  let frames: number | null = null;
  for (const [k, marker] of set.markers.entries()) {
    const own = `markers.markers[${k}]`;
    if (typeof marker !== "object" || marker === null) wrongType(own, marker, "an object");
    if (typeof marker.name !== "string") wrongType(`${own}.name`, marker.name, "a text");
    for (const axis of ["forward", "up", "right"] as const) {
      checkSamples(`${own}.${axis}`, marker[axis], `marker "${marker.name}", ${axis},`);
      const { length } = marker[axis];
      frames ??= length;
      if (length === frames) continue;
      fail(
        "unequal-lengths",
        `marker "${marker.name}" has ${length} frames ${axis} and the first marker has ${frames}; all markers must be of one length`,
        { argument: `${own}.${axis}`, where: marker.name, values: { given: length, allowed: frames } },
      );
    }
  }
}
