import type { Marker, MarkerSet, Platform, RecordedEvent, Recording } from "../../recording/index.js";
import { fail } from "../../units/index.js";

/**
 * Cuts a window out of a recording: samples at or after `from` and before `to`, so that windows that meet share none.
 * Marker frames and events within the window stay; samples that a platform names as unloaded stay named where all of
 * them lie within.
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
  const { sampleRate, channels, platforms, markers, events, startTime, firstFoot, ...rest } = recording;
  const { first, last, end } = sampleWindow(recording, from, to);
  const window = { from: startTime + from, to: startTime + end };
  return {
    ...rest,
    sampleRate,
    startTime: startTime + first / sampleRate,
    channels: channels.map((channel) => ({ ...channel, samples: channel.samples.slice(first, last) })),
    ...(platforms && { platforms: platforms.map((platform) => cropPlatform(platform, first, last)) }),
    ...(markers && { markers: cropMarkers(markers, window) }),
    ...(events && { events: events.filter((event) => isWithin(event, window)) }),
    // The file speaks of its own first contact.
    ...(first === 0 && firstFoot !== undefined && { firstFoot }),
  };
}

/** A window in samples, from the first to before the last, and its end in s after the first sample. */
export interface SampleWindow {
  readonly first: number;
  readonly last: number;
  readonly end: number;
}

/**
 * Finds the samples of a window.
 *
 * @param recording - The whole recording.
 * @param from - s after its first sample.
 * @param to - s after its first sample; the end where `undefined`.
 * @throws GaitKineticsError `out-of-range`: the window is empty or outside the recording.
 */
export function sampleWindow(
  { sampleRate, channels, platforms, markers }: Recording,
  from: number = 0,
  to: number | undefined = undefined,
): SampleWindow {
  const samples = channels[0]?.samples.length ?? platforms?.[0]?.channels[0]?.samples.length;
  const duration =
    samples === undefined
      ? (markers?.markers[0]?.up.length ?? 0) / (markers?.sampleRate ?? 1)
      : samples / sampleRate;
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
  return {
    first: firstWithin(from, sampleRate),
    last: Math.min(samples ?? Number.POSITIVE_INFINITY, firstWithin(end, sampleRate)),
    end,
  };
}

/** A stretch of the recording's clock, s. */
interface Window {
  readonly from: number;
  readonly to: number;
}

/** Number of the first sample at or after a time, with room for the last bits of both. */
function firstWithin(time: number, sampleRate: number): number {
  return Math.max(0, Math.ceil(time * sampleRate - 1e-6));
}

function cropPlatform({ zero, ...platform }: Platform, first: number, last: number): Platform {
  const inside = zero !== undefined && zero.from >= first && zero.to <= last;
  return {
    ...platform,
    channels: platform.channels.map((channel) => ({
      ...channel,
      samples: channel.samples.slice(first, last),
    })),
    ...(inside && { zero: { from: zero.from - first, to: zero.to - first } }),
  };
}

function cropMarkers({ sampleRate, startTime, markers }: MarkerSet, { from, to }: Window): MarkerSet {
  const first = firstWithin(from - startTime, sampleRate);
  const last = firstWithin(to - startTime, sampleRate);
  const part = (samples: Float64Array): Float64Array => samples.slice(first, last);
  return {
    sampleRate,
    startTime: startTime + first / sampleRate,
    markers: markers.map(
      ({ name, forward, up, right }): Marker => ({
        name,
        forward: part(forward),
        up: part(up),
        right: part(right),
      }),
    ),
  };
}

function isWithin({ time }: RecordedEvent, { from, to }: Window): boolean {
  return time >= from && time < to;
}
