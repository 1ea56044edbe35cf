import type { Recording } from "../../recording/index.js";
import { fail } from "../../units/index.js";

/**
 * Cuts a window out of a recording: samples at or after `from` and before `to`, so that windows that meet share none.
 *
 * @param recording - The whole recording.
 * @param from - s after its first sample.
 * @param to - s after its first sample; the end where `undefined`.
 * @throws GaitKineticsError `out-of-range`: the window is empty or outside the recording.
 */
export function cropRecording(
  recording: Recording,
  from: number = 0,
  to: number | undefined = undefined,
): Recording {
  const { sampleRate, channels, startTime, firstFoot, ...rest } = recording;
  const samples = channels[0]?.samples.length ?? 0;
  const duration = samples / sampleRate;
  const end = to ?? duration;
  // Half a sample of tolerance: 15 s of a file that ends at 14.998 s is all of it.
  if (!(from < end) || end > duration + 0.5 / sampleRate) {
    fail(
      "out-of-range",
      `the window is ${from} to ${end} s; it must rise within 0 to ${Number(duration.toFixed(3))} s`,
      {
        argument: "from, to",
        values: { from, to: end, duration },
      },
    );
  }
  const first = Math.ceil(from * sampleRate - 1e-6);
  const last = Math.min(samples, Math.ceil(end * sampleRate - 1e-6));
  return {
    ...rest,
    sampleRate,
    startTime: startTime + first / sampleRate,
    channels: channels.map((channel) => ({ ...channel, samples: channel.samples.slice(first, last) })),
    // The file speaks of its own first contact.
    ...(first === 0 && firstFoot !== undefined && { firstFoot }),
  };
}
