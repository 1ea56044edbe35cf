import type { Caution } from "../units/index.js";

/** Equal samples in a row at the very end of a channel's range that make one plateau. */
const PLATEAU = 5;
/** Plateaus that tell of a limit of the channel: a single one may be a contact's own flat peak. */
const PLATEAUS = 2;

/** An extreme value nearer to zero than this is no load but the level in flight, N. */
const LEAST_LOAD = 20;
/** The same for a channel in another unit, in steps of its resolution. */
const LEAST_STEPS = 50;
/** A plateau that is entered by a jump of fewer steps of the channel's resolution is a rounded peak. */
const JUMP = 3;

/**
 * Says which channels of force, moment or volts stay at their own extreme value again and again, as a
 * saturated amplifier does.
 */
export function saturationCautions(
  channels: readonly { readonly name: string; readonly unit?: string; readonly samples: Float64Array }[],
): Caution[] {
  return channels.flatMap(({ name, unit = "N", samples }) => {
    const resolution = resolutionOf(samples);
    const jump = JUMP * resolution;
    const leastLoad = unit === "N" ? LEAST_LOAD : LEAST_STEPS * resolution;
    const top = plateausAt(samples, 1, jump, leastLoad);
    const bottom = plateausAt(samples, -1, jump, leastLoad);
    const plateaus = Math.max(top, bottom);
    if (plateaus < PLATEAUS) return [];
    return [
      {
        code: "saturated",
        message: `"${name}" stays at its very ${top >= bottom ? "largest" : "smallest"} value for ${PLATEAU} samples or more, ${plateaus} times: the channel may be saturated`,
        where: name,
        values: { plateaus },
      },
    ];
  });
}

/**
 * Smallest difference between successive samples that is not zero: the channel's resolution, or the finest of
 * its noise.
 */
function resolutionOf(samples: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < samples.length; i++) {
    const step = Math.abs((samples[i] as number) - (samples[i - 1] as number));
    if (step > 0 && step < least) least = step;
  }
  return least;
}

/**
 * Runs of {@link PLATEAU} or more samples equal to the largest one (of the negatives with sign −1), entered
 * by a jump.
 */
function plateausAt(samples: Float64Array, sign: 1 | -1, jump: number, leastLoad: number): number {
  let extreme = leastLoad;
  let entered = false;
  let run = 0;
  let plateaus = 0;
  for (let i = 0; i < samples.length; i++) {
    const value = sign * (samples[i] as number);
    if (value > extreme) {
      extreme = value;
      run = 0;
      plateaus = 0;
    }
    if (value !== extreme) {
      run = 0;
      continue;
    }
    run++;
    if (run === 1) entered = i > 0 && value - sign * (samples[i - 1] as number) >= jump;
    if (run === PLATEAU && entered) plateaus++;
  }
  return plateaus;
}
