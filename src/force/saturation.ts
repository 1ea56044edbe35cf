import type { Caution } from "../units/index.js";
import type { ForceComponents } from "./groundReaction.js";

/** Equal samples in a row at the very end of a channel's range that make one plateau. */
const PLATEAU = 5;
/** Plateaus that tell of a limit of the channel: a single one may be a contact's own flat peak. */
const PLATEAUS = 2;

/** An extreme value nearer to zero than this is no load but the level in flight, N. */
const LEAST_LOAD = 50;

/** Says which channels stay at their own extreme value again and again, as a saturated amplifier does. */
export function saturationCautions(raw: ForceComponents): Caution[] {
  return (["forward", "up", "right"] as const).flatMap((direction) => {
    const samples = raw[direction];
    if (samples === undefined) return [];
    const top = plateausAt(samples, 1);
    const bottom = plateausAt(samples, -1);
    const plateaus = Math.max(top, bottom);
    if (plateaus < PLATEAUS) return [];
    return [
      {
        code: "saturated",
        message: `"${direction}" stays at its very ${top >= bottom ? "largest" : "smallest"} value for ${PLATEAU} samples or more, ${plateaus} times: the channel may be saturated`,
        where: direction,
        values: { plateaus },
      },
    ];
  });
}

/** Runs of {@link PLATEAU} or more samples equal to the largest one (of the negatives with sign −1). */
function plateausAt(samples: Float64Array, sign: 1 | -1): number {
  let extreme = LEAST_LOAD;
  let run = 0;
  let plateaus = 0;
  for (let i = 0; i < samples.length; i++) {
    const value = sign * (samples[i] as number);
    if (value > extreme) {
      extreme = value;
      run = 1;
      plateaus = 0;
    } else if (value === extreme) {
      run++;
      if (run === PLATEAU) plateaus++;
    } else run = 0;
  }
  return plateaus;
}
