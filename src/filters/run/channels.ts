import { fail, type Samples } from "../../units/index.js";

/** One channel, or several of the same length. */
export type OneOrMore = Float64Array | Float32Array | readonly (Float64Array | Float32Array)[];

/** What comes out for several channels: each with the unit that went in, 32-bit samples as 64-bit ones. */
export type FilteredChannels<L extends readonly (Samples | Float32Array)[]> = {
  -readonly [K in keyof L]: L[K] extends Float32Array ? Float64Array : L[K];
};

/** Gives channels as an array, 32-bit samples widened, after checking that they are arrays of samples of one length. */
export function channelsOf(samples: OneOrMore, inPlace: boolean): readonly Float64Array[] {
  const channels = Array.isArray(samples) ? samples : [samples];
  return channels.map((channel, index) => {
    const where = nameOf(index, channels);
    const wide = channel instanceof Float64Array;
    if (!wide && (inPlace || !(channel instanceof Float32Array))) {
      const needed = `Float64Array${inPlace ? "" : " or Float32Array"}`;
      fail("wrong-type", `${where} is ${typeof channel}; a ${needed} is needed`, {
        argument: "samples",
        where,
      });
    }
    const { length } = channel;
    const expected = channels[0].length;
    if (length !== expected) {
      fail(
        "unequal-lengths",
        `${where} has ${length} samples and channel 0 has ${expected}; they must be equal`,
        {
          argument: "samples",
          where,
          values: { length, expected },
        },
      );
    }
    return wide ? channel : new Float64Array(channel);
  });
}

/**
 * Fails after a filter has met NaN or infinity. They stay in its state to the end, so that a look at the last output
 * finds them without a pass of its own over the samples; only then are they searched for.
 */
export function refuseNotFinite(channels: readonly Float64Array[]): never {
  channels.forEach((samples, channel) => {
    const index = samples.findIndex((sample) => !Number.isFinite(sample));
    if (index < 0) return;
    const where = nameOf(channel, channels);
    const given = String(samples[index]);
    fail("not-finite", `${where} holds ${given} at sample ${index}; finite numbers are needed`, {
      argument: "samples",
      where,
      values: { channel, index, given },
    });
  });
  fail("out-of-range", "samples are so large that they overflow", { argument: "samples" });
}

/** How a message calls a channel. */
function nameOf(index: number, channels: readonly unknown[]): string {
  return channels.length === 1 ? "samples" : `channel ${index}`;
}
