import type { Marker, MarkerSet } from "../../recording/index.js";
import { median } from "../../statistics/index.js";
import type { Fraction, Metres } from "../../units/index.js";
import type { MarkerTravel } from "../groundReaction.js";

/** Markers that go less far show no direction of travel, m. A judgement: a runner drifts on a belt by less, as a rule. */
const LEAST_TRAVEL: Metres = 0.5;
/** A marker counts that is seen over this share of the recording. */
const LEAST_SEEN: Fraction = 0.5;

/**
 * How far the markers of a recording go from where each is first seen to where it is last seen; `null` where the median of
 * them is less than half a metre, or none is seen for half of the time.
 */
export function markerTravel({ markers, sampleRate }: MarkerSet): MarkerTravel | null {
  const ways = markers.flatMap((marker) => {
    const [first, last] = endsOf(marker);
    if (last - first < LEAST_SEEN * (marker.forward.length - 1) || last <= first) return [];
    const along = (samples: Float64Array) => (samples[last] as number) - (samples[first] as number);
    return [
      { forward: along(marker.forward), right: along(marker.right), duration: (last - first) / sampleRate },
    ];
  });
  if (ways.length === 0) return null;
  const typical = (part: keyof MarkerTravel) => median(ways.map((way) => way[part]));
  const travel = { forward: typical("forward"), right: typical("right"), duration: typical("duration") };
  return Math.hypot(travel.forward, travel.right) < LEAST_TRAVEL ? null : travel;
}

/** The first and the last frame that a marker is seen in; before the first where it never is. */
function endsOf({ forward, right }: Marker): [first: number, last: number] {
  const seen = (i: number) => Number.isFinite(forward[i]) && Number.isFinite(right[i]);
  let first = 0;
  while (first < forward.length && !seen(first)) first++;
  let last = forward.length - 1;
  while (last >= 0 && !seen(last)) last--;
  return [first, last];
}
