import { type Hertz, type Newtons, requireNumber, type Samples, type Seconds } from "../../units/index.js";
import { requireSpan } from "../requireSpan.js";
import { sampleAt } from "../sampleAt.js";

/**
 * Gives the effective contact time: the part of a contact in which the vertical force exceeds body weight.
 *
 * Formula: from the first upward to the last downward crossing of the weight, each on the straight line between its
 * neighbouring samples. The effective aerial time is the step time less this.
 * Units: N and s in; s out.
 * Limits: `null` where the force never exceeds the weight. A dip below the weight behind an impact peak counts as part of
 * it. Unlike the contact time it hardly depends on the threshold of the contact.
 * Source: Cavagna 2006, J Exp Biol 209:4051 (abstract); the outer crossings are this library's rule.
 * @param samples - Vertical force, N.
 * @param sampleRate - Above 0.
 * @param from - Initial contact, from the first sample.
 * @param to - Toe-off, above `from`, within the samples.
 * @param weight - Body weight, above 0; on a slope its part normal to the surface.
 * @throws GaitKineticsError `out-of-range`, `wrong-type`, `not-finite`: the span does not rise within the samples, weight not
 * above 0.
 * @example
 * effectiveContactTime(new Float64Array([0, 1000, 2000, 1000, 0]), 10, 0, 0.4, 500) // 0.3
 */
export function effectiveContactTime(
  samples: Samples<"N">,
  sampleRate: Hertz,
  from: Seconds,
  to: Seconds,
  weight: Newtons,
): Seconds | null {
  requireSpan(samples, sampleRate, from, to);
  requireNumber("weight", weight, { above: 0, unit: "N" });
  const end = to * sampleRate;
  let place = from * sampleRate;
  let force = sampleAt(samples, place);
  let first = force > weight ? place : -1;
  let last = first;
  for (let i = Math.floor(place) + 1; place < end; i++) {
    const nextPlace = Math.min(i, end);
    const next = sampleAt(samples, nextPlace);
    if (force > weight !== next > weight) {
      const crossing = place + ((weight - force) / (next - force)) * (nextPlace - place);
      if (first < 0) first = crossing;
      last = crossing;
    }
    place = nextPlace;
    force = next;
  }
  if (first < 0) return null;
  return ((force > weight ? place : last) - first) / sampleRate;
}
