import { fail, type Samples } from "../../units/index.js";

/** One channel, or several of the same length. */
export type OneOrMore = Float64Array | Float32Array | readonly (Float64Array | Float32Array)[];

/** What comes out for several channels: each with the unit that went in, 32-bit samples as 64-bit ones. */
export type FilteredChannels<L extends readonly (Samples | Float32Array)[]> = {
  -readonly [K in keyof L]: L[K] extends Float32Array ? Float64Array : L[K];
};

/** Gives channels as an array, after checking that they are arrays of samples of one length. */
export function channelsOf(samples: OneOrMore): readonly (Float64Array | Float32Array)[] {
  const single = samples instanceof Float64Array || samples instanceof Float32Array;
  if (!single && !Array.isArray(samples)) {
    fail(
      "wrong-type",
      `samples are ${typeof samples}; a Float64Array, a Float32Array or an array of them is needed`,
      {
        argument: "samples",
      },
    );
  }
  const channels = single ? [samples] : samples;
  channels.forEach((channel, index) => {
    if (!(channel instanceof Float64Array || channel instanceof Float32Array)) {
      fail(
        "wrong-type",
        `${nameOf(index, channels.length)} is ${typeof channel}; a Float64Array or Float32Array is needed`,
        {
          argument: "samples",
          where: nameOf(index, channels.length),
        },
      );
    }
    const length = channels[0]?.length;
    if (channel.length !== length) {
      fail(
        "unequal-lengths",
        `channel ${index} has ${channel.length} samples and channel 0 has ${length}; they must have the same`,
        {
          argument: "samples",
          where: `channel ${index}`,
          values: { length: channel.length, expected: length },
        },
      );
    }
  });
  return channels;
}

/** How a message calls a channel. */
export function nameOf(index: number, count: number): string {
  return count === 1 ? "samples" : `channel ${index}`;
}

/**
 * Fails after a filter has met NaN or infinity. They stay in its state to the end, so that a look at the last output
 * finds them without a pass of its own over the samples; only then are they searched for.
 */
export function refuseNotFinite(channels: readonly (Float64Array | Float32Array)[]): never {
  for (const [channel, samples] of channels.entries()) {
    const index = samples.findIndex((sample) => !Number.isFinite(sample));
    if (index < 0) continue;
    const name = nameOf(channel, channels.length);
    fail(
      "not-finite",
      `${name} holds ${samples[index]} at sample ${index}; every sample must be a finite number`,
      {
        argument: "samples",
        where: `${name}, sample ${index}`,
        values: { channel, index, given: String(samples[index]) },
      },
    );
  }
  fail("out-of-range", "samples are so large that the filter overflows; scale them down", {
    argument: "samples",
  });
}
