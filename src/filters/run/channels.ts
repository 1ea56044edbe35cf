import { fail, type Samples } from "../../units/index.js";

/** One channel, or several of the same length. */
export type OneOrMore = Float64Array | Float32Array | readonly (Float64Array | Float32Array)[];

/** What comes out for several channels: each with the unit that went in, 32-bit samples as 64-bit ones. */
export type FilteredChannels<L extends readonly (Samples | Float32Array)[]> = {
  -readonly [K in keyof L]: L[K] extends Float32Array ? Float64Array : L[K];
};

/** Gives channels as an array, after checking that they are arrays of samples of one length. */
export function channelsOf(samples: OneOrMore, inPlace: boolean): readonly (Float64Array | Float32Array)[] {
  const channels = Array.isArray(samples) ? samples : [samples];
  channels.forEach((channel, index) => {
    const name = nameOf(index, channels);
    const length = channels[0]?.length;
    if (!(channel instanceof Float64Array || (!inPlace && channel instanceof Float32Array))) {
      fail(
        "wrong-type",
        `${name} is ${typeof channel}; a Float64Array${inPlace ? "" : " or Float32Array"} is needed`,
        {
          argument: "samples",
          where: name,
        },
      );
    }
    if (channel.length !== length) {
      fail(
        "unequal-lengths",
        `${name} has ${channel.length} samples and channel 0 has ${length}; they must be equal`,
        {
          argument: "samples",
          where: name,
          values: { length: channel.length, expected: length },
        },
      );
    }
  });
  return channels;
}

/**
 * Fails after a filter has met NaN or infinity. They stay in its state to the end, so that a look at the last output
 * finds them without a pass of its own over the samples; only then are they searched for.
 */
export function refuseNotFinite(channels: readonly (Float64Array | Float32Array)[]): never {
  channels.forEach((samples, channel) => {
    const index = samples.findIndex((sample) => !Number.isFinite(sample));
    if (index < 0) return;
    const name = nameOf(channel, channels);
    fail(
      "not-finite",
      `${name} holds ${samples[index]} at sample ${index}; every sample must be a finite number`,
      {
        argument: "samples",
        where: `${name}, sample ${index}`,
        values: { channel, index, given: String(samples[index]) },
      },
    );
  });
  fail("out-of-range", "samples are so large that they overflow", { argument: "samples" });
}

/** How a message calls a channel. */
function nameOf(index: number, channels: readonly unknown[]): string {
  return channels.length === 1 ? "samples" : `channel ${index}`;
}

/** Whether the sum of samples is finite, and so are they. Two sums side by side take a third of the time of one. */
export function allFinite(samples: Float64Array | Float32Array): boolean {
  let [even, odd] = [samples.at(-1) ?? 0, 0];
  for (let i = 1; i < samples.length; i += 2) {
    even += samples[i - 1] as number;
    odd += samples[i] as number;
  }
  return Number.isFinite(even + odd);
}
