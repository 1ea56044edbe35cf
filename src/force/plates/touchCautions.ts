import type { Caution, Newtons, Seconds } from "../../units/index.js";
import { flightNoise } from "../flightNoise.js";
import type { GroundReaction } from "../groundReaction.js";
import { type Load, loadsOf, stretchesAbove } from "./loads.js";

/** Force above which a touch is seen, N, as the least threshold of a contact; more where noise is large. */
const LEAST_TOUCH: Newtons = 20;
/** Standard deviations of the force in flight that a touch stays above its mean. */
const NOISE_FACTOR = 5;
/** What is shorter is a plate that rings, s. A judgement. */
const SHORTEST_TOUCH: Seconds = 0.01;
/** A touch this near to a step on the same plate is the edge of that step, s. A judgement. */
const EDGE: Seconds = 0.05;
/** Times that a caution names. */
const NAMED_TIMES = 5;

/**
 * Says where a plate was touched too shortly or too lightly for a step while somebody stood on another one: by
 * the tip of the same foot, as a rule, whose force there is missing from its contact.
 * @param plates - Those kept apart.
 */
export function touchCautions(plates: readonly GroundReaction[]): Caution[] {
  const loads = plates.map(loadsOf);
  return plates.flatMap((plate, k) => {
    const own = loads[k] as Load[];
    const edge = EDGE * plate.sampleRate;
    const touches = stretchesAbove(plate, levelOf(plate), SHORTEST_TOUCH).filter(
      ({ from, to }) => !own.some((load) => load.from < to + edge && from - edge < load.to),
    );
    return plates.flatMap((other, j) => {
      if (j === k) return [];
      const beside = loads[j] as Load[];
      const during = touches.filter(({ from, to }) =>
        beside.some((load) => load.from < to && from < load.to),
      );
      return during.length === 0 ? [] : [caution(plate, other, during)];
    });
  });
}

function levelOf(plate: GroundReaction): Newtons {
  const noise = flightNoise(plate);
  return noise === null ? LEAST_TOUCH : Math.max(LEAST_TOUCH, noise.mean + NOISE_FACTOR * noise.sd);
}

function caution(plate: GroundReaction, other: GroundReaction, touches: readonly Load[]): Caution {
  let most = 0;
  for (const { from, to } of touches) {
    for (let i = from; i < to; i++) most = Math.max(most, plate.force.up[i] as number);
  }
  const times = touches.map(({ from }) => from / plate.sampleRate);
  const named = times.slice(0, NAMED_TIMES).map((time) => `${time.toFixed(2)} s`);
  const more = times.length > NAMED_TIMES ? ` and ${times.length - NAMED_TIMES} times more` : "";
  const [own, beside] = [plate.plate ?? "", other.plate ?? ""];
  return {
    code: "plate-touched",
    message: `"${own}" was touched with up to ${most.toFixed(0)} N while somebody stood on "${beside}", ${named.join(", ")}${more} after the first sample: where it was the same foot, that force is missing from its contact on "${beside}"; take the plates together to keep it`,
    where: `${own}, ${beside}`,
    values: { times: times.length, first: times[0] ?? null, most },
  };
}
